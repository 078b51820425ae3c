package contrapposto.prescribe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Reason.Source;
import contrapposto.assess.Specs;
import contrapposto.body.PoseOutcome;
import contrapposto.body.PoseProblem;
import contrapposto.body.SolvedPose;
import contrapposto.catalogue.Family;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.select.Selection;
import contrapposto.setup.SetUps;
import contrapposto.setup.SolvedSetUp;
import contrapposto.wording.Said;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Tests read as strength, by hand: 8 repeats with 2 to spare are 75 % (Epley, A1.1), so an arm's 1RM is 4/3 of the weight; a leg on flat feet
 * bears 168 + 3.7 N·m a kilogram ({@link LinearBody}).
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StrengthsTest {
    private static final SetUpWish WALL = new SetUpWish(Optional.of(Length.ofCentimetres(10)), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), false,
            Optional.empty(), OptionalDouble.empty());

    /** {@link LinearBody} with what a test asks changed: tests are held in both hands, set-ups of the plan in one or by a cable. */
    private record Tested(UnaryOperator<PoseOutcome> changed) implements Bench {
        @Override
        public PoseProblem asTested(SetUps setUps, Family family, Side side, SetUpWish wish, double load) {
            return SplitSquats.tested(side, load);
        }

        @Override
        public Optional<SolvedSetUp> resolve(SetUps setUps, SolvedSetUp chosen, double load) {
            return Optional.of(chosen);
        }

        @Override
        public PoseOutcome solve(PoseProblem problem) {
            return changed.apply(new LinearBody().solve(problem));
        }
    }

    private static final Bench LINEAR = new Tested(outcome -> outcome);

    private static Bench bearing(double hip, double knee, double arm) {
        return new Tested(outcome -> {
            var pose = ((PoseOutcome.Solved) outcome).pose();
            var m = pose.mechanics();
            return new PoseOutcome.Solved(new SolvedPose(pose.start(), pose.working(), new SolvedPose.Mechanics(0, 0, 0.5, 0.5, 0, 90, hip * m.hipMoment(), knee * m.kneeMoment(),
                    arm * m.shoulderMoment(), arm * m.elbowMoment(), 0, 0, 0.05, Double.NaN, Vector3D.ZERO, Vector3D.ZERO, List.of()), List.of()));
        });
    }

    private static CheckedSpec.Test test(String family, Optional<Side> side, double kg, SetUpWish wish, OptionalDouble error) {
        return new CheckedSpec.Test(family, side, Mass.ofKilograms(kg), 8, 2, wish, Specs.START, error);
    }

    private static CheckedSpec.Test left(String family, double kg) {
        return test(family, Optional.of(Side.LEFT), kg, SetUpWish.NONE, OptionalDouble.empty());
    }

    private static CheckedSpec.Test both(String family, double kg) {
        return test(family, Optional.empty(), kg, SetUpWish.NONE, OptionalDouble.empty());
    }

    private static Strengths strengths(Selection selection, Bench bench) {
        return new Strengths(selection.setUps(), new RepCurve(RepFormula.EPLEY, 10, 5), bench);
    }

    private static Optional<Strength> strength(Bench bench, CheckedSpec spec, String id) {
        var selection = Programs.selection(spec, List.of(id));
        var sides = selection.exercises().getFirst().sides();
        var solved = sides.on(Side.LEFT);
        return strengths(selection, bench).of(solved, new Demand(solved.problem(), bench::solve), sides instanceof Sided.Whole);
    }

    private static CheckedSpec tested(CheckedSpec.Test... tests) {
        return Specs.turned(Turned.SQUARE).tested(List.of(tests)).spec();
    }

    private static Strength known(Bench bench, String id, CheckedSpec.Test... tests) {
        return strength(bench, tested(tests), id).orElseThrow();
    }

    @Test
    void of_two_tests_the_mean_counts_and_of_three_the_middle_one() {
        var two = known(LINEAR, "supported-curl", left("supported-curl", 9), left("supported-curl", 6));
        assertEquals(10, two.oneRepMax(), 1e-9, "7.5 kg × 4/3");
        assertEquals(2, two.tests());
        assertEquals(8 * 4 / 3.0, known(LINEAR, "supported-curl", left("supported-curl", 9), left("supported-curl", 6), left("supported-curl", 8)).oneRepMax(), 1e-9);
        var legs = known(LINEAR, "split-squat", left("split-squat", 18), left("split-squat", 14));
        assertEquals((168 + 3.7 * 16) / 0.75, legs.together(), 1e-9);
        assertEquals(2, legs.tests());
        assertEquals(18, legs.mostToBegin(), "the heaviest that was lifted");
    }

    /** 10.6 to 13.5 % of the mean: Hutchins and Gearhart 2010 (A1.12), the upper end where a test names no error of its own. */
    @Test
    void the_error_is_the_published_one_or_the_tests_own() {
        assertEquals(0.135, known(LINEAR, "supported-curl", left("supported-curl", 9)).error());
        var own = test("supported-curl", Optional.of(Side.LEFT), 9, SetUpWish.NONE, OptionalDouble.of(0.065));
        assertEquals(0.10, known(LINEAR, "supported-curl", left("supported-curl", 9), own).error(), 1e-12);
        var leg = test("split-squat", Optional.of(Side.LEFT), 9, SetUpWish.NONE, OptionalDouble.of(0.065));
        assertEquals(0.065, known(LINEAR, "split-squat", leg).error());
    }

    @Test
    void an_arm_bears_its_joints_moment_at_the_estimated_maximum_and_begins_as_heavy_as_wanted() {
        var curl = known(LINEAR, "supported-curl", left("supported-curl", 9));
        assertEquals(BindingJoint.ELBOW, curl.joint());
        assertEquals(2.5 * 12, curl.moment(), 1e-9);
        assertEquals(curl.moment(), curl.together());
        assertEquals(0.5, curl.asking().share(6).orElseThrow(), 1e-12);
        assertEquals(Double.POSITIVE_INFINITY, curl.mostToBegin());
        var press = known(LINEAR, "high-to-low-press", left("high-to-low-press", 9));
        assertEquals(BindingJoint.SHOULDER, press.joint());
        assertEquals(3 * 12, press.moment(), 1e-9);
        var said = Terms.of(curl.reasons(), "one-rep-max").said();
        assertEquals(List.of(12.0, 0.135, 1.0), List.of(Terms.number(said, "load"), Terms.number(said, "error"), Terms.number(said, "tests")));
        assertEquals(30, Terms.number(said, "moment"), 1e-9);
        assertEquals(List.of("supported-curl", "elbow"), List.of(Terms.word(said, "exercise"), Terms.word(said, "joint")));
    }

    /** A test done with half the lever of the plan's set-up says half the weight; one whose lever is under 2 cm says nothing of levers. */
    @Test
    void an_arms_test_in_another_set_up_is_read_by_its_lever() {
        var elsewhere = test("supported-curl", Optional.of(Side.LEFT), 9, WALL, OptionalDouble.empty());
        assertEquals(12, known(LINEAR, "supported-curl", elsewhere).oneRepMax(), 1e-9, "the same lever");
        assertEquals(6, known(bearing(1, 1, 0.5), "supported-curl", elsewhere).oneRepMax(), 1e-9);
        assertEquals(12, known(bearing(1, 1, 0.5), "supported-curl", left("supported-curl", 9)).oneRepMax(), 1e-9, "no set-up named: done in the plan's");
        assertEquals(12 * 0.08, known(bearing(1, 1, 0.08), "supported-curl", elsewhere).oneRepMax(), 1e-9, "2.5 × 8 % of a kilogram's 9.81 N: 2.04 cm");
        assertEquals(12, known(bearing(1, 1, 0.07), "supported-curl", elsewhere).oneRepMax(), 1e-9, "1.8 cm");
        assertEquals(12, known(new Tested(outcome -> new PoseOutcome.Impossible(Said.of("none"), 1, "kg")), "supported-curl", elsewhere).oneRepMax(), 1e-9, "no pose");
    }

    @Test
    void a_leg_is_named_by_the_joint_that_binds_and_loaded_by_what_both_bear() {
        var squat = known(LINEAR, "split-squat", left("split-squat", 14));
        double together = (168 + 3.7 * 14) / 0.75;
        assertEquals(BindingJoint.HIP, squat.joint());
        assertEquals(together, squat.together(), 1e-9);
        assertEquals((together - 168) / 3.7, squat.oneRepMax(), 0.05);
        assertEquals(110 + 2.3 * squat.oneRepMax(), squat.moment(), 1e-9);
        assertEquals(0.75, squat.asking().share(14).orElseThrow(), 1e-9);
        assertEquals(BindingJoint.KNEE, known(bearing(0.5, 1, 1), "split-squat", left("split-squat", 14)).joint());
        assertEquals(List.of("one-rep-max"), Terms.rules(squat.reasons()));
    }

    /** Hip and knee that bear the same under every load: the curve alone says 14 × 4/3. */
    @Test
    void where_no_load_asks_the_whole_capacity_the_curve_reads_the_maximum() {
        Bench flat = new Tested(outcome -> {
            var pose = ((PoseOutcome.Solved) outcome).pose();
            return new PoseOutcome.Solved(new SolvedPose(pose.start(), pose.working(), new SolvedPose.Mechanics(0, 0, 0.5, 0.5, 0, 90, 100, 60, 0, 0, 0, 0, 0.05, Double.NaN,
                    Vector3D.ZERO, Vector3D.ZERO, List.of()), List.of()));
        });
        var squat = known(flat, "split-squat", left("split-squat", 14));
        assertEquals(14 * 4 / 3.0, squat.oneRepMax(), 1e-9);
        assertEquals(160 / 0.75, squat.together(), 1e-9);
    }

    @Test
    void a_test_without_a_pose_or_that_asks_nothing_of_the_legs_says_nothing() {
        var spec = tested(left("split-squat", 14));
        assertTrue(strength(new Tested(outcome -> new PoseOutcome.Impossible(Said.of("none"), 1, "kg")), spec, "split-squat").isEmpty());
        assertTrue(strength(bearing(-1, -1, 1), spec, "split-squat").isEmpty());
    }

    @Test
    void a_familys_own_test_comes_before_another_of_its_group_and_only_the_other_is_named() {
        var own = known(LINEAR, "step-up", left("split-squat", 20), left("step-up", 10));
        assertEquals((168 + 3.7 * 10) / 0.75, own.together(), 1e-9);
        assertEquals(List.of("one-rep-max"), Terms.rules(own.reasons()));
        var other = known(LINEAR, "step-up", left("split-squat", 20));
        assertEquals((168 + 3.7 * 20) / 0.75, other.together(), 1e-9);
        assertEquals(List.of("one-rep-max", "capacity-transfer"), Terms.rules(other.reasons()));
        var said = other.reasons().getLast().said();
        assertEquals(List.of("step-up", "split-squat"), List.of(Terms.word(said, "exercise"), Terms.word(said, "tested")));
    }

    /** Carries and calf work are not measured in kilograms of capacity: house. */
    @Test
    void some_groups_have_no_capacity_whatever_was_tested() {
        assertTrue(strength(LINEAR, tested(left("suitcase-carry", 14)), "suitcase-carry").isEmpty());
        assertTrue(strength(LINEAR, tested(left("raised-hand-push-up", 14)), "raised-hand-push-up").isEmpty());
    }

    private static CheckedSpec indexed(double index, CheckedSpec.Test... tests) {
        var spec = tested(tests);
        var a = spec.assessment();
        return new CheckedSpec(spec.fileName(), spec.sha256(), spec.title(), spec.client(), spec.practice(), new CheckedSpec.Assessment(a.date(), a.turned(), a.degree(),
                a.weightHabit(), a.lowShoulder(), a.measures(), a.tests(), OptionalDouble.of(index)), spec.screening(), spec.clearance(), spec.restrictions(), spec.equipment(),
                spec.schedule(), spec.aims(), spec.choices(), spec.handout());
    }

    /** B4.10: at −20 both together bear 80 % of what the legs bear one by one, so one bears 1 ÷ 0.8 of its half, which the pose of both has. */
    @Test
    void a_test_of_both_legs_gives_one_leg_its_part_and_half_of_the_weight_to_begin_with() {
        var one = strength(LINEAR, indexed(-20, both("goblet-squat", 20), both("goblet-squat", 24)), "split-squat").orElseThrow();
        assertEquals((168 + 3.7 * 22) / 0.75 / 0.8, one.together(), 1e-9);
        assertEquals(12, one.mostToBegin());
        assertEquals(List.of("one-rep-max", "bilateral-index"), Terms.rules(one.reasons()), "and no word of a transfer");
        assertEquals(Source.COACH, one.reasons().getLast().source());
        assertEquals(-20, Terms.number(one.reasons().getLast().said(), "index"));
        var whole = strength(LINEAR, indexed(0, both("goblet-squat", 20)), "goblet-squat").orElseThrow();
        var split = strength(LINEAR, indexed(-20, both("goblet-squat", 20)), "split-squat").orElseThrow();
        assertEquals(whole.moment() / 0.8, split.moment(), 1e-9);
        assertEquals(whole.oneRepMax(), split.oneRepMax(), 1e-9);
    }

    @Test
    void the_index_splits_no_test_of_another_group_and_none_for_level_feet() {
        assertTrue(strength(LINEAR, indexed(-20, both("goblet-squat", 20)), "staggered-deadlift").isEmpty());
        var level = Programs.CATALOGUE.families().stream().filter(f -> f.sides() == Family.Sides.BOTH && f.group() == contrapposto.catalogue.CapacityGroup.HINGE
                && f.base() == Family.BaseKind.LEVEL).findFirst().orElseThrow().id();
        assertTrue(strength(LINEAR, indexed(-20, both(level, 20)), "suitcase-deadlift").isEmpty());
        assertTrue(strength(LINEAR, indexed(-20, both(level, 20)), "staggered-deadlift").isPresent());
        assertTrue(strength(LINEAR, indexed(-20, both("goblet-squat", 20)), "goblet-squat").orElseThrow().reasons().stream().noneMatch(r -> r.rule().equals("bilateral-index")));
        var posed = new Tested(outcome -> new PoseOutcome.Impossible(Said.of("none"), 1, "kg"));
        assertTrue(strength(posed, indexed(-20, both("goblet-squat", 20)), "split-squat").isEmpty(), "without a pose");
    }

    /** Ten repetitions, those to spare included, and five to spare are the published ends: Reynolds et al. 2006 (A1.10), Hackett et al. 2017 (A7.3). */
    @Test
    void tests_beyond_the_published_ends_are_named_with_their_numbers_in_file_order() {
        var spec = Specs.turned(Turned.SQUARE).tested(List.of(Programs.test("split-squat", Optional.of(Side.LEFT), 10, 9, 2), left("split-squat", 10),
                Programs.test("goblet-squat", Optional.empty(), 10, 4, 6))).spec();
        var refused = strengths(Programs.selection(spec, List.of("split-squat")), LINEAR).refused();
        assertEquals(List.of("split-squat", "goblet-squat"), refused.stream().map(reason -> Terms.word(reason.said(), "exercise")).toList());
        assertEquals(Arrays.asList(9.0, 2.0, 10.0, 5.0), List.of("reps", "reserve", "most-reps", "most-reserve").stream().map(name -> Terms.number(refused.getFirst().said(), name)).toList());
        assertEquals(List.of("left", "none"), refused.stream().map(reason -> Terms.word(reason.said(), "side")).toList());
    }
}
