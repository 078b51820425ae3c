package contrapposto.sketch;

import contrapposto.figure.Bounds;
import contrapposto.figure.Outline;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * One thing painted as a whole, in picture metres: first its edge, stroked twice as wide as the line, then the tones
 * over it, which hide the inner half of the stroke and every line inside the union; then its creases.
 *
 * @param name    unique within a scene
 * @param samples points that stand for it when depth decides the order
 * @param far     drawn with a thinner line and paler tones
 * @param line    width of the edge in line widths
 * @param edge    outlines
 * @param fills   outlines with their tones, later over earlier
 * @param creases inner lines
 * @param cords   thick lines: cable, band, handle
 * @param faces   of a convex body; whoever lies wholly outside one is painted after or before it
 */
record Part(String name, Piece piece, List<Vector3D> samples, boolean far, double line, List<Outline> edge,
            List<Shape> fills, List<Crease> creases, List<Cord> cords, List<Face> faces) {
    Part {
        samples = List.copyOf(samples);
        edge = List.copyOf(edge);
        fills = List.copyOf(fills);
        creases = List.copyOf(creases);
        cords = List.copyOf(cords);
        faces = List.copyOf(faces);
    }

    /** An outline and the tone inside it. */
    record Shape(Outline outline, double tone) { }

    /** @param width in line widths */
    record Crease(Outline outline, double width, double tone) { }

    /** @param metres its thickness */
    record Cord(Outline path, double metres, double tone) { }

    /** A flat side with its outward unit normal. */
    record Face(Vector3D normal, Vector3D at) { }

    /** A part of the body: every shape has an edge. */
    static Part ofBody(Piece piece, boolean far, List<Vector3D> samples, List<Shape> shapes, List<Crease> creases) {
        return ofBody(piece, far, samples, shapes, List.of(), creases);
    }

    /** @param inner shapes without an edge of their own, over the others */
    static Part ofBody(Piece piece, boolean far, List<Vector3D> samples, List<Shape> shapes, List<Shape> inner,
                       List<Crease> creases) {
        List<Shape> fills = new ArrayList<>(shapes);
        fills.addAll(inner);
        return new Part(piece.name(), piece, samples, far, 1, shapes.stream().map(Shape::outline).toList(), fills,
                creases, List.of(), List.of());
    }

    /** A thing whose line is {@code line} widths. */
    static Part thing(String name, List<Vector3D> samples, double line, List<Shape> shapes, List<Crease> creases) {
        return new Part(name, Piece.THING, samples, false, line, shapes.stream().map(Shape::outline).toList(), shapes,
                creases, List.of(), List.of());
    }

    /** A flat mark without an edge, as a shadow. */
    static Part blot(String name, Vector3D at, Outline outline, double tone) {
        return new Part(name, Piece.THING, List.of(at), false, 1, List.of(), List.of(new Shape(outline, tone)),
                List.of(), List.of(), List.of());
    }

    static Part cord(String name, List<Vector3D> samples, double line, Cord... cords) {
        return new Part(name, Piece.THING, samples, false, line, List.of(), List.of(), List.of(), List.of(cords),
                List.of());
    }

    double depth(Camera camera) {
        return samples.stream().mapToDouble(camera::depth).average().orElseThrow();
    }

    /** All outlines that take room on the page. */
    List<Outline> extent() {
        List<Outline> all = new ArrayList<>(edge);
        cords.forEach(cord -> all.add(cord.path()));
        return all;
    }

    Bounds bounds() {
        return Bounds.ofOutlines(extent());
    }

    /** A flat mark under a limb, which never hides anything. */
    boolean isBlot() {
        return edge.isEmpty() && cords.isEmpty();
    }
}
