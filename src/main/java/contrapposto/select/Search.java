package contrapposto.select;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds the best set of exercises exactly, by branch and bound. A node is a set; its children add one exercise that comes
 * later in a fixed order, the most useful first. A child, and all that come after it, are cut when they cannot beat the
 * best found, or reach what a quick exchange of exercises ({@link Start}) has reached before:
 *
 * <ul>
 * <li>a quick test tells that what the best found has reached cannot be reached ({@link Reach});
 * <li>on each goal that grows they gain at most what all their exercises would add together, and at most the sum of as many
 * largest single gains as there are places left (the goals are submodular), and no more over all goals together than as
 * many largest whole gains;
 * <li>if that only equals the best found, it needs at least so many more exercises to get there, and pays at least the
 * cheapest so many;
 * <li>an exercise is not taken while another is out that could stand in for it everywhere at no more cost.
 * </ul>
 *
 * Sets are looked at in the order that breaks ties (a set after all that extend it), so the first of several equal ones is
 * kept.
 */
final class Search {
    private final Scale scale;
    private final Tally tally;
    private final List<Item> items;
    private final int[][] betters;
    private final boolean[] now;
    private final Reach reach;
    private final long[] reached;
    private final long reachedScore;
    private boolean[] best;
    private long[] bestAmounts;
    private long bestScore = Long.MIN_VALUE;

    private Search(Frame frame, Scale scale, List<Item> items) {
        this.scale = scale;
        this.items = ordered(frame, scale, items);
        this.tally = new Tally(frame, this.items);
        this.betters = this.items.stream().map(this::betters).toArray(int[][]::new);
        this.now = new boolean[items.size()];
        this.best = new boolean[items.size()];
        this.bestAmounts = tally.amounts();
        this.reach = new Reach(scale, tally);
        this.reached = Start.amounts(tally, scale, this.items.size());
        this.reachedScore = scale.score(reached);
    }

    /**
     * @param chosen  in the order they were decided
     * @param amounts scored on each {@link Goal}
     */
    record Found(List<Item> chosen, long score, long[] amounts) { }

    static Found best(Frame frame, Scale scale, List<Item> items) {
        var search = new Search(frame, scale, items);
        search.from(0);
        var chosen = new ArrayList<Item>();
        for (int i = 0; i < search.items.size(); i++) {
            if (search.best[i]) {
                chosen.add(search.items.get(i));
            }
        }
        return new Found(List.copyOf(chosen), search.bestScore, search.bestAmounts);
    }

    /** The most useful alone first, equals in catalogue order. */
    static List<Item> ordered(Frame frame, Scale scale, List<Item> items) {
        var empty = new Tally(frame, items);
        return IntStream.range(0, items.size()).boxed()
                .sorted(Comparator.comparingLong((Integer i) -> -scale.growing(empty.gain(i)))
                        .thenComparingInt(i -> items.get(i).place()))
                .map(items::get).toList();
    }

    /** Places before this item of those that could stand in for it in any plan. */
    private int[] betters(Item item) {
        return IntStream.range(0, items.indexOf(item)).filter(i -> items.get(i).standsInFor(item)).toArray();
    }

    /** Looks at every set that extends the one now held by exercises from {@code first} on, then at that one itself. */
    private void from(int first) {
        int[] open = open(first);
        if (reach.reaches(open, tally.places(open), bestScore >= reachedScore ? bestAmounts : reached)) {
            extend(open, new Bounds(tally, scale, open));
        }
        long score = scale.score(tally.amounts());
        if (score > bestScore) {
            bestScore = score;
            bestAmounts = tally.amounts();
            best = now.clone();
        }
    }

    private void extend(int[] open, Bounds bounds) {
        for (int k = 0; k < open.length && promising(bounds.after(k)); k++) {
            int i = open[k];
            if (promising(bounds.with(k)) && chosen(betters[i]) && tally.admits(i)) {
                now[i] = true;
                tally.add(i);
                from(i + 1);
                tally.remove(i);
                now[i] = false;
            }
        }
    }

    private boolean promising(long bound) {
        return bound > bestScore && bound >= reachedScore;
    }

    private boolean chosen(int[] all) {
        for (int i : all) {
            if (!now[i]) {
                return false;
            }
        }
        return true;
    }

    /** Exercises from {@code first} on that may yet be taken. */
    private int[] open(int first) {
        int[] open = new int[items.size()];
        int n = 0;
        for (int i = first; i < open.length; i++) {
            if (mayYet(betters[i], first) && tally.admits(i)) {
                open[n++] = i;
            }
        }
        return Arrays.copyOf(open, n);
    }

    private boolean mayYet(int[] betters, int first) {
        for (int better : betters) {
            if (better < first && !now[better]) {
                return false;
            }
        }
        return true;
    }
}
