package contrapposto.figure;

import contrapposto.figure.Outline.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Smooth curves through points: cubic Béziers whose tangents are those of the parabola through three neighbours. */
public final class Smooth {
    private Smooth() { }

    /** An open curve through the points. */
    public static Outline open(List<Point> points) {
        return through(points, false, Set.of());
    }

    /** A closed curve through the points, with corners where {@code corners} holds their index. */
    public static Outline closed(List<Point> points, Set<Integer> corners) {
        return through(points, true, corners);
    }

    private static Outline through(List<Point> given, boolean closed, Set<Integer> corners) {
        List<Point> points = given;
        int n = points.size();
        List<Segment> path = new ArrayList<>();
        for (int i = 0; i < (closed ? n : n - 1); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % n);
            double chord = a.distance(b);
            if (chord < 1e-9) {
                continue;
            }
            Point leave = corners.contains(i) ? b.minus(a).unit() : tangent(points, i, closed, b.minus(a));
            Point arrive = corners.contains((i + 1) % n) ? b.minus(a).unit()
                    : tangent(points, (i + 1) % n, closed, b.minus(a));
            path.add(new Segment.Curve(a.along(leave, chord / 3), b.along(arrive, -chord / 3), b));
        }
        return new Outline(points.getFirst(), path, closed);
    }

    private static Point tangent(List<Point> points, int i, boolean closed, Point chord) {
        int n = points.size();
        if (!closed && (i == 0 || i == n - 1)) {
            return chord.unit();
        }
        Point before = points.get((i + n - 1) % n);
        Point here = points.get(i);
        Point after = points.get((i + 1) % n);
        double d1 = here.distance(before);
        double d2 = after.distance(here);
        if (d1 < 1e-9 || d2 < 1e-9) {
            return chord.unit();
        }
        return here.minus(before).times(d2 / d1).plus(after.minus(here).times(d1 / d2)).times(1 / (d1 + d2));
    }
}
