package contrapposto.sketch;

import static contrapposto.sketch.Directions.cross;
import static contrapposto.sketch.Directions.unit;

import contrapposto.figure.Circle;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Convex bodies with flat faces, each face toned by where it looks. */
final class Solid {
    /** Greys of the top, of what faces the side, and of what faces front or back. */
    record Toning(double top, double side, double end) { }

    private static final int[][] BLOCK = {{0, 1, 3, 2}, {4, 5, 7, 6}, {0, 1, 5, 4}, {2, 3, 7, 6}, {0, 2, 6, 4}, {1, 3, 7, 5}};
    private static final int[][] WEDGE = {{0, 1, 5, 4}, {2, 3, 5, 4}, {0, 1, 3, 2}, {0, 2, 4}, {1, 3, 5}};

    private Solid() { }

    static Part block(String name, Camera camera, Vector3D low, Vector3D high, Toning toning) {
        List<Vector3D> corners = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            corners.add(new Vector3D((i & 4) == 0 ? low.getX() : high.getX(), (i & 2) == 0 ? low.getY() : high.getY(),
                    (i & 1) == 0 ? low.getZ() : high.getZ()));
        }
        return of(name, camera, corners, BLOCK, toning);
    }

    /** A prism, {@code height} high at {@code heelX} and nothing at {@code toeX}. */
    static Part wedge(String name, Camera camera, double heelX, double toeX, double yLow, double yHigh, double floor,
                      double height, Toning toning) {
        return of(name, camera, List.of(new Vector3D(heelX, yLow, floor), new Vector3D(heelX, yHigh, floor),
                new Vector3D(toeX, yLow, floor), new Vector3D(toeX, yHigh, floor),
                new Vector3D(heelX, yLow, floor + height), new Vector3D(heelX, yHigh, floor + height)), WEDGE, toning);
    }

    private static Part of(String name, Camera camera, List<Vector3D> corners, int[][] sides, Toning toning) {
        Vector3D centre = corners.stream().reduce(Vector3D.ZERO, Vector3D::add).scalarMultiply(1.0 / corners.size());
        List<Part.Shape> shapes = new ArrayList<>();
        List<Part.Crease> creases = new ArrayList<>();
        List<Part.Face> faces = new ArrayList<>();
        List<Circle> seen = corners.stream().map(c -> new Circle(camera.see(c), 0)).toList();
        for (int[] side : sides) {
            Vector3D a = corners.get(side[0]);
            Vector3D normal = unit(cross(corners.get(side[1]).subtract(a), corners.get(side[2]).subtract(a)));
            if (normal.dotProduct(a.subtract(centre)) < 0) {
                normal = normal.negate();
            }
            faces.add(new Part.Face(normal, a));
            if (camera.depth(normal) > .02) {
                Outline face = counterClockwise(side, seen);
                shapes.add(new Part.Shape(face, tone(normal, toning)));
                creases.add(new Part.Crease(face, Pen.EDGE, Tones.BLACK));
            }
        }
        return new Part(name, Piece.THING, corners, false, Pen.THING, List.of(Circle.hull(seen)), shapes, creases,
                List.of(), faces);
    }

    private static Outline counterClockwise(int[] side, List<Circle> seen) {
        List<Circle> corners = new ArrayList<>();
        for (int i : side) {
            corners.add(seen.get(i));
        }
        return Circle.hull(corners);
    }

    private static double tone(Vector3D normal, Toning toning) {
        return normal.getZ() > .7 ? toning.top() : Math.abs(normal.getY()) > Math.abs(normal.getX()) ? toning.side()
                : toning.end();
    }

    /** A cylinder between two points, with its nearer end face. */
    static Part cylinder(String name, Camera camera, Vector3D a, Vector3D b, double radius, double tone, double face) {
        List<Part.Shape> shapes = new ArrayList<>();
        List<Part.Crease> creases = new ArrayList<>();
        Vector3D axis = unit(b.subtract(a));
        Outline nearEnd = new Ring(camera.depth(axis) > 0 ? b : a, axis, radius).whole(camera);
        shapes.add(new Part.Shape(mantle(camera, a, b, axis, radius), tone));
        if (Math.abs(camera.depth(axis)) > .05) {
            shapes.add(new Part.Shape(nearEnd, face));
            creases.add(new Part.Crease(nearEnd, Pen.EDGE, Tones.BLACK));
        }
        return Part.thing(name, List.of(a, b), Pen.THING, shapes, creases);
    }

    /** The silhouette: the visible half of one end ring, a straight edge, the far half of the other end, back. */
    private static Outline mantle(Camera camera, Vector3D a, Vector3D b, Vector3D axis, double radius) {
        Point along = camera.see(b).minus(camera.see(a));
        Outline ring = new Ring(a, axis, radius).whole(camera);
        if (along.length() < 1e-6) {
            return ring;
        }
        Vector3D side = unit(cross(axis, camera.toward()));
        Vector3D up = cross(side, axis);
        Outline half = Ring.ellipse(camera, b, side.scalarMultiply(radius), up.scalarMultiply(radius), 0, StrictMath.PI);
        Outline other = Ring.ellipse(camera, a, side.scalarMultiply(-radius), up.scalarMultiply(-radius), 0, StrictMath.PI);
        Point top = Bend.middleOf(half);
        boolean outward = top.minus(camera.see(b)).dot(along) > 0;
        if (!outward) {
            half = Ring.ellipse(camera, a, side.scalarMultiply(radius), up.scalarMultiply(radius), 0, StrictMath.PI);
            other = Ring.ellipse(camera, b, side.scalarMultiply(-radius), up.scalarMultiply(-radius), 0, StrictMath.PI);
        }
        return Bend.joined(half, other);
    }
}
