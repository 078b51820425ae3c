package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec.Schedule;
import contrapposto.select.Item.Window;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** How stages map onto weeks; the order of the stages is common practice, the weeks are house defaults. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StagesTest {
    private static Stages stages(Stage start, int weeks) {
        return Stages.of(new Schedule(LocalDate.of(2026, 3, 9), weeks, List.of(DayOfWeek.MONDAY), 50, start, Optional.empty()));
    }

    @ParameterizedTest
    @EnumSource
    void every_week_is_led_by_one_stage_and_stages_only_advance(Stage start) {
        for (int weeks = 1; weeks <= 26; weeks++) {
            var blocks = stages(start, weeks).blocks();
            int next = 1;
            for (int i = 0; i < blocks.size(); i++) {
                assertEquals(next, blocks.get(i).firstWeek());
                assertTrue(blocks.get(i).lastWeek() >= next);
                assertTrue(i == 0 || blocks.get(i).stage().compareTo(blocks.get(i - 1).stage()) > 0);
                next = blocks.get(i).lastWeek() + 1;
            }
            assertEquals(weeks + 1, next);
            assertTrue(blocks.getLast().stage().compareTo(Stage.STANDING) >= 0, "the last stage is standing, under load");
        }
    }

    /** So that no exercise is kept out because its stage would open too late. */
    @ParameterizedTest
    @EnumSource
    void every_stage_opens_within_the_plan_however_short_it_is(Stage start) {
        for (int weeks = 1; weeks <= 52; weeks++) {
            for (var stage : Stage.values()) {
                for (boolean passes : new boolean[] {true, false}) {
                    var window = stages(start, weeks).window(stage, false, passes);
                    assertTrue(1 <= window.first() && window.first() <= window.last() && window.last() <= weeks, start + " " + weeks + " " + stage + " " + window);
                }
            }
        }
    }

    @Test
    void floor_work_makes_way_for_standing_work_and_comes_first() {
        var stages = stages(Stage.FLOOR, 8);
        assertEquals(new Window(1, 4), stages.window(Stage.FLOOR, false, true));
        assertEquals(new Window(3, 8), stages.window(Stage.SUPPORTED, false, false));
        assertEquals(new Window(3, 4), stages.window(Stage.SUPPORTED, false, true));
        assertEquals(new Window(5, 8), stages.window(Stage.STANDING, false, false));
    }

    @Test
    void what_the_coach_has_tested_is_done_from_the_first_week_to_the_last() {
        assertEquals(new Window(1, 8), stages(Stage.FLOOR, 8).window(Stage.STANDING, true, false));
    }

    @Test
    void who_begins_on_the_feet_keeps_floor_work_as_an_opener() {
        assertEquals(new Window(1, 6), stages(Stage.STANDING, 6).window(Stage.FLOOR, false, true));
    }

    @Test
    void a_single_session_holds_all_of_it() {
        for (var stage : Stage.values()) {
            assertEquals(new Window(1, 1), stages(Stage.FLOOR, 1).window(stage, false, stage == Stage.FLOOR));
        }
    }
}
