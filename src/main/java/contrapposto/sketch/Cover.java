package contrapposto.sketch;

import contrapposto.figure.Bounds;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import java.util.List;

/** What painted outlines hide together. */
record Cover(List<Shape> shapes) {
    /** So much of a shape about its middle must be hidden; the rest is a sliver along its edge. */
    private static final double CORE = .75;

    private record Shape(double[] xs, double[] ys, Bounds box) {
        static Shape of(Outline outline) {
            List<Point> corners = outline.flattened();
            return new Shape(corners.stream().mapToDouble(Point::x).toArray(), corners.stream().mapToDouble(Point::y).toArray(),
                    Bounds.of(corners));
        }

        boolean contains(double x, double y) {
            boolean inside = false;
            if (x > box.minX() && x < box.maxX() && y > box.minY() && y < box.maxY()) {
                int a = xs.length - 1;
                for (int b = 0; b < xs.length; b++) {
                    if (ys[a] > y != ys[b] > y && x < (xs[b] - xs[a]) * (y - ys[a]) / (ys[b] - ys[a]) + xs[a]) {
                        inside = !inside;
                    }
                    a = b;
                }
            }
            return inside;
        }
    }

    static Cover of(List<Outline> outlines) {
        return new Cover(outlines.stream().map(Shape::of).toList());
    }

    boolean hides(Point p) {
        return shapes.stream().anyMatch(shape -> shape.contains(p.x(), p.y()));
    }

    /** Whether every point round the core of a shape, and its middle, is hidden. */
    boolean hides(Outline outline) {
        Bounds box = Bounds.of(outline.flattened());
        Point middle = new Point((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
        return hides(middle) && outline.flattened().stream().map(p -> middle.toward(p, CORE)).allMatch(this::hides);
    }
}
