package contrapposto.document;

import contrapposto.figure.Drawing;
import java.util.List;
import java.util.Optional;

/** Something that stands on a page. Lengths in mm; text runs are ragged right and never hyphenated. */
public sealed interface Block {

    /** The head of a page, with a word on the right. Level 1. */
    record Title(String text, List<Inline> aside) implements Block { }

    /** The head of a letter: a line above, the title in the largest size, who and when below it; a logo at the right of them. Level 1. */
    record Masthead(String lead, String title, List<Inline> imprint, Optional<Logo> logo) implements Block {
        /** Without a logo. */
        public Masthead(String lead, String title, List<Inline> imprint) {
            this(lead, title, imprint, Optional.empty());
        }
    }

    /** What a practice signs with, and what a screen reader says in its place. The page decides its size. */
    record Logo(Drawing drawing, String alt) { }

    /** A heading inside a part: level 2 (part heading) or 3. */
    record Heading(int level, String text) implements Block { }

    record Paragraph(Role role, List<Inline> runs) implements Block {
        /** {@code LEAD} is the larger text of the plan in three sentences; {@code FINE} the body size set close. */
        public enum Role { BODY, LEAD, FINE }
    }

    record Bullets(List<List<Inline>> items) implements Block { }

    /** Numbered steps. */
    record Steps(List<List<Inline>> items) implements Block { }

    /** A value column and words beside it: what a tape can check. */
    record Measures(List<Measure> measures) implements Block {
        public record Measure(String value, String words) { }
    }

    /** Statements, each with the word for its source at the right. */
    record Reasons(List<Statement> statements) implements Block {
        public record Statement(List<Inline> runs, String source) { }
    }

    /** A drawing with its alternative text; {@code caption} may be empty. */
    record Plate(Drawing drawing, String alt, double width, double height, List<Inline> caption) implements Block { }

    /**
     * Drawings of one side next to each other, elastic in height: the page decides it, one value a page. The widths
     * are shares of the row and add up to 1.
     */
    record FigureRow(List<Part> parts) implements Block {
        public record Part(Drawing drawing, String alt, double share) { }
    }

    /** Page 1: whom it is for, the plan in three sentences, the finding, the safety panel, the week, the notes. */
    record Opening(String lead, String name, List<Inline> imprint, List<List<Inline>> sentences, List<Plate> plates,
                   Panel safety, String weekTitle, List<DayBox> week, List<Note> notes, Optional<Logo> logo) implements Block {
        /** Without a logo. */
        public Opening(String lead, String name, List<Inline> imprint, List<List<Inline>> sentences, List<Plate> plates, Panel safety,
                       String weekTitle, List<DayBox> week, List<Note> notes) {
            this(lead, name, imprint, sentences, plates, safety, weekTitle, week, notes, Optional.empty());
        }
    }

    /** A framed panel with a black header: groups of points with a rule between. */
    record Panel(String heading, List<Group> groups) implements Block {
        /** @param after a closing line under the points; empty for none */
        public record Group(String heading, List<List<Inline>> points, List<Inline> after) { }
    }

    /** One day in the week strip; {@code training} days have the heavy frame. */
    record DayBox(String name, String shortName, boolean training, List<String> lines) { }

    /** A short note; {@code droppable} notes give way first on a full page, lowest number first; 0 never. */
    record Note(List<Inline> runs, int droppable) { }

    /**
     * An exercise card; never breaks over pages.
     *
     * @param key   unique name for bookmarks and destinations
     * @param aside at the right of the name
     * @param bandLeft  under the columns, left; may be empty
     * @param bandRight under the columns, right; may be empty
     */
    record Card(String key, String number, String name, List<Inline> aside, Halves halves, List<Block> bandLeft,
                List<Block> bandRight) implements Block { }

    /** The two columns of a card. */
    sealed interface Halves {
        record Pair(Half left, Half right) implements Halves { }

        /** One side only: the other half of the bar is dashed and its column says why. */
        record Single(Badge side, Half half, String emptyHeading, List<Block> emptyColumn) implements Halves { }

        /** Both sides the same: figures left, words right. */
        record Together(Half half) implements Halves { }
    }

    /** @param order "first", "second", "right only" … at the end of the bar */
    record Half(String heading, String order, List<Block> blocks) { }

    /**
     * A table whose heads repeat on every page; the rows of a group stay together, and the whole table if it fits on
     * a page. The title stands in the first head row, whose first cell stays empty for it; column widths are mm and
     * add up to the measure (178, or 90 on a folded sheet). Bold words of the first head row are set larger.
     */
    record Table(String title, List<Column> columns, List<Row> head, List<Group> groups, List<Inline> note)
            implements Block {
        /** @param toned whether the column lies on the light tone between two thin rules */
        public record Column(double width, Align align, boolean toned) { }

        public enum Align { LEFT, CENTRE, RIGHT }

        /** @param height smallest, mm; 0 for as needed */
        public record Row(List<Cell> cells, double height) { }

        public record Group(List<Row> rows) { }
    }

    /** A line of labelled boxes after a heading, as a log day begins. */
    record FieldLine(String heading, List<Labelled> fields) implements Block {
        /** @param after words behind the box; may be empty */
        public record Labelled(String label, Field field, double width, String after) { }
    }

    /** Boxes with their labels above, side by side; widths are shares that add up to 1. */
    record FieldRow(List<Box> boxes, double height) implements Block {
        public record Box(String label, Field field, double share) { }
    }

    /** A check box with words behind it, perhaps followed by a small text box. */
    record Choice(Field field, List<Inline> runs, Optional<Field> detail) implements Block { }

    /** Two columns: even (85 | 8 | 85) or wide left (112 | 6 | 60). */
    record Columns(Split split, List<Block> left, List<Block> right) implements Block {
        public enum Split { EVEN, WIDE_LEFT }
    }

    /** A line across the measure; {@code words} stand centred below it, and may be empty. */
    record Rule(Weight weight, String words) implements Block {
        public enum Weight { HAIR, HEAVY, CUT }
    }

    /** Kept on one page. */
    record Together(List<Block> blocks) implements Block { }

    record PageBreak() implements Block { }
}
