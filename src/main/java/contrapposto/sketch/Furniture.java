package contrapposto.sketch;

import contrapposto.body.Prop;
import contrapposto.figure.Outline;
import contrapposto.sketch.Solid.Toning;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** What stands on the floor around the body, each as one or more convex parts. */
final class Furniture {
    private static final Toning BOX = new Toning(.97, .86, .76);
    private static final Toning PAD = new Toning(.84, .66, .56);
    private static final Toning FRAME = new Toning(.70, .60, .55);
    private static final Toning SEAT = new Toning(.90, .72, .62);
    private static final Toning CHAIR_LEG = new Toning(.75, .62, .56);
    private static final Toning WEDGE = new Toning(.70, .55, .50);
    private static final Toning MAT = new Toning(.86, .74, .68);
    private static final Toning WALL = new Toning(.95, .80, .93);
    private static final Toning PILLOW = new Toning(.98, .88, .80);
    private static final Toning BASE = new Toning(.86, .74, .66);
    private static final Toning STACK = new Toning(.72, .60, .52);
    private static final Toning POST = new Toning(.97, .90, .80);
    private static final Toning CARRIAGE = new Toning(.62, .48, .42);
    /** Half the width of a bench's leg, a board: a post with a foot costs twice the paths. */
    private static final double BOARD = .09;
    private static final double PAD_THICK = .07;
    /** More of a wall than this to each side only hides. */
    private static final double WALL_HALF = .36;

    private final Camera camera;
    private final List<Part> parts = new ArrayList<>();

    private Furniture(Camera camera) {
        this.camera = camera;
    }

    /** The parts of every standing prop; things held are not among them. */
    static List<Part> of(List<Prop> props, Camera camera, double handX) {
        Furniture furniture = new Furniture(camera);
        for (int i = 0; i < props.size(); i++) {
            furniture.add("thing" + i, props.get(i), handX);
        }
        return List.copyOf(furniture.parts);
    }

    private void add(String name, Prop prop, double handX) {
        switch (prop) {
            case Prop.Box(var low, var high) -> block(name, low, high, BOX);
            case Prop.Bench(var low, var high) -> bench(name, low, high);
            case Prop.Chair(var low, var high) -> chair(name, low, high);
            case Prop.Wedge w -> parts.add(Solid.wedge(name, camera, w.heelX(), w.toeX(), w.yLow(), w.yHigh(), w.floor(),
                    w.height(), WEDGE));
            case Prop.Mat(var low, var high) -> block(name, below(low), below(high), MAT);
            case Prop.Wall(var x, var yLow, var yHigh, var height) -> block(name, new Vector3D(x, Math.max(yLow, -WALL_HALF), 0),
                    new Vector3D(x + .10, Math.min(yHigh, WALL_HALF), height), WALL);
            case Prop.Rail(var from, var to) -> rail(name, from, to);
            case Prop.Column(var pulley, var hand) -> column(name, pulley, handX > pulley.getX() ? 1 : -1);
            case Prop.BandAnchor(var anchor, var hand) -> post(name, anchor, handX > anchor.getX() ? 1 : -1);
            case Prop.Pillow(var low, var high) -> block(name, low, high, PILLOW);
            case Prop.Dumbbell held -> { }
            case Prop.Kettlebell held -> { }
            case Prop.Barbell held -> { }
            case Prop.Cushion held -> { }
        }
    }

    /** A mat lies in the floor, so that contact heights stay as solved. */
    private static Vector3D below(Vector3D corner) {
        return new Vector3D(corner.getX(), corner.getY(), Math.min(corner.getZ(), 0));
    }

    private void block(String name, Vector3D low, Vector3D high, Toning toning) {
        parts.add(Solid.block(name, camera, low, high, toning));
    }

    private void block(String name, double[] x, double[] y, double[] z, Toning toning) {
        block(name, new Vector3D(x[0], y[0], z[0]), new Vector3D(x[1], y[1], z[1]), toning);
    }

    private void bench(String name, Vector3D low, Vector3D high) {
        double top = high.getZ();
        double xm = (low.getX() + high.getX()) / 2;
        double ym = (low.getY() + high.getY()) / 2;
        boolean across = high.getY() - low.getY() > high.getX() - low.getX();
        double[] places = across ? new double[] {high.getY() - .09, low.getY() + .09}
                : new double[] {low.getX() + .12, high.getX() - .12};
        for (int i = 0; i < 2; i++) {
            double at = places[i];
            double[] along = {at - .025, at + .025};
            double[] legX = across ? new double[] {xm - BOARD, xm + BOARD} : along;
            double[] legY = across ? along : new double[] {ym - BOARD, ym + BOARD};
            block(name + "-leg" + i, legX, legY, new double[] {0, top - PAD_THICK}, FRAME);
        }
        block(name + "-pad", new Vector3D(low.getX(), low.getY(), top - PAD_THICK), high, PAD);
    }

