package contrapposto.body;

import static contrapposto.body.Vectors.unit;

import contrapposto.body.Breaches.Kind;
import contrapposto.body.Joint.Part;
import contrapposto.quantity.Side;
import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** A body on one knee or both, trunk up. The knees are at x = 0. */
final class Kneeling {
    /** The pelvis is tried this far from its place over the knees, shares of stature: forward first, then back. */
    private static final double STEP = 0.012;
    private static final int STEPS = 12;
    /** A point that is to carry carries at least this share of the weight: house. */
    private static final double STEADY = 0.03;
    private static final double TOES_BACK = 8;
    /** Half-kneeling, the pelvis is this far over to the kneeling side, share of stature: house. */
    private static final double OVER_KNEE = 0.025;
    /** How readily the foot of a knee on the floor carries, against the knee: house. */
    static final double LIGHT = 0.1;

    private final PoseProblem problem;
    private final Loads loads;
    private final Segments lengths;
    private final double h;

    Kneeling(PoseProblem problem) {
        this.problem = problem;
        this.loads = Loads.of(problem.load(), 0);
        this.lengths = problem.person().segments();
        this.h = problem.person().stature();
    }

    PoseOutcome half(BaseOfSupport.HalfKneeling base) {
        return Grounded.solve(problem, loads, position -> Hold.of(problem.action(), position)
                .map(hold -> steadiest(dx -> halfKneeling(base, position, hold, dx))),
                k -> List.of(Grounded.mat(-0.33 * h, 0.09 * h, 0.17 * h)));
    }

    PoseOutcome tall(BaseOfSupport.TallKneeling base) {
        return Grounded.solve(problem, loads, position -> Hold.of(problem.action(), position)
                .map(hold -> steadiest(dx -> onBothKnees(base.width(), position, hold, dx - 0.02 * h))),
                k -> List.of(Grounded.mat(-0.40 * h, 0.12 * h, 0.17 * h)));
    }

    private interface Placing {
        Resting at(double dx);
    }

    /** The first shift of the pelvis, from none outward, at which every point carries. */
    private Resting steadiest(Placing placing) {
        Resting best = placing.at(0);
        for (int i = 1; i <= 2 * STEPS && best.leastShare() < STEADY; i++) {
            double dx = (i % 2 == 1 ? (i + 1) / 2 : -i / 2) * STEP * h;
            Resting next = placing.at(dx);
            if (next.leastShare() > best.leastShare()) {
                best = next;
            }
        }
        return best;
    }

    private Resting halfKneeling(BaseOfSupport.HalfKneeling base, Position position, Hold hold, double dx) {
        Side down = base.down();
        Side front = down.other();
        Vector3D knee = new Vector3D(0, down.sign() * base.width() / 2, Segments.KNEE_RADIUS * h);
        var k = new Skeleton(problem.person());
        double dy = down.sign() * OVER_KNEE * h;
        Vector3D pelvis = new Vector3D(dx + 0.01 * h, dy, over(knee, down, dx + 0.01 * h, dy));
        k.trunk(Torso.upright(pelvis, 0, hold.lean(), 0, hold.turn()), Vector3D.PLUS_K);
        k.set(down, Part.KNEE, knee);
        double pitch = Math.min(64, problem.limits().on(down).toeExtension());
        Foot toes = tuckedToes(down, knee, pitch);
        toes.place(k, pitch);
        double shin = lengths.ankleHeight() + lengths.shank();
        double ahead = StrictMath.sqrt(Math.max(0, square(0.985 * lengths.thigh()) - square(pelvis.getZ() - shin)));
        Vector3D heel = new Vector3D(0.01 * h + ahead - lengths.heelToAnkle(), front.sign() * base.width() / 2, 0);
        Foot foot = Foot.flat(front, lengths, heel, 0, 0, problem.pressure().on(front));
        foot.place(k, 0);
        k.bendKnee(front, new Vector3D(1, 0, 0.8));
        Arms.free(problem).place(k, position);
        var resting = new Resting(k, loads, Vector3D.PLUS_I)
                .on(front.word() + "-foot", Statics.leg(front), foot.pressure(k))
                .on(down, Part.KNEE, Statics.leg(down), Segments.KNEE_RADIUS * h)
                .on(down.word() + "-toes", Statics.leg(down), k.at(down, Part.BALL), LIGHT).settle();
        resting.breaches().atMost(Kind.ANKLE, front, k.ankleBend(front), problem.limits().on(front).ankleDorsiflexion());
        resting.breaches().atMost(Kind.LEG_REACH, front, k.at(front, Part.HIP).distance(k.at(front, Part.ANKLE)),
                lengths.thigh() + lengths.shank());
        return resting;
    }

