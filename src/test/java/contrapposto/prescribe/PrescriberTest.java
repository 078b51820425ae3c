package contrapposto.prescribe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Specs;
import contrapposto.check.CheckedSpec.Aim;
import contrapposto.check.CheckedSpec.Restriction;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.prescribe.Plan.Dose;
import contrapposto.prescribe.Plan.Exercise;
import contrapposto.prescribe.Plan.SidePlan;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PrescriberTest {
    private static Specs tested() {
        var tests = new ArrayList<>(Programs.squatTests(14, 18));
        tests.add(Programs.test("high-to-low-press", Optional.of(Side.RIGHT), 15, 8, 2));
        tests.add(Programs.test("supported-curl", Optional.of(Side.LEFT), 8, 8, 2));
        return Specs.turned(Turned.RIGHT).tested(tests).lasting(8, 90);
    }

    private static Exercise exercise(Plan plan, String id) {
        return plan.exercises().stream().filter(e -> e.id().equals(id)).findFirst().orElseThrow();
    }

    private static SidePlan side(Plan plan, String id, Side side) {
        return exercise(plan, id).sides().on(side);
    }

    private static Stream<Dose> doses(Plan plan) {
        return plan.exercises().stream().flatMap(e -> e.sides().values().stream()).flatMap(s -> s.doses().stream());
    }

    @Test
    void every_exercise_has_a_dose_for_every_side_and_week() {
        var plan = Programs.plan(tested());
        assertEquals(7, plan.exercises().size());
        for (var exercise : plan.exercises()) {
            for (var side : exercise.sides().values()) {
                assertEquals(List.of(1, 2, 3, 4, 5, 6, 7, 8), side.doses().stream().map(Dose::week).toList());
            }
        }
    }

    /** The worked case by hand: both hands 14 kg × 8 with 2 left is 75 % (Epley, 10 reps); see LinearBody for the moments. */
    @Test
    void the_first_load_asks_the_low_end_of_the_band_and_rounds_down() {
        var left = side(Programs.plan(tested()), "split-squat", Side.LEFT);
        double support = 110 + 2.3 * 14 + 58 + 1.4 * 14;
        double wanted = 0.68 * support / 0.75;
        double exact = left.capacity().orElseThrow().exactLoad();
        assertEquals(wanted, 1.15 * (110 + 2.3 * exact) + 0.7 * (58 + 1.4 * exact), 0.1);
        double hipAllowed = (0.76 * left.capacity().orElseThrow().moment() / 1.15 - 110) / 2.3;
        assertEquals(2 * StrictMath.floor(Math.min(exact, hipAllowed) / 2), left.doses().getFirst().load().orElseThrow(), 1e-9);
        assertEquals("hip", left.capacity().orElseThrow().joint());
        assertEquals(wanted / 0.68, left.capacity().orElseThrow().moment()
                + 58 + 1.4 * left.capacity().orElseThrow().oneRepMax(), 0.2);
    }

    @Test
    void where_no_test_counts_there_are_no_kilograms() {
        var plan = Programs.plan(Specs.turned(Turned.RIGHT).lasting(8, 90));
        assertTrue(doses(plan).allMatch(dose -> dose.load().isEmpty() && dose.share().isEmpty()));
        assertTrue(side(plan, "split-squat", Side.LEFT).doses().stream().allMatch(Dose::byEffort));
        assertFalse(side(plan, "raised-hand-push-up", Side.LEFT).doses().getFirst().byEffort());
    }

    @Test
    void a_capacity_stays_in_its_group_on_its_side_and_with_its_number_of_legs() {
        var plan = Programs.plan(tested());
        assertTrue(side(plan, "staggered-deadlift", Side.LEFT).capacity().isEmpty(), "a squat says nothing about a hinge");
        assertTrue(exercise(plan, "goblet-squat").sides().values().getFirst().capacity().isEmpty(), "one leg is not both");
        assertTrue(side(plan, "high-to-low-press", Side.RIGHT).capacity().isPresent());
        assertTrue(side(plan, "high-to-low-press", Side.LEFT).capacity().isEmpty(), "right is not left");
        var both = Programs.plan(Specs.turned(Turned.RIGHT).lasting(8, 90)
                .tested(List.of(Programs.test("goblet-squat", Optional.empty(), 20, 8, 2))));
        assertTrue(exercise(both, "goblet-squat").sides().values().getFirst().capacity().isPresent());
        assertTrue(side(both, "split-squat", Side.LEFT).capacity().isEmpty(), "both legs together are not split");
    }

    @Test
    void a_tested_family_serves_another_of_its_group_and_says_so() {
        var selection = Programs.selection(tested(), List.of("step-up"));
        var left = Programs.PRESCRIBER.prescribe(selection).exercises().getFirst().sides().on(Side.LEFT);
        assertTrue(left.capacity().isPresent());
        assertTrue(left.reasons().stream().anyMatch(r -> r.rule().equals("capacity-transfer")));
    }

    /** House: the first week is no heavier than what was lifted in a test, in this exercise or the one that stands in for it. */
    @Test
    void no_first_load_is_heavier_than_the_test() {
        var flat = Programs.selection(Specs.turned(Turned.SQUARE).trained(8).aiming(Aim.STRENGTH)
                .tested(Programs.squatTests(6, 20)), List.of("split-squat", "step-up"));
        var plan = Programs.PRESCRIBER.prescribe(flat);
        assertTrue(side(plan, "step-up", Side.LEFT).doses().getFirst().load().orElse(0) <= 6);
        assertEquals(6, side(plan, "split-squat", Side.LEFT).doses().getFirst().load().orElse(0), 1e-9);
        assertTrue(side(plan, "step-up", Side.RIGHT).doses().getFirst().load().orElseThrow() <= 20);
    }

    @Test
    void a_lift_on_level_feet_takes_no_capacity_from_one_leg() {
        var tests = List.of(Programs.test("staggered-deadlift", Optional.of(Side.LEFT), 20, 8, 2));
        var plan = Programs.PRESCRIBER.prescribe(Programs.selection(tested().tested(tests), List.of("suitcase-deadlift")));
        assertTrue(plan.exercises().getFirst().sides().on(Side.LEFT).capacity().isEmpty());
    }

    @Test
    void the_share_of_side_specific_sets_comes_down_to_what_the_stage_wants() {
        var plan = Programs.plan(tested());
        double specific = side(plan, "split-squat", Side.LEFT).doses().get(1).sets()
                + side(plan, "staggered-deadlift", Side.LEFT).doses().get(1).sets();
        double same = exercise(plan, "goblet-squat").sides().values().getFirst().doses().get(1).sets();
        double wanted = Programs.CATALOGUE.rules().sideSpecific().get(contrapposto.catalogue.Stage.STANDING);
        assertTrue(specific / (specific + same) <= wanted + 1e-9);
        assertTrue(plan.reasons().stream().anyMatch(r -> r.rule().equals("side-specific")));
    }

    /** Ten repetitions and five in reserve are the published ends: Reynolds et al. 2006; Hackett et al. 2017. */
    @Test
    void a_test_that_says_too_little_is_not_used_and_is_named() {
        var plan = Programs.plan(Specs.turned(Turned.RIGHT).tested(List.of(
                Programs.test("split-squat", Optional.of(Side.LEFT), 10, 12, 0),
                Programs.test("split-squat", Optional.of(Side.RIGHT), 10, 4, 6))));
        assertTrue(side(plan, "split-squat", Side.LEFT).capacity().isEmpty());
        assertEquals(2, plan.reasons().stream().filter(r -> r.rule().equals("test-not-used")).count());
    }

    @Test
    void of_three_tests_one_outlier_is_not_followed() {
        var usual = List.of(Programs.test("supported-curl", Optional.of(Side.LEFT), 8, 8, 2),
                Programs.test("supported-curl", Optional.of(Side.LEFT), 8, 7, 2));
        var outlier = new ArrayList<>(usual);
        outlier.add(Programs.test("supported-curl", Optional.of(Side.LEFT), 24, 8, 2));
        double without = side(Programs.plan(tested().tested(usual)), "supported-curl", Side.LEFT).capacity().orElseThrow().oneRepMax();
        double with = side(Programs.plan(tested().tested(outlier)), "supported-curl", Side.LEFT).capacity().orElseThrow().oneRepMax();
        assertEquals(8 * (1 + 10.0 / 30), with, 1e-9);
        assertTrue(with / without < 1.05);
    }

    /** The bound of docs/way-back.md for several tests in one spec: of three, one moves the estimate no farther than its neighbours among the others. */
    @Test
    void of_three_tests_none_takes_the_estimate_beyond_the_other_two() {
        var chance = new java.util.Random(5);
        for (int i = 0; i < 50; i++) {
            double one = 6 + 2 * chance.nextInt(6);
            double two = 6 + 2 * chance.nextInt(6);
            double noisy = one * StrictMath.exp(4 * chance.nextGaussian());
            var tests = Stream.of(one, noisy, two).map(kg -> Programs.test("supported-curl", Optional.of(Side.LEFT), Math.clamp(kg, 1, 200), 8, 2)).toList();
            double max = Programs.PRESCRIBER.prescribe(Programs.selection(tested().tested(tests), List.of("supported-curl"))).exercises().getFirst().sides()
                    .on(Side.LEFT).capacity().orElseThrow().oneRepMax();
            double low = Math.min(one, two) * (1 + 10.0 / 30);
            double high = Math.max(one, two) * (1 + 10.0 / 30);
            assertTrue(max >= low - 1e-9 && max <= high + 1e-9, max + " outside " + low + " to " + high);
        }
    }

    /** A rise from 6 to 8 kg is 33 %, far over the published 2 to 10 %: an arm adds repeats. A leg counts its body too. */
    @Test
    void a_step_that_is_too_far_up_is_bridged_by_repeats() {
        var curl = side(Programs.plan(tested()), "supported-curl", Side.LEFT);
        double first = curl.doses().getFirst().load().orElseThrow();
        assertTrue(curl.doses().stream().noneMatch(dose -> dose.load().orElse(0) > first));
        assertTrue(curl.doses().get(6).reps() > curl.doses().getFirst().reps());
        var squat = side(Programs.plan(tested()), "split-squat", Side.RIGHT);
        assertTrue(squat.doses().stream().anyMatch(Dose::heavier));
    }

    @Test
    void an_easy_week_has_fewer_sets_no_heavier_weight_and_more_to_spare() {
        var doses = side(Programs.plan(tested()), "split-squat", Side.RIGHT).doses();
        assertTrue(doses.get(3).sets() < doses.get(2).sets());
        assertTrue(doses.get(3).load().orElse(0) < doses.get(2).load().orElseThrow());
        assertTrue(doses.get(3).inReserve() >= 4);
    }

    @Test
    void newcomers_work_at_a_higher_share_than_long_trained_lifters_while_movement_is_the_goal() {
        double newcomer = side(Programs.plan(tested()), "split-squat", Side.RIGHT).doses().getFirst().share().orElseThrow();
        double veteran = side(Programs.plan(tested().trained(8)), "split-squat", Side.RIGHT).doses().getFirst().share().orElseThrow();
        double strong = side(Programs.plan(tested().trained(8).aiming(Aim.STRENGTH)), "split-squat", Side.RIGHT).doses().getFirst()
                .share().orElseThrow();
        assertTrue(newcomer > veteran);
        assertTrue(strong > newcomer);
    }

    @ParameterizedTest
    @CsvSource({"12, 14", "14, 16", "10, 20", "16, 24"})
    void a_stronger_test_never_gives_a_lighter_load_or_fewer_repeats_for_it(double weaker, double stronger) {
        var before = side(Programs.plan(tested().tested(Programs.squatTests(weaker, weaker))), "split-squat", Side.RIGHT).doses();
        var after = side(Programs.plan(tested().tested(Programs.squatTests(stronger, stronger))), "split-squat", Side.RIGHT).doses();
        for (int week = 0; week < 8; week++) {
            double load = before.get(week).load().orElse(0);
            assertTrue(after.get(week).load().orElse(0) >= load, "week " + (week + 1));
        }
    }

    @Test
    void one_more_repeat_in_a_test_never_gives_a_lighter_first_load() {
        double last = 0;
        for (int reps = 1; reps <= 8; reps++) {
            var tests = List.of(Programs.test("split-squat", Optional.of(Side.LEFT), 16, reps, 2));
            double load = side(Programs.plan(tested().tested(tests)), "split-squat", Side.LEFT).doses().getFirst().load().orElse(0);
            assertTrue(load >= last, reps + " reps");
            last = load;
        }
    }

    @Test
    void a_mirrored_spec_gives_the_mirrored_plan() {
        var right = Programs.plan(Specs.turned(Turned.RIGHT).tested(Programs.squatTests(14, 18)).lasting(8, 90));
        var left = Programs.plan(Specs.turned(Turned.LEFT).tested(Programs.squatTests(18, 14)).lasting(8, 90));
        assertEquals(right.firstSide(), left.firstSide().other());
        assertEquals(right.volume().keySet(), left.volume().keySet());
        right.volume().forEach((muscle, both) -> assertEquals(new Plan.LeftRight(both.right(), both.left()), left.volume().get(muscle)));
        for (var exercise : right.exercises()) {
            for (var side : exercise.sides().sides()) {
                var here = exercise.sides().on(side);
                var there = exercise(left, exercise.id()).sides().on(exercise.sides() instanceof Sided.Whole ? side : side.other());
                assertEquals(here.doses(), there.doses(), exercise.id());
                assertEquals(here.capacity(), there.capacity(), exercise.id());
            }
        }
        assertEquals(right.days().stream().map(Plan.Day::minutes).toList(), left.days().stream().map(Plan.Day::minutes).toList());
    }

    @Test
    void a_square_pelvis_with_equal_tests_gives_both_sides_the_same() {
        var plan = Programs.plan(Specs.turned(Turned.SQUARE).tested(Programs.squatTests(16, 16)).lasting(8, 90));
        assertEquals(side(plan, "split-squat", Side.LEFT).doses(), side(plan, "split-squat", Side.RIGHT).doses());
    }

    @Test
    void a_hand_limit_holds_in_every_week() {
        var plan = Programs.plan(tested().restricted(new Restriction.LimitLoad(Mass.ofKilograms(6), Optional.empty(), "a sore wrist")));
        assertTrue(plan.exercises().stream().filter(e -> !(e.sides() instanceof Sided.Whole)).flatMap(e -> e.sides().values().stream())
                .flatMap(s -> s.doses().stream()).allMatch(dose -> dose.load().orElse(0) <= 6));
    }

    @Test
    void someone_who_goes_slowly_gets_the_next_weight_later() {
        var usual = side(Programs.plan(tested()), "split-squat", Side.RIGHT).doses();
        var slowly = side(Programs.plan(tested().aged(OptionalInt.of(70))), "split-squat", Side.RIGHT).doses();
        assertTrue(firstRise(slowly) > firstRise(usual));
        assertTrue(slowly.stream().allMatch(dose -> dose.inReserve() >= 3));
    }

    private static int firstRise(List<Dose> doses) {
        return doses.stream().filter(Dose::heavier).mapToInt(Dose::week).findFirst().orElse(Integer.MAX_VALUE);
    }

    /** 40 kg on a stack with a ratio of 2 to 1 is 20 kg at the handle (friction left out). */
    @Test
    void a_pulley_halves_what_the_hand_feels() {
        var cable = new contrapposto.body.Load.Cable(Side.RIGHT, 5, 2, 1.8, 1, false, 0);
        var spec = Specs.turned(Turned.RIGHT).restricted(new Restriction.LimitLoad(Mass.ofKilograms(20), Optional.empty(), "")).spec();
        assertEquals(40, Weights.of(spec, contrapposto.catalogue.Implement.CABLE, cable).roundedDown(1000), 1e-9);
    }

    @Test
    void what_does_not_fit_the_minutes_is_dropped_and_said() {
        for (int minutes : new int[] {10, 20, 30, 45, 60, 90}) {
            var plan = Programs.plan(tested().lasting(8, minutes));
            for (var day : plan.days()) {
                boolean fits = day.minutes().stream().allMatch(minute -> minute <= minutes);
                assertTrue(fits || plan.warnings().stream().anyMatch(w -> w.key().equals("minutes/too-long")), minutes + " min");
            }
            assertTrue(minutes > 30 && minutes < 90 || minutes < 90 == plan.reasons().stream().anyMatch(r -> r.rule().equals("minutes")), minutes + " min");
        }
    }

    /** Newcomers do one to three sets (ACSM 2009, B1.5): what that leaves of the minutes is said, not filled. */
    @Test
    void first_weeks_that_leave_minutes_over_are_told_with_the_reason() {
        var few = Programs.PRESCRIBER.prescribe(Programs.selection(tested().lasting(8, 90), List.of("split-squat")));
        var said = few.reasons().stream().filter(r -> r.rule().equals("short-sessions")).findFirst().orElseThrow();
        int most = few.days().stream().flatMap(day -> day.minutes().stream()).mapToInt(m -> m).max().orElseThrow();
        assertTrue(said.because().startsWith("weeks 1 to 8 take ") && said.because().contains(" to " + most + " of 90 minutes"), said.because());
        assertTrue(Programs.plan(tested().lasting(8, 30)).reasons().stream().noneMatch(r -> r.rule().equals("short-sessions")));
    }

    @Test
    void volume_counts_indirect_sets_one_half_on_both_days() {
        var plan = Programs.PRESCRIBER.prescribe(Programs.selection(tested(), List.of("split-squat")));
        assertEquals(new Plan.LeftRight(6, 6), plan.volume().get(contrapposto.catalogue.Muscle.GLUTEUS_MAXIMUS));
        assertEquals(new Plan.LeftRight(3, 3), plan.volume().get(contrapposto.catalogue.Muscle.QUADRICEPS));
        assertEquals(new Plan.LeftRight(3, 3), plan.volume().get(contrapposto.catalogue.Muscle.OBLIQUES_TRANSVERSUS));
    }

    @Test
    void two_ramp_sets_come_before_the_first_loaded_standing_exercise_with_weights_that_exist() {
        var ramps = Programs.plan(tested()).days().getFirst().ramps();
        assertEquals(List.of(1, 1), ramps.stream().map(Plan.Ramp::exercise).toList());
        var loads = ramps.stream().map(ramp -> ramp.loads().on(Side.RIGHT)).filter(OptionalDouble::isPresent).toList();
        assertTrue(loads.stream().allMatch(load -> load.getAsDouble() % 2 == 0));
    }

    @Test
    void a_plan_is_good_for_four_weeks_after_its_last() {
        var plan = Programs.plan(tested());
        assertEquals(Specs.START.plusWeeks(12).minusDays(1), plan.expires());
        assertEquals(8, plan.weeks().size());
    }

    @Test
    void a_withheld_program_has_no_days() {
        var plan = Programs.plan(tested().answering("chest-pain", true));
        assertTrue(plan.withheld());
        assertEquals(List.of(), plan.days());
        assertEquals(List.of(), plan.exercises());
    }

    @Test
    void every_side_gives_a_reason_with_a_source_for_its_numbers() {
        for (var exercise : Programs.plan(tested()).exercises()) {
            for (var side : exercise.sides().values()) {
                var rules = side.reasons().stream().map(contrapposto.assess.Reason::rule).toList();
                assertTrue(rules.containsAll(List.of("sets", "rest", "tempo")), exercise.id());
                if (side.capacity().isPresent()) {
                    assertTrue(rules.containsAll(List.of("one-rep-max", "share-band", "reps", "progression")), exercise.id());
                }
            }
        }
    }
}
