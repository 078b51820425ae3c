package contrapposto.illustrate;

import contrapposto.figure.Canvas;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.figure.Tone;
import java.util.ArrayList;
import java.util.List;

/** Line widths (mm) and small drawn signs that the flat pictures share. */
final class Lines {
    static final double THIN = .25;
    static final double PAD = .22;
    static final double SOLE = .32;
    static final double BOX = .30;
    static final double MEASURE = .35;
    static final double PAD_HATCH = .34;
    static final double PAD_SPACING = .85;
    static final double DASH_ON = .9;
    static final double DASH_OFF = .7;

    private Lines() { }

    /** A solid arrow head whose tip is at {@code tip}, looking along {@code direction} (unit). */
    static Outline head(Point tip, Point direction, double length, double width) {
        Point side = direction.quarterTurn();
        Point back = tip.along(direction, -length);
        return Outline.polygon(tip, back.along(side, width / 2), tip.along(direction, -.8 * length),
                back.along(side, -width / 2));
    }

    /** A measure between two points: a line with a head at both ends. */
    static void measure(Canvas canvas, Point a, Point b) {
        Point d = b.minus(a).unit();
        canvas.line(MEASURE, a.along(d, .9), b.along(d, -.9))
                .fill(Tone.BLACK, head(a, d.times(-1), 1.6, 1.3), head(b, d, 1.6, 1.3));
    }

    /** Dots of radius .26 on a grid of 1.2 inside a rectangle, each a point stroked with round ends. */
    static void dots(Canvas canvas, double x, double y, double width, double height) {
        List<Outline> dots = new ArrayList<>();
        int columns = (int) Math.floor((width - .6) / 1.2);
        int rows = (int) Math.floor((height - .6) / 1.2);
        for (int r = 0; r <= rows; r++) {
            for (int c = 0; c <= columns; c++) {
                Point at = new Point(x + (width - 1.2 * columns) / 2 + 1.2 * c, y + (height - 1.2 * rows) / 2 + 1.2 * r);
                dots.add(Outline.polyline(at, at.plus(.01, 0)));
            }
        }
        canvas.stroke(Tone.BLACK, .52, dots);
    }
}
