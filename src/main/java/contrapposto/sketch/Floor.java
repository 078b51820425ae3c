package contrapposto.sketch;

import contrapposto.body.Joint;
import contrapposto.body.Pose;
import contrapposto.body.Prop;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * The patch of floor around what touches it, and what stands at which height.
 *
 * @param near y of its front edge, {@code far} of its back edge
 */
record Floor(double left, double right, double near, double far) {
    private static final double ROOM_ALONG = .16;
    private static final double ROOM_ACROSS = .07;
    private static final double LOW = .35;
    /** The wrist of a palm on the floor is lower than this, m. */
    private static final double PALM = .08;

    static Floor under(Pose pose, List<Part> furniture) {
        List<Double> xs = new ArrayList<>();
        List<Double> ys = new ArrayList<>();
        for (Side side : Side.values()) {
            for (Joint.Part part : List.of(Joint.Part.HEEL, Joint.Part.TOE, Joint.Part.KNEE, Joint.Part.WRIST)) {
                Vector3D p = pose.at(Joint.of(side, part));
                boolean down = p.getZ() < (part == Joint.Part.WRIST ? PALM : LOW);
                if (down) {
                    xs.add(p.getX());
                }
                if (down || part != Joint.Part.WRIST) {
                    ys.add(p.getY());
                }
            }
        }
        for (Part thing : furniture) {
            for (Vector3D p : thing.samples()) {
                if (p.getZ() < .02) {
                    xs.add(p.getX());
                    ys.add(p.getY());
                }
            }
        }
        if (xs.isEmpty()) {
            xs.add(pose.at(Joint.PELVIS).getX());
        }
        return new Floor(min(xs) - ROOM_ALONG, max(xs) + ROOM_ALONG, min(ys) - ROOM_ACROSS, max(ys) + ROOM_ACROSS);
    }

    private static double min(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    }

    private static double max(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    }

    Outline outline(Camera camera) {
        return Outline.polygon(corner(camera, left, near), corner(camera, right, near), corner(camera, right, far),
                corner(camera, left, far));
    }

    Outline frontEdge(Camera camera) {
        return Outline.polyline(corner(camera, left, near), corner(camera, right, near));
    }

    /** Where {@code x} lies on the front edge. */
    Point onFrontEdge(Camera camera, double x) {
        return corner(camera, x, near);
    }

    private static Point corner(Camera camera, double x, double y) {
        return camera.see(new Vector3D(x, y, 0));
    }

    /** The highest flat top under a point, at most a hand's breadth above it; 0 is the floor. */
    static double supportUnder(Vector3D p, List<Prop> props) {
        double top = 0;
        for (Prop prop : props) {
            top = Math.max(top, switch (prop) {
                case Prop.Box(var low, var high) -> topUnder(p, low, high);
                case Prop.Bench(var low, var high) -> topUnder(p, low, high);
                case Prop.Chair(var low, var high) -> topUnder(p, low, high);
                case Prop.Wedge thing -> 0;
                case Prop.Mat thing -> 0;
                case Prop.Wall thing -> 0;
                case Prop.Rail thing -> 0;
                case Prop.Column thing -> 0;
                case Prop.BandAnchor thing -> 0;
                case Prop.Dumbbell thing -> 0;
                case Prop.Kettlebell thing -> 0;
                case Prop.Barbell thing -> 0;
                case Prop.Cushion thing -> 0;
                case Prop.Pillow thing -> 0;
            });
        }
        return top;
    }

    private static double topUnder(Vector3D p, Vector3D low, Vector3D high) {
        boolean above = p.getX() > low.getX() - .03 && p.getX() < high.getX() + .03 && p.getY() > low.getY() - .03
                && p.getY() < high.getY() + .03 && high.getZ() < p.getZ() + .04;
        return above ? high.getZ() : 0;
    }
}
