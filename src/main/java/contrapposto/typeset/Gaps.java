package contrapposto.typeset;

import contrapposto.document.Block;
import contrapposto.document.Block.Paragraph;

/** How far apart blocks stand in the plain print, in mm, and which must not part. */
final class Gaps {
    static final double CARD = 6;
    private static final double PART = 6;
    private static final double SECTION = 4;
    private static final double TEXT = 2;
    private static final double CLOSE = 1.5;

    private Gaps() { }

    static double between(Block above, Block below) {
        if (above instanceof Block.Title) {
            return TEXT;
        }
        if (above instanceof Block.Heading) {
            return below instanceof Paragraph || below instanceof Block.Bullets ? 0 : CLOSE;
        }
        if (above instanceof Block.Rule && !(below instanceof Block.Card)) {
            return CLOSE;
        }
        return above instanceof Block.FieldLine && below instanceof Block.Table ? 0.4 : above(below);
    }

    private static double above(Block below) {
        return switch (below) {
            case Block.Title title -> PART;
            case Block.Masthead masthead -> PART;
            case Block.Opening opening -> PART;
            case Block.Card card -> CARD;
            case Block.Table table -> PART;
            case Block.FieldLine line -> SECTION;
            case Block.Heading heading -> SECTION;
            case Block.Panel panel -> SECTION;
            case Block.Columns columns -> SECTION;
            case Block.Rule rule -> SECTION;
            case Block.Together together -> together.blocks().isEmpty() ? 0 : above(together.blocks().getFirst());
            case Paragraph(var role, var runs) -> role == Paragraph.Role.FINE ? 0 : TEXT;
            case Block.Bullets bullets -> 1;
            case Block.Steps steps -> TEXT;
            case Block.Measures measures -> CLOSE;
            case Block.Reasons reasons -> TEXT;
            case Block.Plate plate -> TEXT;
            case Block.FigureRow row -> TEXT;
            case Block.FieldRow row -> TEXT;
            case Block.Choice choice -> TEXT;
            case Block.PageBreak pageBreak -> 0;
        };
    }

    /** Words before a table or a list stay with its beginning. */
    static boolean leadsInto(Block words, Block below) {
        return words instanceof Paragraph && (below instanceof Block.Table || below instanceof Block.Bullets
                || below instanceof Block.Steps || below instanceof Block.Reasons || below instanceof Block.FieldRow);
    }

    /** Words after a table stay with its end. */
    static boolean clings(Block above, Block below) {
        return above instanceof Block.Table
                && (below instanceof Block.Rule || below instanceof Paragraph || below instanceof Block.Columns);
    }

    /** Heads do not stand at the foot of a page. */
    static boolean staysWithNext(Block block) {
        return block instanceof Block.Title || block instanceof Block.Heading || block instanceof Block.FieldLine
                || block instanceof Block.Rule;
    }
}
