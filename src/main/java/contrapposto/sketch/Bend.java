package contrapposto.sketch;

import contrapposto.figure.Outline;
import contrapposto.figure.Outline.Segment;
import contrapposto.figure.Point;
import java.util.ArrayList;
import java.util.List;

/** Open paths put together. */
final class Bend {
    private Bend() { }

    /** One closed path: {@code first}, a straight line, {@code second}, a straight line back. */
    static Outline joined(Outline first, Outline second) {
        List<Segment> path = new ArrayList<>(first.segments());
        path.add(new Segment.Line(second.start()));
        path.addAll(second.segments());
        Outline closed = new Outline(first.start(), path, true);
        return counterClockwise(closed) ? closed : closed.reversed();
    }

    /** A point about half way along. */
    static Point middleOf(Outline path) {
        List<Point> points = path.flattened();
        return points.get(points.size() / 2);
    }

    static boolean counterClockwise(Outline outline) {
        List<Point> p = outline.flattened();
        double twice = 0;
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get(i);
            Point b = p.get((i + 1) % p.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return twice > 0;
    }
}
