package contrapposto.prescribe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Specs;
import contrapposto.body.PoseOutcome;
import contrapposto.body.PoseProblem;
import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.Family;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.prescribe.Plan.SidePlan;
import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Side;
import contrapposto.quantity.UnitSystem;
import contrapposto.setup.SetUp;
import contrapposto.setup.SetUps;
import contrapposto.setup.SolvedSetUp;
import contrapposto.wording.Said;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Sets read as strength and strength written as sets, by hand: Epley's curve gives 10 repeats 75 %, 7 1 ÷ (1 + 7/30), 4 1 ÷ (1 + 4/30); a leg
 * on flat feet bears 168 + 3.7 N·m a kilogram ({@link LinearBody}), an arm its weight.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class GaugeTest {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);
    private static final List<CheckedSpec.Test> TESTS = List.of(Programs.test("split-squat", Optional.of(Side.LEFT), 14, 8, 2),
            Programs.test("supported-curl", Optional.of(Side.LEFT), 9, 8, 2));

    private static Plan plan(CheckedSpec spec, String... ids) {
        return Programs.PRESCRIBER.prescribe(Programs.selection(spec, List.of(ids)));
    }

    private static CheckedSpec tested() {
        return Specs.turned(Turned.SQUARE).tested(TESTS).lasting(8, 90).spec();
    }

    private static SidePlan left(Plan plan, String id) {
        return plan.exercises().stream().filter(e -> e.id().equals(id)).findFirst().orElseThrow().sides().on(Side.LEFT);
    }

    @Test
    void what_is_measured_and_what_counts_the_body_goes_by_the_group() {
        var gauge = Gauges.linear(plan(tested(), "split-squat"));
        for (var group : CapacityGroup.values()) {
            var family = Programs.CATALOGUE.families().stream().filter(f -> f.group() == group && f.base() != Family.BaseKind.SIDE_LYING).findFirst().orElseThrow();
            var side = Handmade.side(Handmade.setUps(family.id()).values().getFirst());
            assertEquals(!List.of(CapacityGroup.CALF, CapacityGroup.CARRY, CapacityGroup.NONE).contains(group), gauge.measures(side), group.name());
            assertEquals(List.of(CapacityGroup.KNEE_BEND, CapacityGroup.HINGE).contains(group), gauge.countsBody(side), group.name());
        }
        assertEquals(RepFormula.EPLEY, gauge.curve().formula());
    }

    @Test
    void the_set_of_the_test_shows_the_capacity_the_plan_was_written_for() {
        var plan = plan(tested(), "split-squat", "supported-curl", "staggered-deadlift");
        var gauge = Gauges.linear(plan);
        var squat = left(plan, "split-squat");
        assertEquals((168 + 3.7 * 14) / 0.75, gauge.capacity(squat).orElseThrow(), 1e-9);
        assertEquals(gauge.capacity(squat).orElseThrow(), gauge.shown(squat, 14, 10).orElseThrow(), 1e-9);
        assertEquals(168 / 0.75, gauge.shown(squat, 0, 10).orElseThrow(), 1e-9, "the body alone says something");
        var curl = left(plan, "supported-curl");
        assertEquals(12, gauge.capacity(curl).orElseThrow(), 1e-9);
        assertEquals(12, gauge.shown(curl, 9, 10).orElseThrow(), 1e-9);
        assertEquals(9, gauge.shown(curl, 9, 1).orElseThrow(), 1e-9, "once is the whole of it");
        assertEquals(OptionalDouble.empty(), gauge.shown(curl, 0, 10), "an arm that lifts nothing shows nothing");
        assertEquals(OptionalDouble.empty(), gauge.capacity(left(plan, "staggered-deadlift")), "no test");
    }

    @Test
    void a_load_that_no_pose_holds_shows_nothing() {
        var plan = plan(tested(), "split-squat");
        var stuck = new Gauge(plan, new Told(problem -> new PoseOutcome.Impossible(Said.of("none"), 1, "kg")));
        assertEquals(OptionalDouble.empty(), stuck.shown(left(plan, "split-squat"), 14, 10));
        assertTrue(stuck.asTest("split-squat", Optional.of(Side.LEFT), left(plan, "split-squat"), 300, 0.1, DAY).isEmpty());
    }

    private static Optional<CheckedSpec.Test> squatAs(double capacity) {
        var plan = plan(tested(), "split-squat");
        return Gauges.linear(plan).asTest("split-squat", Optional.of(Side.LEFT), left(plan, "split-squat"), capacity, 0.08, DAY);
    }

    private static void asked(double kilograms, int reps, int inReserve, Optional<CheckedSpec.Test> test) {
        assertEquals(kilograms, test.orElseThrow().load().kilograms(), 1e-9);
        assertEquals(List.of(reps, inReserve), List.of(test.get().reps(), test.get().inReserve()));
    }

    /** To 0.05 kg by the search, then down to a tenth: 14.07 kg is written as 14.0. */
    @Test
    void a_legs_capacity_is_written_as_eight_repeats_with_two_to_spare_rounded_down() {
        var test = squatAs((168 + 3.7 * 14.07) / 0.75);
        asked(14.0, 8, 2, test);
        assertEquals("split-squat", test.orElseThrow().exercise());
        assertEquals(Optional.of(Side.LEFT), test.get().side());
        assertEquals(DAY, test.get().date());
        assertEquals(OptionalDouble.of(0.08), test.get().error());
        assertEquals(SetUpWish.NONE, test.get().setup(), "as the side was tested before");
    }

    /** Where the body alone asks more than 75 %, a heavier set is written, and none where it asks more than all of it. */
    @Test
    void a_weaker_leg_is_written_as_the_first_set_that_asks_for_a_weight() {
        asked(1.0, 8, 2, squatAs((168 + 3.7 * 1.07) / 0.75));
        asked(1.0, 5, 2, squatAs((168 + 3.7 * 1.07) * (1 + 7 / 30.0)));
        asked(1.0, 3, 1, squatAs((168 + 3.7 * 1.07) * (1 + 4 / 30.0)));
        asked(1.0, 1, 0, squatAs(168 + 3.7 * 1.07));
        assertEquals(Optional.empty(), squatAs(168));
    }

    private static CheckedSpec american() {
        var s = tested();
        var c = s.client();
        return new CheckedSpec(s.fileName(), s.sha256(), s.title(), new CheckedSpec.Client(c.name(), c.code(), c.age(), c.sex(), c.height(), c.mass(), c.trainingYears(), c.language(),
                UnitSystem.US, c.body()), s.practice(), s.assessment(), s.screening(), s.clearance(), s.restrictions(), s.equipment(), s.schedule(), s.aims(), s.choices(), s.handout());
    }

    /** 75 % of 10.05 kg are 7.5375 kg, 16.617 lb (0.45359237 kg a pound): 7.5 kg, or 16.6 lb. */
    @Test
    void an_arms_capacity_is_written_in_the_clients_units() {
        var metric = plan(tested(), "supported-curl");
        asked(7.5, 8, 2, Gauges.linear(metric).asTest("supported-curl", Optional.of(Side.LEFT), left(metric, "supported-curl"), 10.05, 0.1, DAY));
        var american = plan(american(), "supported-curl");
        asked(16.6 * 0.45359237, 8, 2, Gauges.linear(american).asTest("supported-curl", Optional.of(Side.LEFT), left(american, "supported-curl"), 10.05, 0.1, DAY));
        asked(0.1, 3, 1, Gauges.linear(metric).asTest("supported-curl", Optional.of(Side.LEFT), left(metric, "supported-curl"), 0.12, 0.1, DAY));
    }

    /** Solves as told; tests on flat feet. */
    private record Told(java.util.function.Function<PoseProblem, PoseOutcome> solver) implements Bench {
        @Override
        public PoseOutcome solve(PoseProblem problem) {
            return solver.apply(problem);
        }

        @Override
        public PoseProblem asTested(SetUps setUps, Family family, Side side, SetUpWish wish, double load) {
            return SplitSquats.tested(side, load);
        }

        @Override
        public Optional<SolvedSetUp> resolve(SetUps setUps, SolvedSetUp chosen, double load) {
            return Optional.of(chosen);
        }
    }

    private static SetUpWish written(Plan plan, String id, Optional<Side> side, SetUp setUp) {
        var solved = left(plan, id).solved();
        var changed = new SolvedSetUp(solved.family(), solved.side(), solved.role(), setUp, solved.problem(), solved.pose(), solved.phase(), solved.muscles(),
                solved.otherSideMuscles(), solved.reasons(), solved.runnerUp(), solved.lacks(), solved.byCoach());
        return Gauges.linear(plan).asTest(id, side, Handmade.side(changed), 400, 0.1, DAY).orElseThrow().setup();
    }

    private static SetUp placed(double front, double rear, double wedge, double stance, Optional<Side> hand, boolean both) {
        return new SetUp(Optional.of(Side.LEFT), Optional.empty(), Optional.of(Side.LEFT), Length.ofMetres(front), Length.ofMetres(rear), Length.ZERO, Length.ofMetres(wedge),
                Optional.empty(), stance, 0.2, hand, both, false, false, SetUp.Support.NONE, Length.ZERO, Double.NaN, contrapposto.catalogue.Implement.DUMBBELL, 1);
    }

    private static SetUpWish wish(double front, double rear, double wedge, double stance, Optional<Side> hand, boolean both) {
        return new SetUpWish(raised(front), raised(rear), raised(wedge), raised(stance), hand, both, Optional.empty(), OptionalDouble.empty());
    }

    private static Optional<Length> raised(double metres) {
        return metres > 0 ? Optional.of(Length.ofMetres(metres)) : Optional.empty();
    }

    @Test
    void a_leg_that_was_never_tested_is_written_in_the_set_up_of_the_plan_to_the_centimetre() {
        var plan = plan(Specs.turned(Turned.SQUARE).lasting(8, 90).spec(), "split-squat", "supported-curl");
        var left = Optional.of(Side.LEFT);
        var right = Optional.of(Side.RIGHT);
        assertEquals(wish(0.15, 0, 0, 0.80, right, false), written(plan, "split-squat", left, placed(0.151, 0, 0, 0.804, right, false)));
        assertEquals(wish(0, 0.43, 0.03, 0, right, true), written(plan, "split-squat", left, placed(0, 0.43, 0.03, Double.NaN, right, true)));
        assertEquals(wish(0, 0, 0, 0, Optional.empty(), true), written(plan, "split-squat", left, placed(0, 0, 0, -0.1, Optional.empty(), false)), "no hand alone: both");
        assertEquals(Optional.of(Length.ofMetres(0)), written(plan, "split-squat", left, placed(0, 0, 0, 0, right, false)).stance(), "heel beside toe is a stance too");
        assertEquals(SetUpWish.NONE, written(plan, "split-squat", Optional.empty(), placed(0.15, 0, 0, 0.8, right, false)), "both legs together stand flat");
        assertEquals(SetUpWish.NONE, written(plan, "supported-curl", left, placed(0.15, 0, 0, 0.8, right, false)), "an arm is read in the plan's own");
    }

    @Test
    void how_that_side_of_that_exercise_was_tested_is_kept() {
        var own = wish(0.10, 0, 0, 0, Optional.empty(), true);
        var spec = Specs.turned(Turned.SQUARE).tested(List.of(new CheckedSpec.Test("step-up", Optional.of(Side.LEFT), Mass.ofKilograms(9), 8, 2, wish(0.3, 0, 0, 0, Optional.empty(), true), Specs.START),
                new CheckedSpec.Test("split-squat", Optional.of(Side.RIGHT), Mass.ofKilograms(9), 8, 2, wish(0.2, 0, 0, 0, Optional.empty(), true), Specs.START),
                new CheckedSpec.Test("split-squat", Optional.of(Side.LEFT), Mass.ofKilograms(9), 8, 2, own, Specs.START))).lasting(8, 90).spec();
        assertEquals(own, written(plan(spec, "split-squat"), "split-squat", Optional.of(Side.LEFT), placed(0.15, 0, 0, 0.8, Optional.empty(), false)));
        assertFalse(own.equals(SetUpWish.NONE));
    }
}
