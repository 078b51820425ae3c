package contrapposto.body;

import static contrapposto.body.Vectors.across;
import static contrapposto.body.Vectors.blend;
import static contrapposto.body.Vectors.step;
import static contrapposto.body.Vectors.unit;

import contrapposto.body.Joint.Part;
import contrapposto.quantity.Side;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Places both arms of a skeleton whose trunk is placed, as the problem's {@link ArmTask}s say. Lengths in the shapes
 * below are shares of stature; they are the drawing study's (house).
 *
 * @param leftHand  where the left wrist is if the base gives it a place on a support, else the origin: the arm then hangs
 * @param rightHand the same for the right
 */
record Arms(PoseProblem problem, Vector3D leftHand, Vector3D rightHand) {
    /** Hands on one weight are this far from the midline, share of stature. */
    private static final double TOGETHER = 0.05;
    /** A hanging arm that holds a weight is this many times as far out as an empty one (house). */
    private static final double LOADED_OUT = 2;
    /** Most bend of an elbow that draws back, degrees: inside reference D2 (145). */
    private static final double MOST_DRAWN = 138;
    private static final double SHOULDER_MARGIN = 0.5;
    /** A trunk leaned this far rests its hand on the thigh, degrees. */
    private static final double ON_THIGH_FROM = 25;
    /** How that thigh slopes (degrees; the search places arms before legs), how straight the arm may be, how thick the thigh is (share of stature), and the part of it the hand may lie on. */
    private static final double THIGH_SLOPE = 14;
    private static final double THIGH_REACH = 0.985;
    private static final double THIGH_RADIUS = 0.05;
    private static final double NEAREST_ON_THIGH = 0.15;
    private static final double FARTHEST_ON_THIGH = 0.75;
    /** A shoulder that rises less than this presses nothing overhead: reference D2, soft limit. */
    private static final double NEARLY_UP = 150;

    /** Arms whose hands touch nothing. */
    static Arms free(PoseProblem problem) {
        return new Arms(problem, Vector3D.ZERO, Vector3D.ZERO);
    }

    void place(Skeleton skeleton, Position position) {
        place(skeleton, Side.LEFT, position);
        place(skeleton, Side.RIGHT, position);
    }

    /** Places one arm. */
    void place(Skeleton k, Side side, Position position) {
        ArmTask task = problem.arm(side);
        double out = side.sign();
        double h = problem.person().stature();
        Torso torso = k.torso();
        switch (task) {
            case ArmTask.Hang hang -> {
                if (problem.load() instanceof Load.InBothHands) {
                    hangTogether(k, side);
                } else {
                    hang(k, side, holds(side) ? LOADED_OUT : 1);
                }
            }
            case ArmTask.Rest rest -> onHip(k, side);
            case ArmTask.AtChest chest -> k.reach(side,
                    near(k.at(Joint.NECK), torso, 0.105 * h, out * 0.035 * h, -0.105 * h),
                    torso.fromRibs(0.2, out * 0.5, -1), torso.fromRibs(0.40, -out * 0.50, 0.75).normalize());
            case ArmTask.AtShoulder shoulder -> atShoulder(k, side);
            case ArmTask.Overhead overhead -> {
                if (position == Position.START) {
                    atShoulder(k, side);
                } else {
                    Vector3D up = overhead(torso, side);
                    k.arm(side, up, up, up);
                }
            }
            case ArmTask.OnSupport support -> {
                if (hand(side).equals(Vector3D.ZERO)) {
                    hang(k, side, 1);
                } else {
                    k.reach(side, hand(side), torso.fromRibs(-0.5, out, -0.8), new Vector3D(0.95, 0, -0.3).normalize());
                }
            }
            case ArmTask.Planted planted -> hang(k, side, 1);
            case ArmTask.StepsAhead steps -> hang(k, side, 1);
            case ArmTask.Reach reach -> {
                if (problem.load() instanceof Load.InBothHands && problem.arm(side.other()) instanceof ArmTask.Reach) {
                    reachTogether(k, side, position);
                } else {
                    along(k, side, reach.direction(), position.pick(reach.startElbow(), 4), torso.fromRibs(-0.1, out * 0.5, -1));
                }
            }
            case ArmTask.Press(var direction) -> along(k, side, direction, position.pick(118, 8),
                    position == Position.START ? torso.fromRibs(-1, out * 0.6, -0.5) : torso.fromRibs(0, out * 0.6, -1));
            case ArmTask.Pull(var direction) -> {
                if (position == Position.START) {
                    along(k, side, direction, 8, torso.fromRibs(0, out * 0.5, -1));
                } else {
                    drawnBack(k, side, direction);
                }
            }
            case ArmTask.Curl(var from, var to, var supported) -> {
                Vector3D upper = supported ? torso.fromRibs(0.80, out * 0.10, -0.60).normalize()
                        : torso.fromRibs(0.04, out * (problem.base() instanceof BaseOfSupport.Seated ? 0.34 : 0.20), -1).normalize();
                bend(k, side, upper, position.pick(from, to), torso.ribsForward());
            }
            case ArmTask.Extend(var from, var to, var armBack) -> {
                Vector3D upper = torso.fromRibs(-Degrees.sin(armBack), out * 0.08, -Degrees.cos(armBack)).normalize();
                bend(k, side, upper, position.pick(from, to), torso.ribsForward());
            }
            case ArmTask.DrawBack back -> {
                if (position == Position.START) {
                    along(k, side, new Vector3D(0.95, 0, -0.15), 15, torso.fromRibs(0, out * 0.4, -1));
                } else {
                    drawnBack(k, side, Vector3D.PLUS_I);
                }
            }
            case ArmTask.Flat flat -> beside(k, side);
            case ArmTask.Pillow pillow -> beside(k, side);
        }
    }

