package contrapposto.figure;

/** A point (or a step between points) in the plane. In a finished figure: mm from its top left corner, y running down. */
public record Point(double x, double y) {
    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    public Point plus(Point step) {
        return new Point(x + step.x, y + step.y);
    }

    public Point minus(Point from) {
        return new Point(x - from.x, y - from.y);
    }

    public Point times(double factor) {
        return new Point(x * factor, y * factor);
    }

    /** This point moved by {@code amount} times {@code step}. */
    public Point along(Point step, double amount) {
        return new Point(x + amount * step.x, y + amount * step.y);
    }

    /** The point {@code share} of the way to {@code other}. */
    public Point toward(Point other, double share) {
        return new Point(x + (other.x - x) * share, y + (other.y - y) * share);
    }

    public double dot(Point other) {
        return x * other.x + y * other.y;
    }

    public double length() {
        return Math.sqrt(x * x + y * y);
    }

    public double distance(Point other) {
        return minus(other).length();
    }

    /** The same direction with length 1; zero stays zero. */
    public Point unit() {
        double length = length();
        return length > 1e-12 ? times(1 / length) : new Point(0, 0);
    }

    /** A quarter turn from x toward y. */
    public Point quarterTurn() {
        return new Point(-y, x);
    }

    /** The angle from x toward y, radians. */
    public double angle() {
        return StrictMath.atan2(y, x);
    }

    /** The point at {@code radius} and {@code angle} (radians, from x toward y) from here. */
    public Point polar(double radius, double angle) {
        return new Point(x + radius * StrictMath.cos(angle), y + radius * StrictMath.sin(angle));
    }
}
