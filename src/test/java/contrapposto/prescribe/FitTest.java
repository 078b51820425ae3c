package contrapposto.prescribe;

import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.THURSDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Reason.Source;
import contrapposto.prescribe.Plan.Day;
import contrapposto.select.Selection;
import contrapposto.wording.Said;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What gives way, step by step, when 30 minutes are too few for a squat and a deadlift of 3 sets and a carry of 2. The order and the least sets are the house's. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FitTest {
    private final Selection selection = Handmade.selection(List.of(Handmade.chosen(1, "split-squat", 3),
            Handmade.chosen(2, "staggered-deadlift", 3), Handmade.chosen(3, "suitcase-carry", 2)), MONDAY, THURSDAY);
    private Fit fit;

    @BeforeEach
    void begin() {
        fit = new Fit(selection, 30);
    }

    private static List<Day> days(int monday, int thursday) {
        return List.of(Handmade.day(MONDAY, List.of(1, 2, 3), 20, monday), Handmade.day(THURSDAY, List.of(1, 2, 3), thursday, 20));
    }

    private void tightened(int times, int monday, int thursday) {
        IntStream.range(0, times).forEach(i -> assertTrue(fit.tighten(days(monday, thursday)), "step " + (i + 1)));
    }

    private List<Integer> sets() {
        return selection.exercises().stream().map(fit::sets).toList();
    }

    private List<List<Integer>> numbers() {
        return selection.days().stream().map(fit::numbers).toList();
    }

    private Said last() {
        return fit.said().getLast();
    }

    @Test
    void what_fits_to_the_minute_stays_as_it_is() {
        assertFalse(fit.tighten(days(30, 30)));
        assertTrue(fit.longRest() && fit.moreSets());
        assertEquals(List.of(3, 3, 2), sets());
        assertEquals(List.of(List.of(1, 2, 3), List.of(1, 2, 3)), numbers());
        assertEquals(List.of(), fit.said());
    }

    @Test
    void the_long_rest_gives_way_first_then_the_further_sets_and_neither_is_a_loss_to_tell() {
        tightened(1, 31, 30);
        assertTrue(!fit.longRest() && fit.moreSets());
        tightened(1, 31, 30);
        assertTrue(!fit.longRest() && !fit.moreSets());
        assertEquals(List.of(3, 3, 2), sets());
        assertEquals(List.of(), fit.reasons());
    }

    @Test
    void then_a_set_of_the_last_exercise_that_has_more_than_two() {
        tightened(3, 40, 35);
        assertEquals(List.of(3, 2, 2), sets());
        assertEquals("minutes/sets", last().key());
        assertEquals("staggered-deadlift", Terms.word(last(), "exercise"));
        assertEquals(List.of(2.0, 3.0, 30.0), List.of(Terms.number(last(), "sets"), Terms.number(last(), "before"), Terms.number(last(), "minutes")));
        assertEquals("monday", Terms.word(last(), "day"), "the longest of the days");
        tightened(1, 35, 40);
        assertEquals(List.of(2, 2, 2), sets());
        assertEquals("thursday", Terms.word(last(), "day"));
    }

    @Test
    void then_the_last_exercise_of_the_longest_day_alone() {
        tightened(5, 30, 31);
        assertEquals(List.of(List.of(1, 2, 3), List.of(1, 2)), numbers());
        assertEquals("minutes/not-done", last().key());
        assertEquals(List.of("suitcase-carry", "thursday"), List.of(Terms.word(last(), "exercise"), Terms.word(last(), "day")));
        assertEquals(30, Terms.number(last(), "minutes"));
    }

    @Test
    void the_last_one_of_a_day_stays_and_the_coach_is_told_how_long_it_takes() {
        tightened(6, 31, 20);
        assertEquals(List.of(List.of(1), List.of(1, 2, 3)), numbers());
        assertFalse(fit.tighten(days(31, 20)));
        assertEquals(List.of(List.of(1), List.of(1, 2, 3)), numbers());
        assertEquals("minutes/too-long", last().key());
        assertEquals(List.of(31.0, 30.0), List.of(Terms.number(last(), "takes"), Terms.number(last(), "minutes")));
        assertEquals(List.of("minutes/sets", "minutes/sets", "minutes/not-done", "minutes/not-done", "minutes/too-long"), Terms.keys(fit.said()));
        assertTrue(fit.reasons().stream().allMatch(reason -> reason.rule().equals("minutes") && reason.source() == Source.SOLVED));
        assertEquals(fit.said(), fit.reasons().stream().map(reason -> reason.said()).toList());
    }
}
