package contrapposto.typeset;

import contrapposto.figure.Drawing;
import java.util.List;

/** A drawing of fixed size and its caption below. */
record PlateSlab(Drawing drawing, String alt, double width, double drawn, List<Line> caption, Style style)
        implements Slab {
    private static final double GAP = 1.5;

    @Override
    public double height(double stretch) {
        return drawn + (caption.isEmpty() ? 0 : GAP + caption.size() * style.line());
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        sheet.figure(drawing, alt, x, y, width, drawn);
        if (!caption.isEmpty()) {
            TextSlab.left(caption, style, "P").paint(sheet, x, y + drawn + GAP, stretch);
        }
    }
}
