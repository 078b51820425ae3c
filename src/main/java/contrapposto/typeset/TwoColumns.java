package contrapposto.typeset;

import java.util.ArrayList;
import java.util.Optional;

/**
 * Two stacks side by side; the left one is read first.
 *
 * @param second   where the right one starts, mm from the left edge
 * @param midline  whether a thin line runs down between them
 */
record TwoColumns(Stack left, Stack right, double second, boolean midline) implements Slab {
    @Override
    public double height(double stretch) {
        return Math.max(left.height(stretch), right.height(stretch));
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        paint(sheet, x, y, stretch, () -> { });
    }

    /** @param between paints what is read after the left column and before the right one */
    void paint(Sheet sheet, double x, double y, double stretch, Runnable between) {
        left.paint(sheet, x, y, stretch);
        between.run();
        right.paint(sheet, x + second, y, stretch);
        if (midline) {
            double middle = x + Stock.MEASURE / 2;
            sheet.rule(middle, y - 2, middle, y + height(stretch) + 1.5, Sheet.HAIR);
        }
    }

    @Override
    public Optional<Cut> cut(double room, double page) {
        var a = cut(left, room, page);
        var b = cut(right, room, page);
        if (a.isEmpty() || b.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Cut(new TwoColumns((Stack) a.get().head(), (Stack) b.get().head(), second, midline),
                new TwoColumns(anew(a.get().tail()), anew(b.get().tail()), second, midline)));
    }

    /** A paragraph that goes on in a column is one of its own to the reader: others were read in between. */
    private static Stack anew(Slab tail) {
        var items = new ArrayList<>(((Stack) tail).items());
        if (!items.isEmpty() && items.getFirst().slab() instanceof TextSlab text) {
            items.set(0, new Stack.Item(text.anew(), items.getFirst().before(), items.getFirst().keep()));
        }
        return new Stack(items);
    }

    private static Optional<Cut> cut(Stack stack, double room, double page) {
        return stack.height(0) <= room ? Optional.of(new Cut(stack, Stack.EMPTY)) : stack.cut(room, page);
    }
}
