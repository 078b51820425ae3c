package contrapposto.typeset;

import contrapposto.typeset.Stack.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A place on a page that slabs fill from the top: the live area, or half of a folded sheet. */
final class Frame {
    /** Steps in which a page is stretched. */
    private static final int STEPS = 14;
    static final double BELOW_REPEATED = 2;

    private final double x;
    private final double y;
    private final double room;
    private final List<Item> items = new ArrayList<>();
    private double filled;
    private boolean used;

    Frame(double x, double y, double room) {
        this.x = x;
        this.y = y;
        this.room = room;
    }

    double room() {
        return room;
    }

    /** Height left below what is there at the tightest. */
    double left() {
        return room - filled;
    }

    private double height(double stretch) {
        return new Stack(items).height(stretch);
    }

    void add(Item item) {
        double before = used || items.isEmpty() ? item.before() : Math.min(item.before(), BELOW_REPEATED);
        put(new Item(item.slab(), before, item.keep()));
        used = true;
    }

    private void put(Item item) {
        filled += (items.isEmpty() ? 0 : item.before()) + item.slab().height(0);
        items.add(item);
    }

    /** Something that repeats, so that the frame still counts as fresh. */
    void repeat(Slab slab) {
        put(new Item(slab, 0, true));
    }

    /**
     * Takes back what was added last together with what stays with it, so that it can be put elsewhere; nothing where
     * nothing else would be left here.
     */
    List<Item> takeBack() {
        int from = items.size() - 1;
        while (from > 0 && items.get(from - 1).keep()) {
            from--;
        }
        if (from <= 0) {
            return List.of();
        }
        var taken = List.copyOf(items.subList(from, items.size()));
        truncate(from);
        return taken;
    }

    /** Whether one whole card is all that is here. */
    boolean onlyCard() {
        return items.size() == 1 && items.getFirst().slab() instanceof CardSlab card && card.whole();
    }

    /** Puts what was taken from elsewhere before everything here. */
    void lead(List<Item> taken) {
        if (!taken.isEmpty()) {
            items.addAll(0, taken);
            filled = height(0);
        }
    }

    /** What was added last; empty while this is fresh. */
    Optional<Item> last() {
        return used ? Optional.of(items.getLast()) : Optional.empty();
    }

    /** Puts something lower in the place of what was added last. */
    void replaceLast(Slab slab) {
        var last = items.getLast();
        truncate(items.size() - 1);
        put(new Item(slab, last.before(), false));
    }

    private void truncate(int size) {
        items.subList(size, items.size()).clear();
        filled = height(0);
    }

    /** Takes away what repeats while nothing else is here: a title of its own follows. */
    void unrepeat() {
        if (!used) {
            truncate(0);
        }
    }

    boolean isFresh() {
        return !used;
    }

    /** Whether the first thing put here needs a gap above it. */
    boolean isBlank() {
        return items.isEmpty();
    }

    boolean isOverfull() {
        return filled > room + 0.01;
    }

    /** The widest stretch at which everything fits. */
    double stretch() {
        int step = STEPS;
        while (step > 0 && height((double) step / STEPS) > room) {
            step--;
        }
        return (double) step / STEPS;
    }

    /** Whether anything here can be stretched. */
    boolean isElastic() {
        return height(1) > height(0);
    }

    void paint(Sheet sheet) {
        new Stack(items).paint(sheet, x, y, stretch());
    }
}
