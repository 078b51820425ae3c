package contrapposto.sketch;

import static contrapposto.sketch.Directions.across;
import static contrapposto.sketch.Directions.ease;
import static contrapposto.sketch.Directions.unit;

import contrapposto.body.Joint;
import contrapposto.body.Pose;
import contrapposto.figure.Circle;
import contrapposto.figure.Outline;
import contrapposto.quantity.Side;
import java.util.List;
import java.util.Set;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Whoever is drawn: a pose seen by a camera, with the sizes and shades of this person.
 *
 * @param stature    m
 * @param girth      1 for common build, from .92 to 1.2
 * @param emphasised limbs drawn like near ones though they are far, because they do the work
 */
record Sitter(Pose pose, Camera camera, Frames frames, double stature, double girth, Dress dress,
              Set<Emphasis> emphasised) {
    /** A view is frontal, and has no far side, when the pelvis' side axis points this little toward the reader. */
    private static final double FRONTAL = .5;

    enum Emphasis { LEFT_ARM, RIGHT_ARM, LEFT_LEG, RIGHT_LEG }

    static Sitter of(Pose pose, Camera camera, double stature, double girth, Dress dress, Set<Emphasis> emphasised) {
        return new Sitter(pose, camera, Frames.of(pose), stature, girth, dress, emphasised);
    }

    /** The same person in another pose, seen alike. */
    Sitter posed(Pose other) {
        return of(other, camera, stature, girth, dress, emphasised);
    }

    /**
     * Build from mass and stature: the square root of the body mass index over 22.5, held between .92 and 1.2. A
     * drawing default of ours; no source.
     */
    static double girthOf(double stature, double mass) {
        return Math.clamp(Math.sqrt(mass / (stature * stature) / 22.5), .92, 1.2);
    }

    Vector3D at(Side side, Joint.Part part) {
        return pose.at(Joint.of(side, part));
    }

    Vector3D at(Joint joint) {
        return pose.at(joint);
    }

    Side near() {
        return camera.depth(frames.pelvisLeft()) > 0 ? Side.LEFT : Side.RIGHT;
    }

    boolean frontal() {
        return Math.abs(camera.depth(frames.pelvisLeft())) < FRONTAL;
    }

    boolean farLeg(Side side) {
        return far(side) && !emphasised.contains(side == Side.LEFT ? Emphasis.LEFT_LEG : Emphasis.RIGHT_LEG);
    }

    boolean farArm(Side side) {
        return far(side) && !emphasised.contains(side == Side.LEFT ? Emphasis.LEFT_ARM : Emphasis.RIGHT_ARM);
    }

    private boolean far(Side side) {
        return !frontal() && side != near();
    }

    /** A share of stature in metres. */
    double size(double share) {
        return share * stature;
    }

    /** A ball at {@code centre}; the oblique view keeps it round. */
    Circle ball(Vector3D centre, double share) {
        return new Circle(camera.see(centre), size(share));
    }

    Outline hull(Circle... balls) {
        return Circle.hull(List.of(balls));
    }

    /**
     * The way the middle joint of a chain points; where the chain is nearly straight, blended to {@code hint}.
     */
    static Vector3D pointing(Vector3D from, Vector3D joint, Vector3D to, Vector3D hint) {
        Vector3D axis = unit(to.subtract(from));
        Vector3D out = across(joint.subtract(from.add(to).scalarMultiply(.5)), axis);
        double weight = ease((out.getNorm() / Vector3D.distance(from, to) - .01) / .06);
        Vector3D wanted = unit(across(hint, axis));
        return unit(unit(out).scalarMultiply(weight).add(1 - weight, wanted));
    }
}
