package contrapposto.sketch;

import contrapposto.body.ArmTask;
import contrapposto.body.Joint;
import contrapposto.body.Pose;
import contrapposto.body.PoseProblem;
import contrapposto.body.Prop;
import contrapposto.quantity.Side;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** What each hand does, read from the arm's task and from what it holds. */
final class Grips {
    /** A wrist this near a wall belongs to a palm on it, m. */
    private static final double WALL = .10;
    private static final Vector3D DOWN = new Vector3D(0, 0, -1);

    private Grips() { }

    static Map<Side, Grip> of(PoseProblem problem, Pose pose, List<Prop> props) {
        Map<Side, Grip> grips = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            boolean holds = props.stream().anyMatch(prop -> holds(prop, side));
            grips.put(side, holds ? new Grip.Fist() : onWall(pose, side, props) ? new Grip.Palm(Directions.AHEAD, Directions.UP)
                    : task(side == Side.LEFT ? problem.left() : problem.right(), pose, side, props));
        }
        return grips;
    }

    private static boolean onWall(Pose pose, Side side, List<Prop> props) {
        double wrist = pose.at(Joint.of(side, Joint.Part.WRIST)).getX();
        return props.stream().anyMatch(prop -> prop instanceof Prop.Wall wall && Math.abs(wall.x() - wrist) < WALL);
    }

    private static boolean holds(Prop prop, Side side) {
        return switch (prop) {
            case Prop.Dumbbell(var hand, var axis) -> hand == side;
            case Prop.Kettlebell(var hand, var both) -> both || hand == side;
            case Prop.Barbell bar -> true;
            case Prop.Column(var pulley, var hand) -> hand == side;
            case Prop.BandAnchor(var anchor, var hand) -> hand == side;
            case Prop.Box p -> false;
            case Prop.Bench p -> false;
            case Prop.Chair p -> false;
            case Prop.Wedge p -> false;
            case Prop.Mat p -> false;
            case Prop.Wall p -> false;
            case Prop.Rail p -> false;
            case Prop.Cushion p -> false;
            case Prop.Pillow p -> false;
        };
    }

    private static Grip task(ArmTask task, Pose pose, Side side, List<Prop> props) {
        Vector3D wrist = pose.at(Joint.of(side, Joint.Part.WRIST));
        Vector3D fingers = pose.at(Joint.of(side, Joint.Part.HAND)).subtract(wrist);
        return switch (task) {
            case ArmTask.Planted t -> new Grip.Palm(DOWN, forward(fingers));
            case ArmTask.StepsAhead t -> new Grip.Palm(DOWN, forward(fingers));
            case ArmTask.Flat t -> new Grip.Palm(DOWN, forward(fingers));
            case ArmTask.OnSupport t -> support(wrist, props);
            case ArmTask.AtChest t -> new Grip.Fist();
            case ArmTask.AtShoulder t -> new Grip.Fist();
            case ArmTask.Overhead t -> new Grip.Fist();
            case ArmTask.Press t -> new Grip.Fist();
            case ArmTask.Pull t -> new Grip.Fist();
            case ArmTask.Curl t -> new Grip.Fist();
            case ArmTask.Extend t -> new Grip.Fist();
            case ArmTask.DrawBack t -> new Grip.Fist();
            case ArmTask.Hang t -> new Grip.Relaxed();
            case ArmTask.Rest t -> new Grip.Relaxed();
            case ArmTask.Reach t -> new Grip.Relaxed();
            case ArmTask.Pillow t -> new Grip.Relaxed();
        };
    }

    private static Vector3D forward(Vector3D fingers) {
        Vector3D level = new Vector3D(fingers.getX(), fingers.getY(), 0);
        return level.getNorm() > 1e-3 ? level : Directions.AHEAD;
    }

    private static Grip support(Vector3D wrist, List<Prop> props) {
        if (props.stream().anyMatch(Prop.Rail.class::isInstance)) {
            return new Grip.Fist();
        }
        return new Grip.Palm(DOWN, Directions.AHEAD);
    }
}
