package contrapposto.illustrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.body.Action;
import contrapposto.body.ArmTask;
import contrapposto.body.BaseOfSupport;
import contrapposto.body.Joint;
import contrapposto.body.Joint.Part;
import contrapposto.body.Pose;
import contrapposto.body.Prop;
import contrapposto.body.SolvedPose;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Side;
import contrapposto.setup.SolvedSetUp;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What someone who sets an exercise up from its card relies on, for every family, both turns of the pelvis and both sides:
 * the leg the words name carries, what the words lean on is there, nothing floats, and a movement ends elsewhere than it began.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PoseLawsTest {
    /** A hand that leans on something is this near to it: the thickness of a palm and of what gives, share of stature. */
    private static final double TOUCH = 0.03;

    private static void all(double stature, Consumer<SolvedSetUp> law) {
        for (Turned turned : List.of(Turned.RIGHT, Turned.LEFT, Turned.SQUARE)) {
            SolvedCards.of(stature, turned).values().forEach(sides -> sides.values().forEach(law));
        }
    }

    /** No family of the house is without a card for either body, whichever way the pelvis is turned. */
    @ParameterizedTest
    @ValueSource(doubles = {1.52, 1.95})
    void every_family_has_a_pose(double stature) {
        Set<String> solved = new TreeSet<>(SolvedCards.of(stature, Turned.RIGHT).keySet());
        solved.addAll(SolvedCards.of(stature, Turned.LEFT).keySet());
        Set<String> families = new TreeSet<>();
        for (Stage stage : Stage.values()) {
            SolvedCards.families(stage).forEach(family -> families.add(family.id()));
        }
        assertEquals(families, solved);
    }

    private static String name(SolvedSetUp one) {
        return one.family().id() + " " + one.side().word() + " " + one.problem().person().stature();
    }

    private static double share(SolvedSetUp one, Side side) {
        double left = one.pose().mechanics().leftShare();
        return side == Side.LEFT ? left : 1 - left;
    }

    /** Half or more on the working leg of two that do not stand level, four fifths where the other foot only stands on its ball; common practice, no source (D3.18: 70 to 90 %). */
    @ParameterizedTest
    @ValueSource(doubles = {1.52, 1.95})
    void the_working_leg_carries_the_larger_share_in_the_working_position(double stature) {
        int[] seen = {0};
        all(stature, one -> one.setUp().workingLeg().ifPresent(leg -> {
            if (!Double.isNaN(one.pose().mechanics().leftShare()) && !(one.problem().action() instanceof Action.Shift(var to, var lean, var away) && away)
                    && !(one.problem().action() instanceof Action.Walk) && !(one.problem().base() instanceof BaseOfSupport.Level)) {
                boolean kickstand = one.problem().base() instanceof BaseOfSupport.Staggered base && base.rearHeelUp();
                assertTrue(share(one, leg) > (kickstand ? 0.795 : 0.495), () -> name(one) + " " + share(one, leg));
                seen[0]++;
            }
        }));
        assertTrue(seen[0] > 60, seen[0] + " seen");
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.52, 1.95})
    void a_shift_of_the_hips_moves_the_weight_onto_the_foot_its_words_name(double stature) {
        int[] seen = {0};
        all(stature, one -> {
            if (one.problem().action() instanceof Action.Shift(var to, var lean, var away)) {
                Side onto = away ? one.side().other() : one.side();
                assertTrue(share(one, onto) > to - 0.005, () -> name(one) + " " + share(one, onto));
                seen[0]++;
            }
        });
        assertTrue(seen[0] >= 5, seen[0] + " seen");
    }

    /** A palm on floor, box or bench, a hand on a wall or rail, an elbow on a pad or a hand on the thigh lies on it in every position that is drawn. */
    @ParameterizedTest
    @ValueSource(doubles = {1.52, 1.95})
    void what_a_hand_leans_on_is_there(double stature) {
        int[] seen = {0};
        all(stature, one -> {
            for (Side side : Side.values()) {
                ArmTask task = one.problem().arm(side);
                for (Pose pose : List.of(one.pose().start(), one.pose().working(), one.pose().end())) {
                    double off = switch (task) {
                        case ArmTask.OnSupport support -> fromSupport(pose, side, one.pose(), stature);
                        case ArmTask.Planted planted -> fromBelow(pose, side, one.pose(), stature);
                        case ArmTask.StepsAhead steps -> fromBelow(pose, side, one.pose(), stature);
                        case ArmTask.Rest rest when leans(pose) -> fromThigh(pose, side, stature);
                        case ArmTask other -> 0;
                    };
                    seen[0] += off == 0 ? 0 : 1;
                    assertTrue(off < TOUCH * stature, () -> name(one) + " " + task + ": " + off + " m off");
                }
            }
        });
        assertTrue(seen[0] > 100, seen[0] + " seen");
    }

    private static boolean leans(Pose pose) {
        Vector3D spine = pose.at(Joint.NECK).subtract(pose.at(Joint.PELVIS));
        return spine.getZ() < 0.88 * spine.getNorm();
    }

    private static double fromSupport(Pose pose, Side side, SolvedPose solved, double stature) {
        Vector3D wrist = pose.at(Joint.of(side, Part.WRIST));
        double nearest = Double.POSITIVE_INFINITY;
        for (Prop prop : solved.props()) {
            nearest = Math.min(nearest, switch (prop) {
                case Prop.Wall wall -> Math.abs(wall.x() - wrist.getX());
                case Prop.Rail(var from, var to) -> Math.hypot(from.getX() - wrist.getX() - 0.05 * stature, from.getZ() - wrist.getZ()) ;
                case Prop other -> Double.POSITIVE_INFINITY;
            });
        }
        return nearest;
    }

    /** The wrist over the highest thing below it, less a palm's height. */
    private static double fromBelow(Pose pose, Side side, SolvedPose solved, double stature) {
        Vector3D wrist = pose.at(Joint.of(side, Part.WRIST));
        double top = 0;
        for (Prop prop : solved.props()) {
            top = Math.max(top, switch (prop) {
                case Prop.Box(var low, var high) when over(wrist, low, high) -> high.getZ();
                case Prop.Bench(var low, var high) when over(wrist, low, high) -> high.getZ();
                case Prop other -> 0;
            });
        }
        return Math.abs(wrist.getZ() - top);
    }

    private static boolean over(Vector3D p, Vector3D low, Vector3D high) {
        return p.getX() > low.getX() - 1e-9 && p.getX() < high.getX() + 1e-9 && p.getY() > low.getY() - 1e-9 && p.getY() < high.getY() + 1e-9;
    }

    /** From the front of the thigh, which is about as thick as 0.045 of stature. */
    private static double fromThigh(Pose pose, Side side, double stature) {
        Vector3D hip = pose.at(Joint.of(side, Part.HIP));
        Vector3D thigh = pose.at(Joint.of(side, Part.KNEE)).subtract(hip);
        Vector3D wrist = pose.at(Joint.of(side, Part.WRIST)).subtract(hip);
        double along = Math.clamp(wrist.dotProduct(thigh) / thigh.getNormSq(), 0, 1);
        return Math.abs(wrist.subtract(thigh.scalarMultiply(along)).getNorm() - 0.045 * stature);
    }

    /** A step up ends tall: the knee that lifted the body is nearly straight, the body as high as it gets, the other foot clear of the box. */
    @ParameterizedTest
    @ValueSource(doubles = {1.52, 1.95})
    void a_step_up_ends_tall_on_the_box(double stature) {
        int[] seen = {0};
        all(stature, one -> {
            if (one.problem().action() instanceof Action.StepUp && one.problem().base() instanceof BaseOfSupport.Step(var up, var box, var width)) {
                Pose end = one.pose().end();
                assertTrue(knee(end, up) < 20, () -> name(one) + " knee " + knee(end, up));
                assertTrue(end.at(Joint.HEAD_TOP).getZ() > one.pose().working().at(Joint.HEAD_TOP).getZ() + 0.01, () -> name(one));
                assertTrue(end.at(Joint.of(up.other(), Part.TOE)).getZ() > box, () -> name(one));
                assertTrue(one.pose().working().at(Joint.of(up.other(), Part.TOE)).getZ() < 0.05 * stature + 0.5 * box, () -> name(one));
                seen[0]++;
            } else {
                assertEquals(one.pose().working(), one.pose().end(), () -> name(one));
            }
        });
        assertTrue(seen[0] >= 12, seen[0] + " seen");
    }

    private static double knee(Pose pose, Side side) {
        Vector3D thigh = pose.at(Joint.of(side, Part.KNEE)).subtract(pose.at(Joint.of(side, Part.HIP)));
        Vector3D shank = pose.at(Joint.of(side, Part.ANKLE)).subtract(pose.at(Joint.of(side, Part.KNEE)));
        return StrictMath.toDegrees(Vector3D.angle(thigh, shank));
    }

    /** Something moves by 3 % of stature or more, but where knees press together, and in a walk that is drawn in mid-stride. */
    @ParameterizedTest
    @ValueSource(doubles = {1.52, 1.95})
    void start_and_end_differ_visibly(double stature) {
        all(stature, one -> {
            if (!(one.problem().action() instanceof Action.Squeeze(var lift) && lift == 0)) {
                double most = 0;
                for (Joint joint : Joint.values()) {
                    most = Math.max(most, Vector3D.distance(one.pose().start().at(joint), one.pose().end().at(joint)));
                }
                double moved = most;
                assertTrue(moved > 0.03 * stature, () -> name(one) + " " + moved);
            }
        });
    }

    /**
     * No forearm passes through the trunk: a row of balls along the spine, a little thinner than the waist and the chest are deep
     * (drawing study: half depth 0.06 to 0.07 of stature), leaves room for arms that lie against the sides or the breastbone.
     */
    @ParameterizedTest
    @ValueSource(doubles = {1.52, 1.95})
    void no_forearm_passes_through_the_trunk(double stature) {
        all(stature, one -> {
            for (Pose pose : List.of(one.pose().start(), one.pose().working(), one.pose().end())) {
                for (Side side : Side.values()) {
                    for (double s = 0.15; s < 0.95; s += 0.1) {
                        Vector3D core = between(pose.at(Joint.PELVIS), pose.at(Joint.NECK), s);
                        for (double t = 0; t <= 1.01; t += 0.1) {
                            Vector3D arm = between(pose.at(Joint.of(side, Part.ELBOW)), pose.at(Joint.of(side, Part.WRIST)), t);
                            double apart = Vector3D.distance(core, arm);
                            assertTrue(apart > (0.055 + 0.012) * stature, () -> name(one) + " " + apart / stature + " of stature from the spine");
                        }
                    }
                }
            }
        });
    }

    private static Vector3D between(Vector3D from, Vector3D to, double t) {
        return from.scalarMultiply(1 - t).add(to.scalarMultiply(t));
    }

    /** Whoever stands on feet alone has the mass centre over the block between heels and toes; a body that leans beyond it has a force that holds it. */
    @ParameterizedTest
    @ValueSource(doubles = {1.52, 1.95})
    void who_leans_beyond_the_feet_is_held_by_something(double stature) {
        all(stature, one -> {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            boolean feet = one.pose().mechanics().forces().stream().allMatch(force -> force.what().endsWith("-foot"));
            for (var force : one.pose().mechanics().forces()) {
                if (force.what().endsWith("-foot")) {
                    Side side = force.what().startsWith("left") ? Side.LEFT : Side.RIGHT;
                    low = Math.min(low, one.pose().working().at(Joint.of(side, Part.HEEL)).getX());
                    high = Math.max(high, one.pose().working().at(Joint.of(side, Part.TOE)).getX());
                }
            }
            double x = one.pose().mechanics().massCentreWorking().getX();
            double from = low;
            double to = high;
            assertTrue(!feet || x > from && x < to, () -> name(one) + " " + from + " " + x + " " + to);
        });
    }
}
