package contrapposto.select;

import java.util.Arrays;

/**
 * Whether a set could still score as much as a target by taking more of the open exercises: a quick test that
 * {@link Search} asks before it works out {@link Bounds}.
 *
 * <p>The weightiest goals that cannot pass the target must meet it, and so must the first that could. What is missing of a
 * goal, or of each of its counters where all that can be had is needed, is a whole; what an exercise adds is a share of it.
 * Summed up over the exercises, so many of the largest sums as there are places must cover all wholes: once with each weighed
 * the same, once the more the fewer exercises add to it. Where every goal that grows must be met exactly, fetching may cost no
 * more than the target's: then a price on fetching is taken off each sum and off what is to be covered, and no price may show
 * it impossible.
 */
final class Reach {
    /** Large enough that rounding up a share loses little. */
    private static final long WHOLE = 1 << 20;
    private static final int PRICES = 8;
    private static final int GOALS = Goal.values().length;

    private final Scale scale;
    private final Tally tally;

    Reach(Scale scale, Tally tally) {
        this.scale = scale;
        this.tally = tally;
    }

    /**
     * @param places how many of the open exercises there can be
     * @param target amounts to reach
     */
    boolean reaches(int[] open, int places, long[] target) {
        long[] base = tally.amounts();
        int[] counts = tally.counts();
        var gains = new long[GOALS][];
        var inFull = new boolean[GOALS];
        var some = new long[GOALS];
        boolean costs = false;
        for (var goal : scale.order()) {
            int g = goal.ordinal();
            gains[g] = tally.gains(open, g);
            if (goal.cost()) {
                costs = true;
                break;
            }
            long needed = target[g] - base[g];
            long limit = tally.together(open, g, counts);
            long most = Math.min(limit, largest(gains[g], places));
            if (most < needed) {
                return false;
            }
            inFull[g] = needed > 0 && needed == limit && goal != Goal.PINNED;
            some[g] = inFull[g] ? 0 : needed;
            if (most > needed) {
                break;
            }
        }
        int[] missing = tally.missing(counts, inFull);
        long left = costs ? target[Goal.FETCHING.ordinal()] - base[Goal.FETCHING.ordinal()] : Long.MAX_VALUE;
        return covers(open, gains, places, inFull, missing, some, left, false) && covers(open, gains, places, inFull, missing, some, left, true);
    }

    /** @param gains by goal, of each open exercise alone; of goals that were not looked at, none */
    private boolean covers(int[] open, long[][] gains, int places, boolean[] inFull, int[] missing, long[] some, long left, boolean scarce) {
        long[] sums = new long[open.length];
        long needed = counters(open, inFull, missing, sums, scarce);
        for (int g = 0; g < GOALS; g++) {
            if (some[g] > 0) {
                needed += goal(gains[g], some[g], sums, scarce);
            }
        }
        if (left == Long.MAX_VALUE) {
            return largest(sums, places) >= needed;
        }
        return affordable(sums, gains[Goal.FETCHING.ordinal()], places, needed, left);
    }

    /** Adds the shares of each counter to the sums; what they have to cover. */
    private long counters(int[] open, boolean[] inFull, int[] missing, long[] sums, boolean scarce) {
        long[] weight = new long[missing.length];
        long needed = 0;
        int[] total = scarce ? tally.raised(open, missing, inFull) : missing;
        for (int c = 0; c < missing.length; c++) {
            if (missing[c] > 0) {
                weight[c] = WHOLE * missing[c] / total[c];
                needed += weight[c];
            }
        }
        for (int i = 0; i < open.length; i++) {
            sums[i] += tally.shares(open[i], missing, weight, inFull);
        }
        return needed;
    }

    private static long goal(long[] gains, long missing, long[] sums, boolean scarce) {
        long total = missing;
        if (scarce) {
            total = 0;
            for (long gain : gains) {
                total += Math.min(gain, missing);
            }
        }
        long weight = WHOLE * missing / total;
        for (int i = 0; i < gains.length; i++) {
            sums[i] += (weight * Math.min(gains[i], missing) + missing - 1) / missing;
        }
        return weight;
    }

    /** Whether the sums can be reached without fetching more than is left. */
    private static boolean affordable(long[] sums, long[] costs, int places, long needed, long left) {
        long[] paid = new long[sums.length];
        for (int price = 0; price < PRICES; price++) {
            long each = left > 0 ? needed * price / (PRICES * left) : price * WHOLE;
            for (int i = 0; i < paid.length; i++) {
                paid[i] = sums[i] - each * costs[i];
            }
            if (largest(paid, places) < needed - each * left) {
                return false;
            }
        }
        return true;
    }

    /** The sum of the largest positive values, at most so many of them. */
    private static long largest(long[] values, int places) {
        long[] top = new long[places];
        for (long value : values) {
            int at = places;
            while (at > 0 && value > top[at - 1]) {
                at--;
            }
            if (at < places) {
                System.arraycopy(top, at, top, at + 1, places - at - 1);
                top[at] = value;
            }
        }
        return Arrays.stream(top).sum();
    }
}
