package contrapposto.sketch;

import static contrapposto.sketch.Directions.between;
import static contrapposto.sketch.Directions.cross;
import static contrapposto.sketch.Directions.ease;
import static contrapposto.sketch.Directions.unit;

import contrapposto.body.Joint;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.figure.Smooth;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * The trunk as elliptic sections along pelvis → neck. The pelvis turns as one block below, the ribs as one above, the
 * waist twists between; light ribs, grey waist and dark shorts let the reader see two volumes turn against each other.
 */
record Trunk(Sitter sitter) {
    private static final double[] LEVELS = {-.20, -.09, .06, .22, .46, .86, .96, 1.12};
    private static final double WAISTBAND = .30;
    private static final double VISIBLE = .03;

    static Trunk of(Sitter sitter) {
        return new Trunk(sitter);
    }

    /** A section: centre, unit axes forward and left, half depth and half width in metres. */
    record Section(Vector3D centre, Vector3D front, Vector3D left, double depth, double width) {
        /** @param degrees from the front toward the left */
        Vector3D on(double degrees) {
            double a = StrictMath.toRadians(degrees);
            return centre.add(width * StrictMath.sin(a), left).add(depth * StrictMath.cos(a), front);
        }

        Vector3D normal(double degrees) {
            double a = StrictMath.toRadians(degrees);
            return unit(left.scalarMultiply(StrictMath.sin(a) / width).add(StrictMath.cos(a) / depth, front));
        }
    }

    Section section(double s) {
        Frames f = sitter.frames();
        double[] row = Profile.TRUNK.at(s);
        double w = ease((s - .28) / .30);
        Vector3D left = unit(f.pelvisLeft().scalarMultiply(1 - w).add(w, f.ribsLeft()));
        Vector3D front = unit(cross(left, f.spine()));
        double build = (sitter.girth() - 1) * (1 - ease((s - .8) / .2));
        return new Section(axisPoint(s).add(sitter.size(row[2]), front), front, left,
                sitter.size(row[1]) * (1 + 1.3 * build), sitter.size(row[0]) * (1 + build));
    }

    private Vector3D axisPoint(double s) {
        return between(sitter.at(Joint.PELVIS), sitter.at(Joint.NECK), s);
    }

    private boolean visible(double s, double degrees) {
        return sitter.camera().depth(section(s).normal(degrees)) > VISIBLE;
    }

    private Point seen(double s, double degrees) {
        return sitter.camera().see(section(s).on(degrees));
    }

    /** Where the outline of the trunk passes the section: on the left and on the right of the axis as seen. */
    private Point[] rims(double s) {
        Section section = section(s);
        Point axis = sitter.camera().see(section(s + .02).centre()).minus(sitter.camera().see(section(s - .02).centre()));
        Point n = axis.unit().quarterTurn();
        Point px = sitter.camera().see(section.front()).times(section.depth());
        Point py = sitter.camera().see(section.left()).times(section.width());
        double reach = Math.sqrt(px.dot(n) * px.dot(n) + py.dot(n) * py.dot(n));
        Point offset = px.times(px.dot(n) / reach).along(py, py.dot(n) / reach);
        Point c = sitter.camera().see(section.centre());
        return new Point[] {c.plus(offset), c.along(offset, -1)};
    }

    /** Down the left rim and up the right one: counter-clockwise like every other outline. */
    Outline outline(double... levels) {
        List<Point> points = new ArrayList<>();
        for (int i = levels.length - 1; i >= 0; i--) {
            points.add(rims(levels[i])[0]);
        }
        for (double level : levels) {
            points.add(rims(level)[1]);
        }
        return Smooth.closed(points, Set.of());
    }

    Part part() {
        List<Part.Shape> shapes = new ArrayList<>();
        shapes.add(new Part.Shape(outline(LEVELS), Tones.WAIST));
        List<Part.Crease> creases = new ArrayList<>();
        List<Part.Shape> inner = new ArrayList<>();
        Optional<List<double[]>> arch = visibleArch();
        arch.ifPresent(run -> {
            List<Point> line = archLine(run);
            inner.add(new Part.Shape(ribs(run, line), Tones.TOP));
            creases.add(new Part.Crease(Smooth.open(line), Pen.RIB, Tones.BLACK));
        });
        for (Side side : Side.values()) {
            shapes.addAll(girdle(side));
        }
        List<Point> band = waistband();
        inner.add(new Part.Shape(shorts(band), Tones.SHORTS));
        creases.add(new Part.Crease(Smooth.open(band), Pen.HEM, Tones.BLACK));
        line(0, .90, .66, 3).ifPresent(o -> creases.add(new Part.Crease(o, Pen.RIB, Tones.BLACK)));
        line(180, .95, .40, 4).ifPresent(o -> creases.add(new Part.Crease(o, Pen.RIB, Tones.BLACK)));
        line(0, WAISTBAND - .01, .06, 3).ifPresent(o -> creases.add(new Part.Crease(o, Pen.TAB, Tones.WHITE)));
        return Part.ofBody(Piece.TRUNK, false,
                List.of(sitter.at(Joint.PELVIS), axisPoint(.5), sitter.at(Joint.NECK)), shapes, inner, creases);
    }

