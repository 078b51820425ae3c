package contrapposto.sketch;

import contrapposto.figure.Canvas;
import contrapposto.figure.Mark;
import contrapposto.figure.Outline;
import contrapposto.figure.Outline.Segment;
import contrapposto.figure.Point;
import contrapposto.figure.TextWidth;
import contrapposto.figure.Tone;
import contrapposto.quantity.Side;
import java.util.List;

/**
 * The mark of a side: half a capsule, round at its own end, the left one open and the right one solid, with its letter.
 *
 * @param centre of the half pill's box
 * @param height mm
 */
public record Pill(Side side, Point centre, double height) {
    private static final double WIDTH = 1.02;
    private static final double STROKE = .055;
    private static final double KAPPA = .5523;

    public double width() {
        return WIDTH * height;
    }

    /** The letter's size for a pill of {@code height}: at least {@code least} pt. */
    public static double letterSize(double height, double least) {
        return Math.max(least, .74 * height / Pen.MM_PER_PT);
    }

    /** The height of a pill that just holds a letter of {@code size} pt. */
    public static double heightFor(double size) {
        return size * Pen.MM_PER_PT * 1.06;
    }

    /** @param edge width of a white edge around it, 0 for none */
    public void draw(Canvas canvas, double letter, double edge) {
        double stroke = Math.max(.3, STROKE * height);
        boolean left = side == Side.LEFT;
        Outline outer = shape(left ? stroke / 2 : 0);
        if (edge > 0) {
            canvas.stroke(Tone.WHITE, 2 * edge, List.of(outer));
        }
        if (left) {
            canvas.fill(Tone.WHITE, outer).line(stroke, outer);
        } else {
            canvas.fill(Tone.BLACK, outer);
        }
        double x = centre.x() + ((left ? .54 : .46) - .5) * width();
        canvas.words(new Point(x, centre.y() + TextWidth.capHeight(letter) / 2), left ? "L" : "R", letter,
                Mark.Weight.BOLD, Mark.Anchor.MIDDLE, left ? Tone.BLACK : Tone.WHITE, false);
    }

    /** The outline drawn in by {@code inset}. */
    private Outline shape(double inset) {
        double w = width() / 2 - inset;
        double h = height / 2 - inset;
        double round = side == Side.LEFT ? -1 : 1;
        Point middle = centre.plus(round * (width() / 2 - height / 2), 0);
        Point straightTop = centre.plus(-round * w, -h);
        Point top = middle.plus(0, -h);
        Point end = middle.plus(round * h, 0);
        Point bottom = middle.plus(0, h);
        return new Outline(straightTop, List.of(new Segment.Line(top),
                new Segment.Curve(top.plus(round * h * KAPPA, 0), end.plus(0, -h * KAPPA), end),
                new Segment.Curve(end.plus(0, h * KAPPA), bottom.plus(round * h * KAPPA, 0), bottom),
                new Segment.Line(centre.plus(-round * w, h))), true);
    }
}
