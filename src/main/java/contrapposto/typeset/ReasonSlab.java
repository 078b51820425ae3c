package contrapposto.typeset;

import java.util.List;
import java.util.Optional;

/** Statements, each with the word for its source in a column at the right. */
record ReasonSlab(List<Item> items, Style style, double measure, double gap) implements Slab {
    /** Statements that go over to the next page at least, where there are enough. */
    private static final int FEWEST_AFTER = 2;

    record Item(List<Line> words, Line source) { }

    @Override
    public double height(double stretch) {
        double sum = -gap;
        for (var item : items) {
            sum += gap + item.words().size() * style.line();
        }
        return Math.max(0, sum);
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        var tags = sheet.tags();
        tags.begin("L");
        tags.listing("None");
        double top = y;
        for (var item : items) {
            tags.begin("LI");
            tags.begin("LBody");
            TextSlab.left(item.words(), style, "P").paint(sheet, x, top, 0);
            sheet.leaf("P", item.source(), style, x + measure - item.source().width(), top);
            tags.end();
            tags.end();
            top += item.words().size() * style.line() + gap;
        }
        tags.end();
    }

    @Override
    public boolean whole() {
        return false;
    }

    @Override
    public Optional<Cut> cut(double room, double page) {
        double used = 0;
        int fits = 0;
        for (var item : items) {
            used += item.words().size() * style.line();
            if (used > room + 1e-6) {
                break;
            }
            used += gap;
            fits++;
        }
        fits = fits < items.size() && items.size() >= 2 * FEWEST_AFTER ? Math.min(fits, items.size() - FEWEST_AFTER) : fits;
        return fits == 0 || fits == items.size() ? Optional.empty() : Optional.of(new Cut(
                new ReasonSlab(items.subList(0, fits), style, measure, gap),
                new ReasonSlab(items.subList(fits, items.size()), style, measure, gap)));
    }
}
