package contrapposto.select;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the best selection exactly, by branch and bound. Exercises are decided in a fixed order, the most useful first,
 * each in every duty or out. What a partial selection can still gain is at most the sum of the largest single gains of
 * as many open exercises as there are places left, since every goal that grows does so ever more slowly (it is
 * submodular) and all else are costs; a branch that cannot beat the best found is cut. Branches run in the order that
 * breaks ties, so the first of several equal selections is kept.
 */
final class Search {
    private static final List<Duty> TWO_SESSIONS = List.of(Duty.BOTH, Duty.A, Duty.B);
    private static final List<Duty> ONE_SESSION = List.of(Duty.A);

    private final Frame frame;
    private final Tally tally;
    private final List<Item> items;
    private final List<Duty> duties;
    private final Duty[] now;
    private Duty[] best;
    private long bestScore = Long.MIN_VALUE;
    private long[] bestAmounts = new long[0];

    private Search(Frame frame, Scale scale, List<Item> items) {
        this.frame = frame;
        this.tally = new Tally(frame, scale);
        this.items = ordered(frame, scale, items);
        this.duties = frame.sessions() == 1 ? ONE_SESSION : TWO_SESSIONS;
        this.now = new Duty[items.size()];
        this.best = new Duty[items.size()];
    }

    /**
     * @param items   in the order they were decided
     * @param duties  of each
     * @param amounts scored on each {@link Goal}
     */
    record Found(List<Item> items, List<Duty> duties, long score, long[] amounts) {
        List<Item> chosen() {
            var chosen = new ArrayList<Item>();
            for (int i = 0; i < items.size(); i++) {
                if (duties.get(i) != Duty.OUT) {
                    chosen.add(items.get(i));
                }
            }
            return chosen;
        }

        Duty duty(Item item) {
            return duties.get(items.indexOf(item));
        }
    }

    static Found best(Frame frame, Scale scale, List<Item> items) {
        var search = new Search(frame, scale, items);
        search.decide(0);
        return new Found(search.items, List.of(search.best), search.bestScore, search.bestAmounts);
    }

    /** The most useful alone first, equals in catalogue order. */
    static List<Item> ordered(Frame frame, Scale scale, List<Item> items) {
        var empty = new Tally(frame, scale);
        var ordered = new ArrayList<>(items);
        ordered.sort(Comparator.comparingLong((Item i) -> -empty.gain(i)).thenComparingInt(Item::place));
        return List.copyOf(ordered);
    }

    private void decide(int depth) {
        if (depth == items.size()) {
            if (tally.score() > bestScore) {
                bestScore = tally.score();
                bestAmounts = tally.amounts();
                best = now.clone();
            }
            return;
        }
        if (bestScore != Long.MIN_VALUE && bound(depth) <= bestScore) {
            return;
        }
        var item = items.get(depth);
        for (var duty : duties) {
            if (tally.admits(item, duty)) {
                now[depth] = duty;
                tally.add(item, duty);
                decide(depth + 1);
                tally.remove(item, duty);
            }
        }
        now[depth] = Duty.OUT;
        decide(depth + 1);
    }

    private long bound(int depth) {
        long[] gains = new long[items.size() - depth];
        for (int i = depth; i < items.size(); i++) {
            gains[i - depth] = tally.gain(items.get(i));
        }
        Arrays.sort(gains);
        long bound = tally.score();
        int places = Math.min(gains.length, frame.inAll() - tally.chosen());
        for (int i = 0; i < places; i++) {
            bound += gains[gains.length - 1 - i];
        }
        return bound;
    }
}
