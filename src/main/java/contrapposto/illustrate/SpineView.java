package contrapposto.illustrate;

import contrapposto.body.Joint;
import contrapposto.body.Pose;
import contrapposto.figure.Point;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A body seen along its spine from the head, in metres from the middle of the hips, y down the page. Someone upright has
 * ahead up the page; anyone else has the ceiling up and the floor down.
 *
 * @param right page-right
 * @param up    page-up
 */
record SpineView(Pose pose, double stature, boolean upright, Vector3D right, Vector3D up) {
    /** A spine steeper than this share of upright is looked at from above. */
    private static final double STEEP = .6;

    static SpineView of(Pose pose, double stature) {
        Vector3D spine = pose.at(Joint.NECK).subtract(pose.at(Joint.PELVIS)).normalize();
        boolean upright = spine.getZ() > STEEP;
        Vector3D wanted = upright ? Vector3D.PLUS_I : Vector3D.PLUS_K;
        Vector3D up = wanted.add(-wanted.dotProduct(spine), spine).normalize();
        return new SpineView(pose, stature, upright, Vector3D.crossProduct(up, spine), up);
    }

    Point see(Vector3D p) {
        Vector3D from = p.subtract(pose.at(Joint.PELVIS));
        return new Point(from.dotProduct(right), -from.dotProduct(up));
    }

    double size(double share) {
        return share * stature;
    }

    /** The direction of a vector on the page, from page-right toward page-down. */
    double angle(Vector3D direction) {
        return new Point(direction.dotProduct(right), -direction.dotProduct(up)).angle();
    }

    Vector3D ribsFront() {
        return pose.ribsForward();
    }

    Vector3D pelvisFront() {
        Vector3D spine = pose.at(Joint.NECK).subtract(pose.at(Joint.PELVIS)).normalize();
        return Vector3D.crossProduct(pose.at(Joint.LEFT_HIP).subtract(pose.at(Joint.RIGHT_HIP)), spine);
    }
}