    /** The ball of a foot whose toes are tucked under, so that its ankle is a shank's length behind the knee. */
    private Foot tuckedToes(Side side, Vector3D knee, double pitch) {
        double back = lengths.heelToBall() - lengths.heelToAnkle();
        double ankleZ = back * Degrees.sin(pitch) + lengths.ankleHeight() * Degrees.cos(pitch);
        double ankleX = -StrictMath.sqrt(square(lengths.shank()) - square(ankleZ - knee.getZ()));
        double ballX = ankleX + back * Degrees.cos(pitch) - lengths.ankleHeight() * Degrees.sin(pitch);
        return Foot.onBall(side, new Vector3D(knee.getX() + ballX, knee.getY(), 0), pitch);
    }

    /** Height of a pelvis {@code dx} ahead of a knee on the floor, its middle at {@code y}. */
    private double over(Vector3D knee, Side side, double dx, double y) {
        double dy = y + side.sign() * lengths.hipSpacing() / 2 - knee.getY();
        return knee.getZ() + StrictMath.sqrt(Math.max(1e-6, square(lengths.thigh()) - square(dx) - square(dy)));
    }

    private Resting onBothKnees(double width, Position position, Hold hold, double dx) {
        var k = new Skeleton(problem.person());
        Vector3D knee = new Vector3D(0, width / 2, Segments.KNEE_RADIUS * h);
        k.trunk(Torso.upright(new Vector3D(dx, 0, over(knee, Side.LEFT, dx, 0)), 0, hold.lean(), 0, hold.turn()),
                Vector3D.PLUS_K);
        lacesDown(k, width, 0);
        Arms.free(problem).place(k, position);
        var resting = new Resting(k, loads, Vector3D.PLUS_I);
        for (Side side : Side.values()) {
            resting.on(side, Part.KNEE, Statics.leg(side), Segments.KNEE_RADIUS * h);
            resting.on(side.word() + "-toes", Statics.leg(side), laces(k, side), LIGHT);
        }
        return resting.settle();
    }

    /** Both knees at x on the floor, shanks and the tops of the feet behind them. */
    static void lacesDown(Skeleton k, double width, double x) {
        Segments lengths = k.person().segments();
        double h = k.person().stature();
        double fall = (Segments.KNEE_RADIUS - Segments.LACES_HEIGHT) * h / lengths.shank();
        Vector3D shank = new Vector3D(-StrictMath.sqrt(1 - fall * fall), 0, -fall);
        for (Side side : Side.values()) {
            Vector3D knee = new Vector3D(x, side.sign() * width / 2, Segments.KNEE_RADIUS * h);
            k.set(side, Part.KNEE, knee);
            k.foot(side, Vectors.step(knee, lengths.shank(), shank),
                    unit(new Vector3D(-Degrees.cos(TOES_BACK), 0, -Degrees.sin(TOES_BACK))), Vector3D.PLUS_K);
        }
    }

    /** Where the top of a foot rests. */
    static Vector3D laces(Skeleton k, Side side) {
        Vector3D at = Vectors.between(k.at(side, Part.ANKLE), k.at(side, Part.BALL), 0.4);
        return new Vector3D(at.getX(), at.getY(), 0);
    }

    private static double square(double x) {
        return x * x;
    }
}
