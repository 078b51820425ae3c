package contrapposto.sketch;

import contrapposto.figure.Point;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A parallel, oblique view that keeps two axes true: from the side x and z keep length and angle and only y is
 * sheared, so that a stance is to scale, floor lines lie level and the drawn shin angle is the solved one.
 *
 * @param right  page-right of the three axes
 * @param up     page-up of the three axes
 * @param toward unit vector toward the reader
 */
record Camera(Vector3D right, Vector3D up, Vector3D toward) {

    /** From the person's right, {@code azimuth} degrees toward the front, {@code elevation} degrees from above. */
    static Camera fromSide(double azimuth, double elevation) {
        double a = StrictMath.toRadians(azimuth);
        double lift = StrictMath.cos(a) * StrictMath.sin(StrictMath.toRadians(elevation));
        return new Camera(new Vector3D(1, StrictMath.sin(a), 0), new Vector3D(0, lift, 1),
                new Vector3D(StrictMath.sin(a), -1, lift).normalize());
    }

    /** From the front, {@code azimuth} degrees toward the person's left: y and z keep length and angle. */
    static Camera fromFront(double azimuth, double elevation) {
        double a = StrictMath.toRadians(azimuth);
        double lift = StrictMath.cos(a) * StrictMath.sin(StrictMath.toRadians(elevation));
        return new Camera(new Vector3D(-StrictMath.sin(a), 1, 0), new Vector3D(-lift, 0, 1),
                new Vector3D(1, StrictMath.sin(a), lift).normalize());
    }

    /** Where a point of space falls on the picture, metres, y up. Directions project alike. */
    Point see(Vector3D p) {
        return new Point(p.dotProduct(right), p.dotProduct(up));
    }

    /** Larger is nearer to the reader. */
    double depth(Vector3D p) {
        return p.dotProduct(toward);
    }

    /** Whether this looks along y, so that the floor's front edge is a level line. */
    boolean sideways() {
        return Math.abs(toward.getY()) > Math.abs(toward.getX());
    }
}
