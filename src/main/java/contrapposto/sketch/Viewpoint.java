package contrapposto.sketch;

import contrapposto.body.BaseOfSupport;
import contrapposto.body.Joint;
import contrapposto.body.PoseProblem;
import contrapposto.body.Prop;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Which camera shows a set-up best. Side cameras at four azimuths are tried; each is judged by how much of what the
 * reader must see stays uncovered: the weight, hands that touch, the working knee, both feet, the face.
 */
final class Viewpoint {
    private static final double USUAL = 22;
    private static final double[] OTHERS = {30, 15, 38};
    /** A view in which this much of what matters is seen needs no rival. */
    private static final double GOOD = .92;
    /** A wall or column in front would hide the person from the usual side: look from a little behind. */
    private static final double FROM_BEHIND = -20;

    /** @param weight how much it matters that this spot is seen */
    record MustSee(Piece owner, Vector3D at, double radius, double weight) { }

    private Viewpoint() { }

    /** The scene as seen by the camera chosen. */
    static Scene choose(PoseProblem problem, List<Prop> props, Function<Camera, Scene> staging) {
        if (problem.base() instanceof BaseOfSupport.SideLying) {
            return staging.apply(Camera.fromFront(20, 30));
        }
        double elevation = elevation(problem.base());
        if (wallAhead(props)) {
            return staging.apply(Camera.fromSide(FROM_BEHIND, elevation));
        }
        Scene best = staging.apply(Camera.fromSide(USUAL, elevation));
        double most = score(best, mustSee(problem, best));
        for (double azimuth : OTHERS) {
            if (most >= GOOD) {
                break;
            }
            Scene scene = staging.apply(Camera.fromSide(azimuth, elevation));
            double score = score(scene, mustSee(problem, scene)) - .004 * (Math.abs(azimuth - USUAL) - 4);
            if (score > most + 1e-9) {
                most = score;
                best = scene;
            }
        }
        return best;
    }

    private static boolean wallAhead(List<Prop> props) {
        return props.stream().anyMatch(prop -> prop instanceof Prop.Wall wall && wall.x() > 0);
    }

    private static double elevation(BaseOfSupport base) {
        return switch (base) {
            case BaseOfSupport.AllFours b -> 12;
            case BaseOfSupport.Plank b -> 14;
            case BaseOfSupport.Supine b -> 12;
            case BaseOfSupport.KneelingAtSupport b -> 12;
            case BaseOfSupport.SideLying b -> 30;
            case BaseOfSupport.Split b -> 10;
            case BaseOfSupport.Staggered b -> 10;
            case BaseOfSupport.Level b -> 10;
            case BaseOfSupport.Step b -> 10;
            case BaseOfSupport.OneLeg b -> 10;
            case BaseOfSupport.HalfKneeling b -> 10;
            case BaseOfSupport.TallKneeling b -> 10;
            case BaseOfSupport.Seated b -> 10;
        };
    }

    static List<MustSee> mustSee(PoseProblem problem, Scene scene) {
        Sitter sitter = scene.body().sitter();
        List<MustSee> spots = new ArrayList<>();
        for (Side side : Side.values()) {
            spots.add(new MustSee(Piece.of(side, Piece.Limb.SHANK), sitter.at(side, Joint.Part.BALL), .05, 1));
            boolean loaded = scene.props().stream().anyMatch(prop -> heldBy(prop, side));
            if (loaded) {
                spots.add(new MustSee(Piece.of(side, Piece.Limb.FOREARM), Arm.gripCentre(sitter, side), .08, 3));
            }
        }
        spots.add(new MustSee(Piece.of(problem.working(), Piece.Limb.SHANK),
                sitter.at(problem.working(), Joint.Part.KNEE), .05, 2));
        Vector3D face = Directions.between(sitter.at(Joint.NECK), sitter.at(Joint.HEAD_TOP), .55);
        spots.add(new MustSee(Piece.HEAD, face, .09, 2));
        return spots;
    }

    private static boolean heldBy(Prop prop, Side side) {
        return switch (prop) {
            case Prop.Dumbbell(var hand, var axis) -> hand == side;
            case Prop.Kettlebell(var hand, var both) -> both || hand == side;
            case Prop.Column(var pulley, var hand) -> hand == side;
            case Prop.BandAnchor(var anchor, var hand) -> hand == side;
            case Prop.Barbell p -> true;
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

    static double score(Scene scene, List<MustSee> spots) {
        double sum = 0;
        double weights = 0;
        for (MustSee spot : spots) {
            sum += spot.weight() * Visibility.share(scene, spot.owner(), spot.at(), spot.radius());
            weights += spot.weight();
        }
        return sum / weights;
    }
}
