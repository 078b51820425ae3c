package contrapposto.body;

import static contrapposto.body.Vectors.across;
import static contrapposto.body.Vectors.length;
import static contrapposto.body.Vectors.step;

import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Two links in closed form: where the middle joint lies, or the two angles in a plane. */
final class TwoLink {
    private TwoLink() { }

    /**
     * The angles of a planar chain whose end is to be at (x, y).
     *
     * @param first  of the first link from the x axis, degrees
     * @param second of the second link from the first, degrees
     */
    record Angles(double first, double second) { }

    /**
     * Both links of a planar chain from the origin; the second angle is at least 0.
     * Source: Lynch and Park, Modern Robotics, ch. 6.
     *
     * @return empty where the point is out of reach
     */
    static Optional<Angles> angles(double l1, double l2, double x, double y) {
        double cosine = (x * x + y * y - l1 * l1 - l2 * l2) / (2 * l1 * l2);
        if (cosine > 1 || cosine < -1) {
            return Optional.empty();
        }
        double second = Degrees.acos(cosine);
        double first = Degrees.atan2(y, x)
                - Degrees.atan2(l2 * Degrees.sin(second), l1 + l2 * Degrees.cos(second));
        return Optional.of(new Angles(first, second));
    }

    /** The distance between the ends of two links that are bent by {@code flexion} degrees from straight. */
    static double span(double l1, double l2, double flexion) {
        return StrictMath.sqrt(l1 * l1 + l2 * l2 + 2 * l1 * l2 * Degrees.cos(flexion));
    }

    /** How far two links are bent from straight, degrees, when their ends are {@code span} apart. */
    static double flexion(double l1, double l2, double span) {
        return Degrees.acos((span * span - l1 * l1 - l2 * l2) / (2 * l1 * l2));
    }

    /**
     * The middle joint between {@code from} and {@code to}, bent toward {@code pole}. Ends too far apart (or too near)
     * give a straight (or folded) chain from {@code from}; the second link is then too short (or too long) and the
     * caller must count that as a breach.
     */
    static Vector3D middle(Vector3D from, Vector3D to, double l1, double l2, Vector3D pole) {
        Vector3D way = to.subtract(from);
        double span = length(way);
        Vector3D along = way.scalarMultiply(1 / span);
        double x = Math.clamp((l1 * l1 - l2 * l2 + span * span) / (2 * span), -l1, l1);
        double h = StrictMath.sqrt(l1 * l1 - x * x);
        return step(step(from, x, along), h, across(pole, along));
    }
}
