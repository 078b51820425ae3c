package contrapposto.typeset;

import contrapposto.document.Field;
import java.util.List;

/** Boxes side by side with their labels above. */
record FieldRowSlab(List<Box> boxes, Style style, double box, double measure) implements Slab {
    record Box(Line label, Field field, double share) { }

    private static final double GAP = 3;
    private static final double BELOW_LABEL = 0.6;

    private double label() {
        return boxes.stream().anyMatch(b -> b.label().width() > 0) ? style.line() + BELOW_LABEL : 0;
    }

    @Override
    public double height(double stretch) {
        return label() + box;
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        double room = measure - GAP * (boxes.size() - 1);
        double left = x;
        for (var item : boxes) {
            double width = item.share() * room;
            sheet.tags().begin("Div");
            if (item.label().width() > 0) {
                sheet.leaf("P", item.label(), style, left, y);
            }
            sheet.field(item.field(), left, y + label(), width, box);
            sheet.tags().end();
            left += width + GAP;
        }
    }
}