    /** The back stands at the low end of x. */
    private void chair(String name, Vector3D low, Vector3D high) {
        double t = .035;
        double seat = Math.min(high.getZ(), .50);
        double[][] legs = {{low.getX(), high.getY() - t}, {high.getX() - t, high.getY() - t}, {low.getX(), low.getY()},
            {high.getX() - t, low.getY()}};
        for (int i = 0; i < legs.length; i++) {
            block(name + "-leg" + i, new double[] {legs[i][0], legs[i][0] + t}, new double[] {legs[i][1], legs[i][1] + t},
                    new double[] {0, seat - .04}, CHAIR_LEG);
        }
        block(name + "-seat", new double[] {low.getX(), high.getX()}, new double[] {low.getY(), high.getY()},
                new double[] {seat - .04, seat}, SEAT);
        double[] back = {low.getX(), low.getX() + .03};
        block(name + "-back", back, new double[] {low.getY(), high.getY()}, new double[] {seat + .10, seat + .42},
                new Toning(.9, .72, .80));
        block(name + "-post0", back, new double[] {high.getY() - t, high.getY()}, new double[] {seat, seat + .10}, CHAIR_LEG);
        block(name + "-post1", back, new double[] {low.getY(), low.getY() + t}, new double[] {seat, seat + .10}, CHAIR_LEG);
    }

    private void rail(String name, Vector3D from, Vector3D to) {
        for (Vector3D end : List.of(from, to)) {
            block(name + (end == from ? "-post0" : "-post1"), new Vector3D(end.getX() - .02, end.getY() - .02, 0),
                    new Vector3D(end.getX() + .02, end.getY() + .02, end.getZ()), FRAME);
        }
        parts.add(Solid.cylinder(name + "-bar", camera, from, to, .02, .6, .7));
    }

    /** @param toward +1 when the person stands ahead of the column, -1 behind it */
    private void column(String name, Vector3D pulley, int toward) {
        double x = pulley.getX() - toward * .085;
        double y = pulley.getY();
        double z = pulley.getZ();
        double top = Math.max(1.25, z + .20);
        block(name + "-base", range(x, -.28 * toward, .14 * toward), around(y, .20), new double[] {0, .05}, BASE);
        double stackTop = Math.min(.80, top - .3);
        block(name + "-stack", range(x, -.22 * toward, -.07 * toward), around(y, .10), new double[] {.05, stackTop}, STACK);
        plates(range(x, -.22 * toward, -.07 * toward), y, stackTop);
        block(name + "-post", range(x, -.05, .03), around(y, .04), new double[] {.05, top}, POST);
        block(name + "-carriage", range(x, -.065, .045), around(y, .055), new double[] {z - .07, z + .07}, CARRIAGE);
        wheel(name + "-wheel", pulley);
    }

    /** Lines between the plates of the stack. */
    private void plates(double[] x, double y, double top) {
        Part stack = parts.removeLast();
        List<Part.Crease> creases = new ArrayList<>(stack.creases());
        for (double z = .125; z < top - .03; z += .10) {
            creases.add(new Part.Crease(Outline.polyline(camera.see(new Vector3D(x[0], y - .10, z)),
                    camera.see(new Vector3D(x[1], y - .10, z))), Pen.EDGE, Tones.BLACK));
        }
        parts.add(new Part(stack.name(), stack.piece(), stack.samples(), false, stack.line(), stack.edge(), stack.fills(),
                creases, List.of(), stack.faces()));
    }

    private void wheel(String name, Vector3D pulley) {
        Vector3D half = new Vector3D(0, .015, 0);
        Part disc = Solid.cylinder(name, camera, pulley.subtract(half), pulley.add(half), .055, .55, .97);
        List<Part.Shape> shapes = new ArrayList<>(disc.fills());
        List<Part.Crease> creases = new ArrayList<>(disc.creases());
        Vector3D near = pulley.subtract(half);
        shapes.add(new Part.Shape(new Ring(near, Vector3D.PLUS_J, .0165).whole(camera), .30));
        creases.add(new Part.Crease(new Ring(near, Vector3D.PLUS_J, .040).whole(camera), Pen.EDGE, Tones.BLACK));
        parts.add(new Part(name, Piece.THING, disc.samples(), false, disc.line(), disc.edge(), shapes, creases, List.of(),
                List.of()));
    }

    private void post(String name, Vector3D anchor, int toward) {
        double x = anchor.getX() - toward * .04;
        block(name + "-post", around(x, .04), around(anchor.getY(), .04),
                new double[] {0, Math.max(1.2, anchor.getZ() + .25)}, POST);
    }

    private static double[] around(double middle, double half) {
        return new double[] {middle - half, middle + half};
    }

    private static double[] range(double from, double a, double b) {
        return new double[] {from + Math.min(a, b), from + Math.max(a, b)};
    }
}
