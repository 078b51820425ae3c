package contrapposto.body;

import contrapposto.quantity.Side;

/** What the body stands, kneels or lies on. Lengths in metres. */
public sealed interface BaseOfSupport {
    /**
     * Split stance, heel of the rear foot up.
     *
     * @param front  the foot in front
     * @param stance front heel to rear toe along x
     * @param width  between the feet, side to side
     * @param frontRaise height of the box under the front foot, 0 for none
     * @param rearRaise  height of what is under the rear foot, 0 for none
     * @param rearOnLaces whether the rear foot lies on its top (bench) rather than on its ball
     */
    record Split(Side front, double stance, double width, double frontRaise, double rearRaise, boolean rearOnLaces)
            implements BaseOfSupport { }

    /**
     * Both feet near each other, one ahead.
     *
     * @param ahead     the foot ahead
     * @param stance    front heel to rear toe along x; negative when the rear toe is ahead of the front heel
     * @param wedge     height of the wedge under {@code wedgeFoot}'s heel, 0 for none
     * @param rearHeelUp whether the rear foot stands on its ball (a kickstand)
     */
    record Staggered(Side ahead, double stance, double width, Side wedgeFoot, double wedge, boolean rearHeelUp)
            implements BaseOfSupport { }

    /** Feet side by side, both on a support of height {@code raise}. */
    record Level(double width, double raise) implements BaseOfSupport { }

    /** {@code up} foot on a box, the other on the floor behind it at the start and off the floor at the top. */
    record Step(Side up, double box, double width) implements BaseOfSupport { }

    /** On one foot, the other lifted. */
    record OneLeg(Side standing) implements BaseOfSupport { }

    /** One knee down, the other foot flat in front; {@code down} is the kneeling side. */
    record HalfKneeling(Side down, double width) implements BaseOfSupport { }

    /** Both knees down, hips straight. */
    record TallKneeling(double width) implements BaseOfSupport { }

    /** Kneeling before a bench or box of {@code height}, trunk leaned over it. */
    record KneelingAtSupport(double height, double width) implements BaseOfSupport { }

    /** Hands and knees. */
    record AllFours(double width) implements BaseOfSupport { }

    /** Hands and balls of the feet (or knees); each hand on a support of its own height. */
    record Plank(double leftHandRaise, double rightHandRaise, double width, boolean onKnees) implements BaseOfSupport { }

    /** On the back, knees bent, both soles on a support of height {@code raise}; {@code lifted} side's foot is off it. */
    record Supine(double raise, double width) implements BaseOfSupport { }

    /** On one side, hips and knees bent; {@code below} is the side on the floor. */
    record SideLying(Side below) implements BaseOfSupport { }

    /** Sitting on a seat of {@code height}, both feet flat. */
    record Seated(double height, double width) implements BaseOfSupport { }

    /** The same in the mirror. */
    default BaseOfSupport mirrored() {
        return switch (this) {
            case Split(var front, var stance, var width, var raise, var rear, var laces) ->
                    new Split(front.other(), stance, width, raise, rear, laces);
            case Staggered(var ahead, var stance, var width, var foot, var wedge, var up) ->
                    new Staggered(ahead.other(), stance, width, foot.other(), wedge, up);
            case Step(var up, var box, var width) -> new Step(up.other(), box, width);
            case OneLeg(var standing) -> new OneLeg(standing.other());
            case HalfKneeling(var down, var width) -> new HalfKneeling(down.other(), width);
            case Plank(var left, var right, var width, var knees) -> new Plank(right, left, width, knees);
            case SideLying(var below) -> new SideLying(below.other());
            case Level same -> same;
            case TallKneeling same -> same;
            case KneelingAtSupport same -> same;
            case AllFours same -> same;
            case Supine same -> same;
            case Seated same -> same;
        };
    }
}
