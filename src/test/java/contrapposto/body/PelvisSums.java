package contrapposto.body;

import contrapposto.body.Contact.Limb;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** The moments at the pelvis of a solved pose, worked out again from its joints and forces alone. */
public record PelvisSums(Vector3D fromAbove, Vector3D fromBelow) {
    public static PelvisSums of(PoseProblem problem, SolvedPose solved) {
        Pose pose = solved.working();
        Vector3D pelvis = pose.at(Joint.PELVIS);
        var k = new Skeleton(problem.person());
        Vector3D up = pose.at(Joint.NECK).subtract(pelvis).normalize();
        Vector3D left = pose.at(Joint.LEFT_HIP).subtract(pose.at(Joint.RIGHT_HIP)).normalize();
        Vector3D ribs = pose.at(Joint.LEFT_SHOULDER).subtract(pose.at(Joint.RIGHT_SHOULDER)).normalize();
        k.trunk(new Torso(pelvis, left, up, pose.ribsForward(), ribs), Vector3D.ZERO);
        for (Side side : Side.values()) {
            for (Joint.Part part : Joint.Part.values()) {
                k.set(side, part, pose.at(Joint.of(side, part)));
            }
        }
        var contacts = new ArrayList<Contact>();
        Vector3D pulley = Vector3D.ZERO;
        for (SolvedPose.Force force : solved.mechanics().forces()) {
            if (force.what().equals("cable")) {
                pulley = force.at().add(force.newton().normalize());
            } else {
                contacts.add(new Contact(force.what(), limb(force.what()), force.at(), force.newton()));
            }
        }
        var statics = new Statics(k, new Loads(problem.load(), pulley), List.copyOf(contacts));
        return new PelvisSums(statics.fromAbove(), statics.fromBelow());
    }

    private static Limb limb(String what) {
        if (what.endsWith("-hand") || what.endsWith("-elbow")) {
            return what.startsWith("left") ? Limb.LEFT_ARM : Limb.RIGHT_ARM;
        }
        if (what.endsWith("-foot") || what.endsWith("-knee") || what.endsWith("-toes")) {
            return what.startsWith("left") ? Limb.LEFT_LEG : Limb.RIGHT_LEG;
        }
        return Limb.TRUNK;
    }

    /** Of the two sums, relative to the larger. */
    public double disagreement() {
        return fromAbove.add(fromBelow).getNorm() / Math.max(1, Math.max(fromAbove.getNorm(), fromBelow.getNorm()));
    }
}
