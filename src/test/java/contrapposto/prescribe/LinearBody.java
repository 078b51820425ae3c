package contrapposto.prescribe;

import contrapposto.body.Joint;
import contrapposto.body.Load;
import contrapposto.body.Pose;
import contrapposto.body.PoseOutcome;
import contrapposto.body.PoseProblem;
import contrapposto.body.SolvedPose;
import java.util.EnumMap;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Stands in for the pose solver where a test is about weeks, not about mechanics: moments that grow in a straight line
 * with the load, a raised front foot shifting work to the hip and a raised rear foot to the knee, as solved poses do.
 */
final class LinearBody {
    private static final Pose STILL = still();

    private LinearBody() { }

    static PoseOutcome solve(PoseProblem problem) {
        double load = Demand.mass(problem.load());
        boolean cable = problem.load() instanceof Load.Cable;
        double front = problem.base() instanceof contrapposto.body.Base.Split split ? split.frontRaise() - 0.35 * split.rearRaise() : 0;
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
