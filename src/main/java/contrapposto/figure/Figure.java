package contrapposto.figure;

import java.util.List;

/** A finished drawing: its box in mm and its marks in painting order. */
public record Figure(double width, double height, List<Mark> marks) {
    public Figure {
        marks = List.copyOf(marks);
    }

    /** The same marks scaled by {@code factor} and shifted into a new box; line widths and words scale alike. */
    public Figure scaled(double factor, double dx, double dy, double newWidth, double newHeight) {
        return new Figure(newWidth, newHeight, marks.stream()
                .map(mark -> mark.mapped(p -> new Point(dx + factor * p.x(), dy + factor * p.y()), factor)).toList());
    }

    /** The same figure with every point on the nearest one of a square grid. */
    public Figure snapped(double grid) {
        return new Figure(width, height, marks.stream().map(mark -> mark.mapped(
                p -> new Point(Math.rint(p.x() / grid) * grid, Math.rint(p.y() / grid) * grid), 1)).toList());
    }

    /** The figure in the mirror; words stay readable and change their anchor instead. */
    public Figure mirrored() {
        return new Figure(width, height, marks.stream().map(mark -> mark.mirrored(width)).toList());
    }

    /** What the words need: no two of these may overlap. */
    public List<Bounds> labelBounds() {
        return marks.stream().filter(Mark.Label.class::isInstance).map(Mark.Label.class::cast)
                .map(TextWidth::bounds).toList();
    }
}
