package contrapposto.body;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** A force that a support puts on a limb. @param what word of the plan: {@code left-foot}, {@code right-hand}, … */
record Contact(String what, Limb limb, Vector3D at, Vector3D newton) {
    enum Limb { LEFT_LEG, RIGHT_LEG, LEFT_ARM, RIGHT_ARM, TRUNK }

    PointForce force() {
        return new PointForce(at, newton);
    }
}
