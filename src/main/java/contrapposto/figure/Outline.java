package contrapposto.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;

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

    /** Straight lines through {@code corners}, joined to the start. */
    public static Outline polygon(List<Point> corners) {
        return lines(corners, true);
    }

    public static Outline polygon(Point... corners) {
        return lines(Arrays.asList(corners), true);
    }

    /** Straight lines through {@code points}, open. */
    public static Outline polyline(Point... points) {
        return lines(Arrays.asList(points), false);
    }

    public static Outline rectangle(double x, double y, double width, double height) {
        return polygon(new Point(x, y), new Point(x + width, y), new Point(x + width, y + height),
                new Point(x, y + height));
    }

    private static Outline lines(List<Point> points, boolean closed) {
        List<Segment> segments = new ArrayList<>(points.size());
        for (int i = 1; i < points.size(); i++) {
            segments.add(new Segment.Line(points.get(i)));
        }
        return new Outline(points.getFirst(), segments, closed);
    }

    /** The outline with every point moved; exact for shifts, turns, mirrors and scalings. */
    public Outline mapped(UnaryOperator<Point> move) {
        List<Segment> moved = new ArrayList<>(segments.size());
        for (Segment segment : segments) {
            moved.add(switch (segment) {
                case Segment.Line(var end) -> new Segment.Line(move.apply(end));
                case Segment.Curve(var first, var second, var end) ->
                        new Segment.Curve(move.apply(first), move.apply(second), move.apply(end));
            });
        }
        return new Outline(move.apply(start), moved, closed);
    }

    /** The same path run the other way. */
    public Outline reversed() {
        List<Segment> back = new ArrayList<>(segments.size());
        for (int i = segments.size() - 1; i >= 0; i--) {
            Point end = i == 0 ? start : segments.get(i - 1).end();
            back.add(switch (segments.get(i)) {
                case Segment.Line line -> new Segment.Line(end);
                case Segment.Curve(var first, var second, var old) -> new Segment.Curve(second, first, end);
            });
        }
        return new Outline(segments.getLast().end(), back, closed);
    }

    /** Points on the outline close enough for areas and overlaps, the start included, the closing point not repeated. */
    public List<Point> flattened() {
        return Corners.of(this).points();
    }

    /** Whether {@code p} lies inside this outline taken as closed. */
    public boolean contains(Point p) {
        return Corners.of(this).contains(p.x(), p.y());
    }
}
