package contrapposto.body;

import java.util.EnumMap;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Where every joint is, in metres. Neighbouring joints are a segment length apart, to a millimetre.
 *
 * @param joints      all of {@link Joint}
 * @param ribsForward unit vector out of the breastbone: the turn of the ribs, which the shoulder line only stands in for
 * @param facing      unit vector the face looks along (matters in lying poses)
 */
public record Pose(Map<Joint, Vector3D> joints, Vector3D ribsForward, Vector3D facing) {
    public Pose {
        joints = java.util.Collections.unmodifiableMap(new EnumMap<>(joints));
        if (joints.size() != Joint.values().length) {
            throw new IllegalArgumentException("A pose needs all " + Joint.values().length + " joints.");
        }
    }

    public Vector3D at(Joint joint) {
        return joints.get(joint);
    }

    /** The same pose in the mirror: left and right change places, y changes sign. */
    public Pose mirrored() {
        var turned = new EnumMap<Joint, Vector3D>(Joint.class);
        joints.forEach((joint, at) -> turned.put(joint.mirrored(), mirrored(at)));
        return new Pose(turned, mirrored(ribsForward), mirrored(facing));
    }

    /** {@code v} with its y turned round. */
    public static Vector3D mirrored(Vector3D v) {
        return new Vector3D(v.getX(), -v.getY() + 0.0, v.getZ());
    }
}
