package contrapposto.typeset;

import contrapposto.document.Field;
import java.util.List;
import java.util.Optional;

/** A check box, words, and perhaps a box behind them. */
record ChoiceSlab(Field field, List<Line> words, Optional<Field> detail, Style style, double side) implements Slab {
    private static final double GAP = 2;
    private static final double DETAIL = 40;
    private static final double DETAIL_HEIGHT = 7.5;

    /** Width taken before the words. */
    static double indent(double side) {
        return side + GAP;
    }

    @Override
    public double height(double stretch) {
        double text = Math.max(side, words.size() * style.line());
        return detail.isPresent() ? Math.max(DETAIL_HEIGHT, text) : text;
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        double row = words.size() == 1 ? height(stretch) : style.line();
        sheet.tags().begin("Div");
        sheet.field(field, x, y + (row - side) / 2, side, side);
        double text = y + (row - style.line()) / 2;
        TextSlab.left(words, style, "P").paint(sheet, x + indent(side), text, stretch);
        detail.ifPresent(box -> sheet.field(box, x + indent(side) + words.getLast().width() + GAP, y, DETAIL,
                DETAIL_HEIGHT));
        sheet.tags().end();
    }
}
