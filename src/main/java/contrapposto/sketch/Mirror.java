package contrapposto.sketch;

import contrapposto.body.Pose;
import contrapposto.body.Prop;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Things and wishes as they are in the mirror: y turned round, left and right exchanged. */
final class Mirror {
    private Mirror() { }

    static Prop of(Prop prop) {
        return switch (prop) {
            case Prop.Box(var low, var high) -> new Prop.Box(low(low, high), high(low, high));
            case Prop.Bench(var low, var high) -> new Prop.Bench(low(low, high), high(low, high));
            case Prop.Chair(var low, var high) -> new Prop.Chair(low(low, high), high(low, high));
            case Prop.Mat(var low, var high) -> new Prop.Mat(low(low, high), high(low, high));
            case Prop.Pillow(var low, var high) -> new Prop.Pillow(low(low, high), high(low, high));
            case Prop.Wedge w -> new Prop.Wedge(w.foot().other(), w.heelX(), w.toeX(), -w.yHigh(), -w.yLow(), w.floor(),
                    w.height());
            case Prop.Wall w -> new Prop.Wall(w.x(), -w.yHigh(), -w.yLow(), w.height());
            case Prop.Rail(var from, var to) -> new Prop.Rail(Pose.mirrored(from), Pose.mirrored(to));
            case Prop.Column(var pulley, var hand) -> new Prop.Column(Pose.mirrored(pulley), hand.other());
            case Prop.BandAnchor(var anchor, var hand) -> new Prop.BandAnchor(Pose.mirrored(anchor), hand.other());
            case Prop.Dumbbell(var hand, var axis) -> new Prop.Dumbbell(hand.other(), Pose.mirrored(axis));
            case Prop.Kettlebell(var hand, var both) -> new Prop.Kettlebell(hand.other(), both);
            case Prop.Barbell(var centre) -> new Prop.Barbell(Pose.mirrored(centre));
            case Prop.Cushion(var centre) -> new Prop.Cushion(Pose.mirrored(centre));
        };
    }

    private static Vector3D low(Vector3D low, Vector3D high) {
        return new Vector3D(low.getX(), -high.getY() + 0.0, low.getZ());
    }

    private static Vector3D high(Vector3D low, Vector3D high) {
        return new Vector3D(high.getX(), -low.getY() + 0.0, high.getZ());
    }

    static Wish of(Wish wish) {
        return switch (wish) {
            case Wish.Tag(var side, var on) -> new Wish.Tag(side.other(), on);
            case Wish.Height(var low, var high, var text) -> new Wish.Height(low(low, high), high(low, high), text);
            case Wish.Stance(var from, var to, var text) -> new Wish.Stance(Pose.mirrored(from), Pose.mirrored(to), text);
            case Wish.Shin(var side, var text) -> new Wish.Shin(side.other(), text);
            case Wish.Move(var from, var to) -> new Wish.Move(Pose.mirrored(from), Pose.mirrored(to));
            case Wish.Curl(var joint, var from, var to) ->
                    new Wish.Curl(Pose.mirrored(joint), Pose.mirrored(from), Pose.mirrored(to));
            case Wish.Push(var from, var direction) -> new Wish.Push(Pose.mirrored(from), Pose.mirrored(direction));
            case Wish.Squeeze(var at, var direction) -> new Wish.Squeeze(Pose.mirrored(at), Pose.mirrored(direction));
            case Wish.Turn(var toLeft) -> new Wish.Turn(!toLeft);
            case Wish.Caption caption -> caption;
        };
    }

    static List<Prop> props(List<Prop> props) {
        return props.stream().map(Mirror::of).toList();
    }

    static List<Wish> wishes(List<Wish> wishes) {
        return wishes.stream().map(Mirror::of).toList();
    }
}
