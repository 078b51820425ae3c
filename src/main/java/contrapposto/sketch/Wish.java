package contrapposto.sketch;

import contrapposto.body.Pose;
import contrapposto.quantity.Side;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Something to be said on a sketch beside the body itself. Points in metres, in the person's own frame. */
public sealed interface Wish {
    /** The side mark of a limb. */
    record Tag(Side side, On on) implements Wish {
        public enum On { FOOT, KNEE, HAND, ELBOW }
    }

    /** The height of a block above the floor; {@code low} and {@code high} are its opposite corners. */
    record Height(Vector3D low, Vector3D high, String text) implements Wish { }

    /** A length along x, measured on the floor. */
    record Stance(Vector3D from, Vector3D to, String text) implements Wish { }

    /** The tilt of a shin against the vertical, in words: "6° back". */
    record Shin(Side side, String text) implements Wish { }

    /** A movement to make. */
    record Move(Vector3D from, Vector3D to) implements Wish { }

    /** A movement round a joint. */
    record Curl(Vector3D joint, Vector3D from, Vector3D to) implements Wish { }

    /** A push or reach along {@code direction}, which leaves the hand. */
    record Push(Vector3D from, Vector3D direction) implements Wish { }

    /** Two sides press together: this is one of them, ending at {@code at}. */
    record Squeeze(Vector3D at, Vector3D direction) implements Wish { }

    /** A turn of the trunk about its own axis; {@code toLeft} as the person feels it. */
    record Turn(boolean toLeft) implements Wish { }

    /** A word under the ground line. */
    record Caption(String text, boolean bold) implements Wish { }

    /** The same wish in the mirror: y turned round, left and right exchanged. */
    default Wish mirrored() {
        return switch (this) {
            case Tag(var side, var on) -> new Tag(side.other(), on);
            case Height(var low, var high, var text) -> new Height(flipped(low, high), flipped(high, low), text);
            case Stance(var from, var to, var text) -> new Stance(Pose.mirrored(from), Pose.mirrored(to), text);
            case Shin(var side, var text) -> new Shin(side.other(), text);
            case Move(var from, var to) -> new Move(Pose.mirrored(from), Pose.mirrored(to));
            case Curl(var joint, var from, var to) ->
                    new Curl(Pose.mirrored(joint), Pose.mirrored(from), Pose.mirrored(to));
            case Push(var from, var direction) -> new Push(Pose.mirrored(from), Pose.mirrored(direction));
            case Squeeze(var at, var direction) -> new Squeeze(Pose.mirrored(at), Pose.mirrored(direction));
            case Turn(var toLeft) -> new Turn(!toLeft);
            case Caption caption -> caption;
        };
    }

    /** The corner with {@code corner}'s x and z and the mirrored y of {@code opposite}. */
    private static Vector3D flipped(Vector3D corner, Vector3D opposite) {
        return new Vector3D(corner.getX(), -opposite.getY() + 0.0, corner.getZ());
    }
}
