package contrapposto.body;

import contrapposto.body.Breaches.Kind;
import contrapposto.body.Joint.Part;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** A body face down on its hands, with its knees or the balls of its feet on the floor. */
final class Prone {
    /** A carrying arm is not locked: least bend of the elbow, degrees. */
    private static final double SOFT_ELBOW = 6;
    /** The pelvis gives way from a lifted hand in such steps, shares of stature back and across, until all points carry. */
    private static final double BACK_STEP = 0.006;
    private static final double ACROSS_STEP = 0.005;
    private static final int STEPS = 14;
    private static final double STEADY = 0.04;
    /** The breastbone keeps this far from the floor, share of stature, measured from the neck. */
    private static final double CHEST = 0.075;
    private static final double EASY_TOES = 68;

    private final PoseProblem problem;
    private final Loads loads;
    private final Segments lengths;
    private final double h;

    Prone(PoseProblem problem) {
        this.problem = problem;
        this.loads = Loads.of(problem.load(), 0);
        this.lengths = problem.person().segments();
        this.h = problem.person().stature();
    }

    /** Knees under the hips at x = 0, hands under the shoulders. */
    PoseOutcome allFours(BaseOfSupport.AllFours base) {
        return Grounded.solve(problem, loads, position -> Hold.of(problem.action(), position).map(hold -> {
            Resting best = onHandsAndKnees(base, position, hold, 0);
            for (int i = 1; i <= STEPS && best.leastShare() < STEADY; i++) {
                Resting next = onHandsAndKnees(base, position, hold, i);
                best = next.leastShare() > best.leastShare() ? next : best;
            }
            return best;
        }), k -> List.of(Grounded.mat(-0.40 * h, 0.40 * h, 0.19 * h)));
    }

    private Resting onHandsAndKnees(BaseOfSupport.AllFours base, Position position, Hold hold, int step) {
        double half = lengths.shoulderSpacing() / 2 + 0.012 * h;
        double wristX = 0.285 * h;
        var planted = new ArrayList<Side>(2);
        for (Side side : Side.values()) {
            if (position == Position.START || problem.arm(side) instanceof ArmTask.Planted || problem.arm(side) instanceof ArmTask.StepsAhead) {
                planted.add(side);
            }
        }
        double away = planted.size() == 1 ? planted.getFirst().sign() : 0;
        double ahead = position == Position.START ? 0 : steps(Side.LEFT) + steps(Side.RIGHT);
        double dx = ahead / 2 - BACK_STEP * step * h;
        double dy = away * ACROSS_STEP * step * h;
        double knee = Segments.KNEE_RADIUS * h;
        double across = lengths.hipSpacing() / 2 - base.width() / 2;
        double up = StrictMath.sqrt(Math.max(1e-6, square(lengths.thigh()) - square(dx) - square(Math.abs(across) + Math.abs(dy))));
        Vector3D pelvis = new Vector3D(dx, dy, knee + up);
        double span = TwoLink.span(lengths.upperArm(), lengths.forearm(), SOFT_ELBOW);
        Side measured = planted.stream().filter(side -> steps(side) == 0).findFirst().orElse(Side.LEFT);
        Vector3D wrist = new Vector3D(wristX, measured.sign() * half, Segments.PALM_HEIGHT * h);
        DoubleFunction<Skeleton> build = slope -> {
            var k = new Skeleton(problem.person());
            k.trunk(prone(pelvis, slope, hold.turn()), new Vector3D(0.4, 0, 1));
            return k;
        };
        var k = build.apply(root(slope -> span - build.apply(slope).at(measured, Part.SHOULDER).distance(wrist), -20, 60));
        kneesFromHips(k, base.width(), ahead > 0);
        for (Side side : Side.values()) {
            if (planted.contains(side)) {
                k.reach(side, new Vector3D(wristX + (position == Position.START ? 0 : steps(side)), side.sign() * half, Segments.PALM_HEIGHT * h),
                        new Vector3D(-1, side.sign() * 0.3, 0), new Vector3D(1, 0, -0.08).normalize());
            } else {
                Arms.free(problem).place(k, side, position);
            }
        }
        var resting = new Resting(k, loads, new Vector3D(0.25, 0, -1));
        for (Side side : Side.values()) {
            resting.on(side, Part.KNEE, Statics.leg(side), knee);
        }
        planted.forEach(resting::onPalm);
        return resting.settle();
    }

    /** How far the hand of {@code side} steps ahead, m. */
    private double steps(Side side) {
        return problem.arm(side) instanceof ArmTask.StepsAhead(var ahead) ? ahead : 0;
    }

