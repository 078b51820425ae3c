package contrapposto.select;

import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.Muscle;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The counters of one frame: where each lies, first those of each block, then those of the whole plan; which goal it counts for,
 * what one of it is worth, and the cap from which more is worth nothing.
 */
final class Counters {
    private static final int MUSCLES = Muscle.values().length;
    private static final int PATTERNS = 4;
    private static final int TURNS = 2 * MUSCLES;
    private static final int PHASED = TURNS + 1;
    private static final int RIBS = PHASED + 2;
    private static final int PATTERN = RIBS + 2;
    private static final int STANDING = PATTERN + PATTERNS;
    private static final int KINDS = STANDING + 1;
    private static final int WEEK = KINDS + 2;
    private static final int COUNT = WEEK + 1;
    private static final int OF_A_BLOCK = COUNT + 1;

    private final int blocks;
    private final Goal[] goal;
    private final int[] cap;
    private final int[] weight;
    private final int[][] of;

    Counters(Frame frame) {
        blocks = frame.blocks().size();
        goal = new Goal[size()];
        cap = new int[size()];
        weight = new int[size()];
        for (int b = 0; b < blocks; b++) {
            for (var side : Side.values()) {
                for (var muscle : Muscle.values()) {
                    counter(muscle(b, side, muscle), Goal.MUSCLES, Tally.ENOUGH, wanted(frame, side, muscle));
                }
                counter(phased(b, side), Goal.PHASE, Tally.PHASE_ENOUGH, 1);
                counter(ribs(b, side), Goal.RIBS, 1, 1);
            }
            counter(turns(b), Goal.TURN, Tally.TURNS_ENOUGH, 1);
            for (int p = 0; p < PATTERNS; p++) {
                counter(pattern(b, p), Goal.PATTERNS, Tally.PATTERN_ENOUGH, 1);
            }
            counter(standing(b), Goal.STANDING, Tally.STANDING_ENOUGH, 1);
            counter(week(b), Goal.EVERY_WEEK, Enough.EXERCISES, 1);
            counter(kind(b, 0), Goal.EVERY_WEEK, 1, 1);
            counter(kind(b, 1), Goal.EVERY_WEEK, 1, 1);
            counter(count(b), Goal.FILLED, frame.filled(), 1);
        }
        for (var group : CapacityGroup.values()) {
            counter(group(group), Goal.VARIETY, 1, 1);
        }
        counter(twoSided(), Goal.TWO_SIDED, 1, 1);
        of = Stream.of(Goal.values()).map(this::counters).toArray(int[][]::new);
    }

    private static int wanted(Frame frame, Side side, Muscle muscle) {
        return frame.wanted().containsKey(side) ? frame.wanted().get(side).getOrDefault(muscle, 0) : 0;
    }

    private void counter(int at, Goal countsFor, int upTo, int worth) {
        goal[at] = countsFor;
        cap[at] = upTo;
        weight[at] = worth;
    }

    private int[] counters(Goal one) {
        List<Integer> found = new ArrayList<>();
        for (int c = 0; c < goal.length; c++) {
            if (goal[c] == one) {
                found.add(c);
            }
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    int size() {
        return twoSided() + 1;
    }

    int muscle(int block, Side side, Muscle muscle) {
        return block * OF_A_BLOCK + side.ordinal() * MUSCLES + muscle.ordinal();
    }

    int turns(int block) {
        return block * OF_A_BLOCK + TURNS;
    }

    int phased(int block, Side side) {
        return block * OF_A_BLOCK + PHASED + side.ordinal();
    }

    int ribs(int block, Side side) {
        return block * OF_A_BLOCK + RIBS + side.ordinal();
    }

    int pattern(int block, int pattern) {
        return block * OF_A_BLOCK + PATTERN + pattern;
    }

    int standing(int block) {
        return block * OF_A_BLOCK + STANDING;
    }

    /** Exercises of a block that make its weeks full enough. */
    int week(int block) {
        return block * OF_A_BLOCK + WEEK;
    }

    /** @param kind 0 for work of the legs, 1 for the rest */
    int kind(int block, int kind) {
        return block * OF_A_BLOCK + KINDS + kind;
    }

    /** Exercises of a block. */
    int count(int block) {
        return block * OF_A_BLOCK + COUNT;
    }

    int group(CapacityGroup group) {
        return blocks * OF_A_BLOCK + group.ordinal();
    }

    int twoSided() {
        return blocks * OF_A_BLOCK + CapacityGroup.values().length;
    }

    /** The counters that count for a goal, by its ordinal. */
    int[] of(int goal) {
        return of[goal];
    }

    int goal(int counter) {
        return goal[counter].ordinal();
    }

    int weight(int counter) {
        return weight[counter];
    }

    /** What counts of this much. */
    int counted(int counter, int much) {
        return Math.min(cap[counter], much);
    }
}
