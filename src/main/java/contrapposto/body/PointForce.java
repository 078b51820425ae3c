package contrapposto.body;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** {@code newton} acting at a place. */
record PointForce(Vector3D at, Vector3D newton) {
    /** r × F about {@code point}, N·m. */
    Vector3D momentAbout(Vector3D point) {
        return Vectors.cross(at.subtract(point), newton);
    }

    /** The sum of all moments about {@code point}. */
    static Vector3D momentAbout(Vector3D point, List<PointForce> forces) {
        Vector3D sum = Vector3D.ZERO;
        for (PointForce force : forces) {
            sum = sum.add(force.momentAbout(point));
        }
        return sum;
    }

    /** The sum of all forces. */
    static Vector3D sum(List<PointForce> forces) {
        Vector3D sum = Vector3D.ZERO;
        for (PointForce force : forces) {
            sum = sum.add(force.newton);
        }
        return sum;
    }
}
