package contrapposto.html;

import contrapposto.document.Badge;
import contrapposto.document.Block;
import contrapposto.document.Cell;
import contrapposto.document.Document;
import contrapposto.document.Inline;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/** Writes one table: heads with scope, doses on two lines, boxes as inputs. */
final class HtmlTable {
    private final Markup out;
    private final Consumer<List<Inline>> inlines;
    private final Document.Wording wording;

    HtmlTable(Markup out, Consumer<List<Inline>> inlines, Document.Wording wording) {
        this.out = out;
        this.inlines = inlines;
        this.wording = wording;
    }

    /** @param name of the table for those who hear it; its title is printed over it where it has one */
    void write(Block.Table table, String name) {
        out.open("div", "class", "scroll", "tabindex", "0", "role", "group", "aria-label", name);
        out.open("table");
        if (!table.title().isEmpty()) {
            out.element("caption", table.title());
        }
        out.open("thead");
        table.head().forEach(row -> row(row, table.columns(), "col"));
        out.close().open("tbody");
        table.groups().forEach(group -> group.rows().forEach(row -> row(row, table.columns(), "row")));
        out.close().close().close();
        if (!table.note().isEmpty()) {
            out.open("p");
            inlines.accept(table.note());
            out.close();
        }
    }

    private void row(Block.Table.Row row, List<Block.Table.Column> columns, String scope) {
        out.open("tr");
        for (int i = 0; i < row.cells().size(); i++) {
            Cell cell = row.cells().get(i);
            boolean head = (scope.equals("col") || i == 0) && !(cell instanceof Cell.Empty) && !(cell instanceof Cell.Entry);
            String tone = i < columns.size() && columns.get(i).toned() ? "easy" : "plain";
            if (head) {
                out.open("th", "scope", scope, "class", tone);
            } else {
                out.open("td", "class", tone);
            }
            cell(cell);
            out.close();
        }
        out.close();
    }

    private void cell(Cell cell) {
        switch (cell) {
            case Cell.Words(var lines) -> {
                for (int i = 0; i < lines.size(); i++) {
                    if (i > 0) {
                        out.empty("br");
                    }
                    inlines.accept(lines.get(i));
                }
            }
            case Cell.Side(var badge) -> out.element("b", letters(badge, wording), "class", "badge " + badge.name().toLowerCase(Locale.ROOT));
            case Cell.Dose(var upper, var lower, var third, var heavier) -> {
                out.text(upper).empty("br");
                out.element("b", (heavier ? "\u25B2" : "") + lower);
                third.ifPresent(words -> out.empty("br").text(words));
            }
            case Cell.Entry(var field) -> out.empty("input", "name", field.name(), "aria-label", field.tip(), "size", "4");
            case Cell.Picture(var drawing, var alt, var width, var height) ->
                    out.raw(SvgPainter.svg(drawing.drawn(width, height, HtmlPage.LABEL_POINTS), alt));
            case Cell.Dash dash -> out.text("\u2013");
            case Cell.Empty empty -> { }
        }
    }

    static String letters(Badge badge, Document.Wording wording) {
        return switch (badge) {
            case LEFT -> wording.leftLetter();
            case RIGHT -> wording.rightLetter();
            case BOTH -> wording.leftLetter() + " " + wording.rightLetter();
        };
    }
}
