package contrapposto.typeset;

import contrapposto.document.Block.Table;
import contrapposto.document.Block.Table.Align;
import contrapposto.document.Cell;
import contrapposto.document.Field;
import contrapposto.document.Inline;
import contrapposto.typeset.Line.Run;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Measures tables: breaks the words of cells in their columns and gives rows their heights. */
final class TableSetter {
    private static final double ROW_AIR = 1.2;
    private static final double TIGHT_AIR = 0.5;
    private static final double CELL_GAP = 1;
    private static final double TIGHTEST_ENTRY = 0.82;
    private static final double WIDEST_ENTRY = 1.2;
    private static final double ENTRY_ROW = 10;
    private static final double PILL = 5;
    private static final double HEAD_AIR = 1;
    /** Share of the first column that may go to heads. */
    private static final double MOST_GIVEN = 0.3;
    private static final double SMALLEST_PILL = 4.4;

    private final Desk desk;

    TableSetter(Desk desk) {
        this.desk = desk;
    }

    TableSlab set(Table planned, double measure) {
        var table = new Table(planned.title(), columns(planned), planned.head(), planned.groups(), planned.note());
        var head = new ArrayList<TableSlab.Row>();
        for (int i = 0; i < table.head().size(); i++) {
            head.add(headRow(table, table.head().get(i), i == 0, titleStyle(measure)));
        }
        var groups = table.groups().stream().map(g -> group(table, g)).toList();
        var body = desk.type().body();
        Optional<Slab> note = table.note().isEmpty() ? Optional.empty()
                : Optional.of(TextSlab.left(desk.lines(body).broken(table.note(), measure), body, "P"));
        return new TableSlab(title(table.title(), measure), title(continued(table.title()), measure).quiet(), table.columns(), head,
                groups, note, desk.gap(2));
    }

    /**
     * Columns as wide as the words of their heads, else as what those cannot divide; the widest one flush left gives what that
     * takes, where it can.
     */
    private List<Table.Column> columns(Table table) {
        return columns(table, Divisions.NONE).or(() -> columns(table, desk.divisions())).orElse(table.columns());
    }

    private Optional<List<Table.Column>> columns(Table table, Divisions divisions) {
        var columns = new ArrayList<>(table.columns());
        double extra = 0;
        for (int i = 0; i < columns.size(); i++) {
            double width = columns.get(i).width();
            double need = columns.get(i).align() == Align.LEFT ? width : Math.max(width, headPart(table, i, divisions));
            extra += need - width;
            columns.set(i, wide(columns.get(i), need));
        }
        int giver = IntStream.range(0, columns.size()).filter(i -> columns.get(i).align() == Align.LEFT).boxed()
                .max(Comparator.comparingDouble(i -> columns.get(i).width())).orElse(-1);
        if (extra > 0 && (giver < 0 || extra > columns.get(giver).width() * MOST_GIVEN)) {
            return Optional.empty();
        }
        if (extra > 0) {
            columns.set(giver, wide(columns.get(giver), columns.get(giver).width() - extra));
        }
        return Optional.of(columns);
    }

    private static Table.Column wide(Table.Column column, double width) {
        return new Table.Column(width, column.align(), column.toned());
    }

    /** Width of the longest part of a word in the heads of a column, with its air; 0 without words. */
    private double headPart(Table table, int column, Divisions divisions) {
        double longest = 0;
        for (int row = 0; row < table.head().size(); row++) {
            if (table.head().get(row).cells().get(column) instanceof Cell.Words(List<List<Inline>> lines)) {
                var style = row == 0 ? desk.type().number() : desk.type().body();
                for (var run : lines.stream().flatMap(List::stream).toList()) {
                    if (run instanceof Inline.Text(String text, boolean bold)) {
                        longest = Math.max(longest, HEAD_AIR + List.of(Letters.clean(text).split("[ -]")).stream()
                                .flatMap(word -> divisions.parts(word).stream())
                                .mapToDouble(part -> desk.lines(style).single(part.replace(Divisions.MARK, '-'), bold).width()).max().orElse(0));
                    }
                }
            }
        }
        return longest;
    }

    private String continued(String title) {
        return title.isEmpty() ? "" : title + ", " + desk.wording().continued();
    }

    private HeadingSlab title(String title, double measure) {
        var style = titleStyle(measure);
        var lines = title.isEmpty() ? List.<Line>of() : desk.lines(style).broken(title, true, measure);
        return new HeadingSlab(lines, style, 2, List.of(), desk.type().body(), measure, true);
    }

    private Style titleStyle(double measure) {
        return measure < Stock.MEASURE ? desk.type().heading() : desk.type().title();
    }

    private TableSlab.Row headRow(Table table, Table.Row row, boolean first, Style titleStyle) {
        var cells = cells(table, row, first ? desk.type().number() : desk.type().body(), true);
        double text = cells.stream().mapToDouble(CellBox::height).max().orElse(0);
        boolean title = first && !table.title().isEmpty();
        double height = Math.max(row.height(), title ? underTitle(text, titleStyle) : text);
        return new TableSlab.Row(cells, height, height, false);
    }

    /** Height of a head row whose words begin on the baseline of the title. */
    private double underTitle(double text, Style title) {
        double lowered = title.baseline() - desk.type().number().baseline();
        return Math.max(title.line(), lowered + text);
    }

