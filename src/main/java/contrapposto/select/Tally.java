package contrapposto.select;

import contrapposto.catalogue.Stage;
import java.util.List;
import java.util.Optional;

/**
 * The running sums of a partial selection, exercises put in and taken out again as {@link Search} goes: what is covered,
 * what is full, and the amounts scored. Mutable, and seen by its search alone. Exercises go by their place in its list.
 */
final class Tally {
    /** Half sets a week from which more of one muscle no longer counts: direct work in two sessions (twice a week, published). */
    static final int ENOUGH = 4;
    static final int TURNS_ENOUGH = 4;
    static final int PATTERN_ENOUGH = 2;
    /** Exercises of a side that train its phase, and exercises on the feet, from which more do not count. */
    static final int PHASE_ENOUGH = 2;
    static final int STANDING_ENOUGH = 4;
    private static final double SLACK = 1e-6;
    private static final int GOALS = Goal.values().length;

    private final Frame frame;
    private final List<Item> items;
    private final int blocks;
    private final Counters counters;
    private final Steps[] steps;
    private final boolean[] standing;
    private final int[] now;
    private final double[] seconds;
    private final int[] floor;
    private final long[] amount = new long[GOALS];
    private int chosen;

    Tally(Frame frame, List<Item> items) {
        this.frame = frame;
        this.items = items;
        blocks = frame.blocks().size();
        counters = new Counters(frame);
        steps = items.stream().map(item -> Steps.of(item, frame, counters)).toArray(Steps[]::new);
        standing = new boolean[blocks];
        for (int b = 0; b < blocks; b++) {
            standing[b] = frame.blocks().get(b).stage().compareTo(Stage.STANDING) >= 0;
        }
        now = new int[counters.size()];
        seconds = new double[blocks];
        floor = new int[blocks];
    }

    /** With all of these in it. */
    static Tally all(Frame frame, List<Item> items) {
        var tally = new Tally(frame, items);
        for (int i = 0; i < items.size(); i++) {
            tally.add(i);
        }
        return tally;
    }

    /** Scored so far on each {@link Goal}; a copy. */
    long[] amounts() {
        return amount.clone();
    }

    /** Whether exercise {@code i} may join without breaking a hard rule. */
    boolean admits(int i) {
        return admits(items.get(i), steps[i]);
    }

    private boolean admits(Item item, Steps step) {
        if (chosen >= frame.inAll() || item.twoSided() && now[counters.twoSided()] >= frame.twoSided()) {
            return false;
        }
        for (int b : step.in()) {
            if (now[counters.count(b)] >= frame.perSession() || crowdedFloor(item, b)
                    || seconds[b] + step.seconds() > frame.seconds() + SLACK) {
                return false;
            }
        }
        return true;
    }

    /** Once standing work leads, a session has one floor exercise, its opener. */
    private boolean crowdedFloor(Item item, int block) {
        return item.floor() && floor[block] >= 1 && standing[block];
    }

    /**
     * How many more of these exercises there can be at most: by number in all, and in each block by number and time; those
     * that are not done in a block do not count there.
     */
    int places(int[] open) {
        int places = Math.min(open.length, frame.inAll() - chosen);
        for (int b = 0; b < blocks; b++) {
            int elsewhere = 0;
            double shortest = Double.POSITIVE_INFINITY;
            for (int i : open) {
                boolean here = steps[i].isIn(b);
                elsewhere += here ? 0 : 1;
                shortest = here ? Math.min(shortest, steps[i].seconds()) : shortest;
            }
            int byTime = (int) Math.min(frame.perSession(), (frame.seconds() - seconds[b] + SLACK) / shortest);
            places = Math.min(places, elsewhere + Math.max(0, Math.min(frame.perSession() - now[counters.count(b)], byTime)));
        }
        return places;
    }

    void add(int i) {
        change(i, 1);
    }

    void remove(int i) {
        change(i, -1);
    }

    private void change(int i, int sign) {
        var step = steps[i];
        chosen += sign;
        raise(step, sign, now, amount);
        for (int b : step.in()) {
            seconds[b] += sign * step.seconds();
            floor[b] += items.get(i).floor() ? sign : 0;
        }
    }

    private void raise(Steps step, int sign, int[] counts, long[] amounts) {
        for (int g = 0; g < GOALS; g++) {
            long more = 0;
            for (int s = step.first()[g]; s < step.first()[g + 1]; s++) {
                int c = step.counter()[s];
                int before = counters.counted(c, counts[c]);
                counts[c] += sign * step.add()[s];
                more += (long) counters.weight(c) * (counters.counted(c, counts[c]) - before);
            }
            amounts[g] += more + sign * step.linear()[g];
        }
    }

