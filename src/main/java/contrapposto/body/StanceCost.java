package contrapposto.body;

import contrapposto.body.Breaches.Kind;
import contrapposto.body.Foot.Contact;

/**
 * The objective of a {@link StanceBody} as residuals whose squares add up to it: the efforts of hips and knees, the wanted
 * lean, and what is broken, times the root of the strictness. Limits are walls: they count where they are
 * passed.
 */
final class StanceCost {
    private static final int LEG_ROWS = 7;
    static final int FIRST_WALL = 5;
    static final int ROWS = FIRST_WALL + 2 * LEG_ROWS + 3;

    /** A wall that is not there. */
    private static final double NONE = -1;

    private final PoseProblem problem;
    private final Stance stance;
    private final StanceBody body;
    private final Segments lengths;
    private final SegmentTable table;
    private final double mass;
    private final double stature;
    private final double kneeFloor;
    private final double softSpan;
    private double root = 1;
    private final double[] walls = new double[2 * LEG_ROWS];
    private int legsSeen = -1;
    private int shapesSeen = -1;

    StanceCost(PoseProblem problem, Stance stance, StanceBody body) {
        this.problem = problem;
        this.stance = stance;
        this.body = body;
        this.lengths = problem.person().segments();
        this.table = problem.person().table();
        this.mass = problem.person().mass();
        this.stature = problem.person().stature();
        this.kneeFloor = (Segments.KNEE_RADIUS + StanceTrial.MARGIN * StanceTrial.LENGTH_MARGIN) * stature;
        this.softSpan = TwoLink.span(lengths.thigh(), lengths.shank(), StanceTrial.SOFT_KNEE + StanceTrial.MARGIN);
    }

    void strictness(double weight) {
        root = StrictMath.sqrt(weight);
        legsSeen = -1;
        shapesSeen = -1;
    }

    /** Fills {@code into}. @return the sum of the squares */
    double rows(double[] into) {
        PoseProblem.Effort effort = problem.effort();
        into[0] = hip(body.left) / (effort.hip() * mass);
        into[1] = knee(body.left) / (effort.knee() * mass);
        into[2] = hip(body.right) / (effort.hip() * mass);
        into[3] = knee(body.right) / (effort.knee() * mass);
        into[4] = stance.fold().isPresent() ? 0 : (body.lean() - stance.wantedLean()) / effort.leanScale();
        look();
        System.arraycopy(walls, 0, into, FIRST_WALL, walls.length);
        int at = FIRST_WALL + 2 * LEG_ROWS;
        into[at] = over(Kind.LEG_REACH, body.missing);
        boolean two = stance.other().isPresent();
        double share = StanceTrial.MARGIN * StanceTrial.SHARE_MARGIN;
        into[at + 1] = two ? over(Kind.FOOT_LIFT, stance.leastLeadShare() + share - body.leadShare) : NONE;
        into[at + 2] = two ? over(Kind.FOOT_LIFT, stance.leastShare() + share - 1 + body.leadShare) : NONE;
        double sum = 0;
        for (int k = 0; k < ROWS; k++) {
            sum += k < FIRST_WALL || into[k] > 0 ? into[k] * into[k] : 0;
        }
        return sum;
    }

    /** A limit as a wall: above 0 where it is passed by {@code by}, below where there is room. */
    private double over(Kind kind, double by) {
        return root * by / kind.scale(stature);
    }

    /** Extensor moment that the hip must hold, N·m. */
    private double hip(LegNumbers leg) {
        double thigh = table.thigh.centre() * (leg.kneeX - leg.hipX);
        double moment = PointMass.GRAVITY * mass * (table.thigh.mass() * thigh + table.shank.mass() * (shankX(leg) - leg.hipX)
                + table.foot.mass() * (leg.footX - leg.hipX));
        return -moment - (leg.grounded ? (leg.pressureZ - leg.hipZ) * leg.forceX - (leg.pressureX - leg.hipX) * leg.forceZ : 0);
    }

