package contrapposto.body;

import contrapposto.body.Breaches.Kind;
import contrapposto.body.Joint.Part;
import contrapposto.quantity.Side;
import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** A body that kneels before a bench and leans over it, an elbow or the palms on top. The knees are at x = 0. */
final class AtSupport {
    /** A supported upper arm slopes down by this much, degrees; a planted one reaches down by this share of its length. */
    private static final double UPPER_ARM_SLOPE = 52;
    private static final double PAD = 0.32;
    private static final double PAD_HALF = 0.33;
    /** From a hand at the end of a bench to that end, m. */
    private static final double HAND_ROOM = 0.09;
    /** A weight is held at least this far above the floor, m. */
    private static final double WEIGHT_ROOM = 0.06;
    /** A supported elbow lies this near the far edge of the pad, so that the forearm hangs free of it, m. */
    private static final double FAR_EDGE = 0.03;
    /** From the wrist to the finger tips, share of stature. */
    private static final double PALM = 0.10;
    /** How far the wanted lean and a quarter of sitting back give way to each other, degrees. */
    private static final double GIVE = 20;

    private final PoseProblem problem;
    private final BaseOfSupport.KneelingAtSupport base;
    private final Loads loads;
    private final Segments lengths;
    private final double h;
    private double padFront;

    AtSupport(PoseProblem problem, BaseOfSupport.KneelingAtSupport base) {
        this.problem = problem;
        this.base = base;
        this.loads = Loads.of(problem.load(), 0);
        this.lengths = problem.person().segments();
        this.h = problem.person().stature();
    }

    PoseOutcome solve() {
        return Grounded.solve(problem, loads,
                position -> Hold.of(problem.action(), position).map(hold -> placed(position, hold)),
                k -> List.of(bench(k), Grounded.mat(-0.42 * h, 0.08 * h, 0.17 * h)));
    }

    /** Before the body; beside an arm that pulls a weight up, under the other hand alone. */
    private Prop bench(Skeleton k) {
        double aside = 0;
        for (Side side : Side.values()) {
            if (problem.arm(side) instanceof ArmTask.Pull) {
                aside = side.other().sign() * (Math.abs(k.at(side.other(), Part.WRIST).getY()) + PAD_HALF - HAND_ROOM);
            }
        }
        return new Prop.Bench(new Vector3D(padFront, aside - PAD_HALF, 0), new Vector3D(padFront + PAD, aside + PAD_HALF, base.height()));
    }

    /** The hips sit back as far, and the trunk leans as far, as brings the shoulders down to the arm on the bench. */
    private Resting placed(Position position, Hold hold) {
        double shoulder = base.height() + Segments.ELBOW_RADIUS * h + lengths.upperArm() * Degrees.sin(UPPER_ARM_SLOPE);
        double best = Double.POSITIVE_INFINITY;
        double sit = 0;
        double lean = hold.lean();
        for (int i = 0; i <= 100; i++) {
            double back = i * 0.5;
            double hip = Segments.KNEE_RADIUS * h + lengths.thigh() * Degrees.cos(back);
            double cosine = (shoulder - hip) / lengths.trunk();
            if (Math.abs(cosine) < 1) {
                double needed = Degrees.acos(cosine);
                double cost = square((needed - hold.lean()) / GIVE) + square(back / GIVE);
                if (needed < 80 && cost < best) {
                    best = cost;
                    sit = back;
                    lean = needed;
                }
            }
        }
        return build(position, hold, sit, lean);
    }

    private Resting build(Position position, Hold hold, double sit, double lean) {
        double dy = lengths.hipSpacing() / 2 - base.width() / 2;
        double flat = StrictMath.sqrt(square(lengths.thigh()) - square(dy));
        Vector3D pelvis = new Vector3D(-flat * Degrees.sin(sit), 0, Segments.KNEE_RADIUS * h + flat * Degrees.cos(sit));
        var k = new Skeleton(problem.person());
        k.trunk(Torso.upright(pelvis, 0, lean, 0, hold.turn()), Vector3D.PLUS_K);
        Kneeling.lacesDown(k, base.width(), 0);
        var resting = arms(k, position);
        for (Side side : Side.values()) {
            resting.on(side, Part.KNEE, Statics.leg(side), Segments.KNEE_RADIUS * h);
            resting.on(side.word() + "-toes", Statics.leg(side), Kneeling.laces(k, side), Kneeling.LIGHT);
        }
        return resting.settle();
    }

