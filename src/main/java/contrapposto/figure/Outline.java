package contrapposto.figure;

import java.util.List;

/**
 * One path: a start point and the segments that follow it.
 *
 * @param closed whether the last point is joined to the start
 */
public record Outline(Point start, List<Segment> segments, boolean closed) {
    public Outline {
        segments = List.copyOf(segments);
    }

    /** A piece of an outline, from the end of the piece before it. */
    public sealed interface Segment {
        Point end();

        record Line(Point end) implements Segment { }

        /** A cubic Bézier arc with control points {@code first} and {@code second}. */
        record Curve(Point first, Point second, Point end) implements Segment { }
    }
}
