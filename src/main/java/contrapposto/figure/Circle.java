package contrapposto.figure;

import contrapposto.figure.Outline.Segment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A circle of the plane; a radius of 0 is a corner. */
public record Circle(Point centre, double radius) {
    /**
     * Widest arc drawn as one Bézier curve. Half a circle is then off by 1/55 of its radius, which on the small circles
     * of a figure is less than a printer's dot.
     */
    private static final double WIDEST = StrictMath.toRadians(181);
    private static final double FULL = 2 * StrictMath.PI;

    public Circle {
        if (!(radius >= 0)) {
            throw new IllegalArgumentException("A radius is at least 0, but was (" + radius + ").");
        }
    }

    public Circle grown(double by) {
        return new Circle(centre, Math.max(0, radius + by));
    }

    public Circle scaled(double factor) {
        return new Circle(centre, radius * factor);
    }

    public Point at(double angle) {
        return centre.polar(radius, angle);
    }

    /** All of it, as a closed path, counter-clockwise where y runs up. */
    public Outline outline() {
        List<Segment> segments = new ArrayList<>();
        for (int third = 0; third < 3; third++) {
            arc(third * FULL / 3, (third + 1) * FULL / 3, segments);
        }
        return new Outline(at(0), segments, true);
    }

    /** The arc from one angle to another (either way round), open. */
    public Outline arc(double from, double to) {
        List<Segment> segments = new ArrayList<>();
        arc(from, to, segments);
        return new Outline(at(from), segments, false);
    }

    /** Appends the arc from {@code from} to {@code to} to a path that stands at {@code from}. */
    void arc(double from, double to, List<Segment> path) {
        if (radius == 0) {
            return;
        }
        int pieces = Math.max(1, (int) Math.ceil(Math.abs(to - from) / WIDEST - 1e-9));
        double step = (to - from) / pieces;
        double handle = 4.0 / 3 * StrictMath.tan(step / 4);
        Point a = new Point(0, 0).polar(radius, from);
        for (int i = 1; i <= pieces; i++) {
            Point b = new Point(0, 0).polar(radius, from + i * step);
            path.add(new Segment.Curve(centre.plus(a).along(a.quarterTurn(), handle),
                    centre.plus(b).along(b.quarterTurn(), -handle), centre.plus(b)));
            a = b;
        }
    }

    /**
     * The tight outline around circles: straight tangents and arcs, counter-clockwise where y runs up. Wraps from
     * tangent to tangent, always taking the one that turns least.
     */
    public static Outline hull(List<Circle> circles) {
        if (circles.stream().allMatch(c -> c.radius == 0)) {
            return Outline.polygon(corners(circles));
        }
        List<Circle> outer = notContained(circles);
        if (outer.size() == 1) {
            return outer.getFirst().outline();
        }
        int start = lowest(outer);
        int here = start;
        double normal = -StrictMath.PI / 2;
        double turned = 0;
        List<Segment> path = new ArrayList<>();
        Point first = outer.get(start).at(normal);
        for (int guard = 0; guard < 3 * outer.size(); guard++) {
            int next = here;
            double least = FULL;
            for (int j = 0; j < outer.size(); j++) {
                if (j != here) {
                    double turn = turnTo(outer.get(here), outer.get(j), normal);
                    boolean closer = turn < least - 1e-9;
                    boolean tieButFarther = next != here && turn < least + 1e-9 && farther(outer, here, j, next);
                    if (closer || tieButFarther) {
                        least = turn;
                        next = j;
                    }
                }
            }
            if (turned + least >= FULL - 1e-9) {
                break;
            }
            if (least > 1e-9) {
                outer.get(here).arc(normal, normal + least, path);
            }
            normal += least;
            turned += least;
            here = next;
            path.add(new Segment.Line(outer.get(here).at(normal)));
        }
        if (FULL - turned > 1e-9) {
            outer.get(here).arc(normal, normal + FULL - turned, path);
        }
        return new Outline(first, path, true);
    }

    /** The convex corners of points, counter-clockwise: lower chain, then upper chain. */
    private static List<Point> corners(List<Circle> points) {
        List<Point> sorted = new ArrayList<>(points.stream().map(Circle::centre).sorted(
                Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y)).toList());
        List<Point> hull = new ArrayList<>(chain(sorted));
        hull.removeLast();
        List<Point> upper = chain(sorted.reversed());
        upper.removeLast();
        hull.addAll(upper);
        return hull;
    }

    private static List<Point> chain(List<Point> sorted) {
        List<Point> chain = new ArrayList<>();
        for (Point p : sorted) {
            while (chain.size() >= 2 && turnsRight(chain.get(chain.size() - 2), chain.getLast(), p)) {
                chain.removeLast();
            }
            chain.add(p);
        }
        return chain;
    }

    private static boolean turnsRight(Point a, Point b, Point c) {
        return b.minus(a).quarterTurn().dot(c.minus(a)) <= 1e-12;
    }

    private static boolean farther(List<Circle> circles, int here, int j, int than) {
        Point from = circles.get(here).centre;
        return circles.get(j).centre.distance(from) > circles.get(than).centre.distance(from);
    }

    /** How far the outward normal turns on circle {@code a} until the tangent runs to circle {@code b}. */
    private static double turnTo(Circle a, Circle b, double normal) {
        Point d = b.centre.minus(a.centre);
        double ratio = Math.clamp((a.radius - b.radius) / d.length(), -1, 1);
        double turn = (d.angle() - StrictMath.acos(ratio) - normal) % FULL;
        if (turn < 0) {
            turn += FULL;
        }
        return turn > FULL - 1e-9 ? 0 : turn;
    }

    private static int lowest(List<Circle> circles) {
        int best = 0;
        for (int i = 1; i < circles.size(); i++) {
            double here = circles.get(i).centre.y() - circles.get(i).radius;
            double there = circles.get(best).centre.y() - circles.get(best).radius;
            if (here < there - 1e-12 || here < there + 1e-12
                    && circles.get(i).centre.x() > circles.get(best).centre.x()) {
                best = i;
            }
        }
        return best;
    }

    private static List<Circle> notContained(List<Circle> circles) {
        List<Circle> kept = new ArrayList<>();
        for (int i = 0; i < circles.size(); i++) {
            Circle c = circles.get(i);
            boolean inside = false;
            for (int j = 0; j < circles.size(); j++) {
                Circle other = circles.get(j);
                double room = other.radius - c.radius - c.centre.distance(other.centre);
                inside |= j != i && (room > 1e-9 || room > -1e-9 && (other.radius > c.radius || j < i));
            }
            if (!inside) {
                kept.add(c);
            }
        }
        return kept;
    }
}
