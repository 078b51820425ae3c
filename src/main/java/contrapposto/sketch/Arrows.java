package contrapposto.sketch;

import contrapposto.figure.Bounds;
import contrapposto.figure.Circle;
import contrapposto.figure.Outline;
import contrapposto.figure.Outline.Segment;
import contrapposto.figure.Point;
import contrapposto.figure.Tone;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Movements to make, in the spot colour over a white edge, shifted aside to where little is covered. */
record Arrows(Sheet sheet) {
    private static final double LINE = 1.0;
    private static final double HEAD = 3.2;
    private static final double EDGE = .45;
    private static final double SHORTEST = 7;
    private static final double SAG = .12;

    void move(Wish.Move move) {
        Point a = sheet.at(move.from());
        Point b = sheet.at(move.to());
        double length = b.distance(a);
        Point along = length > 1e-6 ? b.minus(a).unit() : new Point(1, 0);
        if (length < SHORTEST) {
            double more = (SHORTEST - length) / 2;
            a = a.along(along, -more);
            b = b.along(along, more);
            length = SHORTEST;
        }
        double from = length < 16 ? .04 : .12;
        Point across = along.quarterTurn();
        Outline best = bent(a, b, across, length);
        double least = Double.POSITIVE_INFINITY;
        for (int off = 0; off <= 14; off++) {
            for (int side = off == 0 ? 1 : -1; side <= 1; side += 2) {
                for (int slide : new int[] {0, 3, -3, 6, -6, 9, -9, 12, -12}) {
                    double aside = 2.2 * off + 2.6 * Math.abs(slide);
                    if (aside >= least) {
                        continue;
                    }
                    Point shift = across.times(side * off).along(along, slide);
                    Outline path = bent(a.toward(b, from).plus(shift), a.toward(b, 1 - from).plus(shift),
                            across.times(side), length);
                    double cost = 1.15 * under(path, 2.4, least) + 2.2 * off + 2.6 * Math.abs(slide);
                    if (cost < least) {
                        least = cost;
                        best = path;
                    }
                }
            }
        }
        draw(best);
    }

    private static Outline bent(Point a, Point b, Point across, double length) {
        Point middle = a.toward(b, .5).along(across, SAG * length);
        return new Outline(a, List.of(new Segment.Curve(a.toward(middle, 2.0 / 3), b.toward(middle, 2.0 / 3), b)), false);
    }

    private double under(Outline path, double side) {
        return under(path, side, Double.POSITIVE_INFINITY);
    }

    /** What lies under a path; infinite once it is clear that there is more than {@code most}. */
    private double under(Outline path, double side, double most) {
        double sum = 0;
        for (Point p : dense(path)) {
            sum += sheet.occupancy().cost(p, side);
            if (sum > most) {
                return Double.POSITIVE_INFINITY;
            }
        }
        return sum;
    }

    /** The points of a path and those half way between. */
    private static List<Point> dense(Outline path) {
        List<Point> points = path.flattened();
        List<Point> all = new ArrayList<>();
        for (int i = 0; i + 1 < points.size(); i++) {
            all.add(points.get(i));
            all.add(points.get(i).toward(points.get(i + 1), .5));
        }
        all.add(points.getLast());
        return all;
    }

    void curl(Wish.Curl curl) {
        Point centre = sheet.at(curl.joint());
        Point a = sheet.at(curl.from()).minus(centre);
        Point b = sheet.at(curl.to()).minus(centre);
        double from = a.angle();
        double turn = b.angle() - from;
        turn -= 2 * StrictMath.PI * Math.rint(turn / (2 * StrictMath.PI));
        Outline best = new Circle(centre, 1).arc(0, 1);
        double least = Double.POSITIVE_INFINITY;
        for (double factor : new double[] {.55, .7, .85, 1, 1.2, 1.35, 1.5}) {
            double radius = factor * (a.length() + b.length()) / 2;
            Outline path = new Circle(centre, radius).arc(from + .10 * turn, from + .82 * turn);
            double cost = under(path, 2) / 3 + 6 * Math.abs(factor - 1);
            if (cost < least) {
                least = cost;
                best = path;
            }
        }
        draw(best);
    }

