package contrapposto.body;

import contrapposto.body.Breaches.Kind;
import contrapposto.body.Joint.Part;
import contrapposto.quantity.Side;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Whether a finished pose keeps the joints that no search bounds in their range: shoulders and elbows, thighs sideways, ribs
 * against pelvis. Limits are reference D2 (suggest-hard; trunk AAOS), the person's own shoulder where it was measured.
 */
final class Ranges {
    private static final double SHOULDER_EXTENSION = 60;
    private static final double SHOULDER_MEDIAL = 70;
    private static final double SHOULDER_LATERAL = 90;
    private static final double HIP_ABDUCTION = 45;
    private static final double HIP_ADDUCTION = 25;
    private static final double TRUNK_TURN = 45;
    /** An upper arm this far out (sine) rises sideways; then going behind the trunk is no extension. */
    private static final double SIDEWAYS = 0.5;
    /** Under this bend of the elbow, and above this height of the arm, the forearm does not show how the arm is turned, degrees. */
    private static final double STRAIGHT = 25;
    private static final double HIGH = 150;

    private final PoseProblem problem;
    private final Breaches breaches;

    private Ranges(PoseProblem problem) {
        this.problem = problem;
        this.breaches = new Breaches(problem.person().stature());
    }

    /** What any position breaks. */
    static Breaches of(PoseProblem problem, SolvedPose pose) {
        var ranges = new Ranges(problem);
        ranges.judge(pose.start());
        ranges.judge(pose.working());
        if (pose.end() != pose.working()) {
            ranges.judge(pose.end());
        }
        return ranges.breaches;
    }

    private void judge(Pose pose) {
        Vector3D up = way(pose, Joint.PELVIS, Joint.NECK);
        Vector3D left = way(pose, Joint.RIGHT_SHOULDER, Joint.LEFT_SHOULDER);
        Vector3D hips = way(pose, Joint.RIGHT_HIP, Joint.LEFT_HIP);
        Vector3D ahead = Vectors.unit(Vectors.cross(left, up));
        for (Side side : Side.values()) {
            shoulder(pose, side, ahead, left, up);
            double out = side.sign() * Degrees.asin(Vectors.dot(way(pose, Joint.of(side, Part.HIP), Joint.of(side, Part.KNEE)), hips));
            breaches.atMost(Kind.HIP_OUT, side, out, HIP_ABDUCTION);
            breaches.atMost(Kind.HIP_IN, side, -out, HIP_ADDUCTION);
        }
        double turn = Degrees.atan2(Vectors.dot(Vectors.cross(hips, left), up), Vectors.dot(hips, left));
        breaches.atMost(Kind.TRUNK_TURN, turn > 0 ? Side.LEFT : Side.RIGHT, Math.abs(turn), TRUNK_TURN);
    }

    private static Vector3D way(Pose pose, Joint from, Joint to) {
        return Vectors.unit(pose.at(to).subtract(pose.at(from)));
    }

    private void shoulder(Pose pose, Side side, Vector3D ahead, Vector3D left, Vector3D up) {
        Vector3D upper = way(pose, Joint.of(side, Part.SHOULDER), Joint.of(side, Part.ELBOW));
        Vector3D fore = way(pose, Joint.of(side, Part.ELBOW), Joint.of(side, Part.WRIST));
        JointLimits limits = problem.limits().on(side);
        double elbow = Degrees.atan2(Vectors.length(Vectors.cross(upper, fore)), Vectors.dot(upper, fore));
        breaches.atMost(Kind.ELBOW, side, elbow, limits.elbowFlexion());
        double forward = Vectors.dot(upper, ahead);
        double out = side.sign() * Vectors.dot(upper, left);
        double down = -Vectors.dot(upper, up);
        double raised = Degrees.atan2(StrictMath.sqrt(forward * forward + out * out), down);
        if (forward >= 0) {
            breaches.atMost(Kind.SHOULDER, side, raised, limits.shoulderFlexion());
        } else if (out < SIDEWAYS && down > 0) {
            breaches.atMost(Kind.SHOULDER_BACK, side, Degrees.atan2(-forward, down), SHOULDER_EXTENSION);
        } else if (out < SIDEWAYS) {
            breaches.atMost(Kind.SHOULDER, side, 180 + Degrees.atan2(-forward, -down), limits.shoulderFlexion());
        }
        if (elbow > STRAIGHT && raised < HIGH) {
            double medial = side.sign() * twist(upper, fore, ahead, up);
            breaches.atMost(Kind.ARM_TURNED_IN, side, medial, SHOULDER_MEDIAL);
            breaches.atMost(Kind.ARM_TURNED_OUT, side, -medial, SHOULDER_LATERAL);
        }
    }

    /** How the forearm is turned about the upper arm from where it would be if the hanging arm had swung up by the shortest way, + = to the right. */
    private static double twist(Vector3D upper, Vector3D fore, Vector3D ahead, Vector3D up) {
        Vector3D neutral = new Rotation(up.negate(), upper).applyTo(ahead);
        return Degrees.atan2(Vectors.dot(Vectors.cross(neutral, fore), upper), Vectors.dot(neutral, fore));
    }
}
