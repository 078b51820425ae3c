package contrapposto.body;

import contrapposto.body.Foot.Contact;
import contrapposto.body.Stance.AirLeg;
import contrapposto.body.Stance.Free;
import contrapposto.quantity.Side;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns what an upright problem asks for into the bounds of a {@link Stance}. Angles in degrees; the choices are house. */
final class Stances {
    /** The trunk turns away from a one-sided weight by this much at depth, and this much at the start. */
    private static final double TURN_AT_DEPTH = 8;
    private static final double TURN_AT_START = 3;
    /** A hip shift turns the pelvis toward the working foot and lets the trunk bend back over it. */
    private static final double SHIFT_YAW = 5;
    private static final double SHIFT_BEND = -5;
    private static final double UPRIGHT = 4;
    private static final double KNEE_HEIGHT = 0.285;
    private static final double LEAST_PITCH = 15;

    private final PoseProblem problem;
    private final Position position;
    private final Footing footing;
    private final double[] low = new double[Free.values().length];
    private final double[] high = new double[Free.values().length];
    private OptionalDouble fold = OptionalDouble.empty();
    private boolean tall;
    private double turn;
    private double wantedLean;
    private AirLeg air = new AirLeg(8, 70, 0, false);

    private Stances(PoseProblem problem, Position position) {
        this.problem = problem;
        this.position = position;
        this.footing = Footing.of(problem, problem.base(), position);
        this.wantedLean = problem.effort().lean();
        this.turn = -oneSided() * position.pick(TURN_AT_START, TURN_AT_DEPTH);
    }

    /** The bounds of {@code problem} in {@code position}, the working knee bent no more than {@code knee}. */
    static Stance of(PoseProblem problem, Position position, double knee) {
        return new Stances(problem, position).stance(knee);
    }

    private Stance stance(double knee) {
        feet();
        switch (problem.action()) {
            case Action.KneeBend bend -> {
                if (position == Position.START) {
                    tall(startKnee());
                } else {
                    bent(knee, knee);
                    between(Free.LEAN, -5, 55);
                }
                air = problem.base() instanceof Base.Step ? new AirLeg(24, 12, 5, false) : new AirLeg(12, 75, -10, false);
            }
            case Action.HipFold(var share) -> {
                if (position == Position.START) {
                    tall(8);
                } else {
                    bent(15, 35);
                    fix(Free.LEAN, 88);
                    fold = OptionalDouble.of(share * KNEE_HEIGHT * problem.person().stature());
                }
                air = position == Position.START ? new AirLeg(0, 35, -15, false) : new AirLeg(4, 8, 5, true);
            }
            case Action.HeelRise(var share) -> {
                tall(position.pick(6, 4));
                fix(Free.LEAN, 2);
                JointLimits limits = problem.limits().on(footing.lead());
                fix(Free.PITCH, position.pick(0,
                        share * Math.min(limits.anklePlantarflexion(), limits.toeExtension()) - StanceTrial.MARGIN));
            }
            case Action.StepUp up -> {
                if (position == Position.START) {
                    tall(8);
                    between(Free.LEAN, 5, 35);
                } else {
                    bent(30, 120);
                    between(Free.LEAN, 0, 45);
                    air = new AirLeg(-12, 28, -20, false);
                }
            }
            case Action.ArmsMove(var startTurn, var workingTurn, var lean) -> {
                tall(12);
                turn = position.pick(startTurn, workingTurn);
                wantedLean = lean;
                if (pulls()) {
                    between(Free.LEAN, lean - 12, lean + 30);
                } else {
                    fix(Free.LEAN, lean);
                }
            }
            case Action.Walk walk -> tall(position.pick(6, 5));
            case Action.Squeeze squeeze -> tall(10);
            case Action.HipLift lift -> tall(8);
            case Action.PressUp up -> tall(8);
        }
        boolean shifted = problem.hipShift();
        double sign = problem.working().sign();
        double amount = position.pick(0.5, 1);
        return new Stance(footing.lead(), footing.foot(footing.lead()).orElseThrow(),
                footing.foot(footing.lead().other()), air, tall, fold, turn, shifted ? sign * SHIFT_YAW * amount : 0,
                shifted ? sign * SHIFT_BEND * amount : 0, wantedLean, low, high);
    }

    private void feet() {
        Optional<Foot> other = footing.foot(footing.lead().other());
        Foot lead = footing.foot(footing.lead()).orElseThrow();
        boolean level = problem.base() instanceof Base.Level && footing.front().isEmpty();
        if (level) {
            if (oneSided() == 0) {
                fix(Free.ALONG, 0.5);
            } else {
                between(Free.ALONG, 0.3, 0.7);
            }
        } else {
            between(Free.ALONG, problem.base() instanceof Base.Split ? 0.2 : -0.4,
                    problem.base() instanceof Base.Split ? 1.15 : 1.4);
        }
        between(Free.LEAD_PRESSURE, 0, 1);
        if (other.isEmpty()) {
            fix(Free.ALONG, 1);
            fix(Free.OTHER_PRESSURE, 0);
        } else if (other.get().contact() == Contact.SOLE && !level) {
            between(Free.OTHER_PRESSURE, 0, 1);
        } else {
            fix(Free.OTHER_PRESSURE, 0.3);
        }
        if (onBall(Optional.of(lead)) || onBall(other)) {
            Side ball = onBall(Optional.of(lead)) ? footing.lead() : footing.lead().other();
            between(Free.PITCH, LEAST_PITCH, problem.limits().on(ball).toeExtension() - StanceTrial.MARGIN);
        }
    }

    private static boolean onBall(Optional<Foot> foot) {
        return foot.isPresent() && foot.get().contact() == Contact.BALL;
    }

    /** Standing as high as the knees let, each bent at least {@code knee}. */
    private void tall(double knee) {
        tall = true;
        fix(Free.KNEE, knee);
        fix(Free.LEAN, UPRIGHT);
        wantedLean = UPRIGHT;
    }

    private void bent(double least, double most) {
        tall = false;
        between(Free.KNEE, least, most);
    }

    private double startKnee() {
        return problem.base() instanceof Base.Split ? 14 : 8;
    }

    /** −1 if the one weight hangs on the right, +1 on the left, else 0. */
    private int oneSided() {
        return problem.load() instanceof Load.InHand(var hand, var mass) ? hand.sign() : 0;
    }

    private boolean pulls() {
        return problem.load() instanceof Load.Cable;
    }

    private void fix(Free free, double value) {
        between(free, value, value);
    }

    private void between(Free free, double least, double most) {
        low[free.ordinal()] = least;
        high[free.ordinal()] = Math.max(least, most);
    }
}
