package contrapposto.typeset;

import contrapposto.document.Field;
import java.util.List;

/** Boxes side by side with their labels above. */
record FieldRowSlab(List<Box> boxes, Style style, double box, double measure) implements Slab {
    record Box(List<Line> label, Field field, double share) { }

    static final double GAP = 3;
    private static final double BELOW_LABEL = 0.6;

    private double label() {
        int most = boxes.stream().filter(b -> b.label().getFirst().width() > 0).mapToInt(b -> b.label().size()).max()
                .orElse(0);
        return most > 0 ? most * style.line() + BELOW_LABEL : 0;
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
            if (item.label().getFirst().width() > 0) {
                double above = label() - BELOW_LABEL - item.label().size() * style.line();
                TextSlab.left(item.label(), style, "P").paint(sheet, left, y + above, stretch);
            }
            sheet.field(item.field(), left, y + label(), width, box);
            sheet.tags().end();
            left += width + GAP;
        }
    }
}
