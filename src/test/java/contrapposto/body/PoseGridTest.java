package contrapposto.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.body.Joint.Part;
import contrapposto.body.PoseOutcome.Impossible;
import contrapposto.body.PoseOutcome.Solved;
import contrapposto.quantity.Side;
import contrapposto.wording.Teller;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Laws that hold for every pose: people of 1.45 to 2.00 m, three masses, both sexes × every base × both sides. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PoseGridTest {
    private record Case(String name, PoseProblem problem, PoseOutcome outcome) {
        List<Pose> poses() {
            return outcome instanceof Solved(var solved) ? List.of(solved.start(), solved.working()) : List.of();
        }
    }

    private static final List<Case> CASES = new ArrayList<>();

    @BeforeAll
    static void solveAll() {
        for (Person person : Problems.people()) {
            for (Side side : Side.values()) {
                for (Problems.Named named : Problems.all(person, side)) {
                    String name = String.format(java.util.Locale.ROOT, "%s, %s, %.2f m %.0f kg %s", named.name(), side.word(),
                            person.stature(), person.mass(), person.sex());
                    CASES.add(new Case(name, named.problem(), PoseSolver.solve(named.problem())));
                }
            }
        }
    }

    @Test
    void most_problems_have_a_pose_and_the_others_say_what_is_in_the_way() {
        var impossible = new TreeMap<String, String>();
        for (Case c : CASES) {
            if (c.outcome() instanceof Impossible(var constraint, var by, var unit)) {
                String words = Teller.PLAIN.plain(constraint);
                impossible.put(c.name(), words);
                assertTrue(words.length() > 20 && by > 0, c.name() + ": " + words + " by " + by);
            }
        }
        System.out.println("body: " + CASES.size() + " problems, " + (CASES.size() - impossible.size()) + " solved, "
                + impossible.size() + " impossible");
        impossible.forEach((name, words) -> System.out.println("  " + name + ": " + words));
        assertTrue(impossible.size() * 20 < CASES.size(), () -> "more than one in twenty is impossible: " + impossible);
    }

    @Test
    void neighbouring_joints_are_a_segment_apart_to_a_tenth_of_a_millimetre() {
        for (Case c : CASES) {
            Segments s = c.problem().person().segments();
            for (Pose pose : c.poses()) {
                for (Side side : Side.values()) {
                    apart(c, pose, side, Part.HIP, Part.KNEE, s.thigh());
                    apart(c, pose, side, Part.KNEE, Part.ANKLE, s.shank());
                    apart(c, pose, side, Part.HEEL, Part.BALL, s.heelToBall());
                    apart(c, pose, side, Part.BALL, Part.TOE, s.foot() - s.heelToBall());
                    apart(c, pose, side, Part.HEEL, Part.ANKLE, StrictMath.sqrt(s.heelToAnkle() * s.heelToAnkle() + s.ankleHeight() * s.ankleHeight()));
                    apart(c, pose, side, Part.SHOULDER, Part.ELBOW, s.upperArm());
                    apart(c, pose, side, Part.ELBOW, Part.WRIST, s.forearm());
                    apart(c, pose, side, Part.WRIST, Part.HAND, s.hand());
                }
                assertEquals(s.trunk(), pose.at(Joint.PELVIS).distance(pose.at(Joint.NECK)), 1e-4, c.name());
                assertEquals(s.neckHead(), pose.at(Joint.NECK).distance(pose.at(Joint.HEAD_TOP)), 1e-4, c.name());
                middle(c, pose, Joint.PELVIS, Part.HIP, s.hipSpacing());
                middle(c, pose, Joint.NECK, Part.SHOULDER, s.shoulderSpacing());
            }
        }
    }

    private static void apart(Case c, Pose pose, Side side, Part from, Part to, double length) {
        assertEquals(length, pose.at(Joint.of(side, from)).distance(pose.at(Joint.of(side, to))), 1e-4,
                () -> c.name() + ": " + side.word() + " " + from + "–" + to);
    }

    private static void middle(Case c, Pose pose, Joint joint, Part part, double spacing) {
        Vector3D left = pose.at(Joint.of(Side.LEFT, part));
        Vector3D right = pose.at(Joint.of(Side.RIGHT, part));
        assertEquals(0, pose.at(joint).distance(left.add(right).scalarMultiply(0.5)), 1e-4, c.name());
        assertEquals(spacing, left.distance(right), 1e-4, c.name());
    }

    @Test
    void nothing_is_under_the_floor() {
        for (Case c : CASES) {
            double h = c.problem().person().stature();
            for (Pose pose : c.poses()) {
                pose.joints().forEach((joint, at) -> assertTrue(at.getZ() > -1e-6, () -> c.name() + ": " + joint.word() + " at " + at.getZ()));
                for (Side side : Side.values()) {
                    double knee = pose.at(Joint.of(side, Part.KNEE)).getZ();
                    assertTrue(knee > 0.031 * h - 1e-3, () -> c.name() + ": " + side.word() + " knee at " + knee);
                }
            }
        }
    }

    @Test
    void feet_stand_where_the_base_says() {
        for (Case c : CASES) {
            for (Pose pose : c.poses()) {
                if (c.problem().base() instanceof BaseOfSupport.Split(var front, var stance, var width, var raise, var rear, var laces)) {
                    assertEquals(raise, pose.at(Joint.of(front, Part.HEEL)).getZ(), 1e-9, c.name());
                    assertEquals(raise, pose.at(Joint.of(front, Part.BALL)).getZ(), 1e-9, c.name());
                    double toe = pose.at(Joint.of(front.other(), Part.TOE)).getX();
                    assertEquals(stance, pose.at(Joint.of(front, Part.HEEL)).getX() - toe, 1e-3, c.name());
                    double rearZ = pose.at(Joint.of(front.other(), laces ? Part.ANKLE : Part.BALL)).getZ();
                    assertEquals(rear + (laces ? 0.025 * c.problem().person().stature() : 0), rearZ, 1e-9, c.name());
                }
                if (c.problem().base() instanceof BaseOfSupport.Staggered(var ahead, var stance, var width, var foot, var wedge, var up)) {
                    assertEquals(stance, pose.at(Joint.of(ahead, Part.HEEL)).getX() - pose.at(Joint.of(ahead.other(), Part.TOE)).getX(),
                            c.problem().action() instanceof Action.Walk ? 0.02 : 1e-3, c.name());
                    assertEquals(wedge, pose.at(Joint.of(foot, Part.HEEL)).getZ() - pose.at(Joint.of(foot, Part.BALL)).getZ(),
                            up || c.problem().action() instanceof Action.Walk ? 1 : 1e-9, c.name());
                }
            }
        }
    }

    @Test
    void joint_limits_hold() {
        for (Case c : CASES) {
            for (Pose pose : c.poses()) {
                for (Side side : Side.values()) {
                    JointLimits limits = c.problem().limits().on(side);
                    Vector3D thigh = pose.at(Joint.of(side, Part.KNEE)).subtract(pose.at(Joint.of(side, Part.HIP)));
                    Vector3D shank = pose.at(Joint.of(side, Part.ANKLE)).subtract(pose.at(Joint.of(side, Part.KNEE)));
                    assertTrue(StrictMath.toDegrees(Vector3D.angle(thigh, shank)) < limits.kneeFlexion() + 0.1, c.name());
                    boolean flat = Math.abs(pose.at(Joint.of(side, Part.HEEL)).getZ() - pose.at(Joint.of(side, Part.BALL)).getZ()) < 1e-6;
                    if (flat && c.problem().base() instanceof BaseOfSupport.Split) {
                        assertTrue(StrictMath.toDegrees(StrictMath.atan2(-shank.getX(), -shank.getZ())) < limits.ankleDorsiflexion() + 0.1,
                                c.name());
                    }
                }
            }
        }
    }

    /** Forces on the body hold the weight of body and load at the mass centre: sum and moment vanish, every support pushes. */
    @Test
    void the_forces_hold_the_body() {
        for (Case c : CASES) {
            if (c.outcome() instanceof Solved(var solved)) {
                Vector3D centre = solved.mechanics().massCentreWorking();
                double weight = (c.problem().person().mass() + carried(c.problem().load())) * PointMass.GRAVITY;
                Vector3D sum = new Vector3D(0, 0, -weight);
                Vector3D moment = Vector3D.ZERO;
                for (SolvedPose.Force force : solved.mechanics().forces()) {
                    sum = sum.add(force.newton());
                    moment = moment.add(force.at().subtract(centre).crossProduct(force.newton()));
                    assertTrue(force.what().equals("cable") || force.newton().getZ() >= -1e-6, () -> c.name() + ": " + force);
                }
                assertEquals(0, sum.getNorm() / weight, 1e-6, c.name());
                assertEquals(0, moment.getNorm() / weight, 1e-6, c.name());
            }
        }
    }

    private static double carried(Load load) {
        return switch (load) {
            case Load.None none -> 0;
            case Load.InHand(var hand, var mass) -> mass;
            case Load.InEachHand(var mass) -> 2 * mass;
            case Load.InBothHands(var mass) -> mass;
            case Load.OnHips(var mass) -> mass;
            case Load.Cable cable -> 0;
            case Load.Band band -> 0;
        };
    }

    @Test
    void left_and_right_are_exact_mirror_images() {
        for (int i = 0; i < CASES.size(); i++) {
            Case c = CASES.get(i);
            PoseOutcome other = PoseSolver.solve(c.problem().mirrored()).mirrored();
            if (c.outcome() instanceof Solved(var here) && other instanceof Solved(var there)) {
                for (Joint joint : Joint.values()) {
                    assertEquals(0, here.start().at(joint).distance(there.start().at(joint)), 1e-9, c.name());
                    assertEquals(0, here.working().at(joint).distance(there.working().at(joint)), 1e-9, c.name());
                }
                assertEquals(here.mechanics().hipMoment(), there.mechanics().hipMoment(), 1e-9, c.name());
                assertEquals(here.mechanics().turnMoment(), there.mechanics().turnMoment(), 1e-9, c.name());
                assertEquals(here.props(), there.props(), c.name());
            } else {
                assertEquals(c.outcome(), other, c.name());
            }
        }
    }

    @Test
    void the_same_problem_gives_the_same_bits() {
        for (int i = 0; i < CASES.size(); i += 11) {
            assertEquals(CASES.get(i).outcome(), PoseSolver.solve(CASES.get(i).problem()), CASES.get(i).name());
        }
    }
}
