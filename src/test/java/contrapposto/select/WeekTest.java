package contrapposto.select;

import static java.time.DayOfWeek.FRIDAY;
import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.SATURDAY;
import static java.time.DayOfWeek.SUNDAY;
import static java.time.DayOfWeek.TUESDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec.Aim;
import contrapposto.check.CheckedSpec.Schedule;
import contrapposto.quantity.Side;
import contrapposto.select.Item.Window;
import contrapposto.select.Selection.StageWeeks;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Weeks, their sessions and sets, on small examples worked out by hand. That a muscle rests a day between hard work is common practice, no source. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WeekTest {
    private static List<Duty> spread(Frame frame, Item... items) {
        return List.copyOf(Days.spread(frame, List.of(items)).orElseThrow().values());
    }

    private static Item hip(int place) {
        return Made.at(place).left(Muscle.GLUTEUS_MAXIMUS, 2).hard(Muscle.GLUTEUS_MAXIMUS).item();
    }

    private static Item thigh(int place) {
        return Made.at(place).right(Muscle.QUADRICEPS, 2).hard(Muscle.QUADRICEPS).item();
    }

    private static Item easy(int place) {
        return Made.at(place).left(Muscle.CALF, 1).right(Muscle.CALF, 1).item();
    }

    @Test
    void with_a_day_of_rest_between_every_session_does_all() {
        assertEquals(List.of(Duty.BOTH, Duty.BOTH), spread(Made.frame(Made.APART, 600), hip(0), hip(1)));
        assertTrue(Days.spread(Made.frame(Made.APART, 539), List.of(hip(0), hip(1))).isEmpty(), "30 + 2 × 120 s each");
        assertTrue(Days.spread(Made.frame(Made.APART, 540), List.of(hip(0), hip(1))).isPresent());
    }

    /** Sessions of Monday and Wednesday, and of Tuesday: hard work of one muscle is in one of them, on most days; the other goes where it makes both alike long. */
    @Test
    void on_neighbouring_days_hard_work_of_one_muscle_is_in_one_session() {
        var frame = Made.frame(Made.TOUCHING, 2000);
        assertEquals(List.of(0, 1, 0), frame.turns());
        assertEquals(List.of(Duty.A, Duty.BOTH), spread(frame, hip(0), easy(1)));
        assertEquals(List.of(Duty.A, Duty.A), spread(frame, hip(0), thigh(1)), "two days cover each muscle, a third comes to nothing");
        assertEquals(List.of(Duty.A, Duty.A), spread(frame, hip(0), hip(1)));
    }

    /** One a session: what covers two muscles of weight 2 goes where there are two days, 16 + 4, not the calf first, 8 + 8. */
    @Test
    void the_session_with_more_days_gets_what_covers_more() {
        var frame = Made.frame(Made.TOUCHING, 300);
        var calf = Made.at(0).left(Muscle.CALF, 2).right(Muscle.CALF, 2).item();
        var much = Made.at(1).left(Muscle.GLUTEUS_MAXIMUS, 2).right(Muscle.QUADRICEPS, 2).item();
        assertEquals(List.of(Duty.B, Duty.A), spread(frame, calf, much));
        assertEquals(List.of(Duty.A, Duty.B), spread(frame, Made.at(0).left(Muscle.GLUTEUS_MAXIMUS, 2).right(Muscle.QUADRICEPS, 2).item(), calf));
    }

    /** Nothing of it is wanted: of 300, 200 and 100 s two are done on two days; 200 and 100 against 300 makes both alike. */
    @Test
    void of_ways_that_cover_as_much_as_often_the_most_even_is_taken() {
        var frame = Made.frame(Made.TOUCHING, 500);
        var items = new Item[] {Made.at(0).seconds(0, 150).hard(Muscle.CHEST).item(), Made.at(1).seconds(0, 100).hard(Muscle.BICEPS).item(), Made.at(2).seconds(0, 50).hard(Muscle.SHOULDER).item()};
        assertEquals(List.of(Duty.B, Duty.A, Duty.A), spread(frame, items));
        assertEquals(List.of(Duty.A, Duty.A, Duty.A), spread(Made.frame(Made.TOUCHING, 600), items), "six times before even");
    }

    @Test
    void what_one_session_cannot_hold_goes_to_the_other() {
        var frame = Made.frame(Made.TOUCHING, 300);
        assertEquals(List.of(Duty.A, Duty.B), spread(frame, hip(0), thigh(1)));
        assertTrue(Days.spread(frame, List.of(hip(0), thigh(1), easy(2))).isEmpty());
        var five = List.of(easy(0), easy(1), easy(2), easy(3), easy(4));
        var duties = Days.spread(Made.frame(Made.TOUCHING, 2000), five).orElseThrow();
        for (int session = 0; session < 2; session++) {
            int at = session;
            assertTrue(duties.values().stream().filter(duty -> duty.in(at)).count() <= 4, "four exercises at most: " + duties);
        }
    }

    @Test
    void weeks_that_an_exercise_is_not_in_leave_its_time_to_others() {
        var frame = new Frame(List.of(new StageWeeks(Stage.SUPPORTED, 1, 4), new StageWeeks(Stage.STANDING, 5, 8)), Made.APART, 300, 4, 3, 6, 1, List.of(),
                Map.of(Side.LEFT, Map.of(), Side.RIGHT, Map.of()));
        var early = Made.at(0).weeks(1, 4).item();
        var late = Made.at(1).weeks(5, 8).item();
        assertTrue(Days.spread(frame, List.of(early, late)).isPresent());
        assertTrue(Days.spread(frame, List.of(early, Made.at(1).weeks(4, 8).item())).isEmpty());
        assertEquals(List.of(2, 2), List.copyOf(Sets.fill(frame, List.of(early, late), Map.of(early, Duty.BOTH, late, Duty.BOTH)).values()));
    }

    @Test
    void a_session_on_two_days_running_has_no_hard_work() {
        var frame = Made.frame(List.of(DayOfWeek.values()), 2000);
        assertTrue(frame.touchesItself(0) && !frame.touchesItself(1), "Sunday and Monday");
        assertEquals(List.of(Duty.B, Duty.BOTH), spread(frame, hip(0), easy(1)));
    }

    private static List<Integer> sets(double seconds, Duty duty, Item... items) {
        var frame = Made.frame(Made.TOUCHING, seconds);
        var duties = new java.util.LinkedHashMap<Item, Duty>();
        Arrays.stream(items).forEach(item -> duties.put(item, duties.isEmpty() ? duty : Duty.A));
        return List.copyOf(Sets.fill(frame, List.of(items), duties).values());
    }

    /** Two exercises of 30 s and 120 s a set: 780 s hold three sets each, 660 three and two; of equals the first gets more. */
    @Test
    void minutes_left_are_filled_with_sets_the_first_in_order_first() {
        assertEquals(List.of(3, 3), sets(780, Duty.A, easy(0), easy(1)));
        assertEquals(List.of(3, 2), sets(779, Duty.A, easy(0), easy(1)));
        assertEquals(List.of(3, 2), sets(660, Duty.A, easy(0), easy(1)));
        assertEquals(List.of(2, 2), sets(659, Duty.A, easy(0), easy(1)));
    }

    @Test
    void a_further_set_goes_where_it_is_done_on_more_days() {
        assertEquals(List.of(3, 3), sets(660, Duty.B, easy(0), easy(1)), "in different sessions both have room");
        assertEquals(List.of(3, 2), sets(660, Duty.BOTH, easy(0), easy(1)), "three days against two");
        var brief = Made.at(0).left(Muscle.CALF, 1).sets(1, 4).item();
        assertEquals(List.of(4, 2), sets(780, Duty.BOTH, brief, easy(1)));
    }

    private static Frame on(DayOfWeek... days) {
        return Made.frame(List.of(days), 600);
    }

    @Test
    void sessions_take_turns_from_the_day_after_a_rest() {
        assertEquals(List.of(0), on(MONDAY).turns());
        assertEquals(List.of(0, 1, 0), on(MONDAY, TUESDAY, FRIDAY).turns());
        assertEquals(List.of(1, 0), on(MONDAY, SUNDAY).turns(), "Sunday comes before Monday, over the week's end");
        assertEquals(List.of(0, 1), on(MONDAY, FRIDAY).turns());
        assertEquals(List.of(2, 1), List.of(on(MONDAY, TUESDAY, FRIDAY).daysOf(0), on(MONDAY, TUESDAY, FRIDAY).daysOf(1)));
        assertEquals(List.of(1, 2), List.of(on(MONDAY).sessions(), on(MONDAY, FRIDAY).sessions()));
        assertEquals(List.of(false, false, true, true, true), List.of(on(MONDAY), on(MONDAY, FRIDAY), on(MONDAY, TUESDAY), on(MONDAY, SUNDAY), on(SATURDAY, SUNDAY)).stream().map(Frame::sessionsTouch).toList());
        assertFalse(on(MONDAY).touchesItself(0));
    }

    @Test
    void room_for_more_exercises_is_more_time_in_proportion() {
        var roomy = Made.frame(Made.TOUCHING, 600).roomFor(8);
        assertEquals(List.of(1200.0, 8.0, 6.0, 6.0), List.of(roomy.seconds(), (double) roomy.perSession(), (double) roomy.filled(), (double) roomy.inAll()));
        assertEquals(5, Made.frame(Made.TOUCHING, 600).roomFor(5).filled());
    }

    /** House: from the floor, supported work opens after a quarter, standing after half, integrated after seven eighths; supported: two fifths and 85 %. */
    @ParameterizedTest
    @CsvSource({"FLOOR, 8, FLOOR 1-2 SUPPORTED 3-4 STANDING 5-7 INTEGRATED 8-8", "SUPPORTED, 10, SUPPORTED 1-4 STANDING 5-8 INTEGRATED 9-10", "STANDING, 8, STANDING 1-4 INTEGRATED 5-8",
        "INTEGRATED, 8, INTEGRATED 1-8", "FLOOR, 4, FLOOR 1-1 SUPPORTED 2-2 STANDING 3-3 INTEGRATED 4-4"})
    void stages_lead_their_part_of_the_weeks(Stage start, int weeks, String expected) {
        var said = new StringBuilder();
        stages(start, weeks).blocks().forEach(block -> said.append(said.isEmpty() ? "" : " ").append(block.stage()).append(' ').append(block.firstWeek()).append('-').append(block.lastWeek()));
        assertEquals(expected, said.toString());
    }

    private static Stages stages(Stage start, int weeks) {
        return Stages.of(new Schedule(LocalDate.of(2026, 3, 9), weeks, Made.APART, 50, start, Optional.empty()));
    }

    @Test
    void work_of_a_stage_comes_in_with_it_and_passing_work_goes_when_standing_leads() {
        var supported = stages(Stage.SUPPORTED, 10);
        assertEquals(new Window(1, 4), supported.window(Stage.SUPPORTED, false, true));
        assertEquals(new Window(1, 10), supported.window(Stage.SUPPORTED, false, false));
        assertEquals(new Window(1, 10), supported.window(Stage.FLOOR, false, true), "who began beyond the floor keeps it");
        assertEquals(new Window(5, 10), supported.window(Stage.STANDING, false, true), "standing work does not pass");
        assertEquals(new Window(9, 10), supported.window(Stage.INTEGRATED, false, false));
        assertEquals(new Window(1, 10), supported.window(Stage.INTEGRATED, true, true), "asked for");
        assertEquals(new Window(1, 8), stages(Stage.STANDING, 8).window(Stage.SUPPORTED, false, true));
    }

    /** Aims move their goals before all that are not pinned or two-sided; a unit outweighs all that lesser goals can add up to. */
    @Test
    void scores_compare_goal_by_goal_in_the_order_of_the_aims() {
        assertEquals(List.of(Goal.PINNED, Goal.TWO_SIDED, Goal.EVERY_WEEK, Goal.PHASE, Goal.MUSCLES, Goal.RIBS, Goal.TURN, Goal.PATTERNS, Goal.STANDING, Goal.FILLED, Goal.VARIETY, Goal.FETCHING, Goal.EARLIER),
                Scale.of(List.of(Aim.SIDE_TO_SIDE_MOVEMENT, Aim.STRENGTH)).order());
        assertEquals(List.of(Goal.PINNED, Goal.TWO_SIDED, Goal.EVERY_WEEK, Goal.PATTERNS), Scale.of(List.of(Aim.STRENGTH, Aim.SIDE_TO_SIDE_MOVEMENT)).order().subList(0, 4));
        var scale = Scale.of(List.of(Aim.STRENGTH));
        for (int i = 0; i + 1 < scale.order().size(); i++) {
            var one = new long[Goal.values().length];
            var other = new long[Goal.values().length];
            var weightier = scale.order().get(i);
            (weightier.cost() ? other : one)[weightier.ordinal()] = 1;
            for (var lesser : scale.order().subList(i + 1, scale.order().size())) {
                (lesser.cost() ? one : other)[lesser.ordinal()] = 1_000_000;
            }
            assertTrue(scale.score(one) > scale.score(other), "one more of " + weightier);
            assertEquals(weightier, scale.decides(one, other));
            assertEquals(scale.score(one), List.of(Goal.values()).stream().mapToLong(goal -> scale.of(goal, one[goal.ordinal()])).sum());
        }
        var same = new long[Goal.values().length];
        assertEquals(Goal.EARLIER, scale.decides(same, same.clone()));
        var costly = new long[Goal.values().length];
        costly[Goal.FETCHING.ordinal()] = 5;
        costly[Goal.VARIETY.ordinal()] = 2;
        assertEquals(2, scale.growing(costly) / scale.of(Goal.VARIETY, 1), "costs are no part of what grows");
        assertTrue(scale.score(costly) < scale.growing(costly));
    }
}
