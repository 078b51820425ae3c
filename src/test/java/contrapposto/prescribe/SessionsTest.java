package contrapposto.prescribe;

import static java.time.DayOfWeek.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.catalogue.Stage;
import contrapposto.prescribe.Plan.Dose;
import contrapposto.prescribe.Plan.Exercise;
import contrapposto.prescribe.Plan.Ramp;
import contrapposto.prescribe.Plan.Week;
import contrapposto.quantity.Sided;
import contrapposto.select.Selection;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Minutes and ramp sets of one day, added up by hand. A set of one side is repeats × 4 s (2-0-2), 15 s to the other side, 60 s of rest after the
 * round; a ramp set takes 75 s; then rounded up to a minute (house).
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SessionsTest {
    private static final Weights WEIGHTS = new Weights(List.of(0.0, 2.0, 4.0, 6.0, 8.0, 10.0), Double.POSITIVE_INFINITY);

    private static List<Week> weeks(int many) {
        return java.util.stream.IntStream.rangeClosed(1, many).mapToObj(n -> new Week(n, LocalDate.of(2026, 3, 9).plusWeeks(n - 1L), false, 2, Stage.STANDING)).toList();
    }

    private static Plan.Day day(int rampSets, int weeks, Exercise... exercises) {
        var numbers = List.of(exercises).stream().map(Exercise::number).toList();
        return new Sessions(rampSets, side -> WEIGHTS).day(new Selection.Day(MONDAY, numbers), numbers, List.of(exercises), weeks(weeks));
    }

    private static double fetching(String id) {
        return 60 * Programs.CATALOGUE.family(id).orElseThrow().dose().setUpMinutes();
    }

    private static int minutes(double seconds) {
        return (int) StrictMath.ceil(seconds / 60);
    }

    @Test
    void sides_take_turns_within_a_round_and_rest_follows_it() {
        var squat = Handmade.exercise(1, "split-squat", Handmade.dose(1, 3, 10, 8), Handmade.dose(2, 2, 8, 8));
        var day = day(0, 2, squat);
        assertEquals(List.of(minutes(fetching("split-squat") + 3 * (2 * 40 + 15 + 60)), minutes(fetching("split-squat") + 2 * (2 * 32 + 15 + 60))), day.minutes());
        assertEquals(List.of(), day.ramps());
        assertEquals(List.of(1), day.numbers());
        var goblet = Handmade.exercise(1, "goblet-squat", Handmade.dose(1, 3, 10, 8));
        assertEquals(List.of(minutes(fetching("goblet-squat") + 3 * (40 + 60))), day(0, 1, goblet).minutes(), "both legs at once");
    }

    @Test
    void the_longer_side_sets_the_pace() {
        var setUps = Handmade.setUps("split-squat");
        for (boolean left : new boolean[] {true, false}) {
            var squat = Handmade.exercise(1, "split-squat", new Sided.Each<>(Handmade.side(setUps.on(contrapposto.quantity.Side.LEFT), Handmade.dose(1, 3, left ? 12 : 6, 0)),
                    Handmade.side(setUps.on(contrapposto.quantity.Side.RIGHT), Handmade.dose(1, 3, left ? 6 : 12, 0))));
            assertEquals(List.of(minutes(fetching("split-squat") + 3 * (2 * 48 + 15 + 60))), day(0, 1, squat).minutes());
        }
    }

    @Test
    void ramp_sets_count_in_the_weeks_in_which_the_loaded_exercise_is_done() {
        var push = Handmade.exercise(1, "raised-hand-push-up", Handmade.dose(1, 2, 10, 0), Handmade.dose(2, 2, 10, 0));
        var squat = Handmade.exercise(2, "split-squat", Handmade.dose(2, 3, 10, 8));
        double push1 = fetching("raised-hand-push-up") + 2 * (push.sides().values().size() * 40 + (push.sides().values().size() - 1) * 15 + 60);
        double squat1 = fetching("split-squat") + 3 * (2 * 40 + 15 + 60);
        assertEquals(List.of(minutes(push1), minutes(push1 + squat1 + 2 * 75)), day(2, 2, push, squat).minutes());
    }

    /** House: the lightest first, 50 and 75 % of the day's weight, six and four repeats; of three, 30 % for eight comes before. */
    @Test
    void ramps_lead_up_to_the_first_weight_with_weights_that_exist() {
        var push = Handmade.exercise(1, "raised-hand-push-up", Handmade.dose(1, 2, 10, 0));
        var squat = Handmade.exercise(2, "split-squat", Handmade.dose(1, 3, 10, 10), Handmade.dose(2, 3, 10, 4));
        var deadlift = Handmade.exercise(3, "staggered-deadlift", Handmade.dose(1, 3, 10, 10));
        var five = new Sided.Each<>(OptionalDouble.of(4), OptionalDouble.of(4));
        var seven = new Sided.Each<>(OptionalDouble.of(6), OptionalDouble.of(6));
        assertEquals(List.of(new Ramp(2, 6, 0.5, five), new Ramp(2, 4, 0.75, seven)), day(2, 2, push, squat, deadlift).ramps());
        var three = day(3, 2, push, squat, deadlift).ramps();
        assertEquals(new Ramp(2, 8, 0.3, new Sided.Each<>(OptionalDouble.of(2), OptionalDouble.of(2))), three.getFirst());
        assertEquals(3, three.size());
        assertEquals(three, day(9, 2, push, squat, deadlift).ramps(), "there are no more than three");
        assertEquals(List.of(), day(-1, 2, push, squat).ramps());
    }

    @Test
    void a_share_under_the_lightest_weight_is_done_without() {
        var squat = Handmade.exercise(1, "split-squat", Handmade.dose(1, 3, 10, 2));
        var none = new Sided.Each<>(OptionalDouble.empty(), OptionalDouble.empty());
        assertEquals(List.of(new Ramp(1, 6, 0.5, none), new Ramp(1, 4, 0.75, none)), day(2, 1, squat).ramps());
    }

    @Test
    void a_weight_that_the_client_finds_is_ramped_and_body_weight_is_not() {
        Dose found = Handmade.byEffort(1, 3, 10);
        assertEquals(List.of(6, 4), day(2, 1, Handmade.exercise(1, "split-squat", found)).ramps().stream().map(Ramp::reps).toList());
        var bare = day(2, 1, Handmade.exercise(1, "split-squat", Handmade.dose(1, 3, 10, 0)));
        assertEquals(List.of(), bare.ramps());
        assertEquals(List.of(minutes(fetching("split-squat") + 3 * (2 * 40 + 15 + 60))), bare.minutes());
    }

    @Test
    void what_is_done_on_the_floor_needs_no_ramp() {
        var floor = Programs.CATALOGUE.families().stream().filter(family -> family.stage() == Stage.FLOOR).findFirst().orElseThrow().id();
        assertEquals(List.of(), day(2, 1, Handmade.exercise(1, floor, Handmade.byEffort(1, 2, 8))).ramps());
        assertEquals(List.of(2, 2), day(2, 1, Handmade.exercise(1, floor, Handmade.byEffort(1, 2, 8)), Handmade.exercise(2, "split-squat", Handmade.dose(1, 3, 10, 8)))
                .ramps().stream().map(Ramp::exercise).toList());
    }
}
