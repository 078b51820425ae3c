package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Stage;
import contrapposto.quantity.Side;
import contrapposto.select.Selection.StageWeeks;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * What lets the search leave most sets unseen. Right answers alone do not show it: a bound that is too high only takes longer. So bounds are held
 * against what can truly be had, from above and, where that is simple, exactly.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PruningTest {
    /** Of the targets of one test, so many were seen to be out of reach when it was written. */
    private static final int SEEN = 103;

    private static int[] all(int items) {
        return IntStream.range(0, items).toArray();
    }

    private static long[] withAll(Tally tally, int[] items) {
        long[] amounts = tally.amounts();
        int[] counts = tally.counts();
        for (int i : items) {
            tally.raise(i, counts, amounts);
        }
        return amounts;
    }

    private static Frame holding(Frame f, int perSession, int inAll) {
        return new Frame(f.blocks(), f.days(), f.seconds(), perSession, f.filled(), inAll, f.twoSided(), f.aims(), f.wanted());
    }

    /** The best that sets of at most so many of these, from one place on, truly score with what is held already. */
    private static long truly(Frame frame, Scale scale, List<Item> items, int from, int places) {
        long best = Long.MIN_VALUE;
        for (int set = 0; set < 1 << items.size(); set++) {
            if (Integer.bitCount(set) <= places && Integer.numberOfTrailingZeros(set | 1 << 30) >= from) {
                var tally = new Tally(frame, items);
                for (int i = from; i < items.size(); i++) {
                    if ((set >> i & 1) == 1) {
                        tally.add(i);
                    }
                }
                best = Math.max(best, scale.score(tally.amounts()));
            }
        }
        return best;
    }

    @Test
    void a_bound_is_never_under_what_can_be_had_and_exact_where_one_place_is_left() {
        var random = new Random(17);
        int tight = 0;
        int cases = 0;
        for (int c = 0; c < 40; c++) {
            var frame = holding(SearchTest.frame(random), 9, c % 2 == 0 ? 1 : 3);
            var items = SearchTest.items(random, 5);
            var scale = Scale.of(frame.aims());
            var tally = new Tally(frame, items);
            var bounds = new Bounds(tally, scale, all(5));
            int places = tally.places(all(5));
            for (int k = 0; k <= items.size(); k++) {
                long truth = truly(frame, scale, items, k, places);
                assertTrue(bounds.after(k) >= truth, "case " + c + ", place " + k);
                assertTrue(places > 1 || bounds.after(k) == truth, "case " + c + ", place " + k);
                tight += bounds.after(k) == truth ? 1 : 0;
                cases++;
            }
            for (int k = 0; k < items.size(); k++) {
                if (places == 1) {
                    tally.add(k);
                    assertEquals(scale.score(tally.amounts()), bounds.with(k), "case " + c + ", place " + k);
                    tally.remove(k);
                }
            }
            assertArrayEquals(new long[Goal.values().length], tally.amounts(), "the tally is left as it was");
        }
        assertTrue(tight > 0.6 * cases, tight + " of " + cases + " bounds are just what can be had");
    }

    private static Item hip(int place) {
        return Made.at(place).left(Muscle.GLUTEUS_MAXIMUS, 2).item();
    }

    /** Two exercises for one muscle that counts no further: together they add up to no more than one of them does. */
    @Test
    void a_bound_counts_what_is_covered_only_once_and_what_it_costs() {
        var frame = Made.frame(Made.APART, 3000);
        var scale = Scale.of(frame.aims());
        for (var second : List.of(hip(1), Made.at(2).left(Muscle.GLUTEUS_MAXIMUS, 2).thing("cable").item())) {
            var items = List.of(hip(0), second);
            var tally = new Tally(frame, items);
            var bounds = new Bounds(tally, scale, all(2));
            assertEquals(truly(frame, scale, items, 0, 2), bounds.after(0));
            assertEquals(truly(frame, scale, items, 1, 2), bounds.after(1));
        }
    }

    @Test
    void places_are_counted_by_number_in_all_by_number_and_by_time() {
        var frame = Made.frame(Made.APART, 3000);
        var items = List.of(hip(0), hip(1), hip(2), hip(3), hip(4), hip(5), hip(6));
        assertEquals(4, new Tally(frame, items).places(all(7)), "four a session");
        assertEquals(2, new Tally(frame, items).places(all(2)), "no more than are open");
        assertEquals(1, new Tally(holding(frame, 4, 1), items).places(all(7)), "one in all");
        assertEquals(3, new Tally(Made.frame(Made.APART, 810), items).places(all(7)), "three of 270 s");
        assertEquals(2, new Tally(Made.frame(Made.APART, 809), items).places(all(7)));
        var begun = new Tally(Made.frame(Made.APART, 810), items);
        begun.add(0);
        assertEquals(2, begun.places(new int[] {1, 2, 3}));
        begun.add(1);
        begun.add(2);
        assertEquals(0, begun.places(new int[] {3, 4}));
        var blocks = new Frame(List.of(new StageWeeks(Stage.SUPPORTED, 1, 4), new StageWeeks(Stage.STANDING, 5, 8)), Made.APART, 810, 2, 3, 6, 1, List.of(), frame.wanted());
        var split = List.of(Made.at(0).weeks(1, 4).item(), Made.at(1).weeks(1, 4).item(), Made.at(2).weeks(5, 8).item(), Made.at(3).item());
        assertEquals(3, new Tally(blocks, split).places(all(4)), "two a session of each run of weeks, one elsewhere");
    }

    private static boolean reaches(Frame frame, List<Item> items, int[] held, int places, java.util.function.Consumer<long[]> raised) {
        var tally = new Tally(frame, items);
        var target = withAll(tally, all(items.size()));
        raised.accept(target);
        Arrays.stream(held).forEach(tally::add);
        var open = IntStream.range(0, items.size()).filter(i -> Arrays.stream(held).noneMatch(h -> h == i)).toArray();
        return new Reach(Scale.of(frame.aims()), tally).reaches(open, places, target);
    }

    private static int[] none() {
        return new int[0];
    }

    @Test
    void what_all_together_do_is_reached_by_all_and_no_more_is() {
        var frame = Made.frame(Made.APART, 3000);
        var items = List.of(hip(0), Made.at(1).right(Muscle.QUADRICEPS, 2).item(), Made.at(2).phased(Side.LEFT).pinned().item());
        assertTrue(reaches(frame, items, none(), 3, target -> { }));
        assertTrue(reaches(frame, items, new int[] {0, 1, 2}, 0, target -> { }));
        for (var goal : List.of(Goal.PINNED, Goal.PHASE, Goal.MUSCLES, Goal.STANDING, Goal.FILLED, Goal.VARIETY)) {
            assertFalse(reaches(frame, items, none(), 3, target -> target[goal.ordinal()]++), "one more of " + goal);
        }
        assertFalse(reaches(frame, items, none(), 3, target -> target[Goal.FETCHING.ordinal()]--), "all of it with less to fetch");
        assertTrue(reaches(frame, items, none(), 3, target -> target[Goal.FETCHING.ordinal()]++));
        assertTrue(reaches(frame, items, none(), 3, target -> target[Goal.PHASE.ordinal()]--), "with more than asked of a weightier goal the rest does not matter");
    }

    /** Three exercises each cover one muscle: with two places the third stays uncovered, though each alone would fit. */
    @Test
    void as_many_exercises_are_needed_as_there_are_things_that_only_one_of_them_covers() {
        var frame = Made.frame(Made.APART, 3000);
        var items = List.of(hip(0), Made.at(1).right(Muscle.QUADRICEPS, 2).item(), Made.at(2).left(Muscle.CALF, 2).item());
        assertFalse(reaches(frame, items, none(), 2, target -> { }));
        assertTrue(reaches(frame, items, new int[] {1}, 2, target -> { }));
        assertFalse(reaches(frame, items, new int[] {1}, 1, target -> { }));
        assertFalse(reaches(frame, items, none(), 0, target -> { }));
    }

    private static boolean meets(Scale scale, long[] amounts, long[] target) {
        return scale.score(amounts) >= scale.score(target);
    }

    /** Targets that a larger set scores: no set that meets one may be called out of reach, and most that none meets are. */
    @Test
    void what_is_called_out_of_reach_is_and_most_of_it_is_called_so() {
        var random = new Random(29);
        int none = 0;
        int seen = 0;
        for (int c = 0; c < 400; c++) {
            var frame = holding(SearchTest.frame(random), 9, 9);
            var items = SearchTest.items(random, 6);
            var scale = Scale.of(frame.aims());
            var tally = new Tally(frame, items);
            int places = 1 + random.nextInt(3);
            int larger = random.nextInt(1, 1 << 6);
            var target = withAll(tally, IntStream.range(0, 6).filter(i -> (larger >> i & 1) == 1).toArray());
            boolean met = false;
            for (int set = 0; set < 1 << 6 && !met; set++) {
                int own = set;
                met = Integer.bitCount(set) <= places && meets(scale, withAll(tally, IntStream.range(0, 6).filter(i -> (own >> i & 1) == 1).toArray()), target);
            }
            boolean reaches = new Reach(scale, tally).reaches(all(6), places, target);
            assertTrue(reaches || !met, "case " + c);
            none += met ? 0 : 1;
            seen += met || reaches ? 0 : 1;
        }
        assertTrue(none > 100 && seen >= SEEN, seen + " of " + none + " seen to be out of reach");
    }

    @Test
    void the_most_useful_by_itself_is_decided_first_and_of_equals_the_earlier() {
        var frame = Made.frame(Made.APART, 3000);
        var calf = Made.at(0).left(Muscle.CALF, 2).item();
        var costly = Made.at(4).left(Muscle.GLUTEUS_MAXIMUS, 2).thing("cable").thing("wedge").item();
        assertEquals(List.of(hip(1), hip(2), costly, calf), Search.ordered(frame, Scale.of(frame.aims()), List.of(calf, costly, hip(2), hip(1))), "what it costs does not count here");
    }

    @Test
    void a_first_guess_is_good_and_leaves_nothing_behind() {
        var random = new Random(23);
        int best = 0;
        for (int c = 0; c < 60; c++) {
            var frame = SearchTest.frame(random);
            var items = SearchTest.items(random, 8);
            var scale = Scale.of(frame.aims());
            var tally = new Tally(frame, items);
            long reached = scale.score(Start.amounts(tally, scale, items.size()));
            long score = Search.best(frame, scale, items).score();
            assertTrue(reached <= score, "case " + c);
            best += reached == score ? 1 : 0;
            assertArrayEquals(new long[Goal.values().length], tally.amounts(), "case " + c);
        }
        assertTrue(best >= 56, best + " of 60 first guesses are the best there is; 56 when this was written");
    }

    /** Two places: one that works hip and thigh a little adds most, 6 + 6, then a hip 2 more; a hip and a thigh make 16. */
    @Test
    void a_first_guess_exchanges_what_was_taken_too_soon() {
        var frame = holding(Made.frame(Made.APART, 3000), 2, 2);
        var some = Made.at(0).left(Muscle.GLUTEUS_MAXIMUS, 1).right(Muscle.QUADRICEPS, 1).item();
        var thigh = Made.at(2).right(Muscle.QUADRICEPS, 2).item();
        var amounts = Start.amounts(new Tally(frame, List.of(some, hip(1), thigh)), Scale.of(frame.aims()), 3);
        assertEquals(16, amounts[Goal.MUSCLES.ordinal()]);
        assertEquals(2, amounts[Goal.FILLED.ordinal()]);
    }
}
