package contrapposto.select;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds the best set of exercises exactly, by branch and bound. Exercises are decided in a fixed order, the most useful
 * first, in or out. A branch is cut when it cannot beat the best found:
 *
 * <ul>
 * <li>on each goal that grows it gains at most what all open exercises would add together, and at most the sum of as many
 * largest single gains as there are places left (the goals are submodular), and no more over all goals together than as
 * many largest whole gains;
 * <li>if that only equals the best found, it needs at least so many more exercises to get there, and pays at least the
 * cheapest so many;
 * <li>an exercise is not taken while another is out that could stand in for it everywhere at no more cost.
 * </ul>
 *
 * Branches run in the order that breaks ties, so the first of several equal selections is kept.
 */
final class Search {
    private final Scale scale;
    private final Tally tally;
    private final List<Item> items;
    private final List<List<Integer>> betters;
    private final boolean[] now;
    private boolean[] best;
    private long[] bestAmounts;
    private long bestScore = Long.MIN_VALUE;

    private Search(Frame frame, Scale scale, List<Item> items) {
        this.scale = scale;
        this.items = ordered(frame, scale, items);
        this.tally = new Tally(frame, this.items);
        this.betters = this.items.stream().map(this::betters).toList();
        this.now = new boolean[items.size()];
        this.best = new boolean[items.size()];
        this.bestAmounts = tally.amounts();
    }

    /**
     * @param chosen  in the order they were decided
     * @param amounts scored on each {@link Goal}
     */
    record Found(List<Item> chosen, long score, long[] amounts) { }

    static Found best(Frame frame, Scale scale, List<Item> items) {
        var search = new Search(frame, scale, items);
        search.decide(0);
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
    private List<Integer> betters(Item item) {
        var betters = new ArrayList<Integer>();
        for (int i = 0; i < items.size() && items.get(i) != item; i++) {
            if (items.get(i).standsInFor(item)) {
                betters.add(i);
            }
        }
        return List.copyOf(betters);
    }

    private void decide(int depth) {
        if (depth == items.size()) {
            var amounts = tally.amounts();
            if (scale.score(amounts) > bestScore) {
                bestScore = scale.score(amounts);
                bestAmounts = amounts;
                best = now.clone();
            }
            return;
        }
        if (hopeless(depth)) {
            return;
        }
        if (tally.admits(depth) && betters.get(depth).stream().allMatch(i -> now[i])) {
            now[depth] = true;
            tally.add(depth);
            decide(depth + 1);
            tally.remove(depth);
            now[depth] = false;
        }
        decide(depth + 1);
    }

    private boolean hopeless(int depth) {
        if (bestScore == Long.MIN_VALUE) {
            return false;
        }
        int[] open = open(depth);
        int places = tally.places(open);
        long[] all = tally.withAll(open);
        long[] reach = tally.amounts();
        long single = scale.score(reach);
        long[][] gains = new long[reach.length][open.length];
        long[] whole = new long[open.length];
        for (int i = 0; i < open.length; i++) {
            long[] gain = tally.gain(open[i]);
            whole[i] = scale.score(gain);
            for (int g = 0; g < gains.length; g++) {
                gains[g][i] = gain[g];
            }
        }
        Arrays.sort(whole);
        for (long[] ofGoal : gains) {
            Arrays.sort(ofGoal);
        }
        for (int more = 0; more <= places; more++) {
            for (int g = 0; g < gains.length && more > 0; g++) {
                reach[g] = Goal.of(g).cost() ? reach[g] + gains[g][more - 1]
                        : Math.min(all[g], reach[g] + gains[g][open.length - more]);
            }
            single += more > 0 ? whole[open.length - more] : 0;
            if (Math.min(single, scale.score(reach)) > bestScore) {
                return false;
            }
        }
        return true;
    }

    /** Exercises still to be decided that may yet be taken. */
    private int[] open(int depth) {
        return IntStream.range(depth, items.size())
                .filter(i -> betters.get(i).stream().allMatch(better -> better >= depth || now[better])).toArray();
    }
}
