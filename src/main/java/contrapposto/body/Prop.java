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

    /** The same in the mirror: y changes sign, hands and feet change sides, {@code low} stays the lower corner. */
    default Prop mirrored() {
        return switch (this) {
            case Box(var low, var high) -> new Box(flipped(low, high), flipped(high, low));
            case Bench(var low, var high) -> new Bench(flipped(low, high), flipped(high, low));
            case Chair(var low, var high) -> new Chair(flipped(low, high), flipped(high, low));
            case Mat(var low, var high) -> new Mat(flipped(low, high), flipped(high, low));
            case Pillow(var low, var high) -> new Pillow(flipped(low, high), flipped(high, low));
            case Wedge(var foot, var heel, var toe, var yLow, var yHigh, var floor, var height) ->
                    new Wedge(foot.other(), heel, toe, -yHigh, -yLow, floor, height);
            case Wall(var x, var yLow, var yHigh, var height) -> new Wall(x, -yHigh, -yLow, height);
            case Rail(var from, var to) -> new Rail(Pose.mirrored(from), Pose.mirrored(to));
            case Column(var pulley, var hand) -> new Column(Pose.mirrored(pulley), hand.other());
            case BandAnchor(var anchor, var hand) -> new BandAnchor(Pose.mirrored(anchor), hand.other());
            case Dumbbell(var hand, var axis) -> new Dumbbell(hand.other(), Pose.mirrored(axis));
            case Kettlebell(var hand, var both) -> new Kettlebell(hand.other(), both);
            case Barbell(var centre) -> new Barbell(Pose.mirrored(centre));
            case Cushion(var centre) -> new Cushion(Pose.mirrored(centre));
        };
    }

    /** The corner with {@code corner}'s x and z and the mirrored y of {@code opposite}. */
    private static Vector3D flipped(Vector3D corner, Vector3D opposite) {
        return new Vector3D(corner.getX(), -opposite.getY() + 0.0, corner.getZ());
    }
}
