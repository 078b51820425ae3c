package contrapposto.typeset;

import contrapposto.typeset.Stack.Item;
import contrapposto.typeset.Stack.Start;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Fills the pages of one part in order: nothing is reordered to fill a page. What belongs together stays together;
 * what must be divided is divided between lines, items or groups of rows, never within a card that fits a page.
 */
final class Paginator {
    /** Share of a page that may stand alone so that a table stays whole. */
    private static final double ENOUGH = 0.4;

    private final Desk desk;
    private final Plan plan;
    private final List<Leaf> leaves = new ArrayList<>();
    private final int before;
    private Frame frame;
    private int next;
    private Optional<HeadingSlab> title = Optional.empty();

    /**
     * The frames of a page, in order.
     *
     * @param bounds   where they lie
     * @param repeats  whether the title is repeated on pages that go on
     * @param fills    whether what would fit the next frame whole is divided to fill this one
     */
    record Plan(List<Bounds> bounds, boolean repeats, boolean fills) {
        record Bounds(double x, double y, double height) { }
    }

    /** One page: its frames; none for a page that stays empty so that the next one lies on the right side. */
    record Leaf(List<Frame> frames) { }

    /** @param before pages before this part, to know which side of a sheet a page lies on */
    Paginator(Desk desk, Plan plan, int before) {
        this.desk = desk;
        this.plan = plan;
        this.before = before;
        newLeaf();
    }

    List<Leaf> filled(List<Item> items) {
        for (int from = 0; from < items.size(); ) {
            int to = from + 1;
            while (to < items.size() && items.get(to - 1).keep() && items.get(to).start() == Start.FLOW) {
                to++;
            }
            start(items.get(from).start());
            place(items.subList(from, to));
            from = to;
        }
        balance();
        return leaves;
    }

    /** A card alone on the last page is joined by the one before it, where that one leaves another behind. */
    private void balance() {
        if (leaves.size() < 2 || leaves.get(leaves.size() - 2).frames().size() != 1 || leaves.getLast().frames().size() != 1) {
            return;
        }
        var before = leaves.get(leaves.size() - 2).frames().getFirst();
        boolean cards = frame.onlyCard() && before.last().map(item -> item.slab() instanceof CardSlab).orElse(false);
        if (cards && before.last().orElseThrow().slab().height(0) + frame.last().orElseThrow().before() <= frame.left()) {
            frame.lead(before.takeBack());
        }
    }

    private void start(Start start) {
        boolean wanted = start == Start.PAGE || start == Start.LEFT_PAGE;
        if (wanted && !(frame.isFresh() && next == 1)) {
            title = Optional.empty();
            newLeaf();
        }
        if (start == Start.LEFT_PAGE && (before + leaves.size()) % 2 == 1) {
            leaves.add(leaves.size() - 1, new Leaf(List.of()));
        }
    }

    private void place(List<Item> chunk) {
        var last = chunk.getLast();
        if (chunk.getFirst().slab().pageTitle().isPresent()) {
            frame.unrepeat();
        }
        double needed = needed(chunk);
        if (needed <= frame.left() + 1e-6) {
            chunk.forEach(this::add);
            return;
        }
        if (chunk.getFirst().clings() && bringsRows(chunk)) {
            return;
        }
        boolean fresh = frame.isFresh();
        if (fresh || plan.fills() || !last.slab().whole() || isTallerThanAPage(last.slab())) {
            double room = frame.left() - (needed - last.slab().height(0));
            var cut = last.slab().cut(room, page());
            if (cut.isPresent()) {
                chunk.subList(0, chunk.size() - 1).forEach(this::add);
                add(new Item(cut.get().head(), last.before(), false));
                advance();
                place(List.of(new Item(cut.get().tail(), Frame.BELOW_REPEATED, last.keep())));
                return;
            }
        }
        if (!fresh) {
            advance();
            place(chunk);
        } else if (chunk.size() > 1) {
            add(chunk.getFirst());
            place(chunk.subList(1, chunk.size()));
        } else {
            add(last);
        }
    }

    /** Moves words on together with the table they belong to where both fit a page, else with its last rows. */
    private boolean bringsRows(List<Item> chunk) {
        var rows = frame.last().filter(table -> !movesWhole(table, chunk)).flatMap(item -> item.slab().lastRows());
        var moved = new ArrayList<Item>();
        if (rows.isPresent()) {
            frame.replaceLast(rows.get().head());
            moved.add(new Item(rows.get().tail(), Frame.BELOW_REPEATED, true));
        } else {
            var taken = frame.takeBack();
            taken.forEach(item -> moved.add(new Item(item.slab(), item.before(), true)));
        }
        if (moved.isEmpty()) {
            return false;
        }
        advance();
        moved.addAll(chunk);
        place(moved);
        return true;
    }

    /** Whether a table and what follows it fit the next page, and this one stays at least {@link #ENOUGH} full without them. */
    private boolean movesWhole(Item table, List<Item> chunk) {
        return table.slab().height(0) + table.before() + needed(chunk) <= page() && frame.room() * (1 - ENOUGH) >= frame.left() + table.slab().height(0);
    }

    /** What no page holds is divided where it stands; moving it on would gain nothing. */
    private boolean isTallerThanAPage(Slab slab) {
        return slab.height(0) > page();
    }

    /** What a page that goes on holds. */
    private double page() {
        double repeated = plan.repeats() ? title.map(t -> t.height(0) + Frame.BELOW_REPEATED).orElse(0.0) : 0;
        return plan.bounds().getFirst().height() - repeated;
    }

    private double needed(List<Item> chunk) {
        double needed = frame.isBlank() ? -chunk.getFirst().before() : 0;
        for (var item : chunk) {
            needed += item.before() + item.slab().height(0);
        }
        return needed;
    }

    private void add(Item item) {
        if (frame.isFresh() && item.slab() instanceof RuleSlab rule && rule.words().width() == 0) {
            return;
        }
        item.slab().pageTitle().ifPresent(heading -> title = Optional.of(heading));
        frame.add(item);
    }

    /** To the next frame, because this one is full. */
    private void advance() {
        if (next < plan.bounds().size()) {
            nextFrame(leaves.getLast());
        } else {
            newLeaf();
        }
        if (plan.repeats()) {
            title.ifPresent(t -> frame.repeat(new RunningHead(t.continued(desk))));
        }
    }

    private void newLeaf() {
        leaves.add(new Leaf(new ArrayList<>()));
        next = 0;
        nextFrame(leaves.getLast());
    }

    private void nextFrame(Leaf leaf) {
        var bounds = plan.bounds().get(next++);
        frame = new Frame(bounds.x(), bounds.y(), bounds.height());
        leaf.frames().add(frame);
    }
}
