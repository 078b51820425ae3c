package contrapposto.figure;

import java.util.List;

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

    enum Weight { REGULAR, BOLD }

    enum Anchor { START, MIDDLE, END }
}
