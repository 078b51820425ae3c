package contrapposto.body;

import contrapposto.body.Joint.Part;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * An arm and what it holds, seen from its shoulder, as a {@link StanceModel} carries it along while the trunk moves a
 * little. What hangs keeps its shape in the world, everything else in the frame of the ribs.
 *
 * @param mass   of the arm and the weight in it, kg
 * @param centre of that mass, from the shoulder
 * @param grip   of the hand, from the shoulder
 * @param wrist  of a hand that pushes straight up: from the shoulder, or where it is if it is {@code planted} on a support
 */
record ArmShape(boolean ofRibs, boolean planted, double mass, Vector3D centre, Vector3D grip, Vector3D wrist) {
    /** The arm of {@code side} of a skeleton whose trunk and arms are placed. */
    static ArmShape of(Skeleton k, Side side, ArmTask task, Position position, Loads loads,
                       boolean planted) {
        var masses = new ArrayList<PointMass>(4);
        k.armWeights(side, masses);
        loads.inHand(k, side, masses);
        PointMass sum = PointMass.centre(masses);
        Vector3D shoulder = k.at(side, Part.SHOULDER);
        boolean ofRibs = ofRibs(task, position, loads);
        return new ArmShape(ofRibs, planted, sum.mass(), seen(k, ofRibs, sum.at().subtract(shoulder)),
                seen(k, ofRibs, k.grip(side).subtract(shoulder)),
                planted ? k.at(side, Part.WRIST) : k.at(side, Part.WRIST).subtract(shoulder));
    }

    private static Vector3D seen(Skeleton k, boolean ofRibs, Vector3D v) {
        Torso torso = k.torso();
        return ofRibs ? new Vector3D(Vectors.dot(v, torso.ribsForward()), Vectors.dot(v, torso.ribsLeft()), Vectors.dot(v, torso.up())) : v;
    }

    private static boolean ofRibs(ArmTask task, Position position, Loads loads) {
        return switch (task) {
            case ArmTask.Hang hang -> false;
            case ArmTask.Overhead overhead -> position == Position.START;
            case ArmTask.OnSupport support -> false;
            case ArmTask.Planted planted -> false;
            case ArmTask.StepsAhead steps -> false;
            case ArmTask.Flat flat -> false;
            case ArmTask.Pillow pillow -> false;
            case ArmTask.Rest rest -> true;
            case ArmTask.AtChest chest -> true;
            case ArmTask.AtShoulder shoulder -> true;
            case ArmTask.Reach reach -> true;
            case ArmTask.Press press -> true;
            case ArmTask.Pull pull -> true;
            case ArmTask.Curl curl -> true;
            case ArmTask.Extend extend -> true;
            case ArmTask.DrawBack back -> true;
        };
    }

    /** Whether the shape changes as the trunk moves, so that it must be read again. */
    static boolean changes(List<ArmTask> tasks, Load load) {
        return load instanceof Load.InBothHands
                || tasks.stream().anyMatch(t -> t instanceof ArmTask.Rest || t instanceof ArmTask.Overhead || t instanceof ArmTask.OnSupport);
    }
}
