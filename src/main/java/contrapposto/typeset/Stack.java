package contrapposto.typeset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Slabs one under the other, each with a gap above it; the first one's gap does not count. */
record Stack(List<Item> items) implements Slab {
    /**
     * @param keep   whether it stays with the item after it
     * @param start  where it must start; inside a stack that is ignored
     * @param clings whether it stays with the last rows of the item before it
     */
    record Item(Slab slab, double before, boolean keep, Start start, boolean clings) {
        Item(Slab slab, double before, boolean keep) {
            this(slab, before, keep, Start.FLOW, false);
        }

        Item(Slab slab, double before, boolean keep, Start start) {
            this(slab, before, keep, start, false);
        }
    }

    /** After what is before it; on a new page; on a new page that lies on the left when printed on both sides. */
    enum Start { FLOW, PAGE, LEFT_PAGE }

    static final Stack EMPTY = new Stack(List.of());

    Stack {
        items = List.copyOf(items);
    }

    @Override
    public double height(double stretch) {
        double sum = 0;
        for (int i = 0; i < items.size(); i++) {
            sum += (i == 0 ? 0 : items.get(i).before()) + items.get(i).slab().height(stretch);
        }
        return sum;
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        double top = y;
        for (int i = 0; i < items.size(); i++) {
            var item = items.get(i);
            top += i == 0 ? 0 : item.before();
            item.slab().paint(sheet, x, top, stretch);
            top += item.slab().height(stretch);
        }
    }

    @Override
    public Optional<HeadingSlab> pageTitle() {
        return items.stream().flatMap(i -> i.slab().pageTitle().stream()).reduce((first, second) -> second);
    }

    @Override
    public Optional<Cut> cut(double room, double page) {
        double used = 0;
        int fits = 0;
        var head = new ArrayList<Item>();
        while (fits < items.size()) {
            var item = items.get(fits);
            double needed = (fits == 0 ? 0 : item.before()) + item.slab().height(0);
            if (used + needed > room) {
                break;
            }
            used += needed;
            head.add(item);
            fits++;
        }
        if (fits == items.size()) {
            return Optional.of(new Cut(this, EMPTY));
        }
        var next = items.get(fits);
        double left = room - used - (fits == 0 ? 0 : next.before());
        var inside = next.slab().whole() && next.slab().height(0) <= page ? Optional.<Cut>empty() : inside(head, fits, left, page);
        if (inside.isPresent()) {
            return inside;
        }
        int kept = fits;
        while (kept > 0 && items.get(kept - 1).keep()) {
            kept--;
        }
        if (kept > 0) {
            return Optional.of(new Cut(new Stack(items.subList(0, kept)), new Stack(items.subList(kept, items.size()))));
        }
        return new Stack(items.subList(0, fits + 1)).height(0) > page ? inside(head, fits, left, left) : Optional.empty();
    }

    /** Divides the item behind the {@code head} of those that fit; the last way out of what no page holds, though each item is whole. */
    private Optional<Cut> inside(List<Item> head, int fits, double left, double page) {
        var next = items.get(fits);
        return next.slab().cut(left, page).filter(cut -> cut.head().height(0) > 0).map(cut -> {
            var above = new ArrayList<>(head);
            above.add(new Item(cut.head(), next.before(), false));
            var below = new ArrayList<>(List.of(new Item(cut.tail(), 0, next.keep())));
            below.addAll(items.subList(fits + 1, items.size()));
            return new Cut(new Stack(above), new Stack(below));
        });
    }
}
