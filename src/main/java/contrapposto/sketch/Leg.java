package contrapposto.sketch;

import static contrapposto.sketch.Directions.between;
import static contrapposto.sketch.Directions.unit;

import contrapposto.body.Joint;
import contrapposto.figure.Circle;
import contrapposto.figure.Envelope;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** One leg: thigh in shorts, shank with its shoe, and the patches that join them to each other and to the trunk. */
record Leg(Sitter sitter, Side side, boolean far, Bone thigh, Bone shank) {
    private static final double FAR_THICKNESS = .96;
    private static final double HEM = .50;
    private static final double CLOTH = .0018;

    static Leg of(Sitter sitter, Side side) {
        Vector3D hip = sitter.at(side, Joint.Part.HIP);
        Vector3D knee = sitter.at(side, Joint.Part.KNEE);
        Vector3D ankle = sitter.at(side, Joint.Part.ANKLE);
        Vector3D sole = unit(sitter.at(side, Joint.Part.BALL).subtract(sitter.at(side, Joint.Part.HEEL)));
        Vector3D front = Sitter.pointing(hip, knee, ankle, sitter.frames().pelvisFront().scalarMultiply(.6).add(.4, sole));
        Vector3D out = sitter.frames().pelvisOut(side);
        boolean far = sitter.farLeg(side);
        double thick = far ? FAR_THICKNESS : 1;
        return new Leg(sitter, side, far,
                Bone.of(sitter, hip, knee, Profile.THIGH, front, out, thick * (1 + .8 * (sitter.girth() - 1))),
                Bone.of(sitter, knee, ankle, Profile.SHANK, front, out, thick));
    }

    Part thighPart() {
        Outline hem = thigh.hem(HEM, CLOTH);
        Vector3D hip = thigh.from();
        return Part.ofBody(Piece.of(side, Piece.Limb.THIGH), far,
                List.of(hip, between(hip, thigh.to(), .33), between(hip, thigh.to(), .66), thigh.to()),
                List.of(new Part.Shape(thigh.flesh(.42, .72, 1), Tones.SKIN),
                        new Part.Shape(thigh.cloth(hem, CLOTH, 0, .22, HEM), Tones.SHORTS),
                        new Part.Shape(seat(), Tones.SHORTS)),
                List.of(new Part.Crease(hem, Pen.HEM, Tones.BLACK)));
    }

    /** The muscle behind the hip, from pelvis to the back of the thigh. */
    Outline seat() {
        return sitter.hull(seatBall(), thigh.circle(.125, CLOTH).scaled(.97));
    }

    Circle seatBall() {
        return sitter.ball(behind(), .050 * thigh.thick());
    }

    private Vector3D behind() {
        return thigh.from().add(-sitter.size(.020), sitter.frames().pelvisFront())
                .add(-sitter.size(.004), sitter.frames().spine());
    }

    Part shankPart() {
        Shoe shoe = Shoe.of(sitter, side, far);
        List<Part.Shape> shapes = new ArrayList<>();
        shapes.add(new Part.Shape(shank.flesh(0, .28, .68, 1), Tones.SKIN));
        shapes.addAll(shoe.shapes());
        Vector3D knee = shank.from();
        Vector3D ankle = shank.to();
        return Part.ofBody(Piece.of(side, Piece.Limb.SHANK), far,
                List.of(knee, between(knee, ankle, .33), between(knee, ankle, .66), ankle,
                        sitter.at(side, Joint.Part.HEEL), sitter.at(side, Joint.Part.TOE)), shapes, List.of());
    }

    List<Patch> patches() {
        Patch knee = new Patch(Piece.of(side, Piece.Limb.THIGH), Piece.of(side, Piece.Limb.SHANK), false, far,
                List.of(thigh.patch(.88, 1, 0, Tones.SKIN), shank.patch(0, .12, 0, Tones.SKIN)), List.of(), List.of());
        double k = thigh.thick();
        Vector3D above = thigh.from().add(sitter.size(.03), sitter.frames().spine())
                .add(-sitter.size(.01), sitter.frames().pelvisOut(side));
        Outline hem = thigh.hem(HEM, CLOTH);
        Patch hip = new Patch(Piece.of(side, Piece.Limb.THIGH), Piece.TRUNK, true, far, List.of(),
                List.of(new Part.Shape(sitter.hull(sitter.ball(thigh.from(), .047 * k), sitter.ball(behind(), .047 * k),
                                sitter.ball(above, .042 * k)), Tones.SHORTS),
                        new Part.Shape(beyondHem(hem), Tones.SKIN)),
                List.of(new Part.Crease(hem, Pen.HEM, Tones.BLACK)));
        return List.of(knee, hip);
    }

    /** The bare thigh again, over the patch: without it a thigh that points at the reader gets dark blots. */
    private Outline beyondHem(Outline hem) {
        Point a = hem.start();
        Point b = hem.segments().getLast().end();
        Point middle = a.toward(b, .5);
        List<Circle> chain = thigh.circles(0, 1, HEM).stream().map(c -> c.scaled(.985)).toList();
        return Envelope.sleeve(chain, hem.mapped(p -> middle.toward(p, .955)));
    }
}
