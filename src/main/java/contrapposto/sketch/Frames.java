package contrapposto.sketch;

import static contrapposto.sketch.Directions.across;
import static contrapposto.sketch.Directions.cross;
import static contrapposto.sketch.Directions.unit;

import contrapposto.body.Joint;
import contrapposto.body.Pose;
import contrapposto.quantity.Side;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Which way pelvis, ribs and head look, from the joints: x forward, y left, z (or {@code spine}) up. All unit vectors.
 */
record Frames(Vector3D spine, Vector3D pelvisFront, Vector3D pelvisLeft, Vector3D ribsFront, Vector3D ribsLeft,
              Vector3D headUp, Vector3D headFront, Vector3D headLeft) {

    static Frames of(Pose pose) {
        Vector3D spine = unit(pose.at(Joint.NECK).subtract(pose.at(Joint.PELVIS)));
        Vector3D pelvisLeft = unit(pose.at(Joint.LEFT_HIP).subtract(pose.at(Joint.RIGHT_HIP)));
        Vector3D pelvisFront = unit(cross(pelvisLeft, spine));
        Vector3D ribsFront = unit(across(pose.ribsForward(), spine));
        Vector3D ribsLeft = unit(cross(spine, ribsFront));
        Vector3D headUp = unit(pose.at(Joint.HEAD_TOP).subtract(pose.at(Joint.NECK)));
        Vector3D headFront = unit(across(pose.facing(), headUp));
        if (headFront.getNorm() < .5) {
            headFront = unit(across(ribsFront, headUp));
        }
        return new Frames(spine, pelvisFront, pelvisLeft, ribsFront, ribsLeft, headUp, headFront,
                cross(headUp, headFront));
    }

    /** Outward from the midline at the pelvis. */
    Vector3D pelvisOut(Side side) {
        return pelvisLeft.scalarMultiply(side.sign());
    }

    /** Outward from the midline at the ribs. */
    Vector3D ribsOut(Side side) {
        return ribsLeft.scalarMultiply(side.sign());
    }
}
