package contrapposto.body;

import contrapposto.quantity.Side;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * The outside load on a skeleton.
 *
 * @param pulley where a cable comes from; the origin without one
 */
record Loads(Load load, Vector3D pulley) {
    /** A bar across the hips lies this far before the hip joints and above the thighs, share of stature: house. */
    static final double HIP_CREASE = 0.06;

    /** @param middle where the pelvis is over the base, along x: pulley distances count from there */
    static Loads of(Load load, double middle) {
        return new Loads(load, switch (load) {
            case Load.Cable cable -> new Vector3D(middle + (cable.ahead() ? cable.distance() : -cable.distance()),
                    cable.across(), cable.pulleyHeight());
            case Load.Band band -> new Vector3D(middle + (band.ahead() ? band.distance() : -band.distance()),
                    0, band.anchorHeight());
            case Load.None none -> Vector3D.ZERO;
            case Load.InHand one -> Vector3D.ZERO;
            case Load.InEachHand each -> Vector3D.ZERO;
            case Load.InBothHands both -> Vector3D.ZERO;
            case Load.OnHips hips -> Vector3D.ZERO;
        });
    }

    /** The masses held by {@code side}'s hand, appended to {@code into}. */
    void inHand(Skeleton k, Side side, List<PointMass> into) {
        switch (load) {
            case Load.InHand(var hand, var mass) -> {
                if (hand == side) {
                    into.add(new PointMass(k.grip(side), mass));
                }
            }
            case Load.InEachHand(var mass) -> into.add(new PointMass(k.grip(side), mass));
            case Load.InBothHands(var mass) ->
                    into.add(new PointMass(k.grip(side).add(k.grip(side.other())).scalarMultiply(0.5), mass / 2));
            case Load.None none -> { }
            case Load.OnHips hips -> { }
            case Load.Cable cable -> { }
            case Load.Band band -> { }
        }
    }

    /** The mass that lies on the pelvis, appended to {@code into}. */
    void onPelvis(Skeleton k, List<PointMass> into) {
        if (load instanceof Load.OnHips(var mass)) {
            into.add(new PointMass(Vectors.step(k.at(Joint.PELVIS), HIP_CREASE * k.person().stature(), k.torso().forward()), mass));
        }
    }

    /** The pull of a cable on {@code side}'s hand, appended to {@code into}. */
    void pull(Skeleton k, Side side, List<PointForce> into) {
        if (load instanceof Load.Cable cable && cable.hand() == side) {
            Vector3D grip = k.grip(side);
            double newton = cable.mass() * PointMass.GRAVITY / cable.ratio();
            into.add(new PointForce(grip, pulley.subtract(grip).normalize().scalarMultiply(newton)));
        }
    }

    /** How far the line between hand and pulley slopes down ahead of the person, degrees; NaN without a cable. */
    double slope(Skeleton k) {
        if (!(load instanceof Load.Cable cable)) {
            return Double.NaN;
        }
        Vector3D line = k.grip(cable.hand()).subtract(pulley);
        Vector3D forward = line.getX() >= 0 ? line : line.negate();
        return -Degrees.atan2(forward.getZ(), StrictMath.sqrt(forward.getX() * forward.getX() + forward.getY() * forward.getY()));
    }
}
