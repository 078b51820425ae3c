package contrapposto.sketch;

import contrapposto.figure.Bounds;
import contrapposto.figure.Corners;
import contrapposto.figure.Outline;
import java.util.List;

/** What painted outlines hide together. */
record Cover(List<Shape> shapes) {
    /** So much of a shape about its middle must be hidden; the rest is a sliver along its edge. */
    private static final double CORE = .75;

    private record Shape(Corners corners, Bounds box) {
        static Shape of(Outline outline) {
            Corners corners = Corners.of(outline);
            return new Shape(corners, corners.bounds());
        }

        boolean contains(double x, double y) {
            return x > box.minX() && x < box.maxX() && y > box.minY() && y < box.maxY() && corners.contains(x, y);
        }
    }

    static Cover of(List<Outline> outlines) {
        return new Cover(outlines.stream().map(Shape::of).toList());
    }

    private boolean hides(double x, double y) {
        for (Shape shape : shapes) {
            if (shape.contains(x, y)) {
                return true;
            }
        }
        return false;
    }

    /** Whether every point round the core of a shape, and its middle, is hidden. */
    boolean hides(Outline outline) {
        Corners corners = Corners.of(outline);
        Bounds box = corners.bounds();
        double x = (box.minX() + box.maxX()) / 2;
        double y = (box.minY() + box.maxY()) / 2;
        boolean hidden = hides(x, y);
        for (int i = 0; hidden && i < corners.size(); i++) {
            hidden = hides(x + (corners.x(i) - x) * CORE, y + (corners.y(i) - y) * CORE);
        }
        return hidden;
    }
}
