package contrapposto.sketch;

import static contrapposto.sketch.Directions.between;
import static contrapposto.sketch.Directions.unit;

import contrapposto.body.Joint;
import contrapposto.figure.Circle;
import contrapposto.figure.Outline;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** One arm: upper arm in a short sleeve, forearm with its hand, and the patches that join them. */
record Arm(Sitter sitter, Side side, boolean far, Bone upper, Bone fore, Grip grip) {
    private static final double FAR_THICKNESS = .96;
    private static final double HEM = .46;
    private static final double CLOTH = .0016;
    /** From the wrist to the middle of what the hand holds, in shares of stature. */
    static final double GRIP_AHEAD = .046;

    static Arm of(Sitter sitter, Side side, Grip grip) {
        Vector3D elbow = sitter.at(side, Joint.Part.ELBOW);
        Vector3D wrist = sitter.at(side, Joint.Part.WRIST);
        Vector3D front = Sitter.pointing(sitter.at(side, Joint.Part.SHOULDER), elbow, wrist,
                sitter.frames().ribsFront().negate()).negate();
        Vector3D out = sitter.frames().ribsOut(side);
        boolean far = sitter.farArm(side);
        double thick = far ? FAR_THICKNESS : 1;
        return new Arm(sitter, side, far,
                Bone.of(sitter, Trunk.drawnShoulder(sitter, side), elbow, Profile.UPPER_ARM, front, out,
                        thick * (1 + .8 * (sitter.girth() - 1))),
                Bone.of(sitter, elbow, wrist, Profile.FOREARM, front, out, thick), grip);
    }

    /** The middle of what the hand on {@code side} holds. */
    static Vector3D gripCentre(Sitter sitter, Side side) {
        Vector3D wrist = sitter.at(side, Joint.Part.WRIST);
        return wrist.add(sitter.size(GRIP_AHEAD), unit(sitter.at(side, Joint.Part.HAND).subtract(wrist)));
    }

    Part upperPart() {
        Outline hem = upper.hem(HEM, CLOTH);
        return Part.ofBody(Piece.of(side, Piece.Limb.UPPER_ARM), far,
                List.of(upper.from(), between(upper.from(), upper.to(), .5), upper.to()),
                List.of(new Part.Shape(Circle.hull(upper.circles(0, .38, 1)), Tones.SKIN),
                        new Part.Shape(upper.cloth(hem, CLOTH, 0, HEM), Tones.TOP)),
                List.of(new Part.Crease(hem, Pen.HEM, Tones.BLACK)));
    }

    Part forePart() {
        Hand hand = new Hand(sitter, side, far ? FAR_THICKNESS : 1, fore);
        List<Part.Shape> shapes = new ArrayList<>();
        shapes.add(new Part.Shape(Circle.hull(fore.circles(0, 0, .22, 1)), Tones.SKIN));
        if (sitter.dress().band(side)) {
            shapes.add(new Part.Shape(Circle.hull(fore.circles(.0022, .80, .97)), Tones.BAND));
        }
        hand.outlines(grip).forEach(outline -> shapes.add(new Part.Shape(outline, Tones.SKIN)));
        return Part.ofBody(Piece.of(side, Piece.Limb.FOREARM), far,
                List.of(fore.from(), between(fore.from(), fore.to(), .5), fore.to(), sitter.at(side, Joint.Part.HAND)),
                shapes, List.of());
    }

    List<Patch> patches() {
        Patch elbow = new Patch(Piece.of(side, Piece.Limb.UPPER_ARM), Piece.of(side, Piece.Limb.FOREARM), false, far,
                List.of(upper.patch(.88, 1, 0, Tones.SKIN), fore.patch(0, .12, 0, Tones.SKIN)), List.of(), List.of());
        Vector3D towardNeck = between(Trunk.of(sitter).girdleRoot(), upper.from(), .86);
        Patch shoulder = new Patch(Piece.of(side, Piece.Limb.UPPER_ARM), Piece.TRUNK, true, far,
                List.of(new Part.Cord(Outline.polyline(sitter.camera().see(towardNeck), sitter.camera().see(upper.from())),
                        2 * sitter.size(.0235), Tones.TOP), upper.patch(0, .20, .0012, Tones.TOP)), List.of(), List.of());
        return List.of(elbow, shoulder);
    }
}
