package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Reason;
import contrapposto.assess.Specs;
import contrapposto.catalogue.Family.Works;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Aim;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.select.Selection.Chosen;
import contrapposto.select.Selection.StageWeeks;
import contrapposto.setup.SetUps;
import contrapposto.setup.SolvedSetUp;
import contrapposto.wording.Term;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Whole choices among a handful of families, set up without solving a pose; what may stand in for what is common practice, no source. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ChoosingByHandTest {
    private static final Specs RIGHT = Specs.turned(Turned.RIGHT);

    private static Selection select(CheckedSpec spec, String... ids) {
        return new Selector().select(Arranged.only(spec, List.of(ids)));
    }

    private static List<String> ids(Selection selection) {
        return selection.exercises().stream().map(Chosen::id).toList();
    }

    private static List<String> why(Selection selection, String id) {
        return selection.leftOut().get(id).stream().map(Reason::rule).toList();
    }

    private static CheckedSpec choosing(CheckedSpec spec, List<String> include, List<String> exclude) {
        return spec.choosing(new CheckedSpec.Choices(include, exclude, Map.of(), Map.of()));
    }

    @Test
    void exercises_are_numbered_in_training_order_and_done_on_every_day() {
        var selection = select(RIGHT.spec(), "suitcase-carry", "high-to-low-press", "split-squat", "floor-bridge");
        assertEquals(List.of("floor-bridge", "split-squat", "high-to-low-press", "suitcase-carry"), ids(selection));
        assertEquals(List.of(1, 2, 3, 4), selection.exercises().stream().map(Chosen::number).toList());
        assertEquals(List.of(DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY, DayOfWeek.FRIDAY), selection.days().stream().map(Selection.Day::day).toList());
        selection.days().forEach(day -> assertEquals(List.of(1, 2, 3, 4), day.numbers()));
        assertEquals(List.of(new StageWeeks(Stage.STANDING, 1, 4), new StageWeeks(Stage.INTEGRATED, 5, 8)), selection.stages());
        var carry = selection.exercises().getLast();
        assertEquals(List.of(5, 8), List.of(carry.firstWeek(), carry.lastWeek()), "integrated work comes in after half");
        assertEquals(List.of(), selection.shortfalls());
    }

    @Test
    void every_family_is_in_the_plan_or_says_why_not_in_catalogue_order() {
        var selection = among(List.of("goblet-squat"));
        var all = new TreeSet<>(selection.leftOut().keySet());
        all.addAll(ids(selection));
        assertEquals(Invented.CATALOGUE.families().size(), all.size());
        assertEquals(Invented.CATALOGUE.families().stream().map(family -> family.id()).filter(selection.leftOut()::containsKey).toList(), List.copyOf(selection.leftOut().keySet()));
        assertEquals(List.of("excluded"), why(selection, "goblet-squat"));
        assertEquals(List.of("skill"), why(selection, "one-leg-hinge"));
        assertEquals(0.5, ((Term.Number) selection.leftOut().get("one-leg-hinge").getFirst().said().terms().get("years")).value());
        assertEquals(List.of("equipment"), why(selection, "step-up"), "as setting up says");
        assertEquals(List.of(), selection.shortfalls());
    }

    /** Among a few families that make three exercises of two kinds, the coach leaving out these. */
    private static Selection among(List<String> exclude) {
        return new Selector().select(Arranged.among(choosing(RIGHT.spec(), List.of(), exclude), List.of("split-squat", "goblet-squat", "one-leg-hinge", "floor-bridge", "supported-curl", "raised-hand-push-up")));
    }

    /** House: what asks most skill waits for a year of training, unless the coach asks for it. */
    @Test
    void skill_bars_newcomers_only_and_not_what_is_asked_for() {
        assertEquals(List.of("floor-bridge"), ids(select(RIGHT.spec(), "one-leg-hinge", "floor-bridge")));
        assertTrue(ids(select(RIGHT.trained(1).spec(), "one-leg-hinge", "floor-bridge")).contains("one-leg-hinge"));
        assertTrue(ids(select(choosing(RIGHT.spec(), List.of("one-leg-hinge"), List.of()), "one-leg-hinge", "floor-bridge")).contains("one-leg-hinge"));
        assertTrue(ids(select(RIGHT.spec(), "split-squat", "floor-bridge")).contains("split-squat"), "of skill 2");
        assertEquals(List.of("excluded", "skill"), why(among(List.of("one-leg-hinge")), "one-leg-hinge"));
    }

    /** Two ramp sets of 75 s come off: 11 minutes leave 510 s, 10 leave 450; two sets of split squats take 90 + 2 × 205, a bridge 30 + 2 × 105. */
    @Test
    void minutes_less_the_ramp_sets_are_what_a_session_holds() {
        assertEquals(List.of("floor-bridge"), ids(select(RIGHT.lasting(8, 10).spec(), "split-squat", "floor-bridge")));
        assertEquals(List.of("split-squat"), ids(select(RIGHT.lasting(8, 11).spec(), "split-squat", "floor-bridge")));
        assertEquals(List.of("floor-bridge", "split-squat"), ids(select(RIGHT.lasting(8, 15).spec(), "split-squat", "floor-bridge")));
    }

    /** With two years of training a split squat may have three sets: 740 s of two each, 945 with a third one of the squat. */
    @Test
    void minutes_that_are_left_go_into_sets() {
        assertEquals(List.of(2, 2), select(RIGHT.trained(2).lasting(8, 18).spec(), "split-squat", "floor-bridge").exercises().stream().map(Chosen::sets).toList());
        assertEquals(List.of(2, 3), select(RIGHT.trained(2).lasting(8, 19).spec(), "split-squat", "floor-bridge").exercises().stream().map(Chosen::sets).toList());
    }

    /** House: one lift of both legs while movement is the aim, two where strength is. */
    @Test
    void two_sided_lifts_are_rationed_by_the_first_aim() {
        var both = new String[] {"goblet-squat", "two-leg-deadlift", "floor-bridge"};
        long movement = ids(select(RIGHT.aiming(Aim.SIDE_TO_SIDE_MOVEMENT, Aim.STRENGTH).spec(), both)).stream().filter(id -> !id.equals("floor-bridge")).count();
        assertEquals(1, movement);
        assertEquals(1, ids(select(RIGHT.aiming().spec(), both)).stream().filter(id -> !id.equals("floor-bridge")).count());
        assertTrue(ids(select(RIGHT.aiming(Aim.STRENGTH).spec(), both)).containsAll(List.of("goblet-squat", "two-leg-deadlift")));
    }

    private static CheckedSpec on(CheckedSpec spec, DayOfWeek... days) {
        var s = spec.schedule();
        return spec.scheduled(new CheckedSpec.Schedule(s.start(), s.weeks(), List.of(days), s.minutes(), s.startStage(), s.gate()));
    }

    @Test
    void on_neighbouring_days_hard_exercises_for_one_muscle_share_a_session_and_the_rest_goes_on() {
        var selection = select(on(RIGHT.spec(), DayOfWeek.MONDAY, DayOfWeek.TUESDAY), "split-squat", "goblet-squat", "floor-bridge", "raised-hand-push-up");
        assertEquals(4, selection.exercises().size());
        var hard = List.of("split-squat", "goblet-squat");
        for (var chosen : selection.exercises()) {
            long days = selection.days().stream().filter(day -> day.numbers().contains(chosen.number())).count();
            assertEquals(hard.contains(chosen.id()) ? 1 : 2, days, chosen.id());
        }
    }

    @Test
    void neighbouring_days_hold_more_exercises_than_a_session_but_no_more_than_six_each() {
        var many = new String[] {"floor-bridge", "raised-hand-push-up", "supported-curl", "split-squat", "staggered-deadlift", "goblet-squat", "high-to-low-press", "standing-row",
            "triceps-extension"};
        var touching = select(on(RIGHT.lasting(8, 90).spec(), DayOfWeek.MONDAY, DayOfWeek.TUESDAY), many);
        assertTrue(touching.exercises().size() > 6 && touching.exercises().size() <= 8, () -> "" + ids(touching));
        touching.days().forEach(day -> assertTrue(day.numbers().size() <= 6, day::toString));
        assertEquals(6, select(RIGHT.lasting(8, 90).spec(), many).exercises().size());
    }

    @Test
    void the_reasons_of_what_was_chosen_end_with_what_it_earns() {
        var selection = select(RIGHT.lasting(8, 11).spec(), "split-squat", "floor-bridge");
        var reasons = selection.exercises().getFirst().reasons();
        var earns = reasons.stream().filter(reason -> reason.rule().equals("earns")).findFirst().orElseThrow().said();
        assertEquals("floor-bridge", ((Term.Exercise) earns.terms().get("exercise")).id());
        assertEquals("goal-phase", ((Term.Word) earns.terms().get("goal")).word(), "a bridge of both legs trains no side's phase");
        assertEquals(List.of(4L, 0L), List.of(((Term.Count) earns.terms().get("now")).count(), ((Term.Count) earns.terms().get("then")).count()), "two sides in two stages");
        assertEquals("covers", reasons.getFirst().rule());
        assertTrue(reasons.stream().anyMatch(reason -> reason.said().key().equals("instead/taken")));
        var asked = select(choosing(RIGHT.lasting(8, 11).spec(), List.of("split-squat"), List.of()), "split-squat", "floor-bridge").exercises().getFirst();
        assertTrue(asked.reasons().stream().noneMatch(reason -> reason.rule().equals("earns")), "what is asked for need not earn its place");
        assertEquals("included", asked.reasons().getFirst().rule());
    }

    /** Two exercises train the phase of both sides in two stages, 8; with a bridge, the same for both, in place of one 4 are left. */
    @Test
    void what_an_exercise_earns_is_counted_with_all_that_stays() {
        var selection = select(RIGHT.lasting(8, 20).spec(), "split-squat", "staggered-deadlift", "floor-bridge");
        assertEquals(List.of("split-squat", "staggered-deadlift"), ids(selection));
        var earns = selection.exercises().getFirst().reasons().stream().filter(reason -> reason.rule().equals("earns")).findFirst().orElseThrow().said();
        assertEquals(List.of(8L, 4L), List.of(((Term.Count) earns.terms().get("now")).count(), ((Term.Count) earns.terms().get("then")).count()));
    }

    private static SetUps training(SetUps setUps, String id, Muscle muscle) {
        var s = setUps.usable().get(id).on(Side.LEFT);
        return Arranged.with(setUps, id, new Sided.Only<>(Side.LEFT, new SolvedSetUp(s.family(), s.side(), s.role(), s.setUp(), s.problem(), s.pose(), s.phase(), Map.of(muscle, 1.0), Map.of(),
                s.reasons(), s.runnerUp(), s.lacks(), s.byCoach())));
    }

    /** 330 s hold one of 306: the one for the muscle that the left side wants first, whichever of the two that is. */
    @Test
    void the_first_muscle_that_a_side_wants_weighs_most() {
        var free = Arranged.only(RIGHT.lasting(8, 8).spec(), List.of("high-to-low-press", "standing-row"));
        var wanted = free.assessed().target(Side.LEFT).muscles();
        for (int second = 1; second < wanted.size(); second++) {
            var row = training(training(free, "high-to-low-press", wanted.get(second)), "standing-row", wanted.get(second - 1));
            assertEquals(List.of("standing-row"), ids(new Selector().select(row)));
            var press = training(training(free, "high-to-low-press", wanted.get(second - 1)), "standing-row", wanted.get(second));
            assertEquals(List.of("high-to-low-press"), ids(new Selector().select(press)));
        }
    }

    @Test
    void a_second_choice_asked_of_the_same_selector_is_the_same() {
        var selector = new Selector();
        var setUps = Arranged.only(RIGHT.spec(), List.of("split-squat", "floor-bridge", "supported-curl"));
        assertEquals(selector.select(setUps), selector.select(setUps));
    }

    private static CheckedSpec fromTheFloor(CheckedSpec spec) {
        var s = spec.schedule();
        return spec.scheduled(new CheckedSpec.Schedule(s.start(), s.weeks(), s.days(), s.minutes(), Stage.FLOOR, s.gate()));
    }

    /** House: three exercises of two kinds of work make a start; where the floor has none, supported work begins, and the coach is told. */
    @Test
    void a_plan_starts_with_the_first_stage_that_fills_its_first_week() {
        var supported = new String[] {"supported-curl", "raised-hand-push-up", "wall-one-leg-stand", "split-squat"};
        var later = select(fromTheFloor(RIGHT.spec()), supported);
        assertEquals(Stage.SUPPORTED, later.stages().getFirst().stage());
        assertTrue(later.shortfalls().stream().anyMatch(said -> said.key().equals("shortfall/starts-later")));
        var floor = select(fromTheFloor(RIGHT.spec()), "floor-bridge", "box-bridge", "all-fours-reach", "supported-curl", "split-squat");
        assertEquals(Stage.FLOOR, floor.stages().getFirst().stage());
        assertTrue(floor.shortfalls().stream().noneMatch(said -> said.key().equals("shortfall/starts-later")));
        var thin = select(fromTheFloor(RIGHT.spec()), "floor-bridge", "box-bridge", "split-squat");
        assertEquals(Stage.FLOOR, thin.stages().getFirst().stage(), "where no stage fills it, the one asked for");
    }

    /** A supported split squat that opens in week 3 is no preparation where the loaded one is done from week 1, as asked. */
    @Test
    void an_easier_form_does_not_come_in_after_its_harder_one() {
        var ids = List.of("split-squat", "wall-split-squat", "floor-bridge", "all-fours-reach", "raised-hand-push-up", "supported-curl", "goblet-squat");
        var asked = new Selector().select(Arranged.knowing(Arranged.among(choosing(fromTheFloor(RIGHT.spec()), List.of("split-squat"), List.of()), ids), List.of("wall-split-squat")));
        assertEquals(List.of("easier-form"), why(asked, "wall-split-squat"));
        assertEquals(List.of(), asked.shortfalls());
        var both = choosing(fromTheFloor(RIGHT.spec()), List.of("split-squat", "wall-split-squat"), List.of());
        assertTrue(ids(new Selector().select(Arranged.only(both, ids))).contains("wall-split-squat"), "unless it is asked for too");
    }

    @Test
    void three_exercises_of_two_kinds_are_enough() {
        assertTrue(Enough.in(List.of(Works.LEG, Works.LEG, Works.ARM)));
        assertTrue(Enough.in(List.of(Works.TRUNK, Works.LEG, Works.ARM, Works.ARM)));
        assertFalse(Enough.in(List.of(Works.LEG, Works.ARM)));
        assertFalse(Enough.in(List.of(Works.LEG, Works.LEG, Works.LEG)));
    }

    private static Instead instead(SetUps setUps, String id) {
        return Selector.alone(setUps, id).exercises().getFirst().instead();
    }

    private static Instead instead(String id, String... others) {
        var all = new ArrayList<>(List.of(others));
        all.add(id);
        return instead(Arranged.only(RIGHT.spec(), all), id);
    }

    @Test
    void one_exercise_alone_is_done_from_first_to_last_on_the_first_day() {
        var selection = Selector.alone(Arranged.only(RIGHT.spec(), List.of("suitcase-carry", "floor-bridge")), "suitcase-carry");
        assertEquals(List.of("suitcase-carry"), ids(selection));
        var chosen = selection.exercises().getFirst();
        assertEquals(List.of(1, 1, 8, 2), List.of(chosen.number(), chosen.firstWeek(), chosen.lastWeek(), chosen.sets()));
        assertEquals(List.of(new Selection.Day(DayOfWeek.MONDAY, List.of(1))), selection.days());
        assertTrue(selection.leftOut().isEmpty() && selection.shortfalls().isEmpty());
        var unknown = assertThrows(IllegalArgumentException.class, () -> Selector.alone(Arranged.only(RIGHT.spec(), List.of("floor-bridge")), "suitcase-carry"));
        assertTrue(unknown.getMessage().contains("suitcase-carry"));
    }

    /** A split squat is held with a dumbbell, a goblet squat and a suitcase deadlift with a kettlebell, a bridge with nothing. */
    @Test
    void when_its_things_are_taken_the_nearest_in_kind_that_needs_none_of_them_stands_in() {
        assertEquals(Optional.of("goblet-squat"), instead("split-squat", "goblet-squat", "suitcase-deadlift", "floor-bridge", "staggered-deadlift").taken());
        assertEquals(Optional.of("suitcase-deadlift"), instead("split-squat", "suitcase-deadlift", "floor-bridge", "staggered-deadlift").taken(), "on the feet too");
        assertEquals(Optional.of("floor-bridge"), instead("split-squat", "floor-bridge", "staggered-deadlift").taken());
        assertEquals(Optional.of("goblet-squat"), instead("split-squat", "goblet-squat", "wall-one-leg-stand").taken(), "a squat for a squat, though a stand trains each side's phase");
        assertEquals(Optional.empty(), instead("split-squat", "staggered-deadlift").taken(), "a dumbbell too");
        assertEquals(Optional.empty(), instead("floor-bridge", "box-bridge").taken(), "nothing of it can be taken");
    }

    /** A split squat loads knee, hip and ankle on one leg; a bridge the hip alone; a deadlift asks for the lower back too. */
    @Test
    void when_it_hurts_what_asks_for_less_and_nothing_else_stands_in() {
        assertEquals(Optional.of("box-bridge"), instead("split-squat", "box-bridge", "two-leg-deadlift", "floor-bridge").hurts());
        assertEquals(Optional.of("floor-bridge"), instead("split-squat", "two-leg-deadlift", "floor-bridge").hurts(), "knee and ankle rest");
        assertEquals(Optional.empty(), instead("split-squat", "two-leg-deadlift").hurts(), "the lower back would work");
        assertEquals(Optional.of("box-bridge"), instead("step-up", "box-bridge").hurts(), "knee and ankle rest");
        assertEquals(Optional.empty(), instead("supported-curl", "all-fours-reach", "raised-hand-push-up").hurts(), "both ask for the shoulder");
        assertEquals(Optional.of("kneeling-row"), instead("one-arm-row", "kneeling-row", "standing-curl").hurts(), "the lower back rests");
        assertEquals(Instead.NONE, instead("split-squat"));
    }

    @Test
    void how_it_helps_when_it_hurts_is_told() {
        assertEquals("easier", how(List.of("split-squat", "box-bridge"), "split-squat"));
        assertEquals("spares", how(List.of("standing-chop", "tall-kneeling-turn"), "standing-chop"));
    }

    private static String how(List<String> ids, String id) {
        var selection = new Selector().select(Arranged.only(choosing(RIGHT.lasting(8, 11).spec(), List.of(id), List.of()), ids));
        var said = selection.exercises().stream().filter(chosen -> chosen.id().equals(id)).findFirst().orElseThrow().reasons().stream()
                .filter(reason -> reason.said().key().equals("instead/hurts")).findFirst().orElseThrow().said();
        return ((Term.Word) said.terms().get("how")).word();
    }

    @Test
    void nothing_of_a_later_stage_for_fewer_sides_or_other_muscles_stands_in() {
        assertEquals(Optional.empty(), instead("split-squat", "slow-march").taken(), "integrated work after standing work");
        assertEquals(Optional.of("wall-one-leg-stand"), instead("split-squat", "wall-one-leg-stand").taken());
        assertEquals(Optional.empty(), instead("split-squat", "supported-curl", "raised-hand-push-up").taken());
        var ids = List.of("split-squat", "wall-one-leg-stand");
        var both = Arranged.only(RIGHT.spec(), ids);
        var leftOnly = Arranged.with(both, "wall-one-leg-stand", new Sided.Only<>(Side.LEFT, both.usable().get("wall-one-leg-stand").on(Side.LEFT)));
        assertEquals(Optional.empty(), instead(leftOnly, "split-squat").taken());
        var left = Arranged.with(leftOnly, "split-squat", new Sided.Only<>(Side.LEFT, both.usable().get("split-squat").on(Side.LEFT)));
        assertEquals(Optional.of("wall-one-leg-stand"), instead(left, "split-squat").taken());
        assertFalse(instead("split-squat", "wall-one-leg-stand").equals(Instead.NONE));
    }
}
