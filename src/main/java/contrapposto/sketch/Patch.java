package contrapposto.sketch;

import java.util.List;

/**
 * Fills that take away the inner ends of two neighbours as soon as both are painted, and so leave one outline with the
 * natural crease where they overlap.
 *
 * @param limb      the one it belongs to
 * @param neighbour the other
 * @param onlyOver  whether it is wanted only where {@code limb} is painted after {@code neighbour}
 */
record Patch(Piece limb, Piece neighbour, boolean onlyOver, boolean far, List<Part.Shape> shapes,
             List<Part.Crease> creases) {
    Patch {
        shapes = List.copyOf(shapes);
        creases = List.copyOf(creases);
    }
}