    /** The rows of a group; a first cell or picture that stands over several of them may be as high as they are together. */
    private TableSlab.Group group(Table table, Table.Group group) {
        var rows = new ArrayList<TableSlab.Row>();
        for (int i = 0; i < group.rows().size(); i++) {
            rows.add(row(table, group.rows(), i));
        }
        var made = new TableSlab.Group(rows);
        for (int i = 0; i < rows.size(); i++) {
            for (int column = 0; column < table.columns().size(); column++) {
                int span = made.span(i, column);
                if (span > 1) {
                    rows.set(i + span - 1, raised(rows.subList(i, i + span), rows.get(i).cells().get(column)));
                }
            }
        }
        return new TableSlab.Group(rows);
    }

    /** The last of the rows over which a cell stands, high enough for that cell. */
    private TableSlab.Row raised(List<TableSlab.Row> sharing, CellBox cell) {
        var last = sharing.getLast();
        double missing = cell.height() + desk.air(TIGHT_AIR) - sharing.stream().mapToDouble(TableSlab.Row::tight).sum();
        double tight = last.tight() + Math.max(0, missing);
        return new TableSlab.Row(last.cells(), tight, Math.max(tight, last.wide()), last.spans());
    }

    private TableSlab.Row row(Table table, List<Table.Row> group, int at) {
        var row = group.get(at);
        var next = at + 1 < group.size() ? group.get(at + 1).cells() : row.cells();
        boolean spans = next.getFirst() instanceof Cell.Empty && at + 1 < group.size();
        var cells = cells(table, row, desk.type().number(), false);
        double natural = 0;
        for (int i = spans ? 1 : 0; i < cells.size(); i++) {
            boolean hangs = cells.get(i) instanceof CellBox.Picture && next.get(i) instanceof Cell.Empty;
            natural = hangs ? natural : Math.max(natural, cells.get(i).height());
        }
        boolean boxes = row.cells().stream().anyMatch(TableSetter::isTextEntry);
        double wanted = Math.max(boxes && row.height() == 0 ? desk.gap(ENTRY_ROW) : row.height(), natural + ROW_AIR);
        double tight = Math.max(natural + desk.air(TIGHT_AIR), boxes ? wanted * TIGHTEST_ENTRY : 0);
        return new TableSlab.Row(cells, tight, boxes ? wanted * WIDEST_ENTRY : wanted, spans);
    }

    private static boolean isTextEntry(Cell cell) {
        return cell instanceof Cell.Entry(Field field) && field.kind() != Field.Kind.CHECK;
    }

    private List<CellBox> cells(Table table, Table.Row row, Style bold, boolean head) {
        if (row.cells().size() != table.columns().size()) {
            throw new IllegalArgumentException("A row of table `" + table.title() + "` has (" + row.cells().size()
                    + ") cells, but there are (" + table.columns().size() + ") columns.");
        }
        var boxes = new ArrayList<CellBox>();
        for (int i = 0; i < row.cells().size(); i++) {
            var column = table.columns().get(i);
            boxes.add(box(row.cells().get(i), column, room(table, row, i), bold, head));
        }
        return boxes;
    }

    /** Width for the words of a cell: words flush left run on over empty cells. */
    private static double room(Table table, Table.Row row, int cell) {
        double room = table.columns().get(cell).width();
        if (table.columns().get(cell).align() != Align.LEFT) {
            return room;
        }
        int next = cell + 1;
        while (next < row.cells().size() && row.cells().get(next) instanceof Cell.Empty) {
            room += table.columns().get(next++).width();
        }
        return next < row.cells().size() ? room - CELL_GAP : room;
    }

    private CellBox box(Cell cell, Table.Column column, double room, Style bold, boolean head) {
        var body = desk.type().body();
        return switch (cell) {
            case Cell.Words(List<List<Inline>> paragraphs) -> words(paragraphs, column, room, head ? bold : body);
            case Cell.Side(var badge) -> new CellBox.Side(badge, Math.max(SMALLEST_PILL, desk.gap(PILL)));
            case Cell.Dose(String upper, String lower, Optional<String> third, boolean heavier) -> new CellBox.Dose(
                    spaced(desk.lines(body).single(upper, false)), dose(lower, third.isPresent()),
                    third.map(t -> desk.lines(body).broken(t, false, room)).orElse(List.of()), body,
                    desk.type().number(), heavier);
            case Cell.Entry(Field field) -> new CellBox.Entry(field, 1);
            case Cell.Picture(var drawing, String alt, double width, double height) ->
                    new CellBox.Picture(drawing, alt, width, height);
            case Cell.Dash() -> new CellBox.Dash(desk.lines(body).single("–", false), body);
            case Cell.Empty() -> new CellBox.Empty();
        };
    }

    private Line dose(String lower, boolean more) {
        var style = desk.type().number();
        var line = desk.lines(style).single(lower, true);
        return more ? spaced(line) : line;
    }

    private CellBox words(List<List<Inline>> paragraphs, Table.Column column, double room, Style style) {
        var lines = new ArrayList<Line>();
        for (int i = 0; i < paragraphs.size(); i++) {
            var broken = desk.lines(style).broken(paragraphs.get(i), room);
            lines.addAll(broken);
            if (i < paragraphs.size() - 1) {
                lines.set(lines.size() - 1, spaced(lines.getLast()));
            }
        }
        return new CellBox.Words(lines, style, column.align());
    }

    /** The line with a space at its end, so that it is not read together with the next one. */
    private static Line spaced(Line line) {
        if (line.runs().isEmpty() || !(line.runs().getLast() instanceof Run.Words last)) {
            return line;
        }
        var runs = new ArrayList<>(line.runs());
        runs.set(runs.size() - 1, new Run.Words(last.x(), last.width(), last.text() + " ", last.bold()));
        return new Line(runs, line.width());
    }
}