    /** Outlined, since it stands for a push and not for a path; ahead of the hand, else beside it. */
    void push(Wish.Push push) {
        Point p = sheet.at(push.from());
        Point d = sheet.at(push.from().add(push.direction())).minus(p).unit();
        Point n = d.quarterTurn();
        Point best = p;
        double least = Occupancy.FORBIDDEN;
        for (int back = 0; back <= 18; back += 3) {
            for (int aside : new int[] {0, 3, -3, 5, -5, 7, -7, 9, -9}) {
                Point at = p.along(d, -back).along(n, aside);
                double cost = sheet.occupancy().cost(Bounds.ofOutlines(List.of(block(at, d))).grown(.5))
                        + 2 * back + 2.5 * Math.abs(aside);
                if (cost < least) {
                    least = cost;
                    best = at;
                }
            }
        }
        if (least < Occupancy.FORBIDDEN) {
            Outline block = block(best, d);
            sheet.clear(1.4, block);
            sheet.canvas().fill(Tone.WHITE, block).stroke(new Tone.Spot(), .8 * Pen.MM_PER_PT, List.of(block));
            sheet.occupancy().outline(block, Occupancy.LABEL);
        }
    }

    private static Outline block(Point p, Point d) {
        Point n = d.quarterTurn();
        return Outline.polygon(p.along(n, .75), p.along(d, 3.2).along(n, .75), p.along(d, 3.2).along(n, 1.75),
                p.along(d, 6), p.along(d, 3.2).along(n, -1.75), p.along(d, 3.2).along(n, -.75), p.along(n, -.75));
    }

    void squeeze(Wish.Squeeze squeeze) {
        Point tip = sheet.at(squeeze.at());
        Point d = sheet.at(squeeze.at().add(.1, squeeze.direction())).minus(tip).unit();
        draw(Outline.polyline(tip.along(d, -6), tip));
    }

    /** A ring about the spine, at the chest where that faces the reader, else beyond the head: whichever covers less. */
    void turn(Wish.Turn turn) {
        Sitter sitter = sheet.scene().body().sitter();
        Vector3D axis = sitter.frames().spine();
        Trunk.Section chest = Trunk.of(sitter).section(.78);
        double chestRadius = 1.4 * Math.max(chest.width(), chest.depth());
        Vector3D crown = sitter.at(contrapposto.body.Joint.HEAD_TOP).add(sitter.size(.035), sitter.frames().headUp());
        Outline aroundChest = ring(chest.centre(), axis, chestRadius, turn.toLeft());
        Outline aboveHead = ring(crown, sitter.frames().headUp(), sitter.size(.075), turn.toLeft());
        boolean chestSeen = sitter.camera().depth(sitter.frames().ribsFront()) > .35;
        double high = under(aboveHead, 2);
        draw(chestSeen && under(aroundChest, 2) < high + 60 || high >= Occupancy.FORBIDDEN ? aroundChest : aboveHead);
    }

    private Outline ring(Vector3D centre, Vector3D axis, double radius, boolean toLeft) {
        Camera camera = sheet.scene().camera();
        Vector3D near = Directions.unit(Directions.across(camera.toward(), axis));
        Vector3D onward = Directions.cross(axis, near);
        double half = StrictMath.toRadians(80);
        Outline path = Ring.ellipse(camera, centre, near.scalarMultiply(radius), onward.scalarMultiply(radius),
                toLeft ? -half : half, toLeft ? half : -half);
        return sheet.placing().place(path);
    }

    /** The path as a line that ends in a head. */
    private void draw(Outline path) {
        List<Point> points = path.flattened();
        Point tip = points.getLast();
        Point before = before(points, tip);
        Point d = tip.minus(before).unit();
        Point n = d.quarterTurn();
        Outline head = Outline.polygon(tip, tip.along(d, -HEAD).along(n, .42 * HEAD), tip.along(d, -.8 * HEAD),
                tip.along(d, -HEAD).along(n, -.42 * HEAD));
        Outline shaft = shortened(path, tip.along(d, -.75 * HEAD));
        sheet.clear(LINE + 2 * EDGE, shaft);
        sheet.clear(2 * EDGE, head);
        sheet.canvas().stroke(new Tone.Spot(), LINE, List.of(shaft)).fill(new Tone.Spot(), head);
        sheet.occupancy().path(path, Occupancy.ARROW, 2.2);
    }

    private static Point before(List<Point> points, Point tip) {
        for (Point p : points.reversed()) {
            if (p.distance(tip) > .8 * HEAD) {
                return p;
            }
        }
        return points.getFirst();
    }

    /** The path drawn to end where the head begins. */
    private static Outline shortened(Outline path, Point end) {
        List<Segment> segments = new ArrayList<>(path.segments());
        Segment last = segments.removeLast();
        segments.add(switch (last) {
            case Segment.Line line -> new Segment.Line(end);
            case Segment.Curve(var first, var second, var tip) ->
                    new Segment.Curve(first, second.plus(end.minus(tip).times(.7)), end);
        });
        return new Outline(path.start(), segments, false);
    }
}
