package contrapposto.sketch;

import static contrapposto.sketch.Directions.between;
import static contrapposto.sketch.Directions.cross;
import static contrapposto.sketch.Directions.unit;

import contrapposto.body.Joint;
import contrapposto.body.Prop;
import contrapposto.figure.Circle;
import contrapposto.figure.Outline;
import contrapposto.quantity.Side;
import contrapposto.sketch.Order.Tied;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Dark prints under whatever touches a support: these, not a line, make a foot stand. */
final class Contacts {
    private static final double NEAR = .02;
    private static final double KNEE = .031;
    private static final double ELBOW = .0205;

    /** A place along the sole, half its width there and how far the print reaches beyond, in shares of stature. */
    private record Station(Vector3D at, double halfWidth, double ahead) { }

    private Contacts() { }

    static List<Tied> of(Sitter sitter, Map<Side, Grip> grips, List<Prop> props) {
        List<Tied> prints = new ArrayList<>();
        for (Side side : Side.values()) {
            sole(sitter, side, props, prints);
            Vector3D knee = sitter.at(side, Joint.Part.KNEE);
            if (touches(knee, sitter.size(KNEE), props)) {
                prints.add(blot("knee-" + side.word(), sitter, knee.add(-.02, Directions.AHEAD), props, .07, .05,
                        Piece.of(side, Piece.Limb.SHANK)));
            }
            Vector3D elbow = sitter.at(side, Joint.Part.ELBOW);
            if (touches(elbow, sitter.size(ELBOW), props)) {
                prints.add(blot("elbow-" + side.word(), sitter, elbow, props, .06, .05, Piece.of(side, Piece.Limb.UPPER_ARM)));
            }
            if (grips.get(side) instanceof Grip.Palm(var into, var fingers) && into.getZ() < -.5) {
                prints.add(blot("palm-" + side.word(), sitter, sitter.at(side, Joint.Part.HAND), props, .08, .05,
                        Piece.of(side, Piece.Limb.FOREARM)));
            }
        }
        return prints;
    }

    private static boolean touches(Vector3D joint, double above, List<Prop> props) {
        return Math.abs(joint.getZ() - above - Floor.supportUnder(joint, props)) < NEAR;
    }

    private static Tied blot(String name, Sitter sitter, Vector3D at, List<Prop> props, double along, double across,
                             Piece limb) {
        Vector3D on = new Vector3D(at.getX(), at.getY(), Floor.supportUnder(at, props));
        Outline outline = Ring.ellipse(sitter.camera(), on, Directions.AHEAD.scalarMultiply(along),
                Vector3D.PLUS_J.scalarMultiply(across), 0, 2 * StrictMath.PI);
        return new Tied(limb, true, Part.blot(name, on, new Outline(outline.start(), outline.segments(), true), Tones.CONTACT));
    }

    /** The print of the parts of a sole that are down. */
    private static void sole(Sitter sitter, Side side, List<Prop> props, List<Tied> prints) {
        Vector3D heel = sitter.at(side, Joint.Part.HEEL);
        Vector3D ball = sitter.at(side, Joint.Part.BALL);
        Vector3D toe = sitter.at(side, Joint.Part.TOE);
        if (unit(sitter.at(side, Joint.Part.ANKLE).subtract(heel)).getZ() < .1) {
            return;
        }
        double ground = Math.min(heel.getZ(), Math.min(ball.getZ(), toe.getZ()));
        Vector3D flat = new Vector3D(ball.getX() - heel.getX(), ball.getY() - heel.getY(), 0);
        if (flat.getNorm() < 1e-6 || Math.abs(ground - Floor.supportUnder(ball, props)) > .04) {
            return;
        }
        Vector3D f = unit(flat);
        Vector3D q = cross(Directions.UP, f);
        List<Station> stations = List.of(new Station(heel, .022, -.012), new Station(between(heel, ball, .5), .022, 0),
                new Station(ball, .030, 0), new Station(between(ball, toe, .6), .026, 0), new Station(toe, .010, .010));
        List<Circle> corners = new ArrayList<>();
        for (Station station : stations) {
            Vector3D p = station.at();
            if (p.getZ() - ground < NEAR) {
                for (int g = -1; g <= 1; g += 2) {
                    Vector3D c = new Vector3D(p.getX(), p.getY(), ground).add(sitter.size(station.ahead()), f)
                            .add(g * sitter.size(station.halfWidth()), q);
                    corners.add(new Circle(sitter.camera().see(c), 0));
                }
            }
        }
        if (corners.size() > 2) {
            prints.add(new Tied(Piece.of(side, Piece.Limb.SHANK), true,
                    Part.blot("sole-" + side.word(), heel, Circle.hull(corners), Tones.CONTACT)));
        }
    }
}
