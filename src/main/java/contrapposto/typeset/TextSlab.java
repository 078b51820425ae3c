package contrapposto.typeset;

import contrapposto.figure.Tone;
import java.util.List;
import java.util.Optional;

/**
 * Lines of one paragraph or heading.
 *
 * @param tag     structure type
 * @param measure width for lines that are not flush left, mm
 * @param goesOn  whether it continues the paragraph set last
 */
record TextSlab(List<Line> lines, Style style, String tag, Align align, double measure, boolean goesOn)
        implements Slab {
    private static final int FEWEST = 2;

    enum Align { LEFT, CENTRE, RIGHT }

    static TextSlab left(List<Line> lines, Style style, String tag) {
        return new TextSlab(lines, style, tag, Align.LEFT, 0, false);
    }

    /** The same as a paragraph of its own. */
    TextSlab anew() {
        return new TextSlab(lines, style, tag, align, measure, false);
    }

    @Override
    public double height(double stretch) {
        return lines.size() * style.line();
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        for (int i = 0; i < lines.size(); i++) {
            sheet.decorate(lines.get(i), style, offset(x, lines.get(i)), y + i * style.line());
        }
        if (Sheet.links(lines)) {
            sheet.tags().within(tag, () -> {
                for (int i = 0; i < lines.size(); i++) {
                    sheet.press().links().paint(sheet, lines.get(i), style, offset(x, lines.get(i)),
                            y + i * style.line());
                }
            });
        } else if (goesOn) {
            sheet.tags().resume(() -> letters(sheet, x, y));
        } else {
            sheet.tags().leaf(tag, () -> letters(sheet, x, y));
        }
    }

    /** The letters alone, inside marked content of the caller's. */
    void letters(Sheet sheet, double x, double y) {
        for (int i = 0; i < lines.size(); i++) {
            sheet.letters(lines.get(i), style, offset(x, lines.get(i)), y + i * style.line(), Tone.BLACK);
        }
    }

    private double offset(double x, Line line) {
        return switch (align) {
            case LEFT -> x;
            case CENTRE -> x + (measure - line.width()) / 2;
            case RIGHT -> x + measure - line.width();
        };
    }

    @Override
    public boolean whole() {
        return false;
    }

    /** Never one line alone at the foot or at the head of a page. */
    @Override
    public Optional<Cut> cut(double room, double page) {
        int fits = (int) ((room + 1e-6) / style.line());
        int first = Math.min(fits, lines.size() - FEWEST);
        if (first < FEWEST || Sheet.links(lines)) {
            return Optional.empty();
        }
        return Optional.of(new Cut(
                new TextSlab(lines.subList(0, first), style, tag, align, measure, goesOn),
                new TextSlab(lines.subList(first, lines.size()), style, tag, align, measure, true)));
    }
}
