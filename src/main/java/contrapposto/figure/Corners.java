package contrapposto.figure;

import contrapposto.figure.Outline.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * An outline flattened to straight lines, for areas and overlaps: the start included, the closing point not repeated. Numbers in place of points,
 * since thousands of them are asked about for each drawing.
 */
public final class Corners {
    /** Pieces a curve is cut into. */
    private static final int PIECES = 4;

    private final double[] xs;
    private final double[] ys;

    private Corners(double[] xs, double[] ys) {
        this.xs = xs;
        this.ys = ys;
    }

    public static Corners of(Outline outline) {
        int most = 1 + PIECES * outline.segments().size();
        double[] xs = new double[most];
        double[] ys = new double[most];
        Point from = outline.start();
        xs[0] = from.x();
        ys[0] = from.y();
        int count = 1;
        for (Segment segment : outline.segments()) {
            switch (segment) {
                case Segment.Line(Point end) -> {
                    xs[count] = end.x();
                    ys[count++] = end.y();
                }
                case Segment.Curve(Point a, Point b, Point end) -> {
                    for (int i = 1; i <= PIECES; i++) {
                        double t = (double) i / PIECES;
                        xs[count] = on(from.x(), a.x(), b.x(), end.x(), t);
                        ys[count++] = on(from.y(), a.y(), b.y(), end.y(), t);
                    }
                }
            }
            from = segment.end();
        }
        return new Corners(Arrays.copyOf(xs, count), Arrays.copyOf(ys, count));
    }

    /** A coordinate of the cubic Bézier curve at {@code t}. */
    private static double on(double from, double a, double b, double to, double t) {
        double s = 1 - t;
        return from * (s * s * s) + 3 * s * s * t * a + 3 * s * t * t * b + t * t * t * to;
    }

    public int size() {
        return xs.length;
    }

    public double x(int corner) {
        return xs[corner];
    }

    public double y(int corner) {
        return ys[corner];
    }

    List<Point> points() {
        List<Point> points = new ArrayList<>(xs.length);
        for (int i = 0; i < xs.length; i++) {
            points.add(new Point(xs[i], ys[i]));
        }
        return points;
    }

    public Bounds bounds() {
        double minX = Double.POSITIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < xs.length; i++) {
            minX = Math.min(minX, xs[i]);
            minY = Math.min(minY, ys[i]);
            maxX = Math.max(maxX, xs[i]);
            maxY = Math.max(maxY, ys[i]);
        }
        return new Bounds(minX, minY, maxX, maxY);
    }

    /** Whether a point lies inside, the last corner joined to the first. */
    public boolean contains(double x, double y) {
        boolean inside = false;
        int a = xs.length - 1;
        for (int b = 0; b < xs.length; b++) {
            if (ys[a] > y != ys[b] > y && x < (xs[b] - xs[a]) * (y - ys[a]) / (ys[b] - ys[a]) + xs[a]) {
                inside = !inside;
            }
            a = b;
        }
        return inside;
    }

    /** Where its lines cross the level {@code y}, ascending, in {@code found}; how many crossings. */
    public int crossings(double y, double[] found) {
        int count = 0;
        int a = xs.length - 1;
        for (int b = 0; b < xs.length; b++) {
            if (ys[a] > y != ys[b] > y) {
                found[count++] = (xs[b] - xs[a]) * (y - ys[a]) / (ys[b] - ys[a]) + xs[a];
            }
            a = b;
        }
        Arrays.sort(found, 0, count);
        return count;
    }
}
