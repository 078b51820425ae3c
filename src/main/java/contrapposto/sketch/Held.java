package contrapposto.sketch;

import static contrapposto.sketch.Directions.across;
import static contrapposto.sketch.Directions.between;
import static contrapposto.sketch.Directions.unit;

import contrapposto.body.Joint;
import contrapposto.body.Prop;
import contrapposto.figure.Circle;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.figure.Smooth;
import contrapposto.quantity.Side;
import contrapposto.sketch.Order.Tied;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * What hands hold and knees squeeze: parts tied to the limb they belong to. Implements keep their full tone in a far
 * hand, since they are what the reader has to fetch.
 *
 * @param tied to limbs, in painting order
 * @param over on top of everything: the near plate of a barbell, an open ring so that it hides no foot
 */
record Held(List<Tied> tied, List<Part> over) {
    private static final double END_ON = .35;

    static Held of(List<Prop> props, Sitter sitter) {
        List<Tied> tied = new ArrayList<>();
        List<Part> over = new ArrayList<>();
        for (int i = 0; i < props.size(); i++) {
            String name = "held" + i;
            switch (props.get(i)) {
                case Prop.Dumbbell(var hand, var axis) -> tied.addAll(dumbbell(name, sitter, hand, axis));
                case Prop.Kettlebell(var hand, var both) -> tied.addAll(kettlebell(name, sitter, hand, both));
                case Prop.Barbell(var centre) -> barbell(name, sitter, centre, tied, over);
                case Prop.Column(var pulley, var hand) -> tied.addAll(handle(name, sitter, pulley, hand));
                case Prop.BandAnchor(var anchor, var hand) -> tied.add(band(name, sitter, anchor, hand));
                case Prop.Cushion(var centre) -> tied.add(cushion(name, sitter, centre));
                case Prop.Box p -> { }
                case Prop.Bench p -> { }
                case Prop.Chair p -> { }
                case Prop.Wedge p -> { }
                case Prop.Mat p -> { }
                case Prop.Wall p -> { }
                case Prop.Rail p -> { }
                case Prop.Pillow p -> { }
            }
        }
        return new Held(List.copyOf(tied), List.copyOf(over));
    }

    private static Piece forearm(Side side) {
        return Piece.of(side, Piece.Limb.FOREARM);
    }

    private static List<Tied> dumbbell(String name, Sitter sitter, Side hand, Vector3D along) {
        Camera camera = sitter.camera();
        Vector3D c = Arm.gripCentre(sitter, hand);
        Vector3D axis = unit(along);
        if (camera.depth(axis) < 0) {
            axis = axis.negate();
        }
        Part rear = joined(name + "-rear", List.of(
                Solid.cylinder(name, camera, c.add(-.120, axis), c.add(-.062, axis), .047, .38, .55),
                Solid.cylinder(name, camera, c.add(-.062, axis), c.add(.062, axis), .013, .6, .6)));
        Part front = Solid.cylinder(name + "-front", camera, c.add(.062, axis), c.add(.120, axis), .047, .38, .55);
        return List.of(new Tied(forearm(hand), true, rear),
                new Tied(forearm(hand), camera.depth(axis) <= END_ON, front));
    }

    /** One part of several, edges first, so that no line shows where they touch. */
    private static Part joined(String name, List<Part> parts) {
        List<Outline> edges = parts.stream().flatMap(p -> p.edge().stream()).toList();
        List<Part.Shape> fills = parts.stream().flatMap(p -> p.fills().stream()).toList();
        List<Part.Crease> creases = parts.stream().flatMap(p -> p.creases().stream()).toList();
        List<Vector3D> samples = parts.stream().flatMap(p -> p.samples().stream()).toList();
        return new Part(name, Piece.THING, samples, false, Pen.THING, edges, fills, creases, List.of(), List.of());
    }

