package contrapposto.typeset;

import contrapposto.document.Badge;
import contrapposto.figure.Tone;
import java.util.List;
import java.util.Optional;

/**
 * The bar of a card: the split pill at full width, open on the left, solid on the right. A side without an exercise
 * is dashed. With one half only the bar is that side's alone, its round end outward.
 */
record BarSlab(Optional<End> left, Optional<End> right, Optional<End> both, Style letter, double height) {
    /** @param present whether there is such a side; if not, its half is dashed and its letter light */
    record End(List<Line> heading, Line order, Style style, Style orderStyle, boolean present) { }

    static final double LINE = 0.45;
    private static final double LETTER_AT = 4;
    private static final double HEADING_AT = 10;
    private static final double INNER = 3.5;
    private static final double OUTER = 4.5;
    private static final double DASH_ON = 0.9;
    private static final double DASH_OFF = 0.7;
    private static final double CAP_HEIGHT = 0.711;

    boolean isSplit() {
        return left.isPresent() && right.isPresent();
    }

    /** What is read before the left column: the left half, or the whole of a bar for both sides. */
    void paintLeft(Sheet sheet, double x, double y) {
        both.ifPresent(end -> together(sheet, end, x, y));
        left.ifPresent(end -> half(sheet, Badge.LEFT, end, x, y, isSplit() ? Stock.MEASURE / 2 : Stock.MEASURE,
                isSplit() ? INNER : OUTER));
    }

    /** What is read before the right column. */
    void paintRight(Sheet sheet, double x, double y) {
        double from = isSplit() ? Stock.MEASURE / 2 : 0;
        right.ifPresent(end -> half(sheet, Badge.RIGHT, end, x + from, y, Stock.MEASURE - from,
                isSplit() ? OUTER : OUTER + height / 4));
    }

    private void half(Sheet sheet, Badge side, End end, double x, double y, double width, double inset) {
        boolean open = side == Badge.LEFT;
        boolean solid = !open && end.present();
        var pen = sheet.pen();
        sheet.tags().artifact(() -> {
            if (solid) {
                pen.halfPill(x, y, width, height, false);
                pen.fill(Tone.BLACK);
            } else {
                pen.halfPill(x + LINE / 2, y + LINE / 2, width - LINE, height - LINE, open);
                if (end.present()) {
                    pen.stroke(Tone.BLACK, LINE);
                } else {
                    pen.dashed(Tone.BLACK, LINE, DASH_ON, DASH_OFF);
                }
            }
        });
        double scale = height / 8 > 1.5 ? 1.4 : 1;
        var face = sheet.desk().fonts().of(end.present());
        var ink = solid ? Tone.WHITE : Tone.BLACK;
        double middle = y + height / 2;
        sheet.tags().leaf(sheet.tags().heading(3), () -> {
            pen.beginText(ink);
            pen.words(face, letter.size(), x + LETTER_AT * scale, middle + CAP_HEIGHT * letter.em() / 2,
                    (open ? sheet.desk().wording().leftLetter() : sheet.desk().wording().rightLetter()) + " ");
            pen.endText();
            heading(sheet, end, x + HEADING_AT * scale, middle, ink);
        });
        order(sheet, end, x + width - inset, middle, ink);
    }

    private void together(Sheet sheet, End end, double x, double y) {
        var pen = sheet.pen();
        double middle = y + height / 2;
        double pill = height * 0.7;
        double words = 3 + Signs.width(Badge.BOTH, pill) + 2.4;
        sheet.tags().artifact(() -> {
            pen.capsule(x + LINE / 2, y + LINE / 2, Stock.MEASURE - LINE, height - LINE);
            pen.stroke(Tone.BLACK, LINE);
            Signs.shape(pen, Badge.BOTH, x + 3, middle - pill / 2, pill);
        });
        sheet.tags().leaf(sheet.tags().heading(3), () -> {
            sheet.pillLetters(Badge.BOTH, x + 3, middle - pill / 2, pill);
            heading(sheet, end, x + words, middle, Tone.BLACK);
        });
        order(sheet, end, x + Stock.MEASURE - OUTER, middle, Tone.BLACK);
    }

    private void heading(Sheet sheet, End end, double x, double middle, Tone ink) {
        double top = middle - end.heading().size() * end.style().line() / 2;
        for (int i = 0; i < end.heading().size(); i++) {
            sheet.letters(end.heading().get(i), end.style(), x, top + i * end.style().line(), ink);
        }
    }

    private void order(Sheet sheet, End end, double right, double middle, Tone ink) {
        if (end.order().width() > 0) {
            sheet.leaf("P", end.order(), end.orderStyle(), right - end.order().width(),
                    middle - end.orderStyle().line() / 2, ink);
        }
    }
}
