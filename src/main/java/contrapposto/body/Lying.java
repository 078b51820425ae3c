package contrapposto.body;

import contrapposto.body.Breaches.Kind;
import contrapposto.body.Contact.Limb;
import contrapposto.body.Joint.Part;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** A body on its back with both soles on a support, or on its side. The neck is at x = 0. */
final class Lying {
    /** Shoulder and hip joints of a body on its back above the floor, shares of stature: drawing study, house. */
    private static final double BACK = 0.070;
    private static final double SEAT = 0.066;
    /** Bend of the knees with the hips on the floor, degrees: house. */
    private static final double KNEES_UP = 104;
    /** A hip and a shoulder that one lies on, joint above the floor, shares of stature. */
    private static final double SIDE_HIP = 0.050;
    private static final double SIDE_NECK = 0.125;
    private static final double CUSHION = 0.055;

    private final PoseProblem problem;
    private final Loads loads;
    private final Segments lengths;
    private final double h;

    Lying(PoseProblem problem) {
        this.problem = problem;
        this.loads = Loads.of(problem.load(), 0);
        this.lengths = problem.person().segments();
        this.h = problem.person().stature();
    }

    PoseOutcome onBack(BaseOfSupport.Supine base) {
        return Grounded.solve(problem, loads, position -> onBack(base, position), k -> {
            var props = new ArrayList<Prop>();
            if (base.raise() > 0) {
                Vector3D heel = k.at(Side.LEFT, Part.HEEL);
                double half = base.width() / 2 + 0.14;
                props.add(new Prop.Box(new Vector3D(heel.getX() - 0.05, -half, 0), new Vector3D(heel.getX() + 0.37, half, base.raise())));
            }
            props.add(Grounded.mat(-0.30 * h, 0.44 * h, 0.20 * h));
            return props;
        });
    }

    private Optional<Resting> onBack(BaseOfSupport.Supine base, Position position) {
        double rise = 0;
        if (problem.action() instanceof Action.HipLift(var shortOf)) {
            if (position == Position.WORKING) {
                rise = inLine(base, shortOf);
            }
        } else if (Hold.of(problem.action(), position).isEmpty()) {
            return Optional.empty();
        }
        double turn = Hold.of(problem.action(), position).map(Hold::turn).orElse(0.0);
        Skeleton k = supine(base, rise, turn);
        Arms.free(problem).place(k, position);
        var resting = new Resting(k, loads, new Vector3D(0.05, 0, 1));
        for (Side side : Side.values()) {
            Vector3D shoulder = Vectors.between(k.at(Joint.NECK), k.at(side, Part.SHOULDER), 0.6);
            resting.on(side.word() + "-shoulder-blade", Limb.TRUNK, new Vector3D(shoulder.getX(), shoulder.getY(), 0));
            if (rise == 0) {
                Vector3D hip = k.at(side, Part.HIP);
                resting.on(side.word() + "-seat", Limb.TRUNK, new Vector3D(hip.getX(), hip.getY(), 0));
            }
            resting.on(side.word() + "-foot", Statics.leg(side), foot(base, side).pressure(k));
            resting.breaches().atMost(Kind.LEG_REACH, side, k.at(side, Part.HIP).distance(k.at(side, Part.ANKLE)),
                    lengths.thigh() + lengths.shank());
        }
        return Optional.of(resting.settle());
    }

    /** The angle of the trunk to the floor at which hips and knees are in line less {@code shortOf}, or as near as can be. */
    private double inLine(BaseOfSupport.Supine base, double shortOf) {
        double flat = Degrees.asin((SEAT - BACK) * h / lengths.trunk());
        double most = flat;
        for (double rise = 2; rise <= 75 && reaches(base, rise); rise += 1) {
            most = rise;
        }
        double fromStart = supine(base, flat, 0).hipFlexion(Side.LEFT) - shortOf;
        double atMost = supine(base, most, 0).hipFlexion(Side.LEFT) - shortOf;
        if (fromStart * atMost >= 0) {
            return most;
        }
        return new BrentSolver(1e-9).solve(100, rise -> supine(base, rise, 0).hipFlexion(Side.LEFT) - shortOf, flat, most);
    }

    private boolean reaches(BaseOfSupport.Supine base, double rise) {
        Skeleton k = supine(base, rise, 0);
        return k.at(Side.LEFT, Part.HIP).distance(k.at(Side.LEFT, Part.ANKLE)) < 0.998 * (lengths.thigh() + lengths.shank());
    }

    private Foot foot(BaseOfSupport.Supine base, Side side) {
        double span = TwoLink.span(lengths.thigh(), lengths.shank(), KNEES_UP);
        double up = base.raise() + lengths.ankleHeight() - SEAT * h;
        double hip = StrictMath.sqrt(lengths.trunk() * lengths.trunk() - (BACK - SEAT) * (BACK - SEAT) * h * h);
        double ankle = hip + StrictMath.sqrt(Math.max(0, span * span - up * up));
        return Foot.flat(side, lengths, new Vector3D(ankle - lengths.heelToAnkle(), side.sign() * base.width() / 2, base.raise()),
                0, 0, problem.pressure().on(side));
    }