    private static List<Tied> kettlebell(String name, Sitter sitter, Side hand, boolean both) {
        Vector3D down = Directions.UP.negate();
        Vector3D grip = both ? between(Arm.gripCentre(sitter, Side.LEFT), Arm.gripCentre(sitter, Side.RIGHT), .5)
                .add(.02, Directions.UP) : Arm.gripCentre(sitter, hand);
        Vector3D axis = both ? sitter.frames().ribsLeft() : Directions.AHEAD;
        Part ball = bell(name + "-ball", sitter.camera(), grip, down, axis);
        Part bar = bellHandle(name + "-handle", sitter.camera(), grip, down, axis);
        Side near = sitter.frontal() ? Side.RIGHT : sitter.near();
        return both ? List.of(new Tied(forearm(near), true, bar), new Tied(forearm(near), true, ball))
                : List.of(new Tied(forearm(hand), true, bar), new Tied(forearm(hand), true, ball));
    }

    private static final double BELL = .082;

    private static Part bell(String name, Camera camera, Vector3D grip, Vector3D down, Vector3D axis) {
        Vector3D c = grip.add(.048 + .98 * BELL, down);
        Vector3D base = c.add(.40 * BELL, down);
        Outline outline = Circle.hull(List.of(new Circle(camera.see(c), BELL),
                new Circle(camera.see(base.add(.30 * BELL, axis)), .55 * BELL),
                new Circle(camera.see(base.add(-.30 * BELL, axis)), .55 * BELL)));
        Outline shine = new Circle(camera.see(c.add(-.3 * BELL, down).add(.3 * BELL, axis)), .14 * BELL).outline();
        return new Part(name, Piece.THING, List.of(c), false, .9, List.of(outline),
                List.of(new Part.Shape(outline, .42), new Part.Shape(shine, .75)), List.of(), List.of(), List.of());
    }

    private static Part bellHandle(String name, Camera camera, Vector3D grip, Vector3D down, Vector3D axis) {
        Vector3D c = grip.add(.048 + .98 * BELL, down);
        double w = .052;
        List<Point> curve = new ArrayList<>();
        for (int g = -1; g <= 1; g += 2) {
            Vector3D foot = c.add(-.55 * BELL, down).add(g * .95 * w, axis);
            Vector3D shoulder = c.add(-.95 * BELL, down).add(g * 1.06 * w, axis);
            Vector3D top = grip.add(.003, down).add(g * .78 * w, axis);
            Vector3D middle = grip.add(g * .3 * w, axis);
            List<Point> half = List.of(camera.see(foot), camera.see(shoulder), camera.see(top), camera.see(middle));
            curve.addAll(g < 0 ? half : half.reversed());
        }
        return Part.cord(name, List.of(grip), Pen.THING, new Part.Cord(Smooth.open(curve), .026, .42));
    }

    private static void barbell(String name, Sitter sitter, Vector3D centre, List<Tied> tied, List<Part> over) {
        Camera camera = sitter.camera();
        Side near = sitter.frontal() ? Side.RIGHT : sitter.near();
        Vector3D out = new Vector3D(0, near.sign(), 0);
        double reach = .62;
        double radius = .225;
        Part far = Solid.cylinder(name + "-far", camera, centre.add(-reach, out), centre.add(-reach - .05, out), radius, .45, .62);
        Part bar = Solid.cylinder(name + "-bar", camera, centre.add(-reach, out), centre.add(reach + .10, out), .014, .5, .6);
        tied.add(new Tied(forearm(near.other()), true, far));
        tied.add(new Tied(forearm(near), true, bar));
        Vector3D plate = centre.add(reach + .05, out);
        over.add(Part.cord(name + "-near", List.of(plate), 1.3,
                new Part.Cord(new Ring(plate, out, .97 * radius).whole(camera), .06 * radius, 1)));
        over.add(Part.thing(name + "-hub", List.of(plate), .8,
                List.of(new Part.Shape(new Ring(plate, out, .03).whole(camera), .6)), List.of()));
    }

