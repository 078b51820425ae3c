package contrapposto.sketch;

import contrapposto.body.Joint;
import contrapposto.figure.Bounds;
import contrapposto.figure.Circle;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Lengths, heights and the shin's tilt, with their lines and words. */
record Measures(Sheet sheet) {
    private static final double[] OFFSETS = {1.6, 2.6, 4, 6, 9, 13, 17, 22};

    /** How far below the front edge of the floor the words of a stance stand: their middle, mm. */
    double stanceDrop() {
        return 1.6 + sheet.capHeight() / 2;
    }

    void stance(Wish.Stance stance) {
        Scene scene = sheet.scene();
        if (scene.floor().isEmpty()) {
            return;
        }
        boolean swap = stance.from().getX() > stance.to().getX();
        Vector3D a = swap ? stance.to() : stance.from();
        Vector3D b = swap ? stance.from() : stance.to();
        Point left = onEdge(a);
        Point right = onEdge(b);
        double y = left.y() + stanceDrop();
        down(a, left, y);
        down(b, right, y);
        double wide = sheet.textWidth(stance.text());
        Point middle = new Point((left.x() + right.x()) / 2, y);
        boolean inside = right.x() - left.x() > wide + 8;
        Point l = new Point(left.x(), y);
        Point r = new Point(right.x(), y);
        sheet.thinLine(l, inside ? middle.plus(-wide / 2 - 1, 0) : middle);
        sheet.thinLine(r, inside ? middle.plus(wide / 2 + 1, 0) : middle);
        sheet.head(l, new Point(-1, 0));
        sheet.head(r, new Point(1, 0));
        sheet.occupancy().line(l, r, Occupancy.MEASURE, 1.4);
        sheet.words(inside ? middle : beside(l, r, wide), stance.text(), false);
    }

    /** Where words go that do not fit between the arrows: outside, where there is room. */
    private Point beside(Point l, Point r, double wide) {
        boolean right = r.x() + 1.2 + wide + .3 <= sheet.width();
        return right ? r.plus(1.2 + wide / 2, 0) : l.plus(-1.2 - wide / 2, 0);
    }

    private Point onEdge(Vector3D p) {
        return sheet.placing().place(sheet.scene().floor().orElseThrow().onFrontEdge(sheet.scene().camera(), p.getX()));
    }

    /** From a point to the front edge of the floor and on to the measure line; dashed along what it stands on. */
    private void down(Vector3D p, Point edge, double y) {
        Floor floor = sheet.scene().floor().orElseThrow();
        double top = Floor.supportUnder(p, sheet.scene().props());
        List<Point> way = new ArrayList<>(List.of(sheet.at(p)));
        if (top > .02) {
            double front = frontOf(p, top);
            way.add(sheet.at(new Vector3D(p.getX(), front, p.getZ())));
            way.add(sheet.at(new Vector3D(p.getX(), front, 0)));
        }
        way.add(sheet.at(new Vector3D(p.getX(), floor.near(), 0)));
        for (int i = 0; i + 1 < way.size(); i++) {
            if (top > .02 && i < 2) {
                sheet.canvas().dashed(sheet.thin(), .5, .5, Outline.polyline(way.get(i), way.get(i + 1)));
            } else {
                sheet.thinLine(way.get(i), way.get(i + 1));
            }
        }
        sheet.thinLine(edge, new Point(edge.x(), y + .9));
        sheet.occupancy().line(edge, new Point(edge.x(), y + 1.2), Occupancy.MEASURE, 1.4);
    }

    private double frontOf(Vector3D p, double top) {
        return sheet.scene().order().stream().flatMap(part -> part.samples().stream())
                .filter(c -> Math.abs(c.getZ() - top) < .02 && Math.abs(c.getX() - p.getX()) < .7)
                .mapToDouble(Vector3D::getY).min().orElse(p.getY());
    }

    private record Edge(Point low, Point high) { }

    private record Standing(double cost, double x, int side, Point words, Edge edge) { }

    void height(Wish.Height height) {
        List<Edge> corners = new ArrayList<>();
        for (double x : new double[] {height.low().getX(), height.high().getX()}) {
            for (double y : new double[] {height.low().getY(), height.high().getY()}) {
                corners.add(new Edge(sheet.at(new Vector3D(x, y, height.low().getZ())),
                        sheet.at(new Vector3D(x, y, height.high().getZ()))));
            }
        }
        List<Edge> front = List.of(corners.get(0), corners.get(2));
        corners.sort(Comparator.comparingDouble(e -> e.low().x()));
        Optional<Standing> best = Optional.empty();
        for (Edge edge : List.of(corners.getFirst(), front.get(0))) {
            best = better(best, standing(height.text(), edge, -1));
        }
        for (Edge edge : List.of(corners.getLast(), front.get(1))) {
            best = better(best, standing(height.text(), edge, 1));
        }
        best.filter(s -> s.cost() < Occupancy.FORBIDDEN).ifPresent(s -> drawHeight(height.text(), s));
    }

    private static Optional<Standing> better(Optional<Standing> best, Standing next) {
        return best.isEmpty() || next.cost() < best.get().cost() ? Optional.of(next) : best;
    }

