package contrapposto.sketch;

import static contrapposto.sketch.Directions.cross;
import static contrapposto.sketch.Directions.unit;

import contrapposto.figure.Circle;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** A circle in space about {@code axis}; seen, an ellipse. */
record Ring(Vector3D centre, Vector3D axis, double radius) {

    /** The half whose outward normal points toward the reader, open. */
    Outline visibleHalf(Camera camera) {
        Vector3D side = side(camera);
        Vector3D near = cross(side, axis);
        if (near.dotProduct(camera.toward()) < 0) {
            near = near.negate();
        }
        return ellipse(camera, centre, side.scalarMultiply(radius), near.scalarMultiply(radius), 0, StrictMath.PI);
    }

    /** All of it, closed. */
    Outline whole(Camera camera) {
        Vector3D side = side(camera);
        Outline unit = new Circle(new Point(0, 0), 1).outline();
        return projected(camera, unit, centre, side.scalarMultiply(radius), cross(side, axis).scalarMultiply(radius));
    }

    private Vector3D side(Camera camera) {
        Vector3D side = cross(axis, camera.toward());
        return unit(side.getNorm() > .05 ? side : cross(axis, Math.abs(axis.getZ()) < .9 ? Directions.UP : Directions.AHEAD));
    }

    /** The arc centre + cos·a + sin·b between two angles, open, as seen. */
    static Outline ellipse(Camera camera, Vector3D centre, Vector3D a, Vector3D b, double from, double to) {
        return projected(camera, new Circle(new Point(0, 0), 1).arc(from, to), centre, a, b);
    }

    private static Outline projected(Camera camera, Outline flat, Vector3D centre, Vector3D a, Vector3D b) {
        Point c = camera.see(centre);
        Point pa = camera.see(a);
        Point pb = camera.see(b);
        return flat.mapped(p -> c.along(pa, p.x()).along(pb, p.y()));
    }
}
