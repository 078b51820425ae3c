package contrapposto.body;

import static contrapposto.body.Vectors.across;
import static contrapposto.body.Vectors.between;
import static contrapposto.body.Vectors.cross;
import static contrapposto.body.Vectors.dot;
import static contrapposto.body.Vectors.length;
import static contrapposto.body.Vectors.step;
import static contrapposto.body.Vectors.unit;

import contrapposto.body.Joint.Part;
import contrapposto.quantity.Side;
import java.util.EnumMap;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** The joints while a pose is being put together, and the angles and mass centres read from them. */
final class Skeleton {
    private static final Joint[] JOINTS = Joint.values();

    private final Person person;
    private final Segments lengths;
    private final Vector3D[] at = new Vector3D[JOINTS.length];
    private Torso torso;

    Skeleton(Person person) {
        this.person = person;
        this.lengths = person.segments();
    }

    Person person() {
        return person;
    }

    Torso torso() {
        return torso;
    }

    Vector3D at(Joint joint) {
        return at[joint.ordinal()];
    }

    Vector3D at(Side side, Part part) {
        return at[Joint.of(side, part).ordinal()];
    }

    void set(Side side, Part part, Vector3D place) {
        at[Joint.of(side, part).ordinal()] = place;
    }

    /** Places pelvis, hips, neck, shoulders and head; the head half raises itself toward {@code gaze}. */
    void trunk(Torso placed, Vector3D gaze) {
        torso = placed;
        Vector3D neck = step(placed.pelvis(), lengths.trunk(), placed.up());
        at[Joint.PELVIS.ordinal()] = placed.pelvis();
        at[Joint.NECK.ordinal()] = neck;
        for (Side side : Side.values()) {
            set(side, Part.HIP, step(placed.pelvis(), side.sign() * lengths.hipSpacing() / 2, placed.left()));
            set(side, Part.SHOULDER,
                    step(neck, side.sign() * lengths.shoulderSpacing() / 2, placed.ribsLeft()));
        }
        Vector3D head = unit(step(placed.up(), 0.25, gaze));
        at[Joint.HEAD_TOP.ordinal()] = step(neck, lengths.neckHead(), head);
    }

    /** Turns the head to point along {@code direction}. */
    void head(Vector3D direction) {
        at[Joint.HEAD_TOP.ordinal()] = step(at[Joint.NECK.ordinal()], lengths.neckHead(), unit(direction));
    }

    /** Bends the knee of a leg whose hip and ankle are placed toward {@code pole}. */
    void bendKnee(Side side, Vector3D pole) {
        set(side, Part.KNEE, TwoLink.middle(at(side, Part.HIP), at(side, Part.ANKLE), lengths.thigh(), lengths.shank(), pole));
    }

    /** A leg that hangs from its hip: thigh, shank and foot by direction (unit vectors; {@code sole} points out of the sole). */
    void leg(Side side, Vector3D thigh, Vector3D shank, Vector3D toes, Vector3D sole) {
        Vector3D knee = step(at(side, Part.HIP), lengths.thigh(), thigh);
        set(side, Part.KNEE, knee);
        foot(side, step(knee, lengths.shank(), shank), toes, sole);
    }

    /** A straight foot whose ankle is known. */
    void foot(Side side, Vector3D ankle, Vector3D toes, Vector3D sole) {
        Vector3D heel = step(step(ankle, -lengths.heelToAnkle(), toes), lengths.ankleHeight(), across(sole, toes));
        set(side, Part.ANKLE, ankle);
        set(side, Part.HEEL, heel);
        set(side, Part.BALL, step(heel, lengths.heelToBall(), toes));
        set(side, Part.TOE, step(heel, lengths.foot(), toes));
    }

    /** Upper arm, forearm and hand by direction (unit vectors). */
    void arm(Side side, Vector3D upperArm, Vector3D forearm, Vector3D hand) {
        Vector3D elbow = step(at(side, Part.SHOULDER), lengths.upperArm(), upperArm);
        Vector3D wrist = step(elbow, lengths.forearm(), forearm);
        set(side, Part.ELBOW, elbow);
        set(side, Part.WRIST, wrist);
        set(side, Part.HAND, step(wrist, lengths.hand(), hand));
    }

