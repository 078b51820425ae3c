package contrapposto.sketch;

import contrapposto.figure.Outline;
import contrapposto.figure.Point;

/**
 * Where the picture (metres, y up) falls in the figure's box (mm, y down).
 *
 * @param scale mm per metre
 * @param left  mm from the left of the box to the picture's origin
 * @param floor mm from the top of the box to the picture's origin
 */
record Placing(double scale, double left, double floor) {
    Point place(Point p) {
        return new Point(left + p.x() * scale, floor - p.y() * scale);
    }

    Outline place(Outline outline) {
        return outline.mapped(this::place);
    }
}
