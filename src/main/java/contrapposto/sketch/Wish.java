package contrapposto.sketch;

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
}
