package contrapposto.body;

import static contrapposto.body.Vectors.across;
import static contrapposto.body.Vectors.blend;
import static contrapposto.body.Vectors.cross;
import static contrapposto.body.Vectors.step;
import static contrapposto.body.Vectors.unit;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Where the trunk is and how it is turned. All vectors are unit vectors.
 *
 * @param pelvis      midpoint of the hips
 * @param left        of the pelvis, toward the left hip
 * @param up          pelvis → neck
 * @param ribsForward out of the breastbone
 * @param ribsLeft    toward the left shoulder
 */
record Torso(Vector3D pelvis, Vector3D left, Vector3D up, Vector3D ribsForward, Vector3D ribsLeft) {
    /**
     * An upright trunk, leaned, bent and turned; the hips stay level.
     *
     * @param yaw  of the pelvis, + = left, degrees
     * @param lean forward, degrees
     * @param bend of the trunk to the left, degrees
     * @param turn of the ribs against the pelvis, + = left, degrees
     */
    static Torso upright(Vector3D pelvis, double yaw, double lean, double bend, double turn) {
        Vector3D forward = new Vector3D(Degrees.cos(yaw), Degrees.sin(yaw), 0);
        Vector3D left = new Vector3D(-forward.getY(), forward.getX(), 0);
        return tilted(pelvis, forward, left, Vector3D.PLUS_K, lean, bend, turn);
    }

    /** As {@link #upright}, from any three axes at right angles: a trunk on the floor has its forward axis down or up. */
    static Torso tilted(Vector3D pelvis, Vector3D forward, Vector3D left, Vector3D vertical, double lean, double bend,
                        double turn) {
        Vector3D leaned = blend(Degrees.cos(lean), vertical, Degrees.sin(lean), forward);
        Vector3D up = bend == 0 ? leaned : blend(Degrees.cos(bend), leaned, Degrees.sin(bend), left);
        Vector3D sideways = bend == 0 ? left : across(left, up);
        Vector3D ahead = cross(sideways, up);
        double c = Degrees.cos(turn);
        double s = Degrees.sin(turn);
        return new Torso(pelvis, left, up, blend(c, ahead, s, sideways), blend(c, sideways, -s, ahead));
    }

    /** The front of the pelvis. */
    Vector3D forward() {
        return unit(cross(left, up));
    }

    /** {@code v} of the ribs' frame (x out of the breastbone, y left, z toward the neck) in the world. */
    Vector3D fromRibs(double x, double y, double z) {
        return step(blend(x, ribsForward, y, ribsLeft), z, up);
    }

    Vector3D fromRibs(Vector3D v) {
        return fromRibs(v.getX(), v.getY(), v.getZ());
    }
}