    /** Knees on the floor where the thighs from the hips meet it, toes laid back; in a crawl the knee beside the hand that steps stays behind. */
    private void kneesFromHips(Skeleton k, double width, boolean crawls) {
        double knee = Segments.KNEE_RADIUS * h;
        double fall = (Segments.KNEE_RADIUS - Segments.LACES_HEIGHT) * h / lengths.shank();
        Vector3D shank = new Vector3D(-StrictMath.sqrt(1 - fall * fall), 0, -fall);
        for (Side side : Side.values()) {
            Vector3D hip = k.at(side, Part.HIP);
            double y = side.sign() * width / 2;
            double dz = hip.getZ() - knee;
            double dx = StrictMath.sqrt(Math.max(0, square(lengths.thigh()) - dz * dz - square(y - hip.getY())));
            k.set(side, Part.KNEE, new Vector3D(hip.getX() + (crawls && steps(side) > 0 ? -dx : dx), y, knee));
            k.foot(side, Vectors.step(k.at(side, Part.KNEE), lengths.shank(), shank),
                    new Vector3D(-Degrees.cos(8), 0, -Degrees.sin(8)), Vector3D.PLUS_K);
        }
    }

    /** A trunk face down, head end up by {@code slope}. */
    private static Torso prone(Vector3D pelvis, double slope, double turn) {
        double c = Degrees.cos(slope);
        double s = Degrees.sin(slope);
        return Torso.tilted(pelvis, new Vector3D(s, 0, -c), Vector3D.PLUS_J, new Vector3D(c, 0, s), 0, 0, turn);
    }

    /** A press-up: a straight line from the foot (or knee) to the neck; start at the bottom, working at the top. */
    PoseOutcome plank(BaseOfSupport.Plank base) {
        if (!(problem.action() instanceof Action.PressUp) && Hold.of(problem.action(), Position.START).isEmpty()) {
            return Grounded.solve(problem, loads, position -> Optional.empty(), k -> List.of());
        }
        double topTurn = turn(Position.WORKING);
        Side low = base.leftHandRaise() <= base.rightHandRaise() ? Side.LEFT : Side.RIGHT;
        double lowRaise = Math.min(base.leftHandRaise(), base.rightHandRaise());
        double span = TwoLink.span(lengths.upperArm(), lengths.forearm(), SOFT_ELBOW);
        double wristZ = lowRaise + Segments.PALM_HEIGHT * h;
        double handY = low.sign() * base.width() / 2;
        double top = root(slope -> {
            Vector3D shoulder = line(base, slope, topTurn).at(low, Part.SHOULDER);
            return shoulder.getZ() - wristZ
                    - StrictMath.sqrt(Math.max(0, span * span - square(shoulder.getY() - handY)));
        }, -15, 60);
        double handX = line(base, top, topTurn).at(low, Part.SHOULDER).getX();
        return Grounded.solve(problem, loads, position -> Optional.of(pressed(base, position, top, handX)),
                k -> plankProps(base, k));
    }

    private double turn(Position position) {
        return switch (problem.action()) {
            case Action.PressUp(var elbow, var topTurn) -> position.pick(0.4 * topTurn, topTurn);
            case Action.ArmsMove(var start, var working, var lean) -> position.pick(start, working);
            case Action.KneeBend same -> 0;
            case Action.HipFold same -> 0;
            case Action.HeelRise same -> 0;
            case Action.HipLift same -> 0;
            case Action.StepUp same -> 0;
            case Action.Shift same -> 0;
            case Action.Squeeze same -> 0;
            case Action.Walk same -> 0;
        };
    }

    private Resting pressed(BaseOfSupport.Plank base, Position position, double top, double handX) {
        double slope = position == Position.START ? bottom(base, top, handX) : top;
        Skeleton k = line(base, slope, turn(position));
        for (Side side : Side.values()) {
            Vector3D wrist = wrist(base, side, handX);
            k.reach(side, wrist, new Vector3D(-1, side.sign() * 0.55, position.pick(0.6, 0.1)), new Vector3D(0.99, 0, -0.06).normalize());
        }
        var resting = new Resting(k, loads, new Vector3D(0.35, 0, -1));
        for (Side side : Side.values()) {
            resting.breaches().atMost(Kind.ARM_REACH, side, k.at(side, Part.SHOULDER).distance(wrist(base, side, handX)),
                    lengths.upperArm() + lengths.forearm());
            resting.onPalm(side);
            if (base.onKnees()) {
                resting.on(side, Part.KNEE, Statics.leg(side), Segments.KNEE_RADIUS * h);
            } else {
                resting.on(side.word() + "-foot", Statics.leg(side), k.at(side, Part.BALL));
            }
        }
        return resting.settle();
    }

