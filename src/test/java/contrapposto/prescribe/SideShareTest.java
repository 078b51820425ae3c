package contrapposto.prescribe;

import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.THURSDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.assess.Assessor;
import contrapposto.assess.Reason.Source;
import contrapposto.assess.Specs;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Gate;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.prescribe.Plan.Week;
import contrapposto.select.Instead;
import contrapposto.select.Selection;
import contrapposto.select.Selection.Chosen;
import contrapposto.select.Selection.StageWeeks;
import contrapposto.setup.SetUps;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * The share of leg sets that are set up per side, counted by hand. A squat and a deadlift of one side (1, 2), a squat that is the same on both
 * (3), an arm (4), which does not count. Wanted is at most 80 % while supported, 60 % standing, 40 % integrated (house).
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SideShareTest {
    private static final List<Integer> ALL = List.of(1, 2, 3, 4);

    private static Chosen in(int number, String id, int sets, int firstWeek, int lastWeek) {
        return new Chosen(number, id, Handmade.setUps(id), firstWeek, lastWeek, sets, Instead.NONE, List.of());
    }

    private static List<Chosen> chosen(int squat, int deadlift, int goblet) {
        return List.of(in(1, "split-squat", squat, 1, 8), in(2, "staggered-deadlift", deadlift, 1, 8), in(3, "goblet-squat", goblet, 1, 8),
                in(4, "high-to-low-press", 3, 1, 8));
    }

    private static Selection selection(CheckedSpec spec, List<Chosen> chosen, List<Integer> monday, List<StageWeeks> stages) {
        var setUps = new SetUps(new Assessor().assess(spec, Programs.CATALOGUE.rules()), Programs.CATALOGUE, Map.of(), Map.of(), Map.of());
        return new Selection(setUps, chosen, List.of(new Selection.Day(MONDAY, monday), new Selection.Day(THURSDAY, chosen.stream().map(Chosen::number).toList())),
                stages, Map.of(), List.of());
    }

    private static SideShare standing(List<Chosen> chosen, boolean moreSets) {
        return new SideShare(selection(Specs.turned(Turned.RIGHT).spec(), chosen, ALL, List.of(new StageWeeks(Stage.STANDING, 1, 8))), Chosen::sets, moreSets);
    }

    private static List<Integer> sets(SideShare share, List<Chosen> chosen, int week) {
        return chosen.stream().map(one -> share.sets(one, new Week(week, LocalDate.of(2026, 3, 9), false, 2, Stage.STANDING))).toList();
    }

    /** 6 of 9 sets are too many; 6 of 10 are 60 %. Without the minutes for it, a set less of both: 4 of 7. */
    @Test
    void a_further_set_on_both_sides_comes_before_a_set_less_on_one() {
        var chosen = chosen(3, 3, 3);
        assertEquals(List.of(3, 3, 4, 3), sets(standing(chosen, true), chosen, 8));
        assertEquals(List.of(2, 2, 3, 3), sets(standing(chosen, false), chosen, 1));
        var said = Terms.of(standing(chosen, true).reasons(), "side-specific").said();
        assertEquals(List.of(1.0, 8.0, 0.6, 0.6), List.of(Terms.number(said, "first"), Terms.number(said, "last"), Terms.number(said, "share"), Terms.number(said, "wanted")));
        assertEquals(6.0 / 9, Terms.number(said, "before"), 1e-12);
        assertEquals("stage-standing", Terms.word(said, "stage"));
    }

    /** From 4 and 4 of 12, with no fifth set for the squat of both: 7 of 11 are still too many, 6 of 10 are not. */
    @Test
    void sets_stay_between_two_and_four() {
        var full = chosen(4, 4, 4);
        assertEquals(List.of(3, 3, 4, 3), sets(standing(full, true), full, 1));
        var few = chosen(2, 2, 2);
        assertEquals(List.of(2, 2, 2, 3), sets(standing(few, false), few, 1), "67 % stays, since nothing may give");
        assertEquals(List.of(2, 2, 3, 3), sets(standing(few, true), few, 1));
    }

    @Test
    void what_meets_the_share_is_left_alone() {
        var chosen = chosen(3, 0, 2);
        assertEquals(List.of(3, 0, 2, 3), sets(standing(chosen, true), chosen, 1), "3 of 5");
    }

    /** On Monday only the squat of both: of 12 weekly sets 6 are per side. */
    @Test
    void sets_count_once_for_each_day() {
        var chosen = chosen(3, 3, 3);
        var share = new SideShare(selection(Specs.turned(Turned.RIGHT).spec(), chosen, List.of(3, 4), List.of(new StageWeeks(Stage.STANDING, 1, 8))), Chosen::sets, true);
        assertEquals(List.of(3, 3, 3, 3), sets(share, chosen, 1));
        assertEquals(0.5, Terms.number(share.reasons().getFirst().said(), "before"), 1e-12);
    }

    /** Supported, 6 of 8 are 75 %; integrated, no way goes under 4 of 8. */
    @Test
    void each_stage_has_its_own_share_in_its_own_weeks() {
        var chosen = chosen(3, 3, 2);
        var stages = List.of(new StageWeeks(Stage.SUPPORTED, 1, 4), new StageWeeks(Stage.INTEGRATED, 5, 8));
        var share = new SideShare(selection(Specs.turned(Turned.RIGHT).spec(), chosen, ALL, stages), Chosen::sets, true);
        assertEquals(List.of(3, 3, 2, 3), sets(share, chosen, 4));
        assertEquals(List.of(2, 2, 3, 3), sets(share, chosen, 5));
        assertEquals(List.of(2, 2, 3, 3), sets(share, chosen, 8));
        assertEquals(List.of("stage-supported", "stage-integrated"), share.reasons().stream().map(reason -> Terms.word(reason.said(), "stage")).toList());
    }

    @Test
    void only_what_is_done_in_a_stage_counts_for_it() {
        var stages = List.of(new StageWeeks(Stage.INTEGRATED, 3, 6));
        var touching = List.of(in(1, "split-squat", 3, 1, 3), in(3, "goblet-squat", 3, 6, 8));
        assertEquals(1, new SideShare(selection(Specs.turned(Turned.RIGHT).spec(), touching, List.of(1, 3), stages), Chosen::sets, true).reasons().size());
        var before = List.of(in(1, "split-squat", 3, 1, 2), in(3, "goblet-squat", 3, 6, 8));
        assertEquals(List.of(), new SideShare(selection(Specs.turned(Turned.RIGHT).spec(), before, List.of(1, 3), stages), Chosen::sets, true).reasons());
        var after = List.of(in(1, "split-squat", 3, 1, 3), in(3, "goblet-squat", 3, 7, 8));
        assertEquals(List.of(), new SideShare(selection(Specs.turned(Turned.RIGHT).spec(), after, List.of(1, 3), stages), Chosen::sets, true).reasons());
    }

    @Test
    void all_of_one_kind_leaves_nothing_to_weigh() {
        var own = List.of(in(1, "split-squat", 3, 1, 8), in(4, "high-to-low-press", 3, 1, 8));
        var same = List.of(in(3, "goblet-squat", 3, 1, 8));
        for (var chosen : List.of(own, same)) {
            var share = standing(chosen, true);
            assertEquals(List.of(), share.reasons());
            assertEquals(chosen.stream().map(Chosen::sets).toList(), sets(share, chosen, 1));
        }
    }

    @Test
    void a_gate_holds_the_share_and_a_square_pelvis_has_none() {
        var chosen = chosen(3, 3, 3);
        var spec = Specs.turned(Turned.RIGHT).spec();
        var s = spec.schedule();
        var gated = spec.scheduled(new CheckedSpec.Schedule(s.start(), s.weeks(), s.days(), s.minutes(), s.startStage(), Optional.of(new Gate("hip internal rotation", 5, "deg"))));
        var stages = List.of(new StageWeeks(Stage.STANDING, 1, 8));
        var held = new SideShare(selection(gated, chosen, ALL, stages), Chosen::sets, true);
        assertEquals(List.of("side-specific/held"), held.reasons().stream().map(reason -> reason.said().key()).toList());
        assertEquals(Source.COACH, held.reasons().getFirst().source());
        assertEquals(List.of(3, 3, 3, 3), sets(held, chosen, 1));
        var square = new SideShare(selection(Specs.turned(Turned.SQUARE).spec(), chosen, ALL, stages), Chosen::sets, true);
        assertEquals(List.of(), square.reasons());
        assertEquals(List.of(3, 3, 3, 3), sets(square, chosen, 1));
    }
}
