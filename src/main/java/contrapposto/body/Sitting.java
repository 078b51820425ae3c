package contrapposto.body;

import contrapposto.body.Breaches.Kind;
import contrapposto.body.Contact.Limb;
import contrapposto.body.Joint.Part;
import contrapposto.quantity.Side;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** A body on a seat with both feet flat, shins upright. The hips are at x = 0. */
final class Sitting {
    /** Hip joint above the seat, share of stature: half a thigh. */
    private static final double SEAT = 0.050;
    /** Seat of a chair, m, as it is drawn; its front edge ahead of the hips. */
    private static final double DEPTH = 0.40;
    private static final double WIDTH = 0.42;
    private static final double FRONT = 0.16;
    /** The least of it, and what a thigh gives on the edge, shares of stature: house. */
    private static final double NEAREST = 0.03;
    private static final double UNDER_THIGH = 0.0405;

    private final PoseProblem problem;
    private final BaseOfSupport.Seated base;
    private final Loads loads;
    private final Segments lengths;
    private final double h;

    Sitting(PoseProblem problem, BaseOfSupport.Seated base) {
        this.problem = problem;
        this.base = base;
        this.loads = Loads.of(problem.load(), 0);
        this.lengths = problem.person().segments();
        this.h = problem.person().stature();
    }

    PoseOutcome solve() {
        return Grounded.solve(problem, loads,
                position -> Hold.of(problem.action(), position).map(hold -> seated(position, hold)),
                k -> List.of(chair()));
    }

    /** Someone with short legs sits nearer the edge of a high seat, so that it does not press into the thighs. */
    private Prop chair() {
        double hip = base.height() + SEAT * h;
        double fall = (hip - lengths.ankleHeight() - lengths.shank()) / lengths.thigh();
        double edge = fall <= 0 ? FRONT : Math.clamp((SEAT - UNDER_THIGH) * h / fall, NEAREST * h, FRONT);
        return new Prop.Chair(new Vector3D(edge - DEPTH, -WIDTH / 2, 0), new Vector3D(edge, WIDTH / 2, base.height()));
    }

    private Resting seated(Position position, Hold hold) {
        double hip = base.height() + SEAT * h;
        double knee = lengths.ankleHeight() + lengths.shank();
        var k = new Skeleton(problem.person());
        k.trunk(Torso.upright(new Vector3D(0, 0, hip), 0, hold.lean(), 0, hold.turn()), Vector3D.PLUS_K);
        double across = base.width() / 2 - lengths.hipSpacing() / 2;
        double flat = lengths.thigh() * lengths.thigh() - (hip - knee) * (hip - knee) - across * across;
        double ankle = StrictMath.sqrt(Math.max(0, flat));
        for (Side side : Side.values()) {
            foot(side, ankle).place(k, 0);
            k.bendKnee(side, new Vector3D(1, 0, 1));
        }
        Arms.free(problem).place(k, position);
        var resting = new Resting(k, loads, Vector3D.PLUS_I);
        for (Side side : Side.values()) {
            Vector3D sit = k.at(side, Part.HIP);
            resting.on(side.word() + "-seat", Limb.TRUNK, new Vector3D(sit.getX(), sit.getY(), base.height()));
            resting.on(side.word() + "-foot", Statics.leg(side), foot(side, ankle).pressure(k));
            resting.breaches().atMost(Kind.LEG_REACH, side, k.at(side, Part.HIP).distance(k.at(side, Part.ANKLE)),
                    lengths.thigh() + lengths.shank());
        }
        resting.breaches().atMost(Kind.SEAT, Side.LEFT, Math.abs(hip - knee), 0.8 * lengths.thigh());
        return resting.settle();
    }

    private Foot foot(Side side, double ankle) {
        return Foot.flat(side, lengths, new Vector3D(ankle - lengths.heelToAnkle(), side.sign() * base.width() / 2, 0), 0, 0,
                problem.pressure().on(side));
    }
}
