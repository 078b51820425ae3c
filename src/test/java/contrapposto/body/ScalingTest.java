package contrapposto.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.body.PoseOutcome.Solved;
import contrapposto.quantity.Sex;
import contrapposto.quantity.Side;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Where only lengths change, a pose scales: the same body mass and loads, every length of the body, the base and the room k
 * times as long, and what a joint is thought to hold k times as much (moments are force times length). Similar figures: no source needed.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ScalingTest {
    private static final double STATURE = 1.6;
    private static final Person PERSON = Person.of(STATURE, 62, Sex.FEMALE);

    static PoseProblem scaled(PoseProblem p, double k) {
        Person person = new Person(k * p.person().stature(), p.person().mass(), p.person().sex(), scaled(p.person().segments(), k), p.person().table());
        var effort = new PoseProblem.Effort(k * p.effort().hip(), k * p.effort().knee(), p.effort().lean(), p.effort().leanScale());
        return new PoseProblem(person, p.working(), p.limits(), scaled(p.base(), k), scaled(p.action(), k), p.left(), p.right(), scaled(p.load(), k),
                p.hipShift(), p.handSupport(), p.pressure(), effort);
    }

    private static Segments scaled(Segments s, double k) {
        return new Segments(k * s.thigh(), k * s.shank(), k * s.ankleHeight(), k * s.foot(), k * s.heelToAnkle(), k * s.heelToBall(), k * s.trunk(),
                k * s.neckHead(), k * s.upperArm(), k * s.forearm(), k * s.hand(), k * s.hipSpacing(), k * s.shoulderSpacing());
    }

    private static BaseOfSupport scaled(BaseOfSupport base, double k) {
        return switch (base) {
            case BaseOfSupport.Split(var front, var stance, var width, var raise, var rear, var laces) ->
                    new BaseOfSupport.Split(front, k * stance, k * width, k * raise, k * rear, laces);
            case BaseOfSupport.Staggered(var ahead, var stance, var width, var foot, var wedge, var up) ->
                    new BaseOfSupport.Staggered(ahead, k * stance, k * width, foot, k * wedge, up);
            case BaseOfSupport.Level(var width, var raise) -> new BaseOfSupport.Level(k * width, k * raise);
            case BaseOfSupport.Step(var up, var box, var width) -> new BaseOfSupport.Step(up, k * box, k * width);
            case BaseOfSupport.OneLeg same -> same;
            case BaseOfSupport.HalfKneeling(var down, var width) -> new BaseOfSupport.HalfKneeling(down, k * width);
            case BaseOfSupport.TallKneeling(var width) -> new BaseOfSupport.TallKneeling(k * width);
            case BaseOfSupport.KneelingAtSupport(var height, var width) -> new BaseOfSupport.KneelingAtSupport(k * height, k * width);
            case BaseOfSupport.AllFours(var width) -> new BaseOfSupport.AllFours(k * width);
            case BaseOfSupport.Plank(var left, var right, var width, var knees) -> new BaseOfSupport.Plank(k * left, k * right, k * width, knees);
            case BaseOfSupport.Supine(var raise, var width) -> new BaseOfSupport.Supine(k * raise, k * width);
            case BaseOfSupport.SideLying same -> same;
            case BaseOfSupport.Seated(var height, var width) -> new BaseOfSupport.Seated(k * height, k * width);
        };
    }

    private static Action scaled(Action action, double k) {
        return switch (action) {
            case Action.KneeBend(var flexion, var clear) -> new Action.KneeBend(flexion, k * clear);
            case Action.Squeeze(var lift) -> new Action.Squeeze(k * lift);
            case Action same -> same;
        };
    }

    private static Load scaled(Load load, double k) {
        return switch (load) {
            case Load.Cable(var hand, var mass, var ratio, var height, var distance, var behind, var side) ->
                    new Load.Cable(hand, mass, ratio, k * height, k * distance, behind, k * side);
            case Load same -> same;
        };
    }

    /** Twice and half as long: not a bit differs, since nothing is rounded. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 2})
    void a_body_twice_as_long_in_a_room_twice_as_large_stands_the_same_to_the_last_bit(double k) {
        for (var named : Problems.all(PERSON, Side.LEFT)) {
            var one = solved(named.problem());
            var other = solved(scaled(named.problem(), k));
            assertEquals(0, apart(named.problem(), one, other, k), named.name());
            mechanics(named.name(), one.mechanics(), other.mechanics(), k, 1e-9);
        }
    }

    /** By other factors only rounding differs; a search that ends in a flat valley may end a step earlier for it. */
    @ParameterizedTest
    @ValueSource(doubles = {0.9, 1.25})
    void a_body_k_times_as_long_in_a_room_k_times_as_large_stands_the_same(double k) {
        for (var named : Problems.all(PERSON, Side.LEFT)) {
            var one = solved(named.problem());
            var other = solved(scaled(named.problem(), k));
            boolean folds = named.problem().action() instanceof Action.HipFold;
            assertTrue(apart(named.problem(), one, other, k) < (folds ? 1e-7 : 2e-8),
                    () -> named.name() + ": " + apart(named.problem(), one, other, k) + " m");
            mechanics(named.name(), one.mechanics(), other.mechanics(), k, 1e-4);
        }
    }

    private static SolvedPose solved(PoseProblem problem) {
        return ((Solved) PoseSolver.placed(problem)).pose();
    }

    private static double apart(PoseProblem problem, SolvedPose one, SolvedPose other, double k) {
        double worst = 0;
        for (Joint joint : Joint.values()) {
            if (!onPad(problem, joint)) {
                worst = Math.max(worst, Vector3D.distance(one.start().at(joint).scalarMultiply(k), other.start().at(joint)));
                worst = Math.max(worst, Vector3D.distance(one.working().at(joint).scalarMultiply(k), other.working().at(joint)));
            }
        }
        return worst;
    }

    /** A pad is 32 cm deep for everyone, so the hand that leans on its far edge does not scale. */
    private static boolean onPad(PoseProblem problem, Joint joint) {
        return problem.base() instanceof BaseOfSupport.KneelingAtSupport && List.of(Joint.RIGHT_ELBOW, Joint.RIGHT_WRIST, Joint.RIGHT_HAND).contains(joint);
    }

    /** Angles and shares are the same, moments k times as large. */
    private static void mechanics(String name, SolvedPose.Mechanics one, SolvedPose.Mechanics other, double k, double slack) {
        assertEquals(one.shinStart(), other.shinStart(), slack, name);
        assertEquals(one.shinWorking(), other.shinWorking(), slack, name);
        assertEquals(one.trunkLean(), other.trunkLean(), slack, name);
        assertEquals(one.kneeFlexion(), other.kneeFlexion(), slack, name);
        assertEquals(one.frontShare(), other.frontShare(), slack, name);
        assertEquals(one.leftShare(), other.leftShare(), slack, name);
        assertEquals(one.lineOfPull(), other.lineOfPull(), slack, name);
        if (!name.equals("supported curl")) {
            assertEquals(k * one.hipMoment(), other.hipMoment(), slack, name);
            assertEquals(k * one.kneeMoment(), other.kneeMoment(), slack, name);
            assertEquals(k * one.turnMoment(), other.turnMoment(), slack, name);
            assertEquals(k * one.sideMoment(), other.sideMoment(), slack, name);
        }
    }
}
