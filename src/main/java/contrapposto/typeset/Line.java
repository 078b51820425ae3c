package contrapposto.typeset;

import contrapposto.document.Inline.Sign.Kind;
import java.util.List;

/**
 * A broken line.
 *
 * @param width without the space at its end, in mm
 */
record Line(List<Run> runs, double width) {
    Line {
        runs = List.copyOf(runs);
    }

    /** What stands in a line without a change of face, from {@code x} on. */
    sealed interface Run {
        double x();

        double width();

        /** Letters; a space at the end of the line stays in them, for whoever reads the text back. */
        record Words(double x, double width, String text, boolean bold) implements Run { }

        /** A drawn sign. */
        record Sign(double x, double width, Kind kind) implements Run { }

        /** A page number, linked to the first page of a part. */
        record Link(double x, double width, String text, String part) implements Run { }
    }
}
