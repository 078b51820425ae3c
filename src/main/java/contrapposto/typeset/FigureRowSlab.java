package contrapposto.typeset;

import contrapposto.document.Block.FigureRow.Part;
import java.util.List;

/** Drawings of one side next to each other; the page decides how high they are. */
record FigureRowSlab(List<Part> parts, double width, double lowest, double highest) implements Slab {
    @Override
    public double height(double stretch) {
        return lowest + (highest - lowest) * stretch;
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        double left = x;
        for (var part : parts) {
            double share = part.share() * width;
            sheet.figure(part.drawing(), part.alt(), left, y, share, height(stretch));
            left += share;
        }
    }
}