    /** Handle, straps and cable from the pulley to the fist. */
    private static List<Tied> handle(String name, Sitter sitter, Vector3D pulley, Side hand) {
        Camera camera = sitter.camera();
        Vector3D grip = Arm.gripCentre(sitter, hand);
        Vector3D wheelTop = pulley.add(.04, Directions.UP);
        Vector3D d = unit(wheelTop.subtract(grip));
        Vector3D forearmDirection = unit(sitter.at(hand, Joint.Part.HAND).subtract(sitter.at(hand, Joint.Part.WRIST)));
        Vector3D axis = unit(across(new Vector3D(0, .35, 1), forearmDirection));
        Vector3D eye = grip.add(.15, d);
        boolean alongUpperArm = d.getX() * sitter.at(hand, Joint.Part.ELBOW).subtract(grip).getX() > 0;
        Piece limb = alongUpperArm ? Piece.of(hand, Piece.Limb.UPPER_ARM) : forearm(hand);
        List<Tied> parts = new ArrayList<>();
        parts.add(new Tied(limb, true, line(name + "-cable", camera, wheelTop, eye)));
        parts.add(new Tied(forearm(hand), true, line(name + "-strap0", camera, eye, grip.add(.062, axis))));
        parts.add(new Tied(forearm(hand), true, line(name + "-strap1", camera, eye, grip.add(-.062, axis))));
        parts.add(new Tied(forearm(hand), true,
                Solid.cylinder(name + "-bar", camera, grip.add(-.070, axis), grip.add(.070, axis), .016, .30, .35)));
        return parts;
    }

    private static Part line(String name, Camera camera, Vector3D a, Vector3D b) {
        return Part.cord(name, List.of(a, b), .35, new Part.Cord(Outline.polyline(camera.see(a), camera.see(b)), .010, .12));
    }

    /** A loop round the fist. */
    private static Tied band(String name, Sitter sitter, Vector3D anchor, Side hand) {
        Camera camera = sitter.camera();
        Vector3D grip = Arm.gripCentre(sitter, hand);
        Vector3D away = unit(grip.subtract(anchor));
        Outline loop = Outline.polyline(camera.see(anchor.add(.03, Directions.UP)), camera.see(grip.add(.028, Directions.UP)),
                camera.see(grip.add(.025, away)), camera.see(grip.add(-.028, Directions.UP)),
                camera.see(anchor.add(-.03, Directions.UP)));
        return new Tied(forearm(hand), true, Part.cord(name, List.of(anchor, grip), .5, new Part.Cord(loop, .016, .45)));
    }

    private static Tied cushion(String name, Sitter sitter, Vector3D centre) {
        Side upper = sitter.at(Side.LEFT, Joint.Part.KNEE).getZ() > sitter.at(Side.RIGHT, Joint.Part.KNEE).getZ() + .03
                ? Side.LEFT : sitter.at(Side.RIGHT, Joint.Part.KNEE).getZ() > sitter.at(Side.LEFT, Joint.Part.KNEE).getZ() + .03
                ? Side.RIGHT : sitter.near();
        List<Circle> corners = new ArrayList<>();
        Vector3D thigh = unit(between(sitter.at(Side.LEFT, Joint.Part.KNEE), sitter.at(Side.RIGHT, Joint.Part.KNEE), .5)
                .subtract(sitter.at(Joint.PELVIS)));
        Vector3D apart = unit(across(sitter.at(Side.LEFT, Joint.Part.KNEE)
                .subtract(sitter.at(Side.RIGHT, Joint.Part.KNEE)), thigh));
        Vector3D wide = Directions.cross(thigh, apart);
        for (int i = 0; i < 8; i++) {
            corners.add(new Circle(sitter.camera().see(centre.add((i & 1) == 0 ? -.17 : .01, thigh)
                    .add((i & 2) == 0 ? -.08 : .08, wide).add((i & 4) == 0 ? -.035 : .035, apart)), .035));
        }
        Outline outline = Circle.hull(corners);
        return new Tied(Piece.of(upper, Piece.Limb.THIGH), true,
                Part.thing(name, List.of(centre), .9, List.of(new Part.Shape(outline, .62)), List.of()));
    }
}