    private Resting arms(Skeleton k, Position position) {
        double front = Double.NEGATIVE_INFINITY;
        for (Side side : Side.values()) {
            if (problem.arm(side) instanceof ArmTask.Curl(var from, var to, var supported) && supported) {
                front = Math.max(front, elbowOnPad(k, side, position.pick(from, to)).getX() - PAD + FAR_EDGE);
            }
        }
        if (front == Double.NEGATIVE_INFINITY) {
            front = k.at(Joint.NECK).getX() - PAD / 3;
        }
        padFront = Math.max(front, (Segments.KNEE_RADIUS + 0.03) * h);
        for (Side side : Side.values()) {
            placeOther(k, side, position);
        }
        var resting = new Resting(k, loads, new Vector3D(0.75, 0, -0.5));
        for (Side side : Side.values()) {
            if (elbowRests(side)) {
                resting.on(side, Part.ELBOW, Statics.arm(side), Segments.ELBOW_RADIUS * h);
            } else if (problem.arm(side) instanceof ArmTask.Planted) {
                resting.onPalm(side);
                resting.breaches().atMost(Kind.ARM_REACH, side,
                        k.at(side, Part.WRIST).getZ() - base.height() - Segments.PALM_HEIGHT * h, 1e-4);
            }
        }
        return resting;
    }

    private boolean elbowRests(Side side) {
        return problem.arm(side) instanceof ArmTask.Curl(var from, var to, var supported) && supported;
    }

    private void placeOther(Skeleton k, Side side, Position position) {
        if (problem.arm(side) instanceof ArmTask.Planted) {
            Vector3D shoulder = k.at(side, Part.SHOULDER);
            double z = base.height() + Segments.PALM_HEIGHT * h;
            Vector3D wrist = new Vector3D(Math.min(padFront + PAD - PALM * h, Math.max(padFront + 0.03, shoulder.getX() + 0.02 * h)),
                    shoulder.getY() + side.sign() * 0.02 * h, z);
            k.reach(side, wrist, k.torso().fromRibs(-0.4, side.sign() * 0.8, -0.3), new Vector3D(0.97, -side.sign() * 0.2, 0).normalize());
        } else if (!elbowRests(side)) {
            Arms.free(problem).place(k, side, position);
            double low = WEIGHT_ROOM - k.grip(side).getZ();
            if (low > 0) {
                k.reach(side, k.at(side, Part.WRIST).add(new Vector3D(0, 0, low)), k.torso().fromRibs(0, side.sign() * 0.5, -1), new Vector3D(0.3, 0, -1).normalize());
            }
        }
    }

    /** The elbow on the bench, ahead of the shoulder, and the forearm bent by {@code flexion}. @return the elbow */
    private Vector3D elbowOnPad(Skeleton k, Side side, double flexion) {
        Vector3D shoulder = k.at(side, Part.SHOULDER);
        double dz = base.height() + Segments.ELBOW_RADIUS * h - shoulder.getZ();
        double dy = -side.sign() * 0.015 * h;
        double dx = StrictMath.sqrt(Math.max(0, square(lengths.upperArm()) - dz * dz - dy * dy));
        Vector3D upper = Vectors.unit(new Vector3D(dx, dy, dz));
        Vector3D across = Vectors.across(new Vector3D(0.5, 0, 1), upper);
        Vector3D forearm = Vectors.blend(Degrees.cos(flexion), upper, Degrees.sin(flexion), across);
        k.arm(side, upper, forearm, forearm);
        return k.at(side, Part.ELBOW);
    }

    private static double square(double x) {
        return x * x;
    }
}