    /** Adds exercise {@code i} to counts and amounts of one's own, which began as {@link #counts} and {@link #amounts}. */
    void raise(int i, int[] counts, long[] amounts) {
        raise(steps[i], 1, counts, amounts);
    }

    /** The counters as they stand; a copy. */
    int[] counts() {
        return now.clone();
    }

    /** What exercise {@code i} alone would add on each goal now, whether it may join or not. */
    long[] gain(int i) {
        return gain(steps[i]);
    }

    private long[] gain(Steps step) {
        long[] gain = new long[GOALS];
        for (int g = 0; g < GOALS; g++) {
            gain[g] = gain(step, g);
        }
        return gain;
    }

    private long gain(Steps step, int goal) {
        long gain = step.linear()[goal];
        for (int s = step.first()[goal]; s < step.first()[goal + 1]; s++) {
            int c = step.counter()[s];
            gain += (long) counters.weight(c) * (counters.counted(c, now[c] + step.add()[s]) - counters.counted(c, now[c]));
        }
        return gain;
    }

    /** The same for one goal, by its ordinal, of each of these exercises. */
    long[] gains(int[] open, int goal) {
        long[] gains = new long[open.length];
        for (int i = 0; i < open.length; i++) {
            gains[i] = gain(steps[open[i]], goal);
        }
        return gains;
    }

    /** Amounts with {@code other}, which is not among the exercises of this tally, in place of {@code out} (−1: of none); empty where it may not join. */
    Optional<long[]> exchanged(int out, Item other) {
        var step = Steps.of(other, frame, counters);
        if (out >= 0) {
            remove(out);
        }
        Optional<long[]> amounts = Optional.empty();
        if (admits(other, step)) {
            long[] with = amounts();
            raise(step, 1, counts(), with);
            amounts = Optional.of(with);
        }
        if (out >= 0) {
            add(out);
        }
        return amounts;
    }

    /**
     * What all of these exercises would add together on one goal, by its ordinal: no choice among them adds more. Their steps are
     * added to {@code counts}, which began as {@link #counts}.
     */
    long together(int[] open, int goal, int[] counts) {
        long sum = 0;
        for (int i : open) {
            var step = steps[i];
            sum += step.linear()[goal];
            for (int s = step.first()[goal]; s < step.first()[goal + 1]; s++) {
                counts[step.counter()[s]] += step.add()[s];
            }
        }
        for (int c : counters.of(goal)) {
            sum += (long) counters.weight(c) * (counters.counted(c, counts[c]) - counters.counted(c, now[c]));
        }
        return sum;
    }

    /** Of the counters of these goals, how much each would still count if it stood at {@code counts}. */
    int[] missing(int[] counts, boolean[] goals) {
        int[] missing = new int[now.length];
        for (int g = 0; g < GOALS; g++) {
            if (goals[g]) {
                for (int c : counters.of(g)) {
                    missing[c] = Math.max(0, counters.counted(c, counts[c]) - now[c]);
                }
            }
        }
        return missing;
    }

    /** By counter of these goals, what these exercises add to what is missing, each by itself, all taken together. */
    int[] raised(int[] open, int[] missing, boolean[] goals) {
        int[] raised = new int[now.length];
        for (int g = 0; g < GOALS; g++) {
            for (int i = 0; i < open.length && goals[g]; i++) {
                var step = steps[open[i]];
                for (int s = step.first()[g]; s < step.first()[g + 1]; s++) {
                    int c = step.counter()[s];
                    raised[c] += Math.min(step.add()[s], missing[c]);
                }
            }
        }
        return raised;
    }

    /** The shares of what is missing that exercise {@code i} adds to counters of these goals, each times the weight of its counter, rounded up. */
    long shares(int i, int[] missing, long[] weight, boolean[] goals) {
        var step = steps[i];
        long sum = 0;
        for (int g = 0; g < GOALS; g++) {
            int end = goals[g] ? step.first()[g + 1] : 0;
            for (int s = step.first()[g]; s < end; s++) {
                int c = step.counter()[s];
                if (weight[c] > 0) {
                    sum += (weight[c] * Math.min(step.add()[s], missing[c]) + missing[c] - 1) / missing[c];
                }
            }
        }
        return sum;
    }
}