    /** The height of the costal arch: its peak is the front of the ribs. */
    private static double archAt(double degrees) {
        return .655 - .165 * ease(Math.abs(degrees) / 75) - .02 * Math.abs(degrees) / 180;
    }

    /** The visible run of the arch as (height, degrees), left to right as degrees grow. */
    private Optional<List<double[]>> visibleArch() {
        int step = 45;
        int n = 360 / step;
        List<double[]> run = new ArrayList<>();
        for (int start = 0; start < n; start++) {
            if (archVisible(start, step) && !archVisible(start + n - 1, step)) {
                for (int i = start; i < start + n && archVisible(i, step); i++) {
                    run.add(archPoint(i, step));
                }
                break;
            }
        }
        return run.size() > 2 ? Optional.of(run) : Optional.empty();
    }

    private static double[] archPoint(int i, int step) {
        double degrees = i * step % 360 - 180;
        return new double[] {archAt(degrees), degrees};
    }

    private boolean archVisible(int i, int step) {
        double[] p = archPoint(i, step);
        return visible(p[0], p[1]);
    }

    /** The arch as seen, its ends on the trunk's outline, from the left rim to the right one. */
    private List<Point> archLine(List<double[]> run) {
        List<Point> line = new ArrayList<>();
        for (double[] p : run) {
            line.add(seen(p[0], p[1]));
        }
        Point[] first = rims(run.getFirst()[0]);
        boolean startsLeft = line.getFirst().distance(first[0]) <= line.getFirst().distance(first[1]);
        Point[] last = rims(run.getLast()[0]);
        line.set(0, first[startsLeft ? 0 : 1]);
        line.set(line.size() - 1, last[startsLeft ? 1 : 0]);
        return startsLeft ? line : line.reversed();
    }

    private Outline ribs(List<double[]> run, List<Point> line) {
        boolean startsLeft = line.getFirst().equals(rims(run.getFirst()[0])[0]);
        double leftEnd = (startsLeft ? run.getFirst() : run.getLast())[0];
        double rightEnd = (startsLeft ? run.getLast() : run.getFirst())[0];
        List<Point> points = new ArrayList<>();
        for (int i = LEVELS.length - 1; i >= 0; i--) {
            if (LEVELS[i] > leftEnd + .02) {
                points.add(rims(LEVELS[i])[0]);
            }
        }
        int corner = points.size();
        points.addAll(line);
        for (double level : LEVELS) {
            if (level > rightEnd + .02) {
                points.add(rims(level)[1]);
            }
        }
        return Smooth.closed(points, Set.of(corner, corner + line.size() - 1));
    }

    /** The visible half of the upper edge of the shorts, from the left rim to the right one. */
    private List<Point> waistband() {
        Section section = section(WAISTBAND);
        double facing = StrictMath.toDegrees(StrictMath.atan2(sitter.camera().depth(section.left()) * section.depth(),
                sitter.camera().depth(section.front()) * section.width()));
        Point[] rims = rims(WAISTBAND);
        List<Point> band = new ArrayList<>();
        band.add(rims[0]);
        boolean leftFirst = seen(WAISTBAND, facing - 90).distance(rims[0]) <= seen(WAISTBAND, facing + 90).distance(rims[0]);
        for (int turn = -45; turn <= 45; turn += 45) {
            band.add(seen(WAISTBAND, facing + (leftFirst ? turn : -turn)));
        }
        band.add(rims[1]);
        return band;
    }

    private Outline shorts(List<Point> band) {
        List<Point> points = new ArrayList<>();
        List<Point> back = new ArrayList<>();
        for (double level : LEVELS) {
            if (level < WAISTBAND - .02) {
                back.addFirst(rims(level)[0]);
                points.add(rims(level)[1]);
            }
        }
        int corner = points.size();
        points.addAll(band.reversed());
        points.addAll(back);
        return Smooth.closed(points, Set.of(corner, corner + band.size() - 1));
    }

    /** A line along the trunk at one angle, where it is visible. */
    private Optional<Outline> line(double degrees, double from, double to, int points) {
        List<Point> run = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            double s = from + (to - from) * i / (points - 1);
            if (visible(s, degrees)) {
                run.add(seen(s, degrees));
            }
        }
        return run.size() > 1 ? Optional.of(Smooth.open(run)) : Optional.empty();
    }

    /** Below and inside the tip of the shoulder. */
    static Vector3D drawnShoulder(Sitter sitter, Side side) {
        return sitter.at(side, Joint.Part.SHOULDER).add(-sitter.size(.010), sitter.frames().spine())
                .add(-sitter.size(.006), sitter.frames().ribsOut(side));
    }

    /** Where the shoulder girdle leaves the neck. */
    Vector3D girdleRoot() {
        return section(1.07).centre();
    }

    private List<Part.Shape> girdle(Side side) {
        Vector3D root = girdleRoot();
        Vector3D shoulder = drawnShoulder(sitter, side);
        Vector3D middle = between(root, shoulder, .55).add(-sitter.size(.002), sitter.frames().spine());
        boolean far = sitter.farArm(side);
        Outline outline = sitter.hull(sitter.ball(root, .029), sitter.ball(middle, .0265),
                sitter.ball(between(middle, shoulder, far ? .55 : 1), far ? .025 : .0285));
        return List.of(new Part.Shape(outline, Tones.TOP));
    }
}
