package contrapposto.typeset;

import contrapposto.document.Block.Table;
import contrapposto.document.Block.Table.Align;
import contrapposto.document.Block.Table.Column;
import contrapposto.document.Cell;
import contrapposto.document.Document.Print;
import contrapposto.document.Field;
import contrapposto.document.Inline;
import contrapposto.figure.Mark.Weight;
import contrapposto.figure.TextWidth;
import java.util.ArrayList;
import java.util.List;

/**
 * Rearranges tables for the large print, where eight weeks do not fit side by side: a week table becomes tables of four
 * weeks each, without the exercises that have nothing in them; in a log the words of the plan share one column.
 */
final class LargeTables {
    private static final double NAME = 56;
    private static final double SIDE = 19;
    private static final double LOG_NAME = 34;
    private static final double LOG_PLAN = 27;
    private static final double WORD_AIR = 0.6;
    /** What the names may give to heads over boxes, mm. */
    private static final double MOST_OVER = 9;
    private static final int WEEKS = 4;
    /** A dash alone says nothing in a running line. */
    private static final List<Inline> NO_WEIGHT = List.of(Inline.plain("–"));

    private LargeTables() { }

    static List<Table> of(Table table, Divisions divisions) {
        int labels = labels(table);
        if (labels == 0 || table.columns().size() <= labels) {
            return List.of(table);
        }
        return isLog(table) ? List.of(log(table, labels, divisions)) : weeks(table, labels);
    }

    /** Columns before the first dose or box; 0 when there is neither. */
    private static int labels(Table table) {
        return table.groups().stream().flatMap(g -> g.rows().stream()).mapToInt(LargeTables::firstValue)
                .filter(i -> i > 0).min().orElse(0);
    }

    private static int firstValue(Table.Row row) {
        for (int i = 0; i < row.cells().size(); i++) {
            if (isValue(row.cells().get(i))) {
                return i;
            }
        }
        return 0;
    }

    private static boolean isValue(Cell cell) {
        return switch (cell) {
            case Cell.Dose dose -> true;
            case Cell.Entry entry -> true;
            case Cell.Words words -> false;
            case Cell.Side side -> false;
            case Cell.Picture picture -> false;
            case Cell.Dash dash -> false;
            case Cell.Empty empty -> false;
        };
    }

    private static boolean isLog(Table table) {
        return table.groups().stream().flatMap(g -> g.rows().stream()).flatMap(r -> r.cells().stream())
                .anyMatch(c -> c instanceof Cell.Entry(Field field) && field.kind() != Field.Kind.CHECK);
    }

    private static List<Table> weeks(Table table, int labels) {
        var tables = new ArrayList<Table>();
        int columns = table.columns().size();
        double side = labels > 1 ? SIDE : 0;
        double each = (Stock.MEASURE - NAME - side) / WEEKS;
        for (int from = labels; from < columns; from += WEEKS) {
            int to = Math.min(from + WEEKS, columns);
            var widths = new ArrayList<Column>();
            for (int i = 0; i < labels; i++) {
                widths.add(widened(table.columns().get(i), i == 0 ? NAME : SIDE / (labels - 1)));
            }
            for (int i = from; i < to; i++) {
                widths.add(widened(table.columns().get(i), each));
            }
            int first = from;
            var groups = table.groups().stream().map(g -> new Table.Group(g.rows().stream()
                    .map(r -> picked(r, labels, first, to)).toList())).filter(g -> holds(g, labels)).toList();
            tables.add(new Table(table.title(), widths,
                    table.head().stream().map(r -> picked(r, labels, first, to)).toList(), groups,
                    to == columns ? table.note() : List.of()));
        }
        return tables;
    }

    private static Column widened(Column column, double width) {
        return new Column(width, column.align(), column.toned());
    }

    private static Table.Row picked(Table.Row row, int labels, int from, int to) {
        var cells = new ArrayList<>(row.cells().subList(0, labels));
        cells.addAll(row.cells().subList(from, to));
        return new Table.Row(cells, row.height());
    }

    private static boolean holds(Table.Group group, int labels) {
        return group.rows().stream().anyMatch(r -> r.cells().subList(labels, r.cells().size()).stream()
                .anyMatch(c -> !(c instanceof Cell.Empty)));
    }

    /** Name, side, plan in words, boxes. */
    private static Table log(Table table, int labels, Divisions divisions) {
        int first = 2;
        if (labels <= first) {
            return table;
        }
        double room = Stock.MEASURE - LOG_NAME - SIDE - LOG_PLAN;
        var shares = shares(table, labels, room, divisions);
        double over = Math.max(0, shares.stream().mapToDouble(w -> w).sum() - room);
        var widths = new ArrayList<>(List.of(new Column(LOG_NAME - over, Align.LEFT, false),
                new Column(SIDE, Align.CENTRE, false), new Column(LOG_PLAN, Align.LEFT, false)));
        for (int i = labels; i < table.columns().size(); i++) {
            widths.add(widened(table.columns().get(i), shares.get(i - labels)));
        }
        return new Table(table.title(), widths, table.head().stream().map(r -> merged(r, first, labels)).toList(),
                table.groups().stream().map(g -> new Table.Group(g.rows().stream()
                        .map(r -> merged(r, first, labels)).toList())).toList(), table.note());
    }

    /**
     * Widths of the boxes: each holds the longest part of its head's words, what is left is shared; even ones where the heads
     * need more than {@link #MOST_OVER} beyond the room.
     */
    private static List<Double> shares(Table table, int labels, double room, Divisions divisions) {
        int boxes = table.columns().size() - labels;
        var needs = new ArrayList<Double>();
        for (int i = labels; i < table.columns().size(); i++) {
            int column = i;
            needs.add(table.head().stream().mapToDouble(row -> longestPart(row.cells().get(column), divisions)).max().orElse(0));
        }
        double spare = room - needs.stream().mapToDouble(n -> n).sum();
        return needs.stream().map(need -> spare < -MOST_OVER ? room / boxes : need + Math.max(0, spare) / boxes).toList();
    }

    private static double longestPart(Cell cell, Divisions divisions) {
        double longest = 0;
        if (cell instanceof Cell.Words(List<List<Inline>> lines)) {
            for (var run : lines.stream().flatMap(List::stream).toList()) {
                if (run instanceof Inline.Text(String text, boolean bold)) {
                    for (String part : List.of(text.split(" ")).stream().flatMap(word -> divisions.parts(word).stream()).toList()) {
                        longest = Math.max(longest, WORD_AIR + TextWidth.of(part.replace(Divisions.MARK, '-'), TypeScale.of(Print.LARGE).body().size(), bold ? Weight.BOLD : Weight.REGULAR));
                    }
                }
            }
        }
        return longest;
    }

    private static Table.Row merged(Table.Row row, int from, int to) {
        var cells = new ArrayList<>(row.cells().subList(0, from));
        var runs = new ArrayList<Inline>();
        for (var cell : row.cells().subList(from, to)) {
            if (cell instanceof Cell.Words(List<List<Inline>> lines)) {
                for (var line : lines) {
                    if (line.equals(NO_WEIGHT)) {
                        continue;
                    }
                    if (!runs.isEmpty()) {
                        runs.add(Inline.plain(", "));
                    }
                    runs.addAll(line);
                }
            }
        }
        cells.add(runs.isEmpty() ? new Cell.Empty() : new Cell.Words(List.of(runs)));
        cells.addAll(row.cells().subList(to, row.cells().size()));
        return new Table.Row(cells, row.height());
    }
}
