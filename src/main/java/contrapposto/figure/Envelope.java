package contrapposto.figure;

import contrapposto.figure.Outline.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * The outline of a limb: a chain of circles swept along its middle line. Both flanks touch every circle where the
 * sweep does, so that few circles give a smooth limb; the ends are arcs.
 */
public final class Envelope {
    /** A chain shorter than this many largest radii is seen end on: its outline is the hull. */
    private static final double END_ON = 0.9;
    private static final double STEEPEST = 0.9;

    private final List<Circle> chain;
    private final double[] right;
    private final double[] left;

    private Envelope(List<Circle> chain, double[] right, double[] left) {
        this.chain = chain;
        this.right = right;
        this.left = left;
    }

    /** The outline around {@code circles} in order, counter-clockwise where y runs up. */
    public static Outline around(List<Circle> circles) {
        if (seenEndOn(circles)) {
            return Circle.hull(circles);
        }
        Envelope swept = sweep(circles);
        List<Segment> path = new ArrayList<>();
        swept.flankUp(0, path);
        swept.farCap(path);
        swept.flankDown(path);
        swept.nearCap(path);
        return new Outline(swept.rightAt(0), path, true);
    }

    /**
     * As {@link #around}, but the far end is closed by {@code rim} instead of an arc: a sleeve or a trouser leg.
     * The rim runs from flank to flank, either way; the end circle only steers the flanks.
     */
    public static Outline sleeve(List<Circle> circles, Outline rim) {
        if (seenEndOn(circles)) {
            List<Circle> shrunk = new ArrayList<>(circles);
            shrunk.set(shrunk.size() - 1, shrunk.getLast().scaled(0.98));
            return Circle.hull(shrunk);
        }
        Envelope swept = sweep(circles);
        int last = swept.chain.size() - 1;
        Outline crossing = startingNear(rim, swept.rightAt(last));
        List<Segment> path = new ArrayList<>();
        swept.flankUp(0, path);
        path.set(path.size() - 1, ending(path.getLast(), crossing.start()));
        path.addAll(crossing.segments());
        swept.flankDown(path);
        swept.nearCap(path);
        return new Outline(swept.rightAt(0), path, true);
    }

    public static boolean seenEndOn(List<Circle> circles) {
        double length = 0;
        double largest = 0;
        for (int i = 0; i < circles.size(); i++) {
            largest = Math.max(largest, circles.get(i).radius());
            length += i == 0 ? 0 : circles.get(i).centre().distance(circles.get(i - 1).centre());
        }
        return length < END_ON * largest;
    }

    private static Outline startingNear(Outline rim, Point p) {
        Point end = rim.segments().getLast().end();
        return rim.start().distance(p) <= end.distance(p) ? rim : rim.reversed();
    }

    private static Segment ending(Segment segment, Point end) {
        return switch (segment) {
            case Segment.Line line -> new Segment.Line(end);
            case Segment.Curve(var first, var second, var old) ->
                    new Segment.Curve(first, second.plus(end.minus(old)), end);
        };
    }

    private static Envelope sweep(List<Circle> circles) {
        List<Circle> chain = spread(circles);
        int n = chain.size();
        double[] right = new double[n];
        double[] left = new double[n];
        for (int i = 0; i < n; i++) {
            Circle before = chain.get(Math.max(0, i - 1));
            Circle here = chain.get(i);
            Circle after = chain.get(Math.min(n - 1, i + 1));
            double d1 = i == 0 ? 1 : here.centre().distance(before.centre());
            double d2 = i == n - 1 ? 1 : after.centre().distance(here.centre());
            double w1 = i == 0 ? 0 : i == n - 1 ? 1 : d2 / (d1 + d2);
            double w2 = 1 - w1;
            Point along = here.centre().minus(before.centre()).times(w1 / d1)
                    .plus(after.centre().minus(here.centre()).times(w2 / d2)).unit();
            double slope = Math.clamp((here.radius() - before.radius()) * w1 / d1
                    + (after.radius() - here.radius()) * w2 / d2, -STEEPEST, STEEPEST);
            double open = StrictMath.acos(-slope);
            right[i] = along.angle() - open;
            left[i] = along.angle() + open;
        }
        return new Envelope(chain, right, left);
    }

    /** Drops circles that fall on top of each other; the ends stay. */
    private static List<Circle> spread(List<Circle> circles) {
        double least = 0.15 * circles.stream().mapToDouble(Circle::radius).average().orElseThrow();
        List<Circle> kept = new ArrayList<>(List.of(circles.getFirst()));
        for (Circle c : circles.subList(1, circles.size())) {
            if (c.centre().distance(kept.getLast().centre()) > least) {
                kept.add(c);
            }
        }
        if (kept.getLast() != circles.getLast()) {
            if (kept.size() > 1) {
                kept.removeLast();
            }
            kept.add(circles.getLast());
        }
        return kept;
    }

    private Point rightAt(int i) {
        return chain.get(i).at(right[i]);
    }

    private Point leftAt(int i) {
        return chain.get(i).at(left[i]);
    }

    private void flankUp(int from, List<Segment> path) {
        for (int i = from; i + 1 < chain.size(); i++) {
            path.add(flank(rightAt(i), right[i] + StrictMath.PI / 2, rightAt(i + 1), right[i + 1] + StrictMath.PI / 2));
        }
    }

    private void flankDown(List<Segment> path) {
        for (int i = chain.size() - 1; i > 0; i--) {
            Point from = leftAt(i);
            if (i == chain.size() - 1 && !path.getLast().end().equals(from)) {
                from = path.getLast().end();
            }
            path.add(flank(from, left[i] + StrictMath.PI / 2, leftAt(i - 1), left[i - 1] + StrictMath.PI / 2));
        }
    }

    private static Segment flank(Point a, double leave, Point b, double arrive) {
        double handle = a.distance(b) / 3;
        return new Segment.Curve(a.polar(handle, leave), b.polar(-handle, arrive), b);
    }

    private void farCap(List<Segment> path) {
        int last = chain.size() - 1;
        chain.get(last).arc(right[last], left[last], path);
    }

    private void nearCap(List<Segment> path) {
        chain.getFirst().arc(left[0], right[0] + 2 * StrictMath.PI, path);
    }
}
