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
    private static final double SOFT_KNEE = 15;
    private static final double MOST_SOFT_KNEE = 45;
    /** Whose hands are on a wall begins a split squat this far over the front foot and leaned this much (degrees), so that they reach it from there too. */
    private static final double NEAR_WALL = 0.5;
    private static final double WALL_LEAN = 15;
    private static final double KNEE_HEIGHT = 0.285;
    private static final double LEAST_PITCH = 15;
    /** The rear heel rises until the toes are bent this far (reference D2, soft limit of the big toe), at the start less. */
    private static final double EASY_PITCH = 60;
    private static final double EASY_START_PITCH = 42;

    /** Least shares of the weight: of a foot that just touches, of both while the arms work, of the second foot of a hinge. */
    private static final double TOUCHING_SHARE = 0.02;
    private static final double STEADY_SHARE = 0.35;
    private static final double STAGGERED_SHARE = 0.10;
    /** Each foot's before the weight shifts, and while a line is pressed away. */
    private static final double EVEN_SHARE = 0.45;
    /** What stays on the foot that the weight shifts away from. */
    private static final double STAYING_SHARE = 0.25;
    private static final double WORKING_SHARE = 0.5;
    /** In a long stance a working leg behind the other cannot take half without the other losing the floor. */
    private static final double BEHIND_SHARE = 0.3;
    /** Reference D3.18: coaching pages say 70 to 90 %, no measurement found; the middle. */
    private static final double KICKSTAND_SHARE = 0.8;

    private final PoseProblem problem;
    private final Position position;
    private final boolean strained;
    private final boolean lighter;
    private final Footing footing;
    private final double[] low = new double[Free.values().length];
    private final double[] high = new double[Free.values().length];
    private OptionalDouble fold = OptionalDouble.empty();
    private boolean tall;
    private double mostKnee = 180;
    private double turn;
    private double wantedLean;
    private AirLeg air = new AirLeg(8, 70, 0, false);

    private Stances(PoseProblem problem, Position position, boolean strained, boolean lighter) {
        this.lighter = lighter;
        this.strained = strained;
        this.problem = problem;
        this.position = position;
        this.footing = Footing.of(problem, problem.base(), position);
        this.wantedLean = problem.effort().lean();
        this.turn = -oneSided() * position.pick(TURN_AT_START, TURN_AT_DEPTH);
    }

    /**
     * The bounds of {@code problem} in {@code position}, the working knee bent by {@code knee}, in a fold by no more than that.
     *
     * @param strained whether the heel of a foot on its ball may rise otherwise than is easy
     * @param lighter  whether a working foot behind the other may carry less than half
     */
    static Stance of(PoseProblem problem, Position position, double knee, boolean strained, boolean lighter) {
        return new Stances(problem, position, strained, lighter).stance(knee);
    }

    /** Tall on the box at the end of a step up, the free knee held in front. */
    static Stance risen(PoseProblem problem) {
        var risen = new Stances(problem, Position.WORKING, false, false);
        risen.feet();
        risen.tall(SOFT_KNEE / 2);
        risen.air = new AirLeg(25, 55, 10, false);
        return risen.done();
    }

    private Stance stance(double knee) {
        feet();
        switch (problem.action()) {
            case Action.KneeBend bend -> {
                if (position == Position.START) {
                    tall(startKnee());
                    if (atWall() && problem.base() instanceof BaseOfSupport.Split) {
                        fix(Free.LEAN, WALL_LEAN);
                        wantedLean = WALL_LEAN;
                    }
                } else {
                    bent(knee, knee);
                    between(Free.LEAN, -5, 55);
                }
                air = problem.base() instanceof BaseOfSupport.Step ? new AirLeg(24, 12, 5, false) : new AirLeg(10, 100, 0, false);
            }
            case Action.HipFold(var share) -> {
                if (position == Position.START) {
                    tall(8);
                } else {
                    bent(SOFT_KNEE, Math.max(SOFT_KNEE + 1, knee));
                    fix(Free.LEAN, 88);
                    fold = OptionalDouble.of(share * KNEE_HEIGHT * problem.person().stature());
                }
                air = position == Position.START ? new AirLeg(10, 75, -5, false) : new AirLeg(2, 75, -20, true);
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
                    bent(knee, knee);
                    between(Free.LEAN, 0, 45);
                    air = new AirLeg(-12, 28, -20, false);
                }
            }
            case Action.Shift(var share, var lean, var away) -> {
                tall(12);
                mostKnee = MOST_SOFT_KNEE;
                wantedLean = lean;
                fix(Free.LEAN, lean);
            }
            case Action.ArmsMove(var startTurn, var workingTurn, var lean) -> {
                tall(12);
                mostKnee = MOST_SOFT_KNEE;
                turn = position.pick(startTurn, workingTurn);
                wantedLean = lean;
                if (problem.base() instanceof BaseOfSupport.OneLeg) {
                    air = liftedKnee();
                }
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
        return done();
    }

    private Stance done() {
        boolean shifted = problem.hipShift();
        double sign = problem.working().sign();
        double amount = position.pick(0.5, 1);
        return new Stance(footing.lead(), footing.foot(footing.lead()).orElseThrow(),
                footing.foot(footing.lead().other()), air, tall, fold, turn, shifted ? sign * SHIFT_YAW * amount : 0,
                shifted ? sign * SHIFT_BEND * amount : 0, wantedLean, mostKnee, leastLeadShare(),
                leastShare(), alike(), low, high);
    }

    /** Who stands on one leg lifts the other knee in front: low with a hand on a wall, else as high as in a march. */
    private AirLeg liftedKnee() {
        return steadied() ? new AirLeg(position.pick(15, 30), position.pick(50, 75), 20, false) : new AirLeg(position.pick(20, 62), position.pick(60, 78), 10, false);
    }

    private boolean steadied() {
        return problem.arm(Side.LEFT) instanceof ArmTask.OnSupport || problem.arm(Side.RIGHT) instanceof ArmTask.OnSupport;
    }

    private boolean atWall() {
        return problem.arm(Side.LEFT) instanceof ArmTask.OnSupport(var height, var ahead) && height > Support.WALL * problem.person().stature();
    }

    private void feet() {
        Optional<Foot> other = footing.foot(footing.lead().other());
        Foot lead = footing.foot(footing.lead()).orElseThrow();
        boolean level = isLevel();
        if (level) {
            if (oneSided() == 0) {
                fix(Free.ALONG, 0.5);
            } else {
                between(Free.ALONG, 0.3, 0.7);
            }
        } else {
            boolean split = problem.base() instanceof BaseOfSupport.Split;
            between(Free.ALONG, split ? position.pick(atWall() ? NEAR_WALL : 0.4, 0.2) : -0.4, split ? 1.15 : 1.4);
        }
        if (other.isEmpty()) {
            fix(Free.ALONG, 1);
        }
        presses(Free.PRESSURE, lead);
        other.ifPresent(foot -> presses(Free.OTHER_PRESSURE, foot));
        if (alike()) {
            fix(Free.OTHER_PRESSURE, 0);
        }
        if (onBall(Optional.of(lead)) || onBall(other)) {
            Side ball = onBall(Optional.of(lead)) ? footing.lead() : footing.lead().other();
            double most = problem.limits().on(ball).toeExtension() - StanceTrial.MARGIN;
            if (strained) {
                between(Free.PITCH, LEAST_PITCH, most);
            } else {
                fix(Free.PITCH, Math.min(most, position.pick(EASY_START_PITCH, EASY_PITCH)));
            }
        }
    }

    /** The centre of pressure is free inside the zone of a foot on its sole. */
    private void presses(Free free, Foot foot) {
        if (foot.contact() == Contact.SOLE) {
            between(free, foot.zone().from(), foot.zone().to());
        } else {
            fix(free, foot.zone().middle());
        }
    }

    private boolean alike() {
        return isLevel() && oneSided() == 0
                && footing.left().map(Foot::zone).equals(footing.right().map(Foot::zone));
    }

    private boolean isLevel() {
        return problem.base() instanceof BaseOfSupport.Level && footing.front().isEmpty();
    }

    /** With both feet near each other a working leg works: it carries half or more (common practice, no source). */
    private double leastLeadShare() {
        return switch (problem.action()) {
            case Action.ArmsMove moves -> steadyShare();
            case Action.HipFold folds -> workingShare();
            case Action.KneeBend bends -> workingShare();
            case Action.StepUp up -> TOUCHING_SHARE;
            case Action.Shift(var share, var lean, var away) -> shifted(share, away);
            case Action.HeelRise rise -> TOUCHING_SHARE;
            case Action.Walk walk -> TOUCHING_SHARE;
            case Action.Squeeze squeeze -> TOUCHING_SHARE;
            case Action.HipLift lift -> TOUCHING_SHARE;
            case Action.PressUp up -> TOUCHING_SHARE;
        };
    }

    private double leastShare() {
        return problem.action() instanceof Action.Shift(var share, var lean, var away) ? shifted(share, !away)
                : problem.action() instanceof Action.ArmsMove ? steadyShare()
                : isStaggered() && !(problem.action() instanceof Action.Walk) ? STAGGERED_SHARE : TOUCHING_SHARE;
    }

    /** Who presses a line away from near feet stands on both about evenly, the pelvis a little back (common practice, no source). */
    private double steadyShare() {
        return pulls() && isStaggered() && problem.arm(problem.working()) instanceof ArmTask.Press ? EVEN_SHARE : STEADY_SHARE;
    }

    /** The least of a foot that the weight moves {@code away} from, or over. */
    private double shifted(double share, boolean away) {
        return position == Position.START ? EVEN_SHARE : away ? STAYING_SHARE : share;
    }

    /** Of the leg that works beside another: most of the weight where the other foot only stands on its ball behind. */
    private double workingShare() {
        return position == Position.START || !isStaggered() ? TOUCHING_SHARE
                : problem.base() instanceof BaseOfSupport.Staggered base && base.rearHeelUp() ? KICKSTAND_SHARE
                : lighter && footing.front().filter(front -> front != footing.lead()).isPresent() ? BEHIND_SHARE : WORKING_SHARE;
    }

    private boolean isStaggered() {
        return problem.base() instanceof BaseOfSupport.Staggered;
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
        return problem.base() instanceof BaseOfSupport.Split ? 14 : 8;
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