    /** Bends the elbow toward {@code pole} so that the wrist is at {@code wrist}, or as near as the arm reaches. */
    void reach(Side side, Vector3D wrist, Vector3D pole, Vector3D hand) {
        Vector3D shoulder = at(side, Part.SHOULDER);
        Vector3D way = wrist.subtract(shoulder);
        double full = length(way);
        double span = Math.clamp(full, 0.35 * lengths.upperArm(),
                (lengths.upperArm() + lengths.forearm()) * (1 - 2e-6));
        Vector3D target = step(shoulder, span / full, way);
        Vector3D elbow = TwoLink.middle(shoulder, target, lengths.upperArm(), lengths.forearm(), pole);
        set(side, Part.ELBOW, elbow);
        set(side, Part.WRIST, target);
        set(side, Part.HAND, step(target, lengths.hand(), hand));
    }

    /** Where a handle lies in the hand. */
    Vector3D grip(Side side) {
        double share = Segments.GRIP * person.stature() / lengths.hand();
        return between(at(side, Part.WRIST), at(side, Part.HAND), share);
    }

    /** Angle at the knee, 0 = straight, degrees. */
    double kneeFlexion(Side side) {
        Vector3D thigh = at(side, Part.KNEE).subtract(at(side, Part.HIP));
        Vector3D shank = at(side, Part.ANKLE).subtract(at(side, Part.KNEE));
        return Degrees.atan2(length(cross(thigh, shank)), dot(thigh, shank));
    }

    /** Thigh against trunk in the plane of the pelvis, + = flexed, degrees. */
    double hipFlexion(Side side) {
        Vector3D thigh = at(side, Part.KNEE).subtract(at(side, Part.HIP));
        return Degrees.atan2(dot(thigh, torso.forward()), -dot(thigh, torso.up()));
    }

    /** Shin against the sole, + = bent up (dorsiflexed), degrees. */
    double ankleBend(Side side) {
        Vector3D shin = at(side, Part.KNEE).subtract(at(side, Part.ANKLE));
        Vector3D sole = at(side, Part.BALL).subtract(at(side, Part.HEEL));
        return Degrees.asin(dot(shin, sole) / length(shin) / length(sole));
    }

    /** Shin from vertical in the side view, + = knee ahead of ankle, degrees. */
    double shin(Side side) {
        Vector3D shin = at(side, Part.KNEE).subtract(at(side, Part.ANKLE));
        return Degrees.atan2(shin.getX(), shin.getZ());
    }

    /** Trunk from vertical in the side view, + = forward, degrees. */
    double lean() {
        return Degrees.atan2(torso.up().getX(), torso.up().getZ());
    }

    /** Weights of {@code side}'s leg beyond the hip (thigh, shank, foot), appended to {@code into}. */
    void legWeights(Side side, List<PointMass> into) {
        SegmentTable table = person.table();
        into.add(weigh(table.thigh, at(side, Part.HIP), at(side, Part.KNEE)));
        into.add(weigh(table.shank, at(side, Part.KNEE), at(side, Part.ANKLE)));
        into.add(weigh(table.foot, at(side, table.footFromHeel ? Part.HEEL : Part.ANKLE),
                at(side, table.footFromHeel ? Part.TOE : Part.BALL)));
    }

    /** Weights of {@code side}'s arm (upper arm, forearm, hand), appended to {@code into}. */
    void armWeights(Side side, List<PointMass> into) {
        SegmentTable table = person.table();
        into.add(weigh(table.upperArm, at(side, Part.SHOULDER), at(side, Part.ELBOW)));
        into.add(weigh(table.forearm, at(side, Part.ELBOW), at(side, Part.WRIST)));
        into.add(weigh(table.hand, at(side, Part.WRIST), at(side, Part.HAND)));
    }

    /** Weights of trunk and head, appended to {@code into}. */
    void trunkWeights(List<PointMass> into) {
        SegmentTable table = person.table();
        into.add(weigh(table.trunk, at(Joint.PELVIS), at(Joint.NECK)));
        if (table.head.mass() > 0) {
            into.add(weigh(table.head, at(Joint.NECK), at(Joint.HEAD_TOP)));
        }
    }

    private PointMass weigh(SegmentTable.Part part, Vector3D from, Vector3D to) {
        return new PointMass(between(from, to, part.centre()), part.mass() * person.mass());
    }

    /** Moves everything by {@code by}. */
    void shift(Vector3D by) {
        for (int i = 0; i < at.length; i++) {
            at[i] = at[i].add(by);
        }
        torso = new Torso(torso.pelvis().add(by), torso.left(), torso.up(), torso.ribsForward(), torso.ribsLeft());
    }

    /** Frozen. @param facing where the face looks */
    Pose pose(Vector3D facing) {
        var joints = new EnumMap<Joint, Vector3D>(Joint.class);
        for (Joint joint : JOINTS) {
            joints.put(joint, at(joint));
        }
        return new Pose(joints, torso.ribsForward(), facing.normalize());
    }
}
