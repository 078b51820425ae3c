package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.Family.Dose;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Stage;
import contrapposto.quantity.Side;
import contrapposto.select.Item.Window;
import contrapposto.select.Selection.StageWeeks;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** One exercise as selection sees it, and the sum of its seconds, by hand. What counts how much is the house's. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ItemTest {
    private static final StageWeeks SUPPORTED = new StageWeeks(Stage.SUPPORTED, 3, 4);
    private static final StageWeeks STANDING = new StageWeeks(Stage.STANDING, 5, 8);

    /** 1.5 min to fetch; ten repeats of 3-1-1 are 50 s a side, 15 s between sides, 90 s of rest after each of three rounds. */
    @Test
    void seconds_are_fetching_work_changes_of_side_and_rest() {
        assertEquals(90 + 3 * (2 * 50 + 15 + 90), SessionTime.seconds(1.5, 2, 3, 10, 0, "3-1-1", 90));
        assertEquals(90 + 3 * (50 + 90), SessionTime.seconds(1.5, 1, 3, 10, 0, "3-1-1", 90));
        assertEquals(30 + 2 * (2 * 30 + 15 + 60), SessionTime.seconds(0.5, 2, 2, 10, 30, "1-0-1", 60), "a hold has its seconds, whatever the repeats");
        assertEquals(SessionTime.seconds(1.5, 2, 3, 10, 0, "3-1-1", 90), SessionTime.seconds(new Dose(3, 6, 10, 0, "3-1-1", 90, 1.5), 2, 3), "planned with the most repeats");
    }

    private static Made rich(int place) {
        return Made.at(place).group(CapacityGroup.PRESS).left(Muscle.CHEST, 2).right(Muscle.CHEST, 1).phased(Side.LEFT).ribs(Side.RIGHT).thing("dumbbell");
    }

    @Test
    void an_earlier_exercise_that_does_all_of_another_stands_in_for_it() {
        assertTrue(rich(0).item().standsInFor(rich(1).item()));
        assertFalse(rich(1).item().standsInFor(rich(0).item()), "equals go by the catalogue");
        assertFalse(rich(0).item().standsInFor(rich(0).item()));
    }

    @Test
    void it_may_do_more_and_cost_less() {
        List<UnaryOperator<Made>> better = List.of(Made::pinned, Made::turning, Made::loaded, made -> made.phased(Side.RIGHT), made -> made.ribs(Side.LEFT), made -> made.left(Muscle.CALF, 1),
                made -> made.right(Muscle.CHEST, 2), made -> made.seconds(30, 119), made -> made.seconds(29, 120));
        for (var change : better) {
            assertTrue(change.apply(rich(0)).item().standsInFor(rich(1).item()), change.apply(rich(0)).item().toString());
            assertFalse(rich(0).item().standsInFor(change.apply(rich(1)).item()), change.apply(rich(1)).item().toString());
        }
        assertTrue(rich(0).item().standsInFor(rich(1).light().item()), "light work counts for less");
        assertFalse(rich(0).light().item().standsInFor(rich(1).item()));
        assertTrue(rich(0).light().item().standsInFor(rich(1).light().item()));
    }

    @Test
    void it_must_be_of_the_same_kind_and_weeks_and_need_no_more() {
        List<UnaryOperator<Made>> other = List.of(made -> made.stage(Stage.FLOOR), made -> made.stage(Stage.SUPPORTED), made -> made.group(CapacityGroup.PULL), made -> made.weeks(1, 7), Made::twoSided);
        for (var change : other) {
            assertFalse(change.apply(rich(0)).item().standsInFor(rich(1).item()));
            assertFalse(rich(0).item().standsInFor(change.apply(rich(1)).item()));
        }
        assertFalse(rich(0).thing("cable").item().standsInFor(rich(1).item()));
        assertFalse(rich(0).stage(Stage.FLOOR).item().standsInFor(rich(1).stage(Stage.SUPPORTED).item()), "neither on the feet, one on the floor");
        assertTrue(rich(0).stage(Stage.INTEGRATED).item().standsInFor(rich(1).item()), "both on the feet");
    }

    /** Half a minute of fetching is one, and each thing is one. */
    @Test
    void fetching_counts_half_minutes_and_things() {
        assertEquals(0, Made.at(0).seconds(14, 120).item().fetching());
        assertEquals(3, Made.at(0).seconds(45, 120).thing("cable").item().fetching(), "45 s round up to two halves");
        assertEquals(5, Made.at(0).seconds(90, 120).thing("cable").thing("wedge").item().fetching());
        assertEquals(90 + 3 * 120, Made.at(0).seconds(90, 120).item().seconds(3));
    }

    @Test
    void light_work_of_the_legs_counts_half_and_no_phase_once_standing_work_leads() {
        var light = Made.at(0).stage(Stage.SUPPORTED).light().phased(Side.LEFT).item();
        assertEquals(List.of(2, 1, 1), List.of(light.counted(2, SUPPORTED), light.counted(2, STANDING), light.counted(1, STANDING)));
        assertEquals(Set.of(Side.LEFT), light.phasedIn(SUPPORTED));
        assertEquals(Set.of(), light.phasedIn(STANDING));
        assertEquals(Set.of(), light.phasedIn(new StageWeeks(Stage.INTEGRATED, 5, 8)));
        var other = Made.at(0).phased(Side.LEFT).item();
        assertEquals(2, other.counted(2, STANDING));
        assertEquals(Set.of(Side.LEFT), other.phasedIn(STANDING));
    }

    @Test
    void a_window_meets_what_it_touches() {
        assertTrue(new Window(1, 5).meets(STANDING));
        assertTrue(new Window(8, 9).meets(STANDING));
        assertFalse(new Window(1, 4).meets(STANDING));
        assertFalse(new Window(9, 9).meets(STANDING));
    }

    @Test
    void in_the_place_of_another_it_has_its_weeks_and_is_wanted_as_much() {
        var other = Made.at(1).weeks(3, 5).pinned().item();
        var placed = rich(0).item().inPlaceOf(other);
        assertEquals(rich(0).weeks(3, 5).pinned().item(), placed);
    }

    @Test
    void shares_are_counted_in_halves_and_stages_by_feet_and_floor() {
        assertEquals(Map.of(Muscle.CHEST, 2, Muscle.CALF, 1), Item.halves(Map.of(Muscle.CHEST, 1.0, Muscle.CALF, 0.5)));
        assertEquals(List.of(false, false, true, true), List.of(Stage.values()).stream().map(stage -> Made.at(0).stage(stage).item().onFeet()).toList());
        assertEquals(List.of(true, false, false, false), List.of(Stage.values()).stream().map(stage -> Made.at(0).stage(stage).item().floor()).toList());
        assertEquals(Map.of(Muscle.CHEST, 2), rich(0).item().on(Side.LEFT));
        assertEquals(Map.of(Muscle.CHEST, 1), rich(0).item().on(Side.RIGHT));
    }
}
