package contrapposto.select;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Fills the minutes that the chosen exercises leave with further sets: of all ways to give each between its least and
 * most, the one with the most sets a week that fits every session of every run of weeks; among equals the earlier in
 * training order get more.
 */
final class Sets {
    private final Frame frame;
    private final List<Item> items;
    private final Map<Item, Duty> duties;
    private final int[] daysOf;
    private final int[] now;
    private int[] best;
    private int bestWeekly = -1;

    private Sets(Frame frame, List<Item> items, Map<Item, Duty> duties) {
        this.frame = frame;
        this.items = items;
        this.duties = duties;
        this.daysOf = new int[] {frame.daysOf(0), frame.daysOf(1)};
        this.now = new int[items.size()];
        this.best = new int[items.size()];
    }

    /** @param items in training order */
    static Map<Item, Integer> fill(Frame frame, List<Item> items, Map<Item, Duty> duties) {
        var sets = new Sets(frame, items, duties);
        sets.decide(0, 0);
        var filled = new LinkedHashMap<Item, Integer>();
        for (int i = 0; i < items.size(); i++) {
            filled.put(items.get(i), sets.best[i]);
        }
        return filled;
    }

    private void decide(int depth, int weekly) {
        if (depth == items.size()) {
            if (weekly > bestWeekly && fits()) {
                bestWeekly = weekly;
                best = now.clone();
            }
            return;
        }
        var item = items.get(depth);
        int days = (duties.get(item).in(0) ? daysOf[0] : 0) + (duties.get(item).in(1) ? daysOf[1] : 0);
        for (int sets = item.most(); sets >= item.least(); sets--) {
            now[depth] = sets;
            decide(depth + 1, weekly + sets * days);
        }
    }

    private boolean fits() {
        for (var block : frame.blocks()) {
            for (int session = 0; session < frame.sessions(); session++) {
                double seconds = 0;
                for (int i = 0; i < items.size(); i++) {
                    boolean here = items.get(i).window().meets(block) && duties.get(items.get(i)).in(session);
                    seconds += here ? items.get(i).seconds(now[i]) : 0;
                }
                if (seconds > frame.seconds() + 1e-6) {
                    return false;
                }
            }
        }
        return true;
    }
}