    /** Whether the base gives this hand a place on a support. */
    boolean onSupport(Side side) {
        return problem.arm(side) instanceof ArmTask.OnSupport && !hand(side).equals(Vector3D.ZERO);
    }

    private Vector3D hand(Side side) {
        return side == Side.LEFT ? leftHand : rightHand;
    }

    private boolean holds(Side side) {
        return switch (problem.load()) {
            case Load.InHand(var hand, var mass) -> hand == side;
            case Load.InEachHand each -> true;
            case Load.None none -> false;
            case Load.InBothHands both -> false;
            case Load.OnHips hips -> false;
            case Load.Cable cable -> false;
            case Load.Band band -> false;
        };
    }

    /** An arm hangs down a little away from the trunk and hardly bent; farther where it must keep a weight off the leg. */
    private static void hang(Skeleton k, Side side, double away) {
        double out = side.sign() * away;
        Vector3D forearm = new Vector3D(0.06, out * 0.04, -1).normalize();
        k.arm(side, new Vector3D(-0.05, out * 0.11, -1).normalize(), forearm, forearm);
    }

    /** Straight up, or as far up as the shoulder goes while that is nearly so. */
    private Vector3D overhead(Torso torso, Side side) {
        Vector3D up = new Vector3D(0.06, side.sign() * 0.06, 1).normalize();
        double ahead = Vectors.dot(up, torso.ribsForward());
        double along = Vectors.dot(up, torso.up());
        double most = problem.limits().on(side).shoulderFlexion() - SHOULDER_MARGIN;
        if (180 - Degrees.atan2(ahead, along) <= most || most < NEARLY_UP) {
            return up;
        }
        double r = StrictMath.sqrt(ahead * ahead + along * along);
        return torso.fromRibs(r * Degrees.sin(most), Vectors.dot(up, torso.ribsLeft()), -r * Degrees.cos(most));
    }

    /** Both hands hang on one weight before the body. */
    private void hangTogether(Skeleton k, Side side) {
        Segments lengths = problem.person().segments();
        double h = problem.person().stature();
        double across = lengths.shoulderSpacing() / 2 - TOGETHER * h;
        double reach = 0.985 * (lengths.upperArm() + lengths.forearm());
        double down = StrictMath.sqrt(reach * reach - across * across);
        Vector3D shoulder = k.at(side, Part.SHOULDER);
        Vector3D middle = k.at(Joint.NECK);
        Vector3D wrist = new Vector3D(middle.getX() + 0.02 * h, middle.getY() + side.sign() * TOGETHER * h, shoulder.getZ() - down);
        k.reach(side, wrist, new Vector3D(-1, side.sign() * 0.4, 0), new Vector3D(0, 0, -1));
    }

    /** Both hands reach with one weight: to the middle between the places to which each would reach alone. */
    private void reachTogether(Skeleton k, Side side, Position position) {
        Segments lengths = problem.person().segments();
        Torso torso = k.torso();
        Vector3D middle = Vector3D.ZERO;
        for (Side each : Side.values()) {
            if (problem.arm(each) instanceof ArmTask.Reach(var direction, var startElbow)) {
                double span = TwoLink.span(lengths.upperArm(), lengths.forearm(), position.pick(startElbow, 4));
                middle = middle.add(0.5, step(k.at(each, Part.SHOULDER), span, torso.fromRibs(direction).normalize()));
            }
        }
        Vector3D wrist = middle.add(torso.fromRibs(0, side.sign() * TOGETHER * problem.person().stature(), 0));
        k.reach(side, wrist, torso.fromRibs(-0.1, side.sign() * 0.5, -1), unit(middle.subtract(k.at(Joint.NECK))));
    }

