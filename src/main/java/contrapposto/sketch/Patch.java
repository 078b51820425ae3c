package contrapposto.sketch;

import java.util.List;

/**
 * Fills that take away the inner ends of two neighbours as soon as both are painted, and so leave one outline with the
 * natural crease where they overlap.
 *
 * @param limb      the one it belongs to
 * @param neighbour the other
 * @param joints    short thick strokes with round ends, which cost four numbers each
 * @param onlyOver  whether it is wanted only where {@code limb} is painted after {@code neighbour}
 */
record Patch(Piece limb, Piece neighbour, boolean onlyOver, boolean far, List<Part.Cord> joints,
             List<Part.Shape> shapes, List<Part.Crease> creases) {
    Patch {
        joints = List.copyOf(joints);
        shapes = List.copyOf(shapes);
        creases = List.copyOf(creases);
    }
}
