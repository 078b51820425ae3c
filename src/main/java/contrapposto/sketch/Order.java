package contrapposto.sketch;

import contrapposto.figure.Bounds;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Who is painted over whom: the body by depth with a few fixed pairs, then each thing in the slot that breaks the
 * fewest of its relations to the parts it meets on the page, then what is tied to a limb.
 */
final class Order {
    /** How far a point may dip behind a face and still count as outside it, m. */
    private static final double SLACK = .022;
    private static final double EDGE_ON = .05;
    /** Weight of a relation judged by depth alone. */
    private static final double BY_DEPTH = .3;

    /** A part painted just before or just after a piece of the body. */
    record Tied(Piece piece, boolean before, Part part) { }

    private record Relation(Part other, boolean otherAfter, double weight) { }

    private Order() { }

    static List<Part> of(Mannequin body, List<Part> things, List<Tied> tied) {
        Camera camera = body.sitter().camera();
        List<Part> order = new ArrayList<>(body.parts());
        order.sort(Comparator.comparingDouble(part -> part.depth(camera)));
        fixBody(body.sitter(), order);
        List<Part> byDepth = new ArrayList<>(things);
        byDepth.sort(Comparator.comparingDouble(part -> part.depth(camera)));
        for (Part thing : byDepth) {
            order.add(slot(thing, order, camera), thing);
        }
        for (Tied tie : tied) {
            int at = indexOf(order, tie.piece());
            order.add(tie.before() ? at : at + 1, tie.part());
        }
        return List.copyOf(order);
    }

    private static void fixBody(Sitter sitter, List<Part> order) {
        before(order, Piece.NECK, Piece.HEAD);
        if (sitter.camera().depth(sitter.frames().ribsFront()) > -.1) {
            before(order, Piece.TRUNK, Piece.NECK);
        } else {
            before(order, Piece.NECK, Piece.TRUNK);
        }
        if (sitter.frontal()) {
            for (Side side : Side.values()) {
                before(order, Piece.TRUNK, Piece.of(side, Piece.Limb.THIGH));
            }
        } else {
            Side near = sitter.near();
            before(order, Piece.of(near.other(), Piece.Limb.THIGH), Piece.TRUNK);
            before(order, Piece.TRUNK, Piece.of(near, Piece.Limb.THIGH));
            before(order, Piece.TRUNK, Piece.of(near, Piece.Limb.UPPER_ARM));
        }
    }

    private static void before(List<Part> order, Piece first, Piece second) {
        int a = indexOf(order, first);
        int b = indexOf(order, second);
        if (a > b) {
            order.add(b, order.remove(a));
        }
    }

    static int indexOf(List<Part> order, Piece piece) {
        for (int i = 0; i < order.size(); i++) {
            if (order.get(i).piece() == piece) {
                return i;
            }
        }
        throw new IllegalArgumentException("There is no " + piece + " in the order.");
    }

    private static int slot(Part thing, List<Part> order, Camera camera) {
        List<Relation> relations = new ArrayList<>();
        Bounds bounds = thing.bounds();
        for (Part other : order) {
            if (bounds.meets(other.bounds())) {
                relations.add(relation(thing, other, camera));
            }
        }
        int wanted = (int) order.stream().filter(part -> part.depth(camera) < thing.depth(camera)).count();
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int slot = 0; slot <= order.size(); slot++) {
            double broken = 0;
            for (Relation relation : relations) {
                boolean after = order.indexOf(relation.other()) >= slot;
                broken += after == relation.otherAfter() ? 0 : relation.weight();
            }
            boolean better = broken < least - 1e-9
                    || broken < least + 1e-9 && Math.abs(slot - wanted) < Math.abs(best - wanted);
            if (better) {
                least = broken;
                best = slot;
            }
        }
        return best;
    }

    private static Relation relation(Part thing, Part other, Camera camera) {
        double outside = sideOf(thing, other, camera);
        if (outside != 0) {
            return new Relation(other, outside > 0, 1);
        }
        double inside = sideOf(other, thing, camera);
        if (inside != 0) {
            return new Relation(other, inside < 0, 1);
        }
        return new Relation(other, other.depth(camera) > thing.depth(camera), BY_DEPTH);
    }

    /** +1 if {@code other} lies on the reader's side of a face of {@code body}, -1 beyond one, 0 if undecided. */
    private static double sideOf(Part body, Part other, Camera camera) {
        double widest = -SLACK;
        double sign = 0;
        for (Part.Face face : body.faces()) {
            double toward = camera.depth(face.normal());
            double gap = Double.POSITIVE_INFINITY;
            for (Vector3D p : other.samples()) {
                gap = Math.min(gap, p.subtract(face.at()).dotProduct(face.normal()));
            }
            if (Math.abs(toward) > EDGE_ON && gap > widest) {
                widest = gap;
                sign = Math.signum(toward);
            }
        }
        return sign;
    }
}