    /** On the back, the trunk up from the floor by {@code rise}; 0 lays the hips on the floor. */
    private Skeleton supine(BaseOfSupport.Supine base, double rise, double turn) {
        double slope = rise == 0 ? Degrees.asin((SEAT - BACK) * h / lengths.trunk()) : rise;
        double c = Degrees.cos(slope);
        double s = Degrees.sin(slope);
        Vector3D neck = new Vector3D(0, 0, BACK * h);
        Vector3D pelvis = Vectors.step(neck, lengths.trunk(), new Vector3D(c, 0, s));
        var k = new Skeleton(problem.person());
        k.trunk(Torso.tilted(pelvis, new Vector3D(-s, 0, c), Vector3D.PLUS_J, new Vector3D(-c, 0, -s), 0, 0, turn), Vector3D.ZERO);
        k.head(new Vector3D(-1, 0, -0.06));
        for (Side side : Side.values()) {
            foot(base, side).place(k, 0);
            k.bendKnee(side, new Vector3D(-0.2, 0, 1));
        }
        return k;
    }

    /** On the side: hips and knees bent, the lower arm under the head, the upper hand on the floor in front or reaching. */
    PoseOutcome onSide(BaseOfSupport.SideLying base) {
        if (base.below() == Side.LEFT) {
            return new Lying(problem.mirrored()).onSide(new BaseOfSupport.SideLying(Side.RIGHT)).mirrored();
        }
        return Grounded.solve(problem, loads, position -> Hold.of(problem.action(), position)
                .map(hold -> onRightSide(position, hold)), k -> {
                    double y = k.at(Joint.NECK).getY();
                    return List.of(new Prop.Mat(new Vector3D(-0.18 * h, -0.60 * h, -0.012), new Vector3D(0.40 * h, 0.47 * h, 0)),
                            new Prop.Pillow(new Vector3D(-0.09 * h, y - 0.25 * h, 0), new Vector3D(0.12 * h, y - 0.03 * h, 0.05 * h)));
                });
    }

    private Resting onRightSide(Position position, Hold hold) {
        double hip = SIDE_HIP * h + lengths.hipSpacing() / 2;
        double rise = Degrees.asin((SIDE_NECK * h - hip) / lengths.trunk());
        Vector3D up = new Vector3D(0, -Degrees.cos(rise), Degrees.sin(rise));
        Vector3D left = new Vector3D(0, Degrees.sin(rise), Degrees.cos(rise));
        var k = new Skeleton(problem.person());
        k.trunk(Torso.tilted(new Vector3D(0, 0, hip), Vector3D.PLUS_I, left, up, 0, 0, hold.turn()), Vector3D.ZERO);
        k.head(new Vector3D(0.05, -1, -0.04));
        boolean cushion = problem.action() instanceof Action.Squeeze squeeze && squeeze.holdsCushion();
        double lift = problem.action() instanceof Action.Squeeze(var most) ? position.pick(0, most) : 0;
        double gap = cushion ? CUSHION + position.pick(0.012, 0) : 0;
        double lowKnee = 0.033 * h;
        double highKnee = lowKnee + (2 * Segments.KNEE_RADIUS + gap) * h + lift;
        leg(k, Side.RIGHT, lowKnee, 0.03 * h);
        leg(k, Side.LEFT, highKnee, cushion ? highKnee - 0.004 * h : 0.075 * h);
        Vector3D neck = k.at(Joint.NECK);
        k.reach(Side.RIGHT, new Vector3D(0.075 * h, neck.getY() - 0.16 * h, 0.035 * h), new Vector3D(1, -0.2, 0.12),
                new Vector3D(-0.45, -1, 0).normalize());
        boolean reaches = problem.arm(Side.LEFT) instanceof ArmTask.Reach;
        if (reaches) {
            Arms.free(problem).place(k, Side.LEFT, position);
        } else {
            k.reach(Side.LEFT, new Vector3D(0.195 * h, neck.getY() + 0.19 * h, Segments.PALM_HEIGHT * h), new Vector3D(0.6, 0.2, 1),
                    new Vector3D(0.9, -0.3, -0.05).normalize());
        }
        Vector3D shoulder = k.at(Side.RIGHT, Part.SHOULDER);
        var resting = new Resting(k, loads, Vector3D.PLUS_I)
                .on("hip", Limb.TRUNK, new Vector3D(0, 0, 0))
                .on("shoulder", Limb.TRUNK, new Vector3D(shoulder.getX(), shoulder.getY(), 0))
                .on(Side.RIGHT, Part.KNEE, Limb.RIGHT_LEG, lowKnee);
        return (reaches ? resting : resting.onPalm(Side.LEFT)).settle();
    }

    /** A bent leg of a body on its side: the knee and the ankle at given heights, thigh forward and down the mat. */
    private void leg(Skeleton k, Side side, double kneeZ, double ankleZ) {
        double fall = (kneeZ - k.at(side, Part.HIP).getZ()) / lengths.thigh();
        double flat = StrictMath.sqrt(1 - fall * fall);
        Vector3D thigh = new Vector3D(flat * Degrees.cos(45), flat * Degrees.sin(45), fall);
        double shankFall = (ankleZ - kneeZ) / lengths.shank();
        double shankFlat = StrictMath.sqrt(1 - shankFall * shankFall);
        Vector3D shank = new Vector3D(-shankFlat * Degrees.cos(45), shankFlat * Degrees.sin(45), shankFall);
        Vector3D toes = Vectors.across(new Vector3D(0.6, 0.8, 0), shank);
        k.leg(side, thigh, shank, toes, shank);
    }
}
