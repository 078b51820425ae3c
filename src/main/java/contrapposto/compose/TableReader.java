package contrapposto.compose;

import contrapposto.document.Badge;
import contrapposto.document.Block;
import contrapposto.document.Cell;
import contrapposto.document.Field;
import contrapposto.document.Inline;
import contrapposto.figure.Drawing;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Tables and form fields. */
final class TableReader {
    private final Slips slips;
    private final Function<Piece.Element, Drawing> drawing;

    TableReader(Slips slips, Function<Piece.Element, Drawing> drawing) {
        this.slips = slips;
        this.drawing = drawing;
    }

    Block.Table table(Piece.Element element) {
        slips.allow(element, "title");
        slips.noText(element);
        var columns = element.elements("column").stream().map(this::column).toList();
        var head = element.elements("head").stream().flatMap(h -> rows(h, columns.size())).toList();
        var groups = element.elements("group").stream().map(g -> new Block.Table.Group(rows(g, columns.size()).toList())).toList();
        var note = element.elements("note").stream().findFirst().map(n -> InlineReader.read(n, slips)).orElse(List.<Inline>of());
        element.elements().stream().filter(e -> !List.of("column", "head", "group", "note").contains(e.name()))
                .forEach(e -> slips.unexpected(e, element));
        return new Block.Table(slips.required(element, "title"), columns, head, groups, note);
    }

    private Block.Table.Column column(Piece.Element element) {
        slips.allow(element, "width", "align", "toned");
        return new Block.Table.Column(slips.number(element, "width"), slips.word(element, "align", Block.Table.Align.values()),
                element.attribute("toned").filter("yes"::equals).isPresent());
    }

    private Stream<Block.Table.Row> rows(Piece.Element element, int columns) {
        slips.noText(element);
        return element.elements().stream().map(row -> {
            if (!row.name().equals("row")) {
                slips.unexpected(row, element);
            }
            slips.allow(row, "height");
            slips.noText(row);
            var cells = row.elements().stream().map(cell -> cell(cell, row)).toList();
            if (cells.size() != columns) {
                slips.add(row.span(), "the row has " + cells.size() + " cells, but the table " + columns + " columns",
                        "write one cell for each column; `<blank/>` leaves one empty");
            }
            return new Block.Table.Row(cells, row.attribute("height").isPresent() ? slips.number(row, "height") : 0);
        });
    }

    private Cell cell(Piece.Element element, Piece.Element row) {
        return switch (element.name()) {
            case "words" -> words(element);
            case "side" -> {
                slips.allow(element, "badge");
                yield new Cell.Side(slips.word(element, "badge", Badge.values()));
            }
            case "dose" -> {
                slips.allow(element, "upper", "lower", "third", "heavier");
                yield new Cell.Dose(slips.required(element, "upper"), slips.required(element, "lower"), element.attribute("third"),
                        element.attribute("heavier").filter("yes"::equals).isPresent());
            }
            case "entry" -> {
                slips.allow(element, "field", "tip", "kind");
                yield new Cell.Entry(field(element));
            }
            case "picture" -> {
                slips.allow(element, "drawing", "alt", "width", "height");
                yield new Cell.Picture(drawing.apply(element), slips.required(element, "alt"), slips.number(element, "width"),
                        slips.number(element, "height"));
            }
            case "dash" -> new Cell.Dash();
            case "blank" -> new Cell.Empty();
            default -> {
                slips.unexpected(element, row);
                yield new Cell.Empty();
            }
        };
    }

    private Cell.Words words(Piece.Element element) {
        slips.allow(element);
        var lines = element.elements("line");
        return new Cell.Words(lines.isEmpty() ? List.of(InlineReader.read(element, slips))
                : lines.stream().map(line -> InlineReader.read(line, slips)).toList());
    }

    /** The field that the attributes {@code field}, {@code tip} and {@code kind} describe. */
    Field field(Piece.Element element) {
        String name = slips.required(element, "field");
        if (name.contains(".")) {
            slips.add(element.span(), "the field name `" + name + "` holds a period", "join its words by `/`");
        }
        return new Field(name, slips.required(element, "tip"), slips.word(element, "kind", Field.Kind.values()));
    }

    Block.FieldLine fieldLine(Piece.Element element) {
        slips.allow(element, "heading");
        slips.noText(element);
        return new Block.FieldLine(slips.required(element, "heading"), element.elements().stream().map(box -> {
            slips.allow(box, "label", "field", "tip", "kind", "width", "after");
            return new Block.FieldLine.Labelled(slips.required(box, "label"), field(box), slips.number(box, "width"),
                    box.attribute("after").orElse(""));
        }).toList());
    }

    Block.FieldRow fieldRow(Piece.Element element) {
        slips.allow(element, "height");
        slips.noText(element);
        return new Block.FieldRow(element.elements().stream().map(box -> {
            slips.allow(box, "label", "field", "tip", "kind", "share");
            return new Block.FieldRow.Box(slips.required(box, "label"), field(box), slips.number(box, "share"));
        }).toList(), slips.number(element, "height"));
    }

    Block.Choice choice(Piece.Element element) {
        slips.allow(element, "field", "tip", "detail", "detail-tip");
        var detail = element.attribute("detail").map(name -> new Field(name, slips.required(element, "detail-tip"), Field.Kind.TEXT));
        return new Block.Choice(new Field(slips.required(element, "field"), slips.required(element, "tip"), Field.Kind.CHECK),
                InlineReader.read(element, slips), detail);
    }
}