    /** The hand on the hip; a trunk that leans has it on the thigh, as far down as the arm reaches. */
    private void onHip(Skeleton k, Side side) {
        double out = side.sign();
        double h = problem.person().stature();
        Torso torso = k.torso();
        Vector3D forward = torso.forward();
        if (torso.up().getZ() < Degrees.cos(ON_THIGH_FROM)) {
            onThigh(k, side);
            return;
        }
        Vector3D wrist = step(step(step(k.at(side, Part.HIP), 0.045 * h, torso.up()), 0.012 * h, forward), out * 0.048 * h, torso.left());
        k.reach(side, wrist, blend(-0.5, forward, out, torso.left()),
                unit(blend(0.8, forward, -0.5, torso.up())));
    }

    private void onThigh(Skeleton k, Side side) {
        Segments lengths = problem.person().segments();
        double h = problem.person().stature();
        Vector3D hip = k.at(side, Part.HIP);
        Vector3D down = new Vector3D(Degrees.sin(THIGH_SLOPE), 0, -Degrees.cos(THIGH_SLOPE));
        Vector3D front = new Vector3D(Degrees.cos(THIGH_SLOPE), 0, Degrees.sin(THIGH_SLOPE));
        Vector3D shoulder = k.at(side, Part.SHOULDER);
        double most = THIGH_REACH * (lengths.upperArm() + lengths.forearm());
        Vector3D over = step(hip, THIGH_RADIUS * h, front).subtract(shoulder);
        double along = Vectors.dot(over, down);
        double rest = most * most - over.getNormSq() + along * along;
        double t = Math.clamp(rest > 0 ? StrictMath.sqrt(rest) - along : -along, NEAREST_ON_THIGH * lengths.thigh(), FARTHEST_ON_THIGH * lengths.thigh());
        k.reach(side, step(step(hip, THIGH_RADIUS * h, front), t, down), torsoOut(k, side), unit(blend(0.8, down, 0.5, front)));
    }

    private static Vector3D torsoOut(Skeleton k, Side side) {
        return k.torso().fromRibs(-0.6, side.sign(), 0);
    }

    private void atShoulder(Skeleton k, Side side) {
        double out = side.sign();
        double h = problem.person().stature();
        Torso torso = k.torso();
        k.reach(side, near(k.at(side, Part.SHOULDER), torso, 0.105 * h, out * 0.045 * h, 0.010 * h),
                torso.fromRibs(0.25, out * 0.45, -1), torso.fromRibs(0.1, -out * 0.1, 1).normalize());
    }

    /** The hand on a straight line from the shoulder, elbow bent. @param direction in the ribs' frame */
    private void along(Skeleton k, Side side, Vector3D direction, double elbow, Vector3D pole) {
        Segments lengths = problem.person().segments();
        Vector3D line = k.torso().fromRibs(direction).normalize();
        double span = TwoLink.span(lengths.upperArm(), lengths.forearm(), elbow);
        k.reach(side, step(k.at(side, Part.SHOULDER), span, line), pole, line);
    }

    /** The elbow behind the trunk, the forearm along the line of pull. */
    private static void drawnBack(Skeleton k, Side side, Vector3D direction) {
        Torso torso = k.torso();
        Vector3D line = torso.fromRibs(direction).normalize();
        Vector3D wish = unit(blend(-0.55, line, 1, torso.fromRibs(0, side.sign() * 0.30, -0.80)));
        Vector3D upper = Vectors.dot(wish, line) > Degrees.cos(MOST_DRAWN) ? wish
                : blend(Degrees.cos(MOST_DRAWN), line, Degrees.sin(MOST_DRAWN), across(wish, line));
        k.arm(side, upper, line, line);
    }

    /** The forearm turned from the line of the upper arm by {@code flexion} toward {@code front}. */
    private static void bend(Skeleton k, Side side, Vector3D upper, double flexion, Vector3D front) {
        Vector3D forearm = blend(Degrees.cos(flexion), upper, Degrees.sin(flexion), across(front, upper));
        k.arm(side, upper, forearm, forearm);
    }

    /** Palm down beside the pelvis of a body that lies on its back; farther out where a box stands under the feet. */
    private void beside(Skeleton k, Side side) {
        boolean box = problem.base() instanceof BaseOfSupport.Supine supine && supine.raise() > 0;
        double out = side.sign();
        double h = problem.person().stature();
        Vector3D shoulder = k.at(side, Part.SHOULDER);
        Vector3D wrist = new Vector3D(shoulder.getX() + (box ? 0.275 : 0.32) * h, shoulder.getY() + out * (box ? 0.17 : 0.055) * h, Segments.PALM_HEIGHT * h);
        k.reach(side, wrist, new Vector3D(0, out, 0.25), new Vector3D(1, 0, -0.05).normalize());
    }

    /** A place given in the ribs' axes from {@code from}. */
    private static Vector3D near(Vector3D from, Torso torso, double forward, double left, double up) {
        return from.add(torso.fromRibs(forward, left, up));
    }
}
