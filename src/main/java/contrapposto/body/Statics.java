package contrapposto.body;

import contrapposto.body.Contact.Limb;
import contrapposto.body.Joint.Part;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Moments of a body at rest: weights of the segments, the outside load and the forces of the supports. Every joint
 * moment sums what lies beyond the joint; at the pelvis the sum from the hands and head down and the sum from the feet
 * up must cancel.
 */
record Statics(Skeleton skeleton, Loads loads, List<Contact> contacts) {
    /** About the hip's sideways axis, + = what the hip extensors must hold, N·m. */
    double hip(Side side) {
        return -beyondHip(side).getY();
    }

    /** About the knee's sideways axis, + = what the knee extensors must hold, N·m. */
    double knee(Side side) {
        var masses = new ArrayList<PointMass>(3);
        skeleton.legWeights(side, masses);
        Vector3D knee = skeleton.at(side, Part.KNEE);
        return about(knee, masses.subList(1, 3), leg(side)).getY();
    }

    /** Size of the moment of arm, load and support about the shoulder, N·m. */
    double shoulder(Side side) {
        return beyondShoulder(side, skeleton.at(side, Part.SHOULDER)).getNorm();
    }

    /** Size of the moment of forearm, hand, load and support about the elbow, N·m. */
    double elbow(Side side) {
        var masses = new ArrayList<PointMass>(4);
        skeleton.armWeights(side, masses);
        masses.removeFirst();
        return armMoment(side, skeleton.at(side, Part.ELBOW), masses).getNorm();
    }

    /** Of the outside load about pelvis → neck, + = turns the trunk left, N·m. */
    double turn() {
        return outside(skeleton.at(Joint.PELVIS)).dotProduct(skeleton.torso().up());
    }

    /** Of the outside load about the forward axis at the pelvis, + = bends the trunk right, N·m. */
    double side() {
        return outside(skeleton.at(Joint.PELVIS)).getX();
    }

    /** Everything above the hips about the pelvis: arms, load, trunk, head and what supports them. */
    Vector3D fromAbove() {
        Vector3D pelvis = skeleton.at(Joint.PELVIS);
        var masses = new ArrayList<PointMass>(4);
        skeleton.trunkWeights(masses);
        loads.onPelvis(skeleton, masses);
        return about(pelvis, masses, Limb.TRUNK).add(beyondShoulder(Side.LEFT, pelvis)).add(beyondShoulder(Side.RIGHT, pelvis));
    }

    /** Both legs and what they stand or kneel on, about the pelvis. */
    Vector3D fromBelow() {
        Vector3D pelvis = skeleton.at(Joint.PELVIS);
        Vector3D sum = Vector3D.ZERO;
        for (Side side : Side.values()) {
            var masses = new ArrayList<PointMass>(3);
            skeleton.legWeights(side, masses);
            sum = sum.add(about(pelvis, masses, leg(side)));
        }
        return sum;
    }

    private Vector3D beyondHip(Side side) {
        var masses = new ArrayList<PointMass>(3);
        skeleton.legWeights(side, masses);
        return about(skeleton.at(side, Part.HIP), masses, leg(side));
    }

    private Vector3D beyondShoulder(Side side, Vector3D point) {
        var masses = new ArrayList<PointMass>(4);
        skeleton.armWeights(side, masses);
        return armMoment(side, point, masses);
    }

    private Vector3D armMoment(Side side, Vector3D point, List<PointMass> segments) {
        loads.inHand(skeleton, side, segments);
        var pull = new ArrayList<PointForce>(1);
        loads.pull(skeleton, side, pull);
        return about(point, segments, side == Side.LEFT ? Limb.LEFT_ARM : Limb.RIGHT_ARM)
                .add(PointForce.momentAbout(point, pull));
    }

    private Vector3D outside(Vector3D point) {
        var masses = new ArrayList<PointMass>(2);
        var pull = new ArrayList<PointForce>(1);
        for (Side side : Side.values()) {
            loads.inHand(skeleton, side, masses);
            loads.pull(skeleton, side, pull);
        }
        Vector3D sum = PointForce.momentAbout(point, pull);
        for (PointMass mass : masses) {
            sum = sum.add(mass.weight().momentAbout(point));
        }
        return sum;
    }

    private Vector3D about(Vector3D point, List<PointMass> masses, Limb limb) {
        Vector3D sum = Vector3D.ZERO;
        for (PointMass mass : masses) {
            sum = sum.add(mass.weight().momentAbout(point));
        }
        for (Contact contact : contacts) {
            if (contact.limb() == limb) {
                sum = sum.add(contact.force().momentAbout(point));
            }
        }
        return sum;
    }

    static Limb leg(Side side) {
        return side == Side.LEFT ? Limb.LEFT_LEG : Limb.RIGHT_LEG;
    }

    static Limb arm(Side side) {
        return side == Side.LEFT ? Limb.LEFT_ARM : Limb.RIGHT_ARM;
    }
}
