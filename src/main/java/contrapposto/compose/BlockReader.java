package contrapposto.compose;

import contrapposto.document.Block;
import contrapposto.document.Inline;
import contrapposto.figure.Drawing;
import contrapposto.figure.Figure;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Elements → blocks. Drawings are named by their key. What does not fit is a slip, and reading goes on. */
final class BlockReader {
    private static final Drawing NOTHING = (width, height, labelSize) -> new Figure(width, height, List.of());

    private final Map<String, Drawing> drawings;
    private final Slips slips;
    private final TableReader tables;
    private final CardReader cards;

    BlockReader(Map<String, Drawing> drawings, Slips slips) {
        this.drawings = drawings;
        this.slips = slips;
        this.tables = new TableReader(slips, this::drawing);
        this.cards = new CardReader(slips, this::blocks);
    }

    /** Everything in {@code parent}, block by block. */
    List<Block> blocks(Piece.Element parent) {
        slips.noText(parent);
        return parent.elements().stream().map(e -> block(e, parent)).toList();
    }

    private Block block(Piece.Element e, Piece.Element parent) {
        return switch (e.name()) {
            case "title" -> title(e);
            case "masthead" -> allowing(e, new Block.Masthead(slips.required(e, "lead"), slips.required(e, "title"), InlineReader.read(e, slips), logo(e)),
                    "lead", "title", "logo");
            case "heading" -> allowing(e, new Block.Heading((int) slips.number(e, "level"), InlineReader.text(e, slips)), "level");
            case "paragraph" -> allowing(e, new Block.Paragraph(role(e), InlineReader.read(e, slips)), "role");
            case "bullets" -> allowing(e, new Block.Bullets(each(e, "item")));
            case "steps" -> allowing(e, new Block.Steps(each(e, "item")));
            case "measures" -> allowing(e, new Block.Measures(e.elements().stream().map(m -> allowing(m,
                    new Block.Measures.Measure(slips.required(m, "value"), InlineReader.text(m, slips)), "value")).toList()));
            case "reasons" -> allowing(e, new Block.Reasons(e.elements().stream().map(s -> allowing(s,
                    new Block.Reasons.Statement(InlineReader.read(s, slips), slips.required(s, "source")), "source")).toList()));
            case "plate" -> plate(e);
            case "figure-row" -> allowing(e, new Block.FigureRow(e.elements().stream().map(f -> allowing(f,
                    new Block.FigureRow.Part(drawing(f), slips.required(f, "alt"), slips.number(f, "share")),
                    "drawing", "alt", "share")).toList()));
            case "opening" -> opening(e);
            case "panel" -> panel(e);
            case "card" -> cards.card(e);
            case "table" -> tables.table(e);
            case "field-line" -> tables.fieldLine(e);
            case "field-row" -> tables.fieldRow(e);
            case "choice" -> tables.choice(e);
            case "columns" -> allowing(e, new Block.Columns(slips.word(e, "split", Block.Columns.Split.values()),
                    blocks(only(e, "left")), blocks(only(e, "right"))), "split");
            case "rule" -> allowing(e, new Block.Rule(slips.word(e, "weight", Block.Rule.Weight.values()), InlineReader.text(e, slips)), "weight");
            case "together" -> allowing(e, new Block.Together(blocks(e)));
            case "page-break" -> allowing(e, new Block.PageBreak());
            default -> {
                slips.unexpected(e, parent);
                yield new Block.PageBreak();
            }
        };
    }

    private <T> T allowing(Piece.Element element, T made, String... attributes) {
        slips.allow(element, attributes);
        return made;
    }

    private Block.Title title(Piece.Element e) {
        slips.allow(e);
        var words = e.pieces().stream().filter(p -> !(p instanceof Piece.Element aside && aside.name().equals("aside"))).toList();
        var plain = new Piece.Element(e.name(), e.attributes(), words, e.span());
        return new Block.Title(InlineReader.text(plain, slips), first(e, "aside"));
    }

