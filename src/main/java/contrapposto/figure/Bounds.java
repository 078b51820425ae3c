package contrapposto.figure;

import java.util.Collection;

/** An upright rectangle around something. */
public record Bounds(double minX, double minY, double maxX, double maxY) {
    /** Around no point at all; joining it with anything gives the other. */
    public static final Bounds NONE = new Bounds(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY,
            Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

    public static Bounds of(Collection<Point> points) {
        Bounds all = NONE;
        for (Point p : points) {
            all = all.with(p);
        }
        return all;
    }

    public static Bounds ofOutlines(Collection<Outline> outlines) {
        Bounds all = NONE;
        for (Outline outline : outlines) {
            all = all.join(Corners.of(outline).bounds());
        }
        return all;
    }

    public Bounds with(Point p) {
        return new Bounds(Math.min(minX, p.x()), Math.min(minY, p.y()), Math.max(maxX, p.x()), Math.max(maxY, p.y()));
    }

    public Bounds join(Bounds other) {
        return new Bounds(Math.min(minX, other.minX), Math.min(minY, other.minY), Math.max(maxX, other.maxX),
                Math.max(maxY, other.maxY));
    }

    public Bounds grown(double by) {
        return new Bounds(minX - by, minY - by, maxX + by, maxY + by);
    }

    public boolean meets(Bounds other) {
        return minX <= other.maxX && other.minX <= maxX && minY <= other.maxY && other.minY <= maxY;
    }

    public boolean holds(Bounds other) {
        return minX <= other.minX && minY <= other.minY && maxX >= other.maxX && maxY >= other.maxY;
    }

    public double width() {
        return maxX - minX;
    }

    public double height() {
        return maxY - minY;
    }
}
