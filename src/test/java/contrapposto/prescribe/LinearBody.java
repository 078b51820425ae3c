package contrapposto.prescribe;

import contrapposto.body.Joint;
import contrapposto.body.Load;
import contrapposto.body.Pose;
import contrapposto.body.PoseOutcome;
import contrapposto.body.PoseProblem;
import contrapposto.body.SolvedPose;
import contrapposto.catalogue.Family;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.quantity.Side;
import contrapposto.setup.SetUps;
import contrapposto.setup.SolvedSetUp;
import java.util.EnumMap;
import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Stands in for the pose solver where a test is about weeks, not about mechanics: moments that grow in a straight line
 * with the load, a raised front foot shifting work to the hip and a raised rear foot to the knee, as solved poses do.
 */
final class LinearBody implements Bench {
    private static final Pose STILL = still();

    @Override
    public PoseProblem asTested(SetUps setUps, Family family, Side side, SetUpWish wish, double load) {
        return SplitSquats.tested(side, load);
    }

    @Override
    public Optional<SolvedSetUp> resolve(SetUps setUps, SolvedSetUp chosen, double load) {
        var problem = new Demand(chosen.problem(), this::solve).problem(load);
        var pose = ((PoseOutcome.Solved) solve(problem)).pose();
        return Optional.of(new SolvedSetUp(chosen.family(), chosen.side(), chosen.role(), chosen.setUp(), problem, pose,
                chosen.phase(), chosen.muscles(), chosen.otherSideMuscles(), chosen.reasons(), chosen.runnerUp(), chosen.lacks(),
                chosen.byCoach()));
    }

    @Override
    public PoseOutcome solve(PoseProblem problem) {
        double load = Demand.mass(problem.load());
        boolean cable = problem.load() instanceof Load.Cable;
        double front = problem.base() instanceof contrapposto.body.BaseOfSupport.Split split ? split.frontRaise() - 0.35 * split.rearRaise() : 0;
        double hip = (1 + front) * (110 + 2.3 * load);
        double knee = (1 - 2 * front) * (58 + 1.4 * load);
        var mechanics = new SolvedPose.Mechanics(0, 0, 0.7, 0.5, 12, 90, cable ? 10 : hip, cable ? 10 : knee, 3 * load, 2.5 * load,
                0, 0, 0.05, Double.NaN, Vector3D.ZERO, Vector3D.ZERO, List.of());
        return new PoseOutcome.Solved(new SolvedPose(STILL, STILL, mechanics, List.of()));
    }

    private static Pose still() {
        var joints = new EnumMap<Joint, Vector3D>(Joint.class);
        for (var joint : Joint.values()) {
            joints.put(joint, Vector3D.ZERO);
        }
        return new Pose(joints, Vector3D.PLUS_I, Vector3D.PLUS_I);
    }
}
