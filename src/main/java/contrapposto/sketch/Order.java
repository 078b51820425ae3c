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

    private record Relation(int other, boolean otherAfter, double weight) { }

    /** A part with what is asked of it again and again. */
    private record Placed(Part part, double depth, Bounds bounds) {
        static Placed of(Part part, Camera camera) {
            return new Placed(part, part.depth(camera), part.bounds());
        }
    }

    private Order() { }

    static List<Part> of(Mannequin body, List<Part> things, List<Tied> tied) {
        Camera camera = body.sitter().camera();
        List<Part> bodyOrder = new ArrayList<>(body.parts());
        bodyOrder.sort(Comparator.comparingDouble(part -> part.depth(camera)));
        fixBody(body.sitter(), bodyOrder);
        List<Placed> order = new ArrayList<>(bodyOrder.stream().map(part -> Placed.of(part, camera)).toList());
        List<Placed> byDepth = new ArrayList<>(things.stream().map(part -> Placed.of(part, camera)).toList());
        byDepth.sort(Comparator.comparingDouble(Placed::depth));
        for (Placed thing : byDepth) {
            order.add(slot(thing, order, camera), thing);
        }
        List<Part> all = new ArrayList<>(order.stream().map(Placed::part).toList());
        for (Tied tie : tied) {
            int at = indexOf(all, tie.piece());
            all.add(tie.before() ? at : at + 1, tie.part());
        }
        return List.copyOf(all);
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

    private static int slot(Placed thing, List<Placed> order, Camera camera) {
        List<Relation> relations = new ArrayList<>();
        int wanted = 0;
        for (int i = 0; i < order.size(); i++) {
            if (thing.bounds().meets(order.get(i).bounds())) {
                relations.add(relation(i, thing, order.get(i), camera));
            }
            wanted += order.get(i).depth() < thing.depth() ? 1 : 0;
        }
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int slot = 0; slot <= order.size(); slot++) {
            double broken = 0;
            for (Relation relation : relations) {
                broken += relation.other() >= slot == relation.otherAfter() ? 0 : relation.weight();
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

    private static Relation relation(int index, Placed thing, Placed other, Camera camera) {
        double outside = sideOf(thing.part(), other.part(), camera);
        if (outside != 0) {
            return new Relation(index, outside > 0, 1);
        }
        double inside = sideOf(other.part(), thing.part(), camera);
        if (inside != 0) {
            return new Relation(index, inside < 0, 1);
        }
        return new Relation(index, other.depth() > thing.depth(), BY_DEPTH);
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
