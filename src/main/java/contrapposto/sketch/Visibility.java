package contrapposto.sketch;

import contrapposto.figure.Bounds;
import contrapposto.figure.Corners;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** How much of a spot the reader sees: the share of a small disc that nothing painted later covers. */
final class Visibility {
    private Visibility() { }

    /**
     * @param owner  the piece the spot belongs to; its own limb never counts as covering it
     * @param radius of the disc, m
     */
    static double share(Scene scene, Piece owner, Vector3D at, double radius) {
        List<Point> disc = disc(scene.camera().see(at), radius);
        Bounds room = Bounds.of(disc);
        boolean[] covered = new boolean[disc.size()];
        List<Part> order = scene.order();
        for (int i = Order.indexOf(order, owner) + 1; i < order.size(); i++) {
            Part part = order.get(i);
            boolean own = part.piece().sameLimbAs(owner) || owner == Piece.TRUNK && part.piece().isThigh();
            if (!own && !part.isBlot() && scene.boxes().get(i).meets(room)) {
                for (Outline outline : part.edge()) {
                    Corners edge = Corners.of(outline);
                    for (int k = 0; k < covered.length; k++) {
                        covered[k] = covered[k] || edge.contains(disc.get(k).x(), disc.get(k).y());
                    }
                }
            }
        }
        int seen = 0;
        for (boolean c : covered) {
            seen += c ? 0 : 1;
        }
        return (double) seen / covered.length;
    }

    private static List<Point> disc(Point centre, double radius) {
        List<Point> points = new ArrayList<>(List.of(centre));
        for (int i = 0; i < 12; i++) {
            points.add(centre.polar(radius * (i % 2 == 0 ? .6 : .95), i * StrictMath.PI / 6));
        }
        return points;
    }
}
