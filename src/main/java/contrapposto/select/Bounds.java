package contrapposto.select;

/**
 * What a set of exercises can reach at most by taking more of those still open, for each place in their order: from that
 * exercise on. Worked out once for all of them, from the last to the first, with the largest gains so far at hand.
 */
final class Bounds {
    private static final int GOALS = Goal.values().length;

    private final Scale scale;
    private final int places;
    private final long[] base;
    private final long[][] gains;
    /** By place in the order: what all from there on would add up to, on each goal. */
    private final long[][] all;
    /** By place in the order and goal: sums of the 1, 2 … largest gains from there on (of a cost: the smallest). */
    private final long[][][] most;
    /** The same of the gains over all goals together. */
    private final long[][] whole;

    Bounds(Tally tally, Scale scale, int[] open) {
        this.scale = scale;
        base = tally.amounts();
        places = tally.places(open);
        int n = open.length;
        gains = new long[n][];
        all = new long[n + 1][];
        most = new long[n + 1][][];
        whole = new long[n + 1][];
        all[n] = base;
        most[n] = new long[GOALS][0];
        whole[n] = new long[0];
        int[] counts = tally.counts();
        for (int k = n - 1; k >= 0; k--) {
            gains[k] = tally.gain(open[k]);
            all[k] = all[k + 1].clone();
            tally.raise(open[k], counts, all[k]);
            most[k] = new long[GOALS][];
            for (int g = 0; g < GOALS; g++) {
                most[k][g] = joined(most[k + 1][g], gains[k][g], Goal.of(g).cost());
            }
            whole[k] = joined(whole[k + 1], scale.score(gains[k]), false);
        }
    }

    /** Sums of the largest (or smallest) values with one more value among them; no more of them than there are places. */
    private long[] joined(long[] sums, long value, boolean smallest) {
        int n = Math.min(places, sums.length + 1);
        var more = new long[n];
        long carried = value;
        long sum = 0;
        for (int i = 0; i < n; i++) {
            long own = i < sums.length ? sums[i] - (i > 0 ? sums[i - 1] : 0) : carried;
            boolean first = i >= sums.length || (smallest ? carried < own : carried > own);
            sum += first ? carried : own;
            carried = first ? own : carried;
            more[i] = sum;
        }
        return more;
    }

    /** The most that this set, or this set with exercises from place {@code k} on, can score. */
    long after(int k) {
        return most(base, scale.score(base), all[k], k, places);
    }

    /** The most that this set with the exercise at place {@code k}, perhaps with later ones, can score. */
    long with(int k) {
        var one = base.clone();
        for (int g = 0; g < GOALS; g++) {
            one[g] += gains[k][g];
        }
        return most(one, scale.score(base) + scale.score(gains[k]), all[k], k + 1, places - 1);
    }

    private long most(long[] from, long together, long[] limit, int k, int most) {
        long highest = Long.MIN_VALUE;
        long[] reach = new long[GOALS];
        int n = Math.min(most, whole[k].length);
        for (int more = 0; more <= n; more++) {
            for (int g = 0; g < GOALS; g++) {
                long sum = from[g] + (more > 0 ? this.most[k][g][more - 1] : 0);
                reach[g] = Goal.of(g).cost() ? sum : Math.min(limit[g], sum);
            }
            long single = together + (more > 0 ? whole[k][more - 1] : 0);
            highest = Math.max(highest, Math.min(single, scale.score(reach)));
        }
        return highest;
    }
}
