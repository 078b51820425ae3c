package contrapposto.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.body.PoseOutcome.Impossible;
import contrapposto.body.PoseOutcome.Solved;
import contrapposto.quantity.Sex;
import contrapposto.quantity.Side;
import contrapposto.wording.Teller;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** No limb in the floor, in a box or in the other leg; shoulders, elbows and thighs in their range (reference D2). */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ClearanceTest {
    private static final Person PERSON = Person.of(1.7, 65, Sex.FEMALE);
    private static final PoseProblem SPLIT = Problems.split(PERSON, Side.LEFT, 0.46, 0, 0, false, new Load.None());

    private static SolvedPose solved(PoseProblem problem) {
        return assertInstanceOf(Solved.class, PoseSolver.solve(problem)).pose();
    }

    private static SolvedPose with(SolvedPose pose, Prop... props) {
        return new SolvedPose(pose.start(), pose.working(), pose.mechanics(), List.of(props));
    }

    private static SolvedPose moved(SolvedPose pose, Vector3D by, Joint... joints) {
        var at = new EnumMap<>(pose.working().joints());
        for (Joint joint : joints) {
            at.put(joint, at.get(joint).add(by));
        }
        return new SolvedPose(pose.start(), new Pose(at, pose.working().ribsForward(), pose.working().facing()), pose.mechanics(), pose.props());
    }

    private static String told(Breaches breaches) {
        return Teller.PLAIN.plain(breaches.worst().constraint());
    }

    @Test
    void a_shin_through_a_box_is_seen_and_said() {
        SolvedPose pose = solved(SPLIT);
        Vector3D knee = pose.working().at(Joint.LEFT_KNEE);
        Vector3D ankle = pose.working().at(Joint.LEFT_ANKLE);
        Vector3D middle = knee.add(ankle).scalarMultiply(0.5);
        var box = new Prop.Box(middle.subtract(new Vector3D(0.05, 0.05, 0.05)), middle.add(new Vector3D(0.05, 0.05, 0.05)));
        Breaches breaches = Clearance.of(SPLIT, with(pose, box));
        assertTrue(breaches.beyond(0.5));
        assertTrue(told(breaches).startsWith("the left leg would be −"), () -> told(breaches));
    }

    /** A box 2 cm before the shin is clear of it, one 2 cm into its flesh is not: the shank's radius is 0.029 of stature half way. */
    @ParameterizedTest
    @CsvSource({"0.02, false", "-0.03, true"})
    void a_box_beside_the_shin_is_judged_by_the_thickness_of_the_shin(double gap, boolean struck) {
        SolvedPose pose = solved(SPLIT);
        Vector3D middle = pose.working().at(Joint.LEFT_KNEE).add(pose.working().at(Joint.LEFT_ANKLE)).scalarMultiply(0.5);
        double face = middle.getY() + 0.034 * PERSON.stature() + gap;
        var box = new Prop.Box(new Vector3D(middle.getX() - 0.01, face, middle.getZ() - 0.01), new Vector3D(middle.getX() + 0.01, face + 0.3, middle.getZ() + 0.01));
        assertEquals(struck, Clearance.of(SPLIT, with(pose, box)).beyond(0.5));
    }

    @Test
    void a_knee_that_knocks_the_other_is_seen() {
        SolvedPose pose = solved(Problems.all(PERSON, Side.LEFT).stream().filter(p -> p.name().equals("goblet squat")).findFirst().orElseThrow().problem());
        assertFalse(Clearance.of(SPLIT, with(pose)).beyond(0.5));
        double between = pose.working().at(Joint.LEFT_KNEE).getY() - pose.working().at(Joint.RIGHT_KNEE).getY();
        Breaches breaches = Clearance.of(SPLIT, moved(with(pose), new Vector3D(0, 0.04 - between, 0), Joint.LEFT_KNEE));
        assertTrue(breaches.beyond(0.5));
        assertTrue(told(breaches).startsWith("the legs would be"), () -> told(breaches));
    }

    @Test
    void a_weight_in_the_thigh_and_a_foot_in_the_floor_are_seen() {
        SolvedPose pose = with(solved(SPLIT), new Prop.Dumbbell(Side.LEFT, Vector3D.PLUS_I));
        assertFalse(Clearance.of(SPLIT, pose).beyond(0.5));
        Vector3D wrist = pose.working().at(Joint.LEFT_WRIST);
        Vector3D grip = wrist.add(Segments.GRIP * PERSON.stature(), pose.working().at(Joint.LEFT_HAND).subtract(wrist).normalize());
        Vector3D thigh = pose.working().at(Joint.LEFT_HIP).add(pose.working().at(Joint.LEFT_KNEE)).scalarMultiply(0.5);
        assertTrue(Clearance.of(SPLIT, moved(pose, thigh.subtract(grip), Joint.LEFT_HAND, Joint.LEFT_WRIST)).beyond(0.5));
        Breaches sunk = Clearance.of(SPLIT, moved(pose, new Vector3D(0, 0, -0.05), Joint.LEFT_TOE));
        assertTrue(told(sunk).startsWith("the left leg would be"), () -> told(sunk));
    }

    /** The person's own shoulder: 150° presses nearly up, 120° does not, and the reason says what it would have to do. */
    @Test
    void an_overhead_press_goes_as_high_as_the_shoulder_and_not_higher() {
        var press = Problems.all(PERSON, Side.LEFT).stream().filter(p -> p.name().equals("half-kneeling press")).findFirst().orElseThrow().problem();
        assertTrue(raised(solved(press)) > 170);
        assertTrue(raised(solved(Problems.limited(press, shoulder(155)))) < 155.1);
        var refused = assertInstanceOf(Impossible.class, PoseSolver.solve(Problems.limited(press, shoulder(120))));
        String words = Teller.PLAIN.plain(refused.constraint());
        assertTrue(words.startsWith("the left arm would have to rise 17") && words.endsWith("120° is allowed"), words);
        assertTrue(refused.by() > 50, () -> "by " + refused.by());
    }

    private static JointLimits shoulder(double flexion) {
        JointLimits c = JointLimits.COMMON;
        return new JointLimits(c.hipFlexion(), c.hipExtension(), c.kneeFlexion(), c.ankleDorsiflexion(), c.anklePlantarflexion(),
                c.toeExtension(), flexion, c.elbowFlexion());
    }

    private static double raised(SolvedPose pose) {
        Vector3D arm = pose.working().at(Joint.LEFT_ELBOW).subtract(pose.working().at(Joint.LEFT_SHOULDER));
        return StrictMath.toDegrees(Vector3D.angle(arm, pose.working().at(Joint.PELVIS).subtract(pose.working().at(Joint.NECK))));
    }

    /** Reference D2: 60° back, 70° turned in, 90° turned out, elbow 145°; hanging arms with the forearm forward turn neither way. */
    @ParameterizedTest
    @CsvSource({"-0.5, 0.1, -0.85,  0.5, 0.1, -0.85,  ''", "-0.95, 0.1, -0.3,  0.5, 0, -0.8,  behind the trunk", "0, 0.1, -1,  0.1, -1, 0,  inward",
        "0, 0.1, -1,  -0.6, 0.8, 0,  outward", "0.1, 0.1, -1,  0.1, 0, 1,  elbow", "0, 0.1, -1,  1, 0, 0,  ''"})
    void an_arm_beyond_its_range_is_seen(double x, double y, double z, double fx, double fy, double fz, String what) {
        SolvedPose pose = with(solved(SPLIT));
        Vector3D up = pose.working().at(Joint.NECK).subtract(pose.working().at(Joint.PELVIS)).normalize();
        Vector3D left = pose.working().at(Joint.LEFT_SHOULDER).subtract(pose.working().at(Joint.RIGHT_SHOULDER)).normalize();
        Vector3D ahead = left.crossProduct(up);
        Vector3D shoulder = pose.working().at(Joint.LEFT_SHOULDER);
        Vector3D elbow = shoulder.add(0.3, new Vector3D(x, ahead, y, left, z, up).normalize());
        Vector3D wrist = elbow.add(0.25, new Vector3D(fx, ahead, fy, left, fz, up).normalize());
        SolvedPose other = moved(moved(pose, elbow.subtract(pose.working().at(Joint.LEFT_ELBOW)), Joint.LEFT_ELBOW),
                wrist.subtract(pose.working().at(Joint.LEFT_WRIST)), Joint.LEFT_WRIST);
        Breaches breaches = Ranges.of(SPLIT, other);
        assertEquals(!what.isEmpty(), breaches.beyond(0.5));
        assertTrue(what.isEmpty() || told(breaches).contains(what), () -> told(breaches));
    }

    /** Written a second time, by another way: distances between bones as lines, against bones' thickness, over every base. */
    @ParameterizedTest
    @EnumSource(Sex.class)
    void no_solved_pose_has_shins_in_each_other_or_under_the_floor(Sex sex) {
        var seen = new ArrayList<String>();
        for (double stature : new double[] {1.45, 1.7, 2}) {
            for (var named : Problems.all(Person.of(stature, 23 * stature * stature, sex), Side.RIGHT)) {
                if (PoseSolver.solve(named.problem()) instanceof Solved(var pose)) {
                    for (Pose each : List.of(pose.start(), pose.working())) {
                        double shins = apart(each.at(Joint.LEFT_KNEE), each.at(Joint.LEFT_ANKLE), each.at(Joint.RIGHT_KNEE), each.at(Joint.RIGHT_ANKLE));
                        double low = each.joints().values().stream().mapToDouble(Vector3D::getZ).min().orElseThrow();
                        if (shins < 2 * 0.017 * stature - 0.02 || low < -0.05) {
                            seen.add(named.name() + " " + stature + ": shins " + shins + ", lowest " + low);
                        }
                    }
                }
            }
        }
        assertEquals(List.of(), seen);
    }

    /** Least distance of two line segments, by sampling: no formula that the checker shares. */
    private static double apart(Vector3D a, Vector3D b, Vector3D c, Vector3D d) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 40; i++) {
            for (int j = 0; j <= 40; j++) {
                Vector3D p = a.add(i / 40.0, b.subtract(a));
                Vector3D q = c.add(j / 40.0, d.subtract(c));
                least = Math.min(least, p.distance(q));
            }
        }
        return least;
    }
}
