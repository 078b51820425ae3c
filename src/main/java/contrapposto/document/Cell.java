package contrapposto.document;

import contrapposto.figure.Drawing;
import java.util.List;
import java.util.Optional;

/** What a table cell holds. */
public sealed interface Cell {
    /** Text; {@code lines} are set one under the other, each broken where it must be. */
    record Words(List<List<Inline>> lines) implements Cell {
        public Words {
            lines = lines.stream().map(List::copyOf).toList();
        }
    }

    /** The side mark, centred on its row. */
    record Side(Badge badge) implements Cell { }

    /**
     * A dose: upper line regular, lower line bold, perhaps a third.
     *
     * @param heavier whether a drawn triangle hangs left of the lower line
     */
    record Dose(String upper, String lower, Optional<String> third, boolean heavier) implements Cell { }

    /** A box to fill; a check box is small, a text box fills the cell. */
    record Entry(Field field) implements Cell { }

    /** A small drawing, top left in its cell; sizes in mm. */
    record Picture(Drawing drawing, String alt, double width, double height) implements Cell { }

    /** Not asked for: a dash, no box. */
    record Dash() implements Cell { }

    /** Nothing; in the first column below the first row of a group it is taken as one cell with the one above. */
    record Empty() implements Cell { }
}
