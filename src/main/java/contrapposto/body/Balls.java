package contrapposto.body;

import contrapposto.body.Joint.Part;
import contrapposto.quantity.Side;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** A limb, or a weight, as a row of balls. Radii of limbs are those they are drawn with, shares of stature (drawing study: house). */
final class Balls {
    private static final double[] THIGH_AT = {.4, .5, .6, .7, .8, .9, 1};
    private static final double[] THIGH = {.048, .045, .0415, .038, .035, .033, .031};
    private static final double[] SHANK_AT = {.1, .2, .3, .4, .5, .6, .7, .8, .85, .9, .95, 1};
    private static final double[] SHANK = {.031, .032, .0335, .032, .029, .026, .0215, .019, .018, .017, .017, .017};
    private static final double[] INSTEP_AT = {.5};
    private static final double[] INSTEP = {.018};
    private static final double[] SOLE_AT = {0, .5, 1};
    private static final double[] SOLE = {0, 0, 0};
    private static final double[] TOES_AT = {.5, 1};
    private static final double[] UPPER_ARM_AT = {.5, .625, .75, .875, 1};
    private static final double[] UPPER_ARM = {.025, .024, .0225, .021, .0205};
    private static final double[] FOREARM_AT = {.15, .3, .45, .6, .8, 1};
    private static final double[] FOREARM = {.022, .022, .0205, .018, .0155, .0138};

    private final Vector3D[] places;
    private final double[] radii;
    private final double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
    private final double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
    private int size;

    private Balls(int most) {
        places = new Vector3D[most];
        radii = new double[most];
    }

    /** Balls of one radius, m. */
    static Balls of(List<Vector3D> places, double radius) {
        var balls = new Balls(places.size());
        places.forEach(place -> balls.add(place, radius));
        return balls;
    }

    /** Thigh from where it leaves the hip, shank, instep and sole. */
    static Balls leg(Pose pose, Side side, double stature) {
        Vector3D knee = pose.at(Joint.of(side, Part.KNEE));
        Vector3D ankle = pose.at(Joint.of(side, Part.ANKLE));
        Vector3D ball = pose.at(Joint.of(side, Part.BALL));
        var balls = new Balls(THIGH.length + SHANK.length + INSTEP.length + SOLE.length + TOES_AT.length);
        balls.row(pose.at(Joint.of(side, Part.HIP)), knee, THIGH_AT, THIGH, stature);
        balls.row(knee, ankle, SHANK_AT, SHANK, stature);
        balls.row(ankle, ball, INSTEP_AT, INSTEP, stature);
        balls.row(pose.at(Joint.of(side, Part.HEEL)), ball, SOLE_AT, SOLE, stature);
        balls.row(ball, pose.at(Joint.of(side, Part.TOE)), TOES_AT, SOLE, stature);
        return balls;
    }

    /** Lower half of the upper arm, and the forearm. */
    static Balls arm(Pose pose, Side side, double stature) {
        Vector3D elbow = pose.at(Joint.of(side, Part.ELBOW));
        var balls = new Balls(UPPER_ARM.length + FOREARM.length);
        balls.row(pose.at(Joint.of(side, Part.SHOULDER)), elbow, UPPER_ARM_AT, UPPER_ARM, stature);
        balls.row(elbow, pose.at(Joint.of(side, Part.WRIST)), FOREARM_AT, FOREARM, stature);
        return balls;
    }

    private void row(Vector3D from, Vector3D to, double[] along, double[] radius, double stature) {
        for (int i = 0; i < along.length; i++) {
            add(Vectors.between(from, to, along[i]), radius[i] * stature);
        }
    }

    private void add(Vector3D place, double radius) {
        places[size] = place;
        radii[size++] = radius;
        double[] at = {place.getX(), place.getY(), place.getZ()};
        for (int axis = 0; axis < 3; axis++) {
            low[axis] = Math.min(low[axis], at[axis] - radius);
            high[axis] = Math.max(high[axis], at[axis] + radius);
        }
    }

    int size() {
        return size;
    }

    Vector3D at(int ball) {
        return places[ball];
    }

    double radius(int ball) {
        return radii[ball];
    }

    /** Whether the blocks around both overlap, so that their balls may touch. */
    boolean near(Balls other) {
        for (int axis = 0; axis < 3; axis++) {
            if (low[axis] > other.high[axis] || other.low[axis] > high[axis]) {
                return false;
            }
        }
        return true;
    }
}
