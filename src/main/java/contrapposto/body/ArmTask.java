package contrapposto.body;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** What one arm does. Directions are unit vectors in a frame of the RIBS: x out of the breastbone, y left, z toward the neck. */
public sealed interface ArmTask {
    /** Hangs straight down from the shoulder, with or without a weight. */
    record Hang() implements ArmTask { }

    /** Rests on the hip or thigh. */
    record Rest() implements ArmTask { }

    /** Holds a weight against the chest. */
    record AtChest() implements ArmTask { }

    /** Holds a weight at the shoulder. */
    record AtShoulder() implements ArmTask { }

    /** Pressed overhead from the shoulder. */
    record Overhead() implements ArmTask { }

    /** The hand rests on a support (wall, rail, chair back) at {@code height} m above the floor, {@code ahead} m in front of the pelvis. */
    record OnSupport(double height, double ahead) implements ArmTask { }

    /** The palm is on the floor or box, as the base says (all fours, plank). */
    record Planted() implements ArmTask { }

    /** The palm is on the floor, and in the working position {@code ahead} m farther ahead: a hand that has taken a step. */
    record StepsAhead(double ahead) implements ArmTask { }

    /** Reaches along a direction, elbow straight, from a start with the elbow bent by {@code startElbow} degrees. */
    record Reach(Vector3D direction, double startElbow) implements ArmTask { }

    /** Pushes along the cable line from bent elbow to straight. */
    record Press(Vector3D direction) implements ArmTask { }

    /** Pulls along the line from straight to bent elbow. */
    record Pull(Vector3D direction) implements ArmTask { }

    /** Elbow bends from {@code from} to {@code to} degrees, upper arm on a support or beside the trunk. */
    record Curl(double from, double to, boolean elbowOnSupport) implements ArmTask { }

    /** Elbow straightens from {@code from} to {@code to} degrees, upper arm beside the trunk, {@code armBack} degrees behind it. */
    record Extend(double from, double to, double armBack) implements ArmTask { }

    /** Draws back with the elbow bent, as the free arm of a press does. */
    record DrawBack() implements ArmTask { }

    /** Lies on the floor beside the body. */
    record Flat() implements ArmTask { }

    /** Lies under the head (side-lying) or in front as a prop. */
    record Pillow() implements ArmTask { }

    /** The same for the other arm in the mirror. */
    default ArmTask mirrored() {
        return switch (this) {
            case Reach(var direction, var elbow) -> new Reach(Pose.mirrored(direction), elbow);
            case Press(var direction) -> new Press(Pose.mirrored(direction));
            case Pull(var direction) -> new Pull(Pose.mirrored(direction));
            case Hang same -> same;
            case Rest same -> same;
            case AtChest same -> same;
            case AtShoulder same -> same;
            case Overhead same -> same;
            case OnSupport same -> same;
            case Planted same -> same;
            case StepsAhead same -> same;
            case Curl same -> same;
            case Extend same -> same;
            case DrawBack same -> same;
            case Flat same -> same;
            case Pillow same -> same;
        };
    }
}
