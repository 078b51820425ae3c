package contrapposto.figure;

import java.util.List;
import java.util.function.UnaryOperator;

/** One thing painted; marks are painted in their order, later ones over earlier ones. */
public sealed interface Mark {
    /** Outlines filled as one object by the non-zero winding rule. */
    record Fill(List<Outline> outlines, Tone tone) implements Mark {
        public Fill {
            outlines = List.copyOf(outlines);
        }
    }

    /**
     * Outlines stroked as one object with round joins and caps.
     *
     * @param width in mm
     * @param dash  lengths on and off in mm; empty for a solid line
     */
    record Stroke(List<Outline> outlines, Tone tone, double width, List<Double> dash) implements Mark {
        public Stroke {
            outlines = List.copyOf(outlines);
            dash = List.copyOf(dash);
        }
    }

    /**
     * Words on a figure.
     *
     * @param at    the anchor on the baseline
     * @param size  in pt
     * @param halo  whether a white edge of 0.45 mm keeps the words clear of lines below
     */
    record Label(Point at, String text, double size, Weight weight, Anchor anchor, Tone tone, boolean halo)
            implements Mark { }

    /**
     * A picture of dots.
     *
     * @param at     its top left corner
     * @param width  in mm; likewise {@code height}
     */
    record Picture(Point at, double width, double height, Raster raster) implements Mark { }

    /** The mark with its points moved, and its widths and sizes times {@code factor}. */
    default Mark mapped(UnaryOperator<Point> move, double factor) {
        return switch (this) {
            case Fill(var outlines, var tone) -> new Fill(mapped(outlines, move), tone);
            case Stroke(var outlines, var tone, var width, var dash) -> new Stroke(mapped(outlines, move), tone,
                    width * factor, dash.stream().map(d -> d * factor).toList());
            case Label(var at, var text, var size, var weight, var anchor, var tone, var halo) ->
                    new Label(move.apply(at), text, size * factor, weight, anchor, tone, halo);
            case Picture(var at, var wide, var high, var raster) -> new Picture(move.apply(at), wide * factor, high * factor, raster);
        };
    }

    /** The mark in the mirror of a box {@code width} wide; words keep reading left to right, and a picture keeps its sides. */
    default Mark mirrored(double width) {
        Mark moved = mapped(p -> new Point(width - p.x(), p.y()), 1);
        return switch (moved) {
            case Fill fill -> fill;
            case Stroke stroke -> stroke;
            case Label(var at, var text, var size, var weight, var anchor, var tone, var halo) ->
                    new Label(at, text, size, weight, anchor.mirrored(), tone, halo);
            case Picture(var at, var wide, var high, var raster) -> new Picture(new Point(at.x() - wide, at.y()), wide, high, raster);
        };
    }

    private static List<Outline> mapped(List<Outline> outlines, UnaryOperator<Point> move) {
        return outlines.stream().map(outline -> outline.mapped(move)).toList();
    }

    enum Weight { REGULAR, BOLD }

    enum Anchor {
        START, MIDDLE, END;

        Anchor mirrored() {
            return switch (this) {
                case START -> END;
                case MIDDLE -> MIDDLE;
                case END -> START;
            };
        }
    }
}
