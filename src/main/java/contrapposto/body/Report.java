package contrapposto.body;

import contrapposto.quantity.Side;
import java.util.ArrayList;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Reads the mechanics of a solved pose. */
final class Report {
    private Report() { }

    /**
     * @param leg    the leg whose shin, knee and hip are told
     * @param stands whether that leg stands on its foot: only then does its shin tell a phase
     * @param erect  whether the trunk is up, so that it has a lean
     */
    static SolvedPose.Mechanics of(PoseProblem problem, Side leg, Skeleton start, Statics working, Vector3D centreStart,
                                   Vector3D centreWorking, double frontShare, double leftShare, double rearKnee,
                                   boolean stands, boolean erect) {
        Skeleton k = working.skeleton();
        Side arm = problem.working();
        var forces = new ArrayList<SolvedPose.Force>();
        for (Contact contact : working.contacts()) {
            forces.add(new SolvedPose.Force(contact.what(), contact.at(), contact.newton()));
        }
        for (Side side : Side.values()) {
            var pulls = new ArrayList<PointForce>(1);
            working.loads().pull(k, side, pulls);
            pulls.forEach(pull -> forces.add(new SolvedPose.Force("cable", pull.at(), pull.newton())));
        }
        return new SolvedPose.Mechanics(stands ? start.shin(leg) : Double.NaN, stands ? k.shin(leg) : Double.NaN, frontShare,
                leftShare, erect ? k.lean() : Double.NaN, k.kneeFlexion(leg),
                working.hip(leg), working.knee(leg), working.shoulder(arm), working.elbow(arm), working.turn(),
                working.side(), rearKnee, working.loads().slope(k), centreStart, centreWorking, forces);
    }
}
