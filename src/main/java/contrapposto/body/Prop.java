package contrapposto.body;

import contrapposto.quantity.Side;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** A thing around the body, placed. Lengths in metres; {@code low} and {@code high} are opposite corners of an upright block. */
public sealed interface Prop {
    record Box(Vector3D low, Vector3D high) implements Prop { }

    record Bench(Vector3D low, Vector3D high) implements Prop { }

    record Chair(Vector3D low, Vector3D high) implements Prop { }

    /** Highest at {@code heelX}, zero at {@code toeX}. */
    record Wedge(Side foot, double heelX, double toeX, double yLow, double yHigh, double floor, double height)
            implements Prop { }

    record Mat(Vector3D low, Vector3D high) implements Prop { }

    record Wall(double x, double yLow, double yHigh, double height) implements Prop { }

    /** A waist-high rail across the front or beside the person. */
    record Rail(Vector3D from, Vector3D to) implements Prop { }

    /** A cable column whose pulley wheel is at {@code pulley}; the cable runs to {@code hand}. */
    record Column(Vector3D pulley, Side hand) implements Prop { }

    /** A band from an anchor to a hand. */
    record BandAnchor(Vector3D anchor, Side hand) implements Prop { }

    /** A dumbbell in one hand; {@code axis} along the handle at the working position. */
    record Dumbbell(Side hand, Vector3D axis) implements Prop { }

    record Kettlebell(Side hand, boolean bothHands) implements Prop { }

    record Barbell(Vector3D centre) implements Prop { }

    /** A cushion or ball between the knees. */
    record Cushion(Vector3D centre) implements Prop { }

    /** A head rest. */
    record Pillow(Vector3D low, Vector3D high) implements Prop { }
}