    /** Extensor moment that the knee must hold, N·m. */
    private double knee(LegNumbers leg) {
        double moment = PointMass.GRAVITY * mass * (table.shank.mass() * (shankX(leg) - leg.kneeX)
                + table.foot.mass() * (leg.footX - leg.kneeX));
        return moment + (leg.grounded ? (leg.pressureZ - leg.kneeZ) * leg.forceX - (leg.pressureX - leg.kneeX) * leg.forceZ : 0);
    }

    private double shankX(LegNumbers leg) {
        return leg.kneeX + table.shank.centre() * (leg.ankleX - leg.kneeX);
    }

    /** Brings the walls of the legs up to date where they have moved. */
    private void look() {
        if (body.legsBent() != legsSeen) {
            legsSeen = body.legsBent();
            standing(body.left, 0);
            standing(body.right, LEG_ROWS);
        }
        if (body.shapes() != shapesSeen) {
            shapesSeen = body.shapes();
            hanging(body.left, 0);
            hanging(body.right, LEG_ROWS);
        }
    }

    /** Walls of a leg that stands, whatever the trunk does. */
    private void standing(LegNumbers leg, int at) {
        if (leg.grounded) {
            JointLimits limits = problem.limits().on(leg.side);
            double flexion = leg.flexion();
            walls[at + 2] = over(Kind.KNEE_FLEXION, flexion - limits.kneeFlexion() + StanceTrial.MARGIN);
            walls[at + 3] = over(Kind.KNEE_FLOOR, kneeFloor - leg.kneeZ);
            walls[at + 4] = over(Kind.LEG_REACH, leg.span - softSpan);
            walls[at + 5] = over(Kind.KNEE_FLEXION, flexion - stance.mostKnee() + StanceTrial.MARGIN);
            walls[at + 6] = leg.foot().contact() != Contact.LACES
                    ? over(Kind.ANKLE, ankle(leg, limits.ankleDorsiflexion() - StanceTrial.MARGIN)) : NONE;
        }
    }

    /** Walls of a hip, and of a leg in the air. */
    private void hanging(LegNumbers leg, int at) {
        JointLimits limits = problem.limits().on(leg.side);
        double hip = body.trunk.hipFlexion(leg);
        walls[at] = over(Kind.HIP_FLEXION, hip - limits.hipFlexion() + StanceTrial.MARGIN);
        walls[at + 1] = over(Kind.HIP_EXTENSION, -hip - limits.hipExtension() + StanceTrial.MARGIN);
        if (!leg.grounded) {
            walls[at + 2] = over(Kind.KNEE_FLEXION, stance.air().knee() - limits.kneeFlexion() + StanceTrial.MARGIN);
            walls[at + 3] = over(Kind.KNEE_FLOOR, kneeFloor - leg.kneeZ);
            walls[at + 4] = over(Kind.FOOT_FLOOR, StanceTrial.FREE_FOOT * stature - Math.min(leg.toeZ, leg.heelZ));
            walls[at + 5] = NONE;
            walls[at + 6] = NONE;
        }
    }

    /** How far the ankle is bent beyond {@code most}, degrees; 0 or less where it is not. */
    private double ankle(LegNumbers leg, double most) {
        double x = leg.kneeX - leg.ankleX;
        double y = leg.kneeY - leg.ankleY;
        double z = leg.kneeZ - leg.ankleZ;
        double soleX = leg.ballX - leg.heelX;
        double soleY = leg.ballY - leg.heelY;
        double soleZ = leg.ballZ - leg.heelZ;
        double sine = (x * soleX + y * soleY + z * soleZ)
                / StrictMath.sqrt((x * x + y * y + z * z) * (soleX * soleX + soleY * soleY + soleZ * soleZ));
        double bend = Degrees.asin(sine);
        double tilt = leg.foot().contact() == Contact.SOLE ? Degrees.atan2(x, z) - leg.foot().pitch() : 0;
        return Math.max(tilt, bend) - most;
    }
}
