package contrapposto.figure;

/** A point of a figure in mm from its top left corner; y runs down. */
public record Point(double x, double y) {
    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }
}