    private Standing standing(String text, Edge edge, int side) {
        double wide = sheet.textWidth(text);
        Standing best = new Standing(Double.POSITIVE_INFINITY, 0, side, edge.low(), edge);
        for (double offset : OFFSETS) {
            double x = edge.low().x() + side * offset;
            for (double shift : new double[] {0, -.8, .8, -1.6, -2.4}) {
                double dy = shift * sheet.capHeight();
                Point words = new Point(x + side * (1.5 + wide / 2), (edge.low().y() + edge.high().y()) / 2 + dy);
                double cost = sheet.occupancy().clearCost(sheet.wordsAround(words, text))
                        + 2 * sheet.occupancy().cost(new Bounds(x - .3, edge.high().y(), x + .3, edge.low().y()))
                        + .35 * offset + .8 * Math.abs(dy);
                if (cost < best.cost()) {
                    best = new Standing(cost, x, side, words, edge);
                }
            }
        }
        return best;
    }

    private void drawHeight(String text, Standing s) {
        Point low = new Point(s.x(), s.edge().low().y());
        Point high = new Point(s.x(), s.edge().high().y());
        sheet.thinLine(s.edge().low().plus(.4 * s.side(), 0), low.plus(.7 * s.side(), 0));
        sheet.thinLine(s.edge().high().plus(.4 * s.side(), 0), high.plus(.7 * s.side(), 0));
        sheet.thinLine(low, high);
        sheet.occupancy().line(low, high, Occupancy.MEASURE, 1.2);
        if (low.y() - high.y() > 3) {
            sheet.head(low, new Point(0, 1));
            sheet.head(high, new Point(0, -1));
        } else {
            sheet.canvas().line(1.6 * sheet.thin(), low.plus(-.6, 0), low.plus(.6, 0))
                    .line(1.6 * sheet.thin(), high.plus(-.6, 0), high.plus(.6, 0));
        }
        sheet.words(s.words(), text, false);
    }

    /** The tilt in the upright plane through the ankle, where the camera keeps it true. */
    void shin(Wish.Shin shin) {
        Sitter sitter = sheet.scene().body().sitter();
        Vector3D ankle = sitter.at(shin.side(), Joint.Part.ANKLE);
        Vector3D knee = sitter.at(shin.side(), Joint.Part.KNEE);
        Point foot = sheet.at(ankle);
        Point top = sheet.at(new Vector3D(knee.getX(), ankle.getY(), knee.getZ()));
        double length = top.distance(foot);
        Point upright = foot.plus(0, -1.14 * length);
        double line = .7 * Pen.MM_PER_PT;
        Outline plumb = Outline.polyline(foot, upright);
        Outline bone = Outline.polyline(foot, top);
        double tilt = top.minus(foot).angle();
        Outline arc = new Circle(foot, .93 * length).arc(-StrictMath.PI / 2, tilt);
        sheet.clear(line + .7, plumb, bone, arc);
        sheet.canvas().dashed(line, 1.1, .7, plumb).line(line, bone).line(1.1 * Pen.MM_PER_PT, arc)
                .line(1.1, foot, foot.plus(.01, 0));
        sheet.occupancy().line(foot, upright, 8, 1.2);
        sheet.occupancy().line(foot, top, 4, .6);
        shinWords(shin.text(), upright);
    }

    private void shinWords(String text, Point top) {
        double half = sheet.textWidth(text) / 2;
        double least = Occupancy.FORBIDDEN;
        Point best = top;
        for (int dx = -24; dx <= 24; dx++) {
            for (int dy = -20; dy <= 12; dy++) {
                Point p = top.plus(dx, dy);
                Point nearest = new Point(Math.clamp(top.x(), p.x() - half, p.x() + half), p.y());
                double cost = sheet.occupancy().clearCost(sheet.wordsAround(p, text)) + .45 * p.distance(top)
                        + .25 * sheet.occupancy().lineCost(nearest, top);
                if (cost < least) {
                    least = cost;
                    best = p;
                }
            }
        }
        if (least < Occupancy.FORBIDDEN) {
            Point end = new Point(Math.clamp(top.x(), best.x() - half - .4, best.x() + half + .4),
                    best.y() + (best.y() < top.y() ? .6 : -.6) * sheet.capHeight());
            if (end.distance(top) > 1.2) {
                sheet.thinLine(end, top);
            }
            sheet.words(best, text, false);
        }
    }

    /** What sets a word apart from another beside it, mm: about a space of the type. */
    private static final double SPACE = .9;

    /** A word under the ground line, as near to the middle of the body as the stance leaves room. */
    void caption(Wish.Caption caption, double wantedX, double baseline) {
        double wide = sheet.textWidth(caption.text()) * (caption.bold() ? 1.03 : 1);
        Point best = new Point(0, 0);
        double least = Occupancy.FORBIDDEN;
        for (double x = wide / 2 + .3; x <= sheet.width() - wide / 2 - .3 + 1e-9; x += .5) {
            Point p = new Point(x, baseline - sheet.capHeight() / 2);
            double tall = sheet.capHeight() / 2 + .5;
            Bounds around = new Bounds(p.x() - wide / 2 - SPACE, p.y() - tall, p.x() + wide / 2 + SPACE, p.y() + tall);
            double cost = sheet.occupancy().cost(around) + .2 * Math.abs(x - wantedX);
            if (cost < least) {
                least = cost;
                best = p;
            }
        }
        if (least < Occupancy.FORBIDDEN) {
            sheet.words(best, caption.text(), caption.bold());
        }
    }
}
