package contrapposto.body;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** The axes of pelvis and ribs of a {@link StanceBody} in plain numbers; written over with every trial. */
final class TrunkNumbers {
    private final double yawCosine;
    private final double yawSine;
    private final double turnCosine;
    private final double turnSine;
    private final Angle lean = new Angle();
    private final Angle bend = new Angle();

    double aheadX, aheadY, aheadZ;
    double upX, upY, upZ;
    private double sideX, sideY, sideZ;
    double ribsAheadX, ribsAheadY, ribsAheadZ;
    double ribsLeftX, ribsLeftY, ribsLeftZ;

    /** @param turn of the ribs against the pelvis; both + = left, degrees */
    TrunkNumbers(double yaw, double turn) {
        this.yawCosine = Degrees.cos(yaw);
        this.yawSine = Degrees.sin(yaw);
        this.turnCosine = Degrees.cos(turn);
        this.turnSine = Degrees.sin(turn);
        tilt(0, 0);
    }

    double yawCosine() {
        return yawCosine;
    }

    double yawSine() {
        return yawSine;
    }

    double turnSine() {
        return turnSine;
    }

    double lean() {
        return lean.degrees();
    }

    double bend() {
        return bend.degrees();
    }

    /** Leans forward and bends to the left, degrees. */
    void tilt(double leanTo, double bendTo) {
        lean.set(leanTo);
        bend.set(bendTo);
        double cl = lean.cosine();
        double sl = lean.sine();
        double cb = bend.cosine();
        double sb = bend.sine();
        aheadX = cl * yawCosine;
        aheadY = cl * yawSine;
        aheadZ = -sl;
        double leanedX = sl * yawCosine;
        double leanedY = sl * yawSine;
        upX = cb * leanedX - sb * yawSine;
        upY = cb * leanedY + sb * yawCosine;
        upZ = cb * cl;
        sideX = -cb * yawSine - sb * leanedX;
        sideY = cb * yawCosine - sb * leanedY;
        sideZ = -sb * cl;
        ribsAheadX = turnCosine * aheadX + turnSine * sideX;
        ribsAheadY = turnCosine * aheadY + turnSine * sideY;
        ribsAheadZ = turnCosine * aheadZ + turnSine * sideZ;
        ribsLeftX = turnCosine * sideX - turnSine * aheadX;
        ribsLeftY = turnCosine * sideY - turnSine * aheadY;
        ribsLeftZ = turnCosine * sideZ - turnSine * aheadZ;
    }

    /** Thigh against trunk in the plane of the pelvis, + = flexed, degrees. */
    double hipFlexion(LegNumbers leg) {
        double x = leg.kneeX - leg.hipX;
        double y = leg.kneeY - leg.hipY;
        double z = leg.kneeZ - leg.hipZ;
        return Degrees.atan2(x * aheadX + y * aheadY + z * aheadZ, -(x * upX + y * upY + z * upZ));
    }

    /** Along x in the world, of what {@code arm} has in its own frame. */
    double worldX(ArmShape arm, Vector3D v) {
        return !arm.ofRibs() ? v.getX() : v.getX() * ribsAheadX + v.getY() * ribsLeftX + v.getZ() * upX;
    }

    double worldY(ArmShape arm, Vector3D v) {
        return !arm.ofRibs() ? v.getY() : v.getX() * ribsAheadY + v.getY() * ribsLeftY + v.getZ() * upY;
    }

    double worldZ(ArmShape arm, Vector3D v) {
        return !arm.ofRibs() ? v.getZ() : v.getX() * ribsAheadZ + v.getY() * ribsLeftZ + v.getZ() * upZ;
    }
}
