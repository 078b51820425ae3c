package contrapposto.typeset;

import contrapposto.figure.Outline;
import contrapposto.figure.Outline.Segment;
import contrapposto.figure.Point;
import contrapposto.figure.Tone;
import java.util.List;
import java.util.Optional;

/**
 * Writes a figure's paths with few bytes: coordinates are small whole numbers, since the frame has a unit of its own and
 * moves along from part to part, and nothing is said again that still holds. Rounded to a unit, a point is off by half
 * a dot of a 600 dpi printer at most.
 */
final class FigureInk {
    /** In pt. */
    private static final double UNIT = .25;
    /** What the eye cannot tell at reading distance, mm: an arc minute at 30 cm is 0.09. */
    private static final double UNSEEN = .07;
    /** Off by less than this, a line is upright or level, mm. */
    private static final double LEVEL = 1e-6;
    /** Shorter lines are nobody's measure, mm. */
    private static final double LONG = 6;
    /** A mark that reaches beyond these many units of the frame's origin gets a frame nearer to it. */
    private static final int FAR = 230;
    private static final int BEHIND = 40;
    /** A mark of fewer points costs less than a frame of its own. */
    private static final int FEW = 5;

    private final Pen pen;
    private boolean down;
    /** Whether tenths of a unit are kept, where a line may be read for its angle. */
    private boolean exact;
    private long originX;
    private long originY;
    private Optional<Tone> fill = Optional.empty();
    private Optional<Tone> stroke = Optional.empty();
    private double width;
    private List<Double> dash = List.of();

    FigureInk(Pen pen) {
        this.pen = pen;
    }

    void fill(List<Outline> outlines, Tone tone) {
        lower();
        if (!fill.equals(Optional.of(tone))) {
            pen.fills(tone);
            fill = Optional.of(tone);
        }
        near(outlines);
        outlines.forEach(this::path);
        pen.ink().operator("f");
    }

    void stroke(List<Outline> outlines, Tone tone, double wide, List<Double> dashed) {
        lower();
        if (!stroke.equals(Optional.of(tone))) {
            pen.strokes(tone);
            stroke = Optional.of(tone);
        }
        if (wide != width) {
            pen.ink().operator(width(wide), "w");
            width = wide;
        }
        if (!dashed.equals(dash)) {
            dash(dashed);
        }
        near(outlines);
        exact = outlines.size() == 1 && mayBeRead(outlines.getFirst(), dashed);
        outlines.forEach(this::path);
        exact = false;
        pen.ink().operator("S");
    }

    private void dash(List<Double> dashed) {
        double[] pattern = new double[dashed.size()];
        for (int i = 0; i < pattern.length; i++) {
            pattern[i] = width(dashed.get(i));
        }
        pen.ink().dash(pattern);
        dash = dashed;
    }

    /** Leaves the frame, as words are set in the page's own. */
    void lift() {
        if (down) {
            pen.ink().operator("Q");
            down = false;
        }
    }

    private void lower() {
        if (!down) {
            pen.ink().operator("q");
            pen.frame((float) UNIT);
            pen.ink().operator(1, "J");
            pen.ink().operator(1, "j");
            down = true;
            originX = 0;
            originY = 0;
            fill = Optional.empty();
            stroke = Optional.empty();
            width = -1;
            dash = List.of();
        }
    }

    /** Moves the frame so that it has the outlines just right of and below its origin, unless they are near enough or few. */
    private void near(List<Outline> outlines) {
        int points = outlines.size();
        for (Outline outline : outlines) {
            points += outline.segments().size();
        }
        if (points < FEW) {
            return;
        }
        long left = Long.MAX_VALUE;
        long top = Long.MAX_VALUE;
        long right = Long.MIN_VALUE;
        long bottom = Long.MIN_VALUE;
        for (Outline outline : outlines) {
            left = Math.min(left, units(outline.start().x()));
            top = Math.min(top, units(outline.start().y()));
            right = Math.max(right, units(outline.start().x()));
            bottom = Math.max(bottom, units(outline.start().y()));
            for (Segment segment : outline.segments()) {
                left = Math.min(left, units(segment.end().x()));
                top = Math.min(top, units(segment.end().y()));
                right = Math.max(right, units(segment.end().x()));
                bottom = Math.max(bottom, units(segment.end().y()));
            }
        }
        boolean near = left - originX > -BEHIND && top - originY > -BEHIND && right - originX < FAR && bottom - originY < FAR;
        if (!near) {
            pen.ink().operator(1, 0, 0, 1, left - originX, top - originY, "cm");
            originX = left;
            originY = top;
        }
    }

    private void path(Outline outline) {
        var ink = pen.ink();
        ink.operator(x(outline.start()), y(outline.start()), "m");
        Point from = outline.start();
        for (var segment : outline.segments()) {
            Point end = segment.end();
            boolean moves = exact || units(end.x()) != units(from.x()) || units(end.y()) != units(from.y());
            if (segment instanceof Segment.Curve(Point a, Point b, Point tip) && isBent(from, a, b, tip)) {
                ink.operator(x(a), y(a), x(b), y(b), x(tip), y(tip), "c");
            } else if (moves || outline.segments().size() == 1) {
                ink.operator(x(end), y(end), "l");
            }
            from = end;
        }
        if (outline.closed()) {
            ink.operator("h");
        }
    }

    /** A long slanting line, and the dashed one that it is read against. */
    private static boolean mayBeRead(Outline outline, List<Double> dashed) {
        Point way = outline.segments().getLast().end().minus(outline.start());
        boolean slants = Math.abs(way.x()) > LEVEL && Math.abs(way.y()) > LEVEL;
        return outline.segments().size() == 1 && way.length() > LONG && (slants || !dashed.isEmpty());
    }

    /** Whether a curve leaves its chord visibly; else it is drawn as a line. */
    private static boolean isBent(Point from, Point a, Point b, Point to) {
        Point chord = to.minus(from);
        Point n = chord.unit().quarterTurn();
        double off = chord.length() < 1e-9 ? Math.max(a.distance(from), b.distance(from))
                : Math.max(Math.abs(a.minus(from).dot(n)), Math.abs(b.minus(from).dot(n)));
        return .75 * off > UNSEEN;
    }

    private float x(Point p) {
        return placed(p.x(), originX);
    }

    private float y(Point p) {
        return placed(p.y(), originY);
    }

    private float placed(double mm, long origin) {
        return exact ? (float) (Math.round(10 * mm / (Style.MM_PER_PT * UNIT)) / 10.0 - origin) : units(mm) - origin;
    }

    /** A length in mm as a whole number of units. */
    private static long units(double mm) {
        return Math.round(mm / (Style.MM_PER_PT * UNIT));
    }

    /** A width in mm in units. */
    private static float width(double mm) {
        return (float) (Math.round(10 * mm / (Style.MM_PER_PT * UNIT)) / 10.0);
    }
}
