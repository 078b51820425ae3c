package contrapposto.audit;

import contrapposto.document.Block;
import contrapposto.document.Block.Half;
import contrapposto.document.Cell;
import contrapposto.document.Document;
import contrapposto.document.Inline;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Walks a document for what an audit asks: its blocks, also those inside others, and the words for its reader. */
record Reader(Document document) {
    /** All blocks of a kind in one part, the outer before the inner. */
    <T extends Block> List<T> all(Document.Part part, Class<T> kind) {
        return part.blocks().stream().flatMap(Reader::withInner).filter(kind::isInstance).map(kind::cast).toList();
    }

    <T extends Block> List<T> all(Class<T> kind) {
        return document.parts().stream().flatMap(part -> all(part, kind).stream()).toList();
    }

    /** The name of the first part that holds a block of that kind; empty where none does. */
    String place(Class<? extends Block> kind) {
        return document.parts().stream().filter(part -> !all(part, kind).isEmpty()).map(Document.Part::name).findFirst().orElse("");
    }

    private static Stream<Block> withInner(Block block) {
        return Stream.concat(Stream.of(block), inner(block).stream().flatMap(Reader::withInner));
    }

    static List<Block> inner(Block block) {
        return switch (block) {
            case Block.Opening opening -> Stream.concat(Stream.of((Block) opening.safety()), opening.plates().stream()).toList();
            case Block.Card card -> Stream.of(halves(card.halves()).stream().flatMap(h -> h.blocks().stream()), card.bandLeft().stream(),
                    card.bandRight().stream()).flatMap(s -> s).toList();
            case Block.Columns columns -> Stream.concat(columns.left().stream(), columns.right().stream()).toList();
            case Block.Together together -> together.blocks();
            case Block other -> List.of();
        };
    }

    static List<Half> halves(Block.Halves halves) {
        return switch (halves) {
            case Block.Halves.Pair(var left, var right) -> List.of(left, right);
            case Block.Halves.Single single -> List.of(single.half());
            case Block.Halves.Together(var half) -> List.of(half);
        };
    }

    /**
     * A line of running text.
     *
     * @param place the part and the headings it stands under
     */
    record Line(String place, String text) { }

    /** The running text of a part, a line for each block, item or note; labels of tables and boxes are no text. */
    List<Line> lines(Document.Part part) {
        return lines(part.name(), part.blocks());
    }

    static List<Line> lines(String place, List<Block> blocks) {
        var lines = new ArrayList<Line>();
        read(place, blocks, lines);
        return lines;
    }

    private static void read(String place, List<Block> blocks, List<Line> lines) {
        String here = place;
        for (Block block : blocks) {
            String at = here;
            switch (block) {
                case Block.Heading heading -> here = under(place, heading.text());
                case Block.Opening opening -> {
                    add(at, opening.sentences(), lines);
                    add(at, opening.notes().stream().map(Block.Note::runs).toList(), lines);
                    read(at, inner(opening), lines);
                }
                case Block.Panel panel -> panel.groups().forEach(group -> {
                    String within = under(under(at, panel.heading()), group.heading());
                    add(within, group.points(), lines);
                    add(within, List.of(group.after()), lines);
                });
                case Block.Card card -> {
                    String name = under(at, card.number() + " " + card.name());
                    halves(card.halves()).forEach(half -> read(under(name, half.heading()), half.blocks(), lines));
                    read(name, card.bandLeft(), lines);
                    read(name, card.bandRight(), lines);
                }
                case Block.Paragraph paragraph -> add(at, List.of(paragraph.runs()), lines);
                case Block.Bullets bullets -> add(at, bullets.items(), lines);
                case Block.Steps steps -> add(at, steps.items(), lines);
                case Block other -> read(at, inner(other), lines);
            }
        }
    }

    private static String under(String place, String heading) {
        return heading.isBlank() ? place : place + " > " + heading;
    }

    private static void add(String place, List<List<Inline>> texts, List<Line> lines) {
        texts.stream().map(Reader::words).filter(text -> !text.isBlank()).forEach(text -> lines.add(new Line(place, text)));
    }

    static String words(List<Inline> runs) {
        var line = new StringBuilder();
        for (Inline run : runs) {
            line.append(switch (run) {
                case Inline.Text(var text, var bold) -> text;
                case Inline.Sign sign -> "";
                case Inline.PageOf page -> "";
            });
        }
        return line.toString().replace('\u00a0', ' ').strip();
    }

    static String words(Cell cell) {
        return cell instanceof Cell.Words(var lines) ? String.join(" ", lines.stream().map(Reader::words).toList()) : "";
    }
}
