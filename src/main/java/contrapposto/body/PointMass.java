package contrapposto.body;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** {@code mass} in kg, thought of as being in one place. */
record PointMass(Vector3D at, double mass) {
    /** Standard gravity, m/s². */
    static final double GRAVITY = 9.80665;

    /** The mass centre of all of them, with their whole mass. */
    static PointMass centre(List<PointMass> masses) {
        double x = 0;
        double y = 0;
        double z = 0;
        double sum = 0;
        for (int i = 0; i < masses.size(); i++) {
            PointMass m = masses.get(i);
            x += m.mass * m.at.getX();
            y += m.mass * m.at.getY();
            z += m.mass * m.at.getZ();
            sum += m.mass;
        }
        return new PointMass(new Vector3D(x / sum, y / sum, z / sum), sum);
    }

    /** Its weight as a force. */
    PointForce weight() {
        return new PointForce(at, new Vector3D(0, 0, -mass * GRAVITY));
    }
}