    private Block.Paragraph.Role role(Piece.Element e) {
        return e.attribute("role").isPresent() ? slips.word(e, "role", Block.Paragraph.Role.values()) : Block.Paragraph.Role.BODY;
    }

    private Block.Plate plate(Piece.Element e) {
        slips.allow(e, "drawing", "alt", "width", "height");
        return new Block.Plate(drawing(e), slips.required(e, "alt"), slips.number(e, "width"), slips.number(e, "height"),
                InlineReader.read(e, slips));
    }

    private Block.Opening opening(Piece.Element e) {
        slips.allow(e, "lead", "name", "week", "logo");
        slips.noText(e);
        return new Block.Opening(slips.required(e, "lead"), slips.required(e, "name"), first(e, "imprint"), each(e, "sentence"),
                list(e, "plate", this::plate), panel(only(e, "panel")), slips.required(e, "week"), list(e, "day", this::day),
                list(e, "note", this::note), logo(e));
    }

    /** The practice's logo, if {@code e} says how it is to be read out. */
    private Optional<Block.Logo> logo(Piece.Element e) {
        return e.attribute("logo").map(alt -> new Block.Logo(drawing(e, Logo.KEY), alt));
    }

    private Block.Panel panel(Piece.Element e) {
        slips.allow(e, "heading");
        slips.noText(e);
        return new Block.Panel(slips.required(e, "heading"), list(e, "group", group -> {
            slips.allow(group, "heading");
            return new Block.Panel.Group(slips.required(group, "heading"), list(group, "item", this::point),
                    group.elements("after").stream().findFirst().map(this::point).orElse(List.of()));
        }));
    }

    /** A point of a panel; what it is {@code about} is for {@link SafetyPanel}. */
    private List<Inline> point(Piece.Element e) {
        slips.allow(e, "about");
        return InlineReader.read(e, slips);
    }

    private Block.DayBox day(Piece.Element e) {
        slips.allow(e, "name", "short", "training");
        return new Block.DayBox(slips.required(e, "name"), slips.required(e, "short"),
                e.attribute("training").filter("yes"::equals).isPresent(), list(e, "line", line -> InlineReader.text(line, slips)));
    }

    private Block.Note note(Piece.Element e) {
        slips.allow(e, "droppable");
        return new Block.Note(InlineReader.read(e, slips), (int) slips.number(e, "droppable"));
    }

    /** The drawing that {@code e} names. */
    Drawing drawing(Piece.Element e) {
        return drawing(e, slips.required(e, "drawing"));
    }

    private Drawing drawing(Piece.Element e, String key) {
        if (!key.isEmpty() && !drawings.containsKey(key)) {
            slips.add(e.span(), "there is no drawing `" + key + "`", "the keys of drawings are listed in templates/README.md");
        }
        return drawings.getOrDefault(key, NOTHING);
    }

    private List<List<Inline>> each(Piece.Element parent, String name) {
        return list(parent, name, e -> InlineReader.read(e, slips));
    }

    private List<Inline> first(Piece.Element parent, String name) {
        return parent.elements(name).stream().findFirst().map(e -> InlineReader.read(e, slips)).orElse(List.of());
    }

    private static <T> List<T> list(Piece.Element parent, String name, Function<Piece.Element, T> read) {
        return parent.elements(name).stream().map(read).toList();
    }

    /** The one element of that name in {@code parent}; a slip and an empty one when it is missing. */
    private Piece.Element only(Piece.Element parent, String name) {
        var found = parent.elements(name);
        if (found.size() != 1) {
            slips.add(parent.span(), "`<" + parent.name() + ">` needs one `<" + name + ">`, but has " + found.size(), "write it once");
        }
        return found.isEmpty() ? new Piece.Element(name, Map.of("heading", ""), List.of(), parent.span())
                : found.getFirst();
    }
}
