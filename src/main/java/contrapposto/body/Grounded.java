package contrapposto.body;

import contrapposto.body.Breaches.Kind;
import contrapposto.quantity.Side;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Puts the two positions of a body that kneels, lies or sits together into an outcome. */
final class Grounded {
    private static final double SLACK = 0.02;

    private Grounded() { }

    /**
     * @param placed the body in a position; empty where the base does not go with the action
     * @param props  what the base stands for: mat, bench, box …
     */
    static PoseOutcome solve(PoseProblem problem, Loads loads, Function<Position, Optional<Resting>> placed,
                             Function<Skeleton, List<Prop>> props) {
        Optional<Resting> start = placed.apply(Position.START);
        Optional<Resting> working = placed.apply(Position.WORKING);
        if (start.isEmpty() || working.isEmpty()) {
            return new PoseOutcome.Impossible(Said.of("pose/base"), 1, "");
        }
        for (Resting resting : List.of(working.get(), start.get())) {
            limits(problem, resting);
            if (resting.breaches().beyond(SLACK)) {
                return resting.breaches().worst();
            }
        }
        Skeleton k = working.get().skeleton();
        var around = new ArrayList<Prop>(props.apply(k));
        if (problem.action() instanceof Action.Squeeze squeeze && squeeze.holdsCushion()) {
            around.add(Props.cushion(k));
        }
        Props.held(problem, k, loads, around);
        return new PoseOutcome.Solved(new SolvedPose(pose(start.get()), pose(working.get()),
                mechanics(problem, start.get(), working.get()), around));
    }

    private static Pose pose(Resting resting) {
        return resting.skeleton().pose(resting.facing());
    }

    private static void limits(PoseProblem problem, Resting resting) {
        Skeleton k = resting.skeleton();
        for (Side side : Side.values()) {
            JointLimits limits = problem.limits().on(side);
            double hip = k.hipFlexion(side);
            resting.breaches().atMost(Kind.HIP_FLEXION, side, hip, limits.hipFlexion());
            resting.breaches().atMost(Kind.HIP_EXTENSION, side, -hip, limits.hipExtension());
            resting.breaches().atMost(Kind.KNEE_FLEXION, side, k.kneeFlexion(side), limits.kneeFlexion());
            resting.breaches().atLeast(Kind.HAND_FLOOR, side, k.grip(side).getZ(), 0);
        }
    }

    private static SolvedPose.Mechanics mechanics(PoseProblem problem, Resting start, Resting working) {
        Side leg = problem.base() instanceof BaseOfSupport.HalfKneeling base ? base.down().other() : problem.working();
        return Report.of(problem, leg, start.skeleton(), working.statics(), start.centre(), working.centre(), Double.NaN,
                working.footShare(Side.LEFT), Double.NaN, problem.base() instanceof BaseOfSupport.HalfKneeling, erect(problem.base()));
    }

    private static boolean erect(BaseOfSupport base) {
        return base instanceof BaseOfSupport.HalfKneeling || base instanceof BaseOfSupport.TallKneeling
                || base instanceof BaseOfSupport.KneelingAtSupport || base instanceof BaseOfSupport.Seated;
    }

    /** A mat under everything from {@code back} to {@code front}. */
    static Prop mat(double back, double front, double half) {
        return new Prop.Mat(new Vector3D(back, -half, -0.012), new Vector3D(front, half, 0));
    }
}
