package contrapposto.sketch;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** What drawing asks of vectors beyond Hipparchus: nothing here fails on a zero vector. */
final class Directions {
    static final Vector3D AHEAD = Vector3D.PLUS_I;
    static final Vector3D UP = Vector3D.PLUS_K;

    private Directions() { }

    /** Length 1; zero stays zero. */
    static Vector3D unit(Vector3D v) {
        double norm = v.getNorm();
        return norm > 1e-9 ? v.scalarMultiply(1 / norm) : Vector3D.ZERO;
    }

    /** The part of {@code v} at right angles to the unit vector {@code axis}. */
    static Vector3D across(Vector3D v, Vector3D axis) {
        return v.add(-v.dotProduct(axis), axis);
    }

    static Vector3D cross(Vector3D a, Vector3D b) {
        return Vector3D.crossProduct(a, b);
    }

    static Vector3D between(Vector3D a, Vector3D b, double share) {
        return a.add(share, b.subtract(a));
    }

    /** From 0 at {@code t} = 0 to 1 at {@code t} = 1, level at both ends. */
    static double ease(double t) {
        double s = Math.clamp(t, 0, 1);
        return s * s * (3 - 2 * s);
    }
}
