package contrapposto.select;

import contrapposto.catalogue.Stage;
import java.util.List;

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
    private final Steps.Cells cells;
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
        cells = new Steps.Cells(blocks);
        steps = items.stream().map(item -> Steps.of(item, frame)).toArray(Steps[]::new);
        standing = new boolean[blocks];
        for (int b = 0; b < blocks; b++) {
            standing[b] = frame.blocks().get(b).stage().compareTo(Stage.STANDING) >= 0;
        }
        now = new int[cells.size()];
        seconds = new double[blocks];
        floor = new int[blocks];
    }

    /** Scored so far on each {@link Goal}; a copy. */
    long[] amounts() {
        return amount.clone();
    }

    /** Whether exercise {@code i} may join without breaking a hard rule. */
    boolean admits(int i) {
        var item = items.get(i);
        if (chosen >= frame.inAll() || item.twoSided() && now[cells.twoSided()] >= frame.twoSided()) {
            return false;
        }
        for (int b : steps[i].in()) {
            if (now[cells.count(b)] >= frame.perSession() || crowdedFloor(item, b)
                    || seconds[b] + steps[i].seconds() > frame.seconds() + SLACK) {
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
            places = Math.min(places, elsewhere + Math.max(0, Math.min(frame.perSession() - now[cells.count(b)], byTime)));
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
        for (int s = 0; s < step.cell().length; s++) {
            int cell = step.cell()[s];
            int cap = step.cap()[s];
            int before = Math.min(cap, now[cell]);
            now[cell] += sign * step.add()[s];
            amount[step.goal()[s]] += (long) step.weight()[s] * (Math.min(cap, now[cell]) - before);
        }
        for (int g = 0; g < GOALS; g++) {
            amount[g] += sign * step.linear()[g];
        }
        for (int b : step.in()) {
            seconds[b] += sign * step.seconds();
            floor[b] += items.get(i).floor() ? sign : 0;
        }
    }

    /** What exercise {@code i} alone would add on each goal now, whether it may join or not. */
    long[] gain(int i) {
        var step = steps[i];
        long[] gain = step.linear().clone();
        for (int s = 0; s < step.cell().length; s++) {
            int before = now[step.cell()[s]];
            int cap = step.cap()[s];
            if (before < cap) {
                gain[step.goal()[s]] += (long) step.weight()[s] * (Math.min(cap, before + step.add()[s]) - before);
            }
        }
        return gain;
    }

    /** Amounts if all of these joined at once: no choice among them scores more on a goal that grows. */
    long[] withAll(int[] open) {
        for (int i : open) {
            add(i);
        }
        long[] amounts = amounts();
        for (int i : open) {
            remove(i);
        }
        return amounts;
    }

    /** Of the counters of these goals, how much each would still count if all of these exercises joined at once. */
    int[] missing(int[] open, boolean[] goals) {
        int[] raised = now.clone();
        for (int i : open) {
            var step = steps[i];
            for (int s = 0; s < step.cell().length; s++) {
                raised[step.cell()[s]] += goals[step.goal()[s]] ? step.add()[s] : 0;
            }
        }
        int[] missing = new int[now.length];
        for (int i : open) {
            var step = steps[i];
            for (int s = 0; s < step.cell().length; s++) {
                int cell = step.cell()[s];
                missing[cell] = Math.max(0, Math.min(step.cap()[s], raised[cell]) - now[cell]);
            }
        }
        return missing;
    }

    /** By counter, what these exercises add to what is missing, each by itself, all taken together. */
    int[] raised(int[] open, int[] missing) {
        int[] raised = new int[now.length];
        for (int i : open) {
            var step = steps[i];
            for (int s = 0; s < step.cell().length; s++) {
                raised[step.cell()[s]] += Math.min(step.add()[s], missing[step.cell()[s]]);
            }
        }
        return raised;
    }

    /** The shares of what is missing that exercise {@code i} adds, each times the weight of its counter, rounded up. */
    long shares(int i, int[] missing, long[] weight) {
        var step = steps[i];
        long sum = 0;
        for (int s = 0; s < step.cell().length; s++) {
            int cell = step.cell()[s];
            if (weight[cell] > 0) {
                sum += (weight[cell] * Math.min(step.add()[s], missing[cell]) + missing[cell] - 1) / missing[cell];
            }
        }
        return sum;
    }
}
