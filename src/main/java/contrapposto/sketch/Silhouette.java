package contrapposto.sketch;

import contrapposto.body.Joint;
import contrapposto.figure.Circle;
import contrapposto.figure.Outline;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** A body as one flat shape: fewer and plainer outlines than a drawn one, since no inner line will show. */
record Silhouette(Sitter sitter) {

    List<Outline> outlines() {
        List<Outline> all = new ArrayList<>();
        Trunk trunk = Trunk.of(sitter);
        all.add(trunk.outline(-.15, .10, .46, .86, 1.10));
        all.add(sitter.hull(sitter.ball(Trunk.drawnShoulder(sitter, Side.LEFT), .0285), sitter.ball(trunk.girdleRoot(), .029),
                sitter.ball(Trunk.drawnShoulder(sitter, Side.RIGHT), .0285)));
        for (Side side : Side.values()) {
            Leg leg = Leg.of(sitter, side);
            List<Circle> thigh = new ArrayList<>(leg.thigh().circles(.001, .30, 1));
            thigh.add(leg.seatBall());
            all.add(Circle.hull(thigh));
            all.add(Circle.hull(leg.shank().circles(0, .20, 1)));
            all.add(Shoe.of(sitter, side, false).silhouette());
            Arm arm = Arm.of(sitter, side, new Grip.Fist());
            all.add(Circle.hull(arm.upper().circles(0, 0, 1)));
            all.add(sitter.hull(arm.fore().circle(.15, 0), sitter.ball(Arm.gripCentre(sitter, side), .0165)));
        }
        head(all, trunk);
        return all;
    }

    private void head(List<Outline> all, Trunk trunk) {
        all.add(sitter.hull(ball(-.008, -.053, .053), ball(.054, -.080, .0065), ball(.031, -.1135, .015), ball(-.022, -.078, .033)));
        all.add(sitter.hull(sitter.ball(trunk.section(1).centre(), .0305), ball(-.010, -.092, .0270)));
    }

    private Circle ball(double forward, double up, double radius) {
        Vector3D at = sitter.at(Joint.HEAD_TOP).add(sitter.size(forward), sitter.frames().headFront())
                .add(sitter.size(up), sitter.frames().headUp());
        return sitter.ball(at, radius);
    }
}
