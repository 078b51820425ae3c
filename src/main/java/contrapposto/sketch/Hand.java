package contrapposto.sketch;

import static contrapposto.sketch.Directions.across;
import static contrapposto.sketch.Directions.cross;
import static contrapposto.sketch.Directions.unit;

import contrapposto.body.Joint;
import contrapposto.figure.Circle;
import contrapposto.figure.Outline;
import contrapposto.quantity.Side;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** A hand at the end of a forearm, without single fingers. */
record Hand(Sitter sitter, Side side, double thick, Bone forearm) {

    List<Outline> outlines(Grip grip) {
        return switch (grip) {
            case Grip.Fist fist -> fist();
            case Grip.Palm(var into, var fingers) -> palm(into, fingers);
            case Grip.Relaxed relaxed -> relaxed();
        };
    }

    private Vector3D wrist() {
        return forearm.to();
    }

    private Vector3D direction() {
        return unit(sitter.at(side, Joint.Part.HAND).subtract(wrist()));
    }

    private Circle ball(Vector3D at, double share) {
        return sitter.ball(at, share * thick);
    }

    private List<Outline> fist() {
        Vector3D grip = Arm.gripCentre(sitter, side);
        Vector3D d = direction();
        return List.of(sitter.hull(ball(wrist(), .0135), ball(grip.add(-sitter.size(.004), d), .0195),
                ball(grip.add(sitter.size(.010), d), .0170)));
    }

    private List<Outline> palm(Vector3D into, Vector3D fingers) {
        Vector3D n = unit(into);
        Vector3D f = unit(across(fingers, n));
        Vector3D q = cross(n, f);
        Vector3D knuckles = wrist().add(sitter.size(.052), f);
        Vector3D tips = wrist().add(sitter.size(.100), f);
        Circle k1 = ball(knuckles.add(sitter.size(.016), q), .0095);
        Circle k2 = ball(knuckles.add(-sitter.size(.016), q), .0095);
        return List.of(sitter.hull(ball(wrist(), .0130), k1, k2,
                ball(tips.add(sitter.size(.009), q), .0070), ball(tips.add(-sitter.size(.009), q), .0070)));
    }

    private List<Outline> relaxed() {
        Vector3D d = direction();
        Vector3D a = unit(across(sitter.frames().ribsFront(), d));
        Vector3D out = sitter.frames().ribsOut(side);
        Vector3D k = wrist().add(sitter.size(.050), d).add(sitter.size(.002), a);
        Vector3D tips = wrist().add(sitter.size(.094), d).add(sitter.size(.002), a).add(-sitter.size(.010), out);
        Vector3D thumbRoot = wrist().add(sitter.size(.020), d).add(sitter.size(.010), a);
        Vector3D thumbTip = wrist().add(sitter.size(.056), d).add(sitter.size(.022), a);
        return List.of(sitter.hull(ball(wrist(), .0130), ball(k, .0165), ball(tips, .0095)),
                sitter.hull(ball(thumbRoot, .0075), ball(thumbTip, .0062)));
    }
}
