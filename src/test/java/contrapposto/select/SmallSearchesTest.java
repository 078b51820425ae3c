package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec.Aim;
import contrapposto.quantity.Side;
import contrapposto.select.Selection.StageWeeks;
import contrapposto.wording.Said;
import contrapposto.wording.Term;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Choices small enough to see through: what is found, what it scores on each goal, and what is said of what was not chosen. Goals and their order are the house's. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SmallSearchesTest {
    private static final Scale SCALE = Scale.of(List.of(Aim.SIDE_TO_SIDE_MOVEMENT));

    private static Search.Found found(Frame frame, Item... items) {
        return Search.best(frame, Scale.of(frame.aims()), List.of(items));
    }

    private static List<String> ids(Search.Found found) {
        return found.chosen().stream().map(Item::id).sorted().toList();
    }

    /** The same as {@link SearchTest} does at length: nothing that trying all of up to 64 sets finds is missed. */
    @Test
    void finds_what_trying_everything_finds_in_small() {
        var random = new Random(3);
        for (int c = 0; c < 60; c++) {
            var frame = SearchTest.frame(random);
            var items = SearchTest.items(random, 2 + random.nextInt(5));
            var scale = Scale.of(frame.aims());
            var found = Search.best(frame, scale, items);
            var expected = SearchTest.bruteForce(frame, scale, Search.ordered(frame, scale, items));
            assertEquals(expected, found.chosen(), "case " + c);
            assertEquals(SearchTest.score(frame, scale, expected), found.score(), "case " + c);
            assertEquals(found.score(), scale.score(found.amounts()), "case " + c);
        }
    }

    private static Item hip(int place) {
        return Made.at(place).stage(Stage.SUPPORTED).left(Muscle.GLUTEUS_MAXIMUS, 2).item();
    }

    private static Item calf(int place) {
        return Made.at(place).stage(Stage.SUPPORTED).left(Muscle.CALF, 1).right(Muscle.CALF, 1).item();
    }

    private static Item nothing(int place) {
        return Made.at(place).stage(Stage.SUPPORTED).item();
    }

    @Test
    void where_one_fits_the_weightier_muscle_wins() {
        var one = found(Made.frame(Made.APART, 300), calf(0), hip(1));
        assertEquals(List.of("family-1"), ids(one));
        assertEquals(2 * 4, one.amounts()[Goal.MUSCLES.ordinal()], "weight 2, from four half sets a week on no more counts");
        assertEquals(List.of("family-0"), ids(found(Made.frame(Made.APART, 300), Made.at(0).stage(Stage.SUPPORTED).left(Muscle.CALF, 1).pinned().item(), hip(1))), "what is asked for goes before");
    }

    @Test
    void amounts_are_counted_as_the_goals_say() {
        var rich = Made.at(0).group(CapacityGroup.KNEE_BEND).loaded().twoSided().turning().phased(Side.LEFT).phased(Side.RIGHT).ribs(Side.LEFT).pinned().thing("dumbbell")
                .left(Muscle.GLUTEUS_MAXIMUS, 1).left(Muscle.CHEST, 2).right(Muscle.CALF, 2).item();
        var amounts = found(Made.frame(Made.APART, 300), rich).amounts();
        var expected = Map.ofEntries(Map.entry(Goal.PINNED, 1L), Map.entry(Goal.TWO_SIDED, 1L), Map.entry(Goal.EVERY_WEEK, 2L), Map.entry(Goal.PHASE, 2L), Map.entry(Goal.MUSCLES, 2 * 3L + 4L), Map.entry(Goal.RIBS, 1L),
                Map.entry(Goal.TURN, 1L), Map.entry(Goal.PATTERNS, 2L), Map.entry(Goal.STANDING, 1L), Map.entry(Goal.FILLED, 1L), Map.entry(Goal.VARIETY, 1L), Map.entry(Goal.FETCHING, 2L),
                Map.entry(Goal.EARLIER, 1L));
        for (var goal : Goal.values()) {
            assertEquals(expected.get(goal), amounts[goal.ordinal()], goal.name());
        }
    }

    /** Squat, hinge, push and pull under a weight, each on two days a week: no other groups, none without a weight. */
    @Test
    void four_patterns_count_under_a_weight() {
        for (var group : CapacityGroup.values()) {
            boolean pattern = List.of(CapacityGroup.KNEE_BEND, CapacityGroup.HINGE, CapacityGroup.PRESS, CapacityGroup.PULL).contains(group);
            assertEquals(pattern ? 2 : 0, found(Made.frame(Made.APART, 300), Made.at(0).group(group).loaded().item()).amounts()[Goal.PATTERNS.ordinal()], group.name());
            assertEquals(0, found(Made.frame(Made.APART, 300), Made.at(0).group(group).item()).amounts()[Goal.PATTERNS.ordinal()], group.name());
        }
        var four = found(Made.frame(Made.APART, 3000), Made.at(0).group(CapacityGroup.KNEE_BEND).loaded().item(), Made.at(1).group(CapacityGroup.HINGE).loaded().item(),
                Made.at(2).group(CapacityGroup.PRESS).loaded().item(), Made.at(3).group(CapacityGroup.PULL).loaded().item());
        assertEquals(8, four.amounts()[Goal.PATTERNS.ordinal()]);
        assertEquals(4, four.amounts()[Goal.VARIETY.ordinal()]);
    }

    @Test
    void a_plan_keeps_its_numbers() {
        var frame = Made.frame(Made.APART, 3000);
        var squats = found(frame, Made.at(0).twoSided().item(), Made.at(1).twoSided().item(), Made.at(2).item());
        assertEquals(List.of("family-0", "family-2"), ids(squats), "one two-sided lift");
        var many = found(frame, hip(0), Made.at(1).left(Muscle.CALF, 2).item(), Made.at(2).right(Muscle.QUADRICEPS, 2).item(), Made.at(3).item(), Made.at(4).item(), Made.at(5).item());
        assertEquals(4, many.chosen().size(), "four exercises a session");
        var floor = found(frame, Made.at(0).stage(Stage.FLOOR).left(Muscle.GLUTEUS_MAXIMUS, 2).item(), Made.at(1).stage(Stage.FLOOR).right(Muscle.QUADRICEPS, 2).item());
        assertEquals(1, floor.chosen().size(), "one opener on the floor");
        var weeks = new Frame(List.of(new StageWeeks(Stage.FLOOR, 1, 4), new StageWeeks(Stage.SUPPORTED, 5, 8)), Made.APART, 3000, 2, 2, 3, 1, List.of(), frame.wanted());
        var spread = found(weeks, Made.at(0).stage(Stage.FLOOR).weeks(1, 4).item(), Made.at(1).stage(Stage.FLOOR).weeks(1, 4).item(), Made.at(2).weeks(5, 8).item(), Made.at(3).weeks(5, 8).item());
        assertEquals(3, spread.chosen().size(), "three in all, two at a time, two on the floor before standing work leads");
    }

    @Test
    void of_equals_the_earlier_and_the_handier_is_taken() {
        var frame = Made.frame(Made.APART, 300);
        assertEquals(List.of("family-0"), ids(found(frame, hip(1), hip(0))));
        assertEquals(List.of("family-1"), ids(found(frame, Made.at(0).stage(Stage.SUPPORTED).left(Muscle.GLUTEUS_MAXIMUS, 2).thing("cable").item(), hip(1))));
        assertEquals(List.of("family-0"), ids(found(Made.frame(Made.APART, 3000), Made.at(0).left(Muscle.GLUTEUS_MAXIMUS, 2).item())), "and something rather than nothing");
        assertEquals(List.of(), ids(found(Made.frame(Made.APART, 269), hip(0))), "270 s do not fit");
        assertEquals(List.of("family-0"), ids(found(Made.frame(Made.APART, 270), hip(0))));
    }

    private static Said why(Frame frame, Search.Found found, Item item) {
        return new WhyNot(frame, SCALE, found).of(item).said();
    }

    private static long count(Said said, String name) {
        return ((Term.Count) said.terms().get(name)).count();
    }

    private static String text(Said said, String name) {
        return said.terms().get(name) instanceof Term.Word(var word) ? word : ((Term.Exercise) said.terms().get(name)).id();
    }

    /** With the calf in place of the hip, muscles fall from 2 × 4 to 3 on each side. */
    @Test
    void what_was_not_chosen_says_what_the_plan_would_lose_first() {
        var frame = Made.frame(Made.APART, 300);
        var said = why(frame, found(frame, hip(0), calf(1)), calf(1));
        assertEquals("not-chosen/in-place", said.key());
        assertEquals(List.of("family-0", "goal-muscles"), List.of(text(said, "exercise"), text(said, "goal")));
        assertEquals(List.of(8L, 6L), List.of(count(said, "now"), count(said, "then")));
    }

    @Test
    void the_exchange_that_loses_least_is_told() {
        var frame = Made.frame(Made.APART, 560);
        var strong = Made.at(0).stage(Stage.SUPPORTED).left(Muscle.GLUTEUS_MAXIMUS, 2).right(Muscle.QUADRICEPS, 2).item();
        var said = why(frame, found(frame, strong, hip(1), calf(2), nothing(3)), nothing(3));
        assertEquals("family-2", text(said, "exercise"), "not the one that covers most");
        assertEquals(List.of(22L, 16L), List.of(count(said, "now"), count(said, "then")));
    }

    /** Three fill a session; a fourth that covers nothing costs a thing to fetch, or its place after another like it. */
    @Test
    void what_could_simply_be_added_says_what_it_would_cost() {
        var frame = Made.frame(Made.APART, 3000);
        var found = found(frame, hip(0), calf(1), nothing(2), nothing(3));
        assertEquals(3, found.chosen().size());
        var placed = why(frame, found, nothing(3));
        assertEquals(List.of("family-2", "goal-earlier"), List.of(text(placed, "exercise"), text(placed, "goal")));
        var asked = found(frame, Made.at(0).stage(Stage.SUPPORTED).pinned().item(), Made.at(1).stage(Stage.SUPPORTED).pinned().item(), Made.at(2).stage(Stage.SUPPORTED).pinned().item(), nothing(3));
        var added = why(frame, asked, nothing(3));
        assertEquals("not-chosen/added", added.key());
        assertEquals("goal-fetching", text(added, "goal"));
        assertEquals(List.of(3L, 4L), List.of(count(added, "now"), count(added, "then")));
    }

    @Test
    void where_all_is_asked_for_and_full_there_is_no_room() {
        var frame = Made.frame(Made.APART, 300);
        var pinned = Made.at(0).pinned().item();
        assertEquals("not-chosen/no-room", why(frame, found(frame, pinned, hip(1)), hip(1)).key());
    }
}