    private Vector3D wrist(BaseOfSupport.Plank base, Side side, double handX) {
        double raise = side == Side.LEFT ? base.leftHandRaise() : base.rightHandRaise();
        return new Vector3D(handX, side.sign() * base.width() / 2, raise + Segments.PALM_HEIGHT * h);
    }

    /** The slope at which the elbow of the lower hand is bent as wanted, or the chest is near the floor. */
    private double bottom(BaseOfSupport.Plank base, double top, double handX) {
        double flexion = problem.action() instanceof Action.PressUp(var elbow, var turn)
                ? Math.min(elbow, Math.min(problem.limits().on(Side.LEFT).elbowFlexion(), problem.limits().on(Side.RIGHT).elbowFlexion()))
                : SOFT_ELBOW;
        double span = TwoLink.span(lengths.upperArm(), lengths.forearm(), flexion);
        Side low = base.leftHandRaise() <= base.rightHandRaise() ? Side.LEFT : Side.RIGHT;
        double turn = turn(Position.START);
        double wanted = root(slope -> line(base, slope, turn).at(low, Part.SHOULDER).distance(wrist(base, low, handX)) - span,
                top - 40, top + 5);
        double chest = root(slope -> line(base, slope, turn).at(Joint.NECK).getZ() - CHEST * h, -30, 60);
        return Math.max(wanted, chest);
    }

    /** The body in a line up from its toes or knees, arms not placed. The balls of the feet (or the knees) are at x = 0. */
    private Skeleton line(BaseOfSupport.Plank base, double slope, double turn) {
        var k = new Skeleton(problem.person());
        Vector3D along = new Vector3D(Degrees.cos(slope), 0, Degrees.sin(slope));
        double pitch = Math.min(EASY_TOES, Math.min(problem.limits().on(Side.LEFT).toeExtension(),
                problem.limits().on(Side.RIGHT).toeExtension()));
        Vector3D root;
        if (base.onKnees()) {
            root = new Vector3D(0, 0, Segments.KNEE_RADIUS * h);
        } else {
            double back = lengths.heelToBall() - lengths.heelToAnkle();
            root = Vectors.step(new Vector3D(-back * Degrees.cos(pitch) + lengths.ankleHeight() * Degrees.sin(pitch), 0,
                    back * Degrees.sin(pitch) + lengths.ankleHeight() * Degrees.cos(pitch)), lengths.shank(), along);
        }
        k.trunk(prone(Vectors.step(root, lengths.thigh(), along), slope, turn), new Vector3D(0.3, 0, 1));
        for (Side side : Side.values()) {
            Vector3D hip = k.at(side, Part.HIP);
            k.set(side, Part.KNEE, Vectors.step(hip, -lengths.thigh(), along));
            if (base.onKnees()) {
                double fall = (Segments.KNEE_RADIUS - Segments.LACES_HEIGHT) * h / lengths.shank();
                k.foot(side, Vectors.step(k.at(side, Part.KNEE), lengths.shank(),
                        new Vector3D(-StrictMath.sqrt(1 - fall * fall), 0, -fall)),
                        new Vector3D(-Degrees.cos(8), 0, -Degrees.sin(8)), Vector3D.PLUS_K);
            } else {
                Foot.onBall(side, new Vector3D(0, hip.getY(), 0), pitch).place(k, pitch);
            }
        }
        return k;
    }

    private List<Prop> plankProps(BaseOfSupport.Plank base, Skeleton k) {
        var props = new ArrayList<Prop>();
        for (Side side : Side.values()) {
            double raise = side == Side.LEFT ? base.leftHandRaise() : base.rightHandRaise();
            if (raise > 0) {
                Vector3D wrist = k.at(side, Part.WRIST);
                props.add(new Prop.Box(new Vector3D(wrist.getX() - 0.10, wrist.getY() - 0.16, 0),
                        new Vector3D(wrist.getX() + 0.24, wrist.getY() + 0.16, raise)));
            }
        }
        return props;
    }

    private static double root(UnivariateFunction f, double low, double high) {
        double atLow = f.value(low);
        double atHigh = f.value(high);
        if (atLow * atHigh >= 0) {
            return Math.abs(atLow) < Math.abs(atHigh) ? low : high;
        }
        return new BrentSolver(1e-10).solve(200, f, low, high);
    }

    private static double square(double x) {
        return x * x;
    }
}
