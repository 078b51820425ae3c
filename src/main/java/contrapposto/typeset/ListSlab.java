package contrapposto.typeset;

import contrapposto.figure.Tone;
import java.util.List;
import java.util.Optional;

/**
 * Items with a label at the left and words beside it.
 *
 * @param indent    from the left edge to the words, mm
 * @param gap       between items, mm
 * @param goesOn    whether it continues a list; then it is a list of its own to the reader
 */
record ListSlab(List<Item> items, Style style, Numbering numbering, double indent, double gap) implements Slab {
    /** @param label empty for a drawn bullet; none for measures without a value */
    record Item(Line label, List<Line> words) { }

    enum Numbering {
        DISC("Disc"), DECIMAL("Decimal"), NONE("None");

        private final String name;

        Numbering(String name) {
            this.name = name;
        }
    }

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
        tags.listing(numbering.name);
        double top = y;
        for (var item : items) {
            paint(sheet, item, x, top);
            top += item.words().size() * style.line() + gap;
        }
        tags.end();
    }

    private void paint(Sheet sheet, Item item, double x, double y) {
        var tags = sheet.tags();
        tags.begin("LI");
        if (numbering == Numbering.DISC) {
            double side = sheet.desk().gap(Signs.BULLET);
            tags.artifact(() -> Signs.bullet(sheet.pen(), x, y + style.baseline(), side));
        } else {
            tags.leaf("Lbl", () -> sheet.letters(item.label(), style, x, y, Tone.BLACK));
        }
        TextSlab.left(item.words(), style, "LBody").paint(sheet, x + indent, y, 0);
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
        return fits == 0 || fits == items.size() ? Optional.empty()
                : Optional.of(new Cut(part(items.subList(0, fits)), part(items.subList(fits, items.size()))));
    }

    private ListSlab part(List<Item> some) {
        return new ListSlab(some, style, numbering, indent, gap);
    }
}
