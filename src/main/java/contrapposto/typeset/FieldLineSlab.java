package contrapposto.typeset;

import contrapposto.document.Field;
import java.util.List;

/** The head of a day in the log: a rule, the day, and labelled boxes; the last box ends at the right edge. */
record FieldLineSlab(Line heading, Style style, List<Box> boxes, Style body, double measure) implements Slab {
    /** @param width of the box, mm */
    record Box(Line label, Field field, double width, Line after) {
        double whole() {
            return label.width() + INNER + width + (after.width() > 0 ? INNER + after.width() : 0);
        }
    }

    private static final double INNER = 1.4;
    private static final double ABOVE = 1;
    private static final double GAP = 4;

    @Override
    public double height(double stretch) {
        return ABOVE + style.line() + 0.8 + (fits() ? 0 : style.line() + 1);
    }

    private double used() {
        return boxes.stream().mapToDouble(Box::whole).sum();
    }

    private boolean fits() {
        return heading.width() + GAP + used() + GAP * boxes.size() <= measure;
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        sheet.across(x, y, measure, Sheet.HEAVY);
        double top = y + ABOVE;
        sheet.press().bookmarks().section(Text.of(List.of(heading)), y);
        sheet.leaf(sheet.tags().heading(2), heading, style, x, top);
        double row = fits() ? top : top + style.line() + 1;
        double left = fits() ? x + FIRST * measure : x;
        double room = x + measure - left;
        double words = used() - boxes.stream().mapToDouble(Box::width).sum();
        double least = GAP / 2 * (boxes.size() - 1);
        double scale = Math.min(1, (room - least - words) / (used() - words));
        double taken = words + scale * (used() - words);
        double gap = boxes.size() > 1 ? (room - taken) / (boxes.size() - 1) : GAP;
        for (var box : boxes) {
            var fitted = new Box(box.label(), box.field(), box.width() * scale, box.after());
            paint(sheet, fitted, left, row);
            left += fitted.whole() + gap;
        }
    }

    /** Where the first box begins, as a share of the measure. */
    private static final double FIRST = 0.25;

    private void paint(Sheet sheet, Box box, double x, double y) {
        double text = y + (style.line() - body.line()) / 2;
        sheet.tags().begin("Div");
        sheet.leaf("P", box.label(), body, x, text);
        double left = x + box.label().width() + INNER;
        sheet.field(box.field(), left, y, box.width(), style.line());
        if (box.after().width() > 0) {
            sheet.leaf("P", box.after(), body, left + box.width() + INNER, text);
        }
        sheet.tags().end();
    }
}
