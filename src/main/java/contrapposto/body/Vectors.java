package contrapposto.body;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Plain arithmetic on Hipparchus vectors for the innermost loop: the library's own sums of products carry the rounding
 * error along, which costs ten times as much and gains nothing at the millimetre.
 */
final class Vectors {
    private Vectors() { }

    /** {@code from + length · direction}. */
    static Vector3D step(Vector3D from, double length, Vector3D direction) {
        return new Vector3D(from.getX() + length * direction.getX(), from.getY() + length * direction.getY(),
                from.getZ() + length * direction.getZ());
    }

    /** The point at {@code share} of the way. */
    static Vector3D between(Vector3D from, Vector3D to, double share) {
        double rest = 1 - share;
        return new Vector3D(rest * from.getX() + share * to.getX(), rest * from.getY() + share * to.getY(),
                rest * from.getZ() + share * to.getZ());
    }

    /** {@code a · u + b · v}. */
    static Vector3D blend(double a, Vector3D u, double b, Vector3D v) {
        return new Vector3D(a * u.getX() + b * v.getX(), a * u.getY() + b * v.getY(), a * u.getZ() + b * v.getZ());
    }

    static double dot(Vector3D u, Vector3D v) {
        return u.getX() * v.getX() + u.getY() * v.getY() + u.getZ() * v.getZ();
    }

    static Vector3D cross(Vector3D u, Vector3D v) {
        return new Vector3D(u.getY() * v.getZ() - u.getZ() * v.getY(), u.getZ() * v.getX() - u.getX() * v.getZ(),
                u.getX() * v.getY() - u.getY() * v.getX());
    }

    static double length(Vector3D v) {
        return StrictMath.sqrt(dot(v, v));
    }

    static Vector3D unit(Vector3D v) {
        return v.scalarMultiply(1 / length(v));
    }

    /** The part of {@code v} at right angles to the unit vector {@code axis}, made a unit vector. */
    static Vector3D across(Vector3D v, Vector3D axis) {
        return unit(step(v, -dot(v, axis), axis));
    }
}
