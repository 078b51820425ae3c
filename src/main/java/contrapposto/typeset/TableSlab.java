package contrapposto.typeset;

import contrapposto.document.Block.Table.Column;
import contrapposto.figure.Tone;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;

/**
 * A table. Divided between groups of rows only; the second part repeats title and heads.
 *
 * @param title in the first head row; without lines for none
 */
record TableSlab(HeadingSlab title, HeadingSlab again, List<Column> columns, List<Row> head, List<Group> groups,
                 Optional<Slab> note, double gap) implements Slab {
    private static final Tone EASY = new Tone.Grey(0xED / 255.0);
    private static final double ABOVE_HEAD = 0.8;
    private static final double BELOW_HEAD = 0.7;
    private static final double IN_GROUP = 0.3;
    /** Groups that go over to the next page at least. */
    private static final int FEWEST_AFTER = 2;

    /**
     * @param tight  smallest height
     * @param wide   height on a page with room
     * @param spans  whether its first cell goes on over the rows below
     */
    record Row(List<CellBox> cells, double tight, double wide, boolean spans) {
        double height(double stretch) {
            return tight + (wide - tight) * stretch;
        }

        /** Whether boxes stand in it, beside which single lines are centred. */
        boolean boxed() {
            return cells.stream().anyMatch(c -> c instanceof CellBox.Entry || c instanceof CellBox.Dash);
        }

        /** Height of the tallest text, for one top of all first lines. */
        double text() {
            return cells.stream().skip(spans ? 1 : 0).filter(c -> !(c instanceof CellBox.Side) && !(c instanceof CellBox.Picture))
                    .mapToDouble(CellBox::height).max().orElse(0);
        }
    }

    record Group(List<Row> rows) {
        double height(double stretch) {
            return 2 * IN_GROUP + rows.stream().mapToDouble(r -> r.height(stretch)).sum();
        }

        /** Over how many rows a cell stands: first cells and pictures over the empty ones below; 0 for those. */
        int span(int row, int column) {
            int top = row;
            while (top > 0 && cell(top, column) instanceof CellBox.Empty) {
                top--;
            }
            if (column > 0 && !(cell(top, column) instanceof CellBox.Picture)) {
                return 1;
            }
            if (top < row) {
                return 0;
            }
            int below = row + 1;
            while (below < rows.size() && cell(below, column) instanceof CellBox.Empty) {
                below++;
            }
            return below - row;
        }

        private CellBox cell(int row, int column) {
            return rows.get(row).cells().get(column);
        }
    }

    private double headHeight() {
        return titled() ? ABOVE_HEAD + raised() + heads() : heads();
    }

    /** Height of a title that is too wide for the empty cells of the first head row and stands above it. */
    private double raised() {
        double room = 0;
        for (int i = 0; !head.isEmpty() && i < columns.size()
                && head.getFirst().cells().get(i) instanceof CellBox.Empty; i++) {
            room += columns.get(i).width();
        }
        return title.lines().size() > 1 || title.lines().getFirst().width() > room ? title.height(0) : 0;
    }

    private double heads() {
        return head.isEmpty() ? 0 : head.stream().mapToDouble(r -> r.height(0)).sum() + BELOW_HEAD;
    }

    private boolean titled() {
        return !title.lines().isEmpty();
    }

    private double grid(double stretch) {
        return headHeight() + groups.stream().mapToDouble(g -> g.height(stretch)).sum();
    }

    @Override
    public double height(double stretch) {
        return grid(stretch) + note.map(n -> gap + n.height(stretch)).orElse(0.0);
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        double width = columns.stream().mapToDouble(Column::width).sum();
        double top = titled() ? y + ABOVE_HEAD : y;
        tone(sheet, x, y, grid(stretch));
        if (titled()) {
            sheet.across(x, y, width, Sheet.HEAVY);
            title.paint(sheet, x, top, stretch);
            top += raised();
        }
        sheet.tags().begin("Table");
        for (int i = 0; i < head.size(); i++) {
            paint(sheet, head.get(i), x, top, head.get(i).height(0), true, i == 0, column -> 1);
            top += head.get(i).height(0);
        }
        top += head.isEmpty() ? 0 : BELOW_HEAD;
        for (int i = 0; i < groups.size(); i++) {
            if (i > 0 || !head.isEmpty()) {
                sheet.across(x, top, width, i == 0 ? Sheet.FOOT : Sheet.HAIR);
            }
            top = paint(sheet, groups.get(i), x, top, stretch);
        }
        sheet.across(x, top, width, Sheet.FOOT);
        sheet.tags().end();
        double foot = top + gap;
        note.ifPresent(n -> n.paint(sheet, x, foot, stretch));
    }

    private double paint(Sheet sheet, Group group, double x, double y, double stretch) {
        double top = y + IN_GROUP;
        for (int i = 0; i < group.rows().size(); i++) {
            var row = group.rows().get(i);
            int at = i;
            paint(sheet, row, x, top, row.height(stretch), false, false, column -> group.span(at, column));
            top += row.height(stretch);
        }
        return top + IN_GROUP;
    }

    /** @param spans rows of the cell in a column; 0 when a cell above stands in its place */
    private void paint(Sheet sheet, Row row, double x, double y, double height, boolean header, boolean first,
                       IntUnaryOperator spans) {
        var tags = sheet.tags();
        tags.begin("TR");
        double left = x;
        double text = (height - row.text()) / 2;
        for (int i = 0; i < row.cells().size(); i++) {
            var cell = row.cells().get(i);
            double width = columns.get(i).width();
            int span = spans.applyAsInt(i);
            if (span > 0) {
                boolean heading = cell.words() && (header || i == 0);
                tags.begin(heading ? "TH" : "TD");
                tags.cell(heading ? header ? "Column" : "Row" : "", span);
                double own = row.boxed() ? Math.max(0, (height - cell.height()) / 2) : text;
                cell.paint(sheet, left, y, width, height, first && titled() ? onTitle(cell) : own);
                tags.end();
            }
            left += width;
        }
        tags.end();
    }

    /** Puts the words of the first head row on the baseline of the title. */
    private double onTitle(CellBox cell) {
        return cell instanceof CellBox.Words words ? title.style().baseline() - words.style().baseline() : 0;
    }

    private void tone(Sheet sheet, double x, double y, double height) {
        double left = x;
        for (int i = 0; i < columns.size(); i++) {
            var column = columns.get(i);
            if (column.toned()) {
                sheet.fill(left, y, column.width(), height, EASY);
                sheet.rule(left, y, left, y + height, Sheet.HAIR);
                if (i < columns.size() - 1) {
                    sheet.rule(left + column.width(), y, left + column.width(), y + height, Sheet.HAIR);
                }
            }
            left += column.width();
        }
    }

    @Override
    public Optional<Cut> cut(double room, double page) {
        double used = headHeight();
        int fits = 0;
        while (fits < groups.size() && used + groups.get(fits).height(0) <= room + 1e-6) {
            used += groups.get(fits++).height(0);
        }
        if (fits == 0 || fits == groups.size() && note.isEmpty()) {
            return Optional.empty();
        }
        int split = Math.min(fits, groups.size() > FEWEST_AFTER ? groups.size() - FEWEST_AFTER : groups.size() - 1);
        return split == 0 ? Optional.empty() : Optional.of(cutBefore(split));
    }

    /** Its last groups under repeated heads, where enough stay behind. */
    @Override
    public Optional<Cut> lastRows() {
        return groups.size() < 2 * FEWEST_AFTER ? Optional.empty() : Optional.of(cutBefore(groups.size() - FEWEST_AFTER));
    }

    private Cut cutBefore(int split) {
        return new Cut(
                new TableSlab(title, again, columns, head, groups.subList(0, split), Optional.empty(), gap),
                new TableSlab(again, again, columns, head, groups.subList(split, groups.size()), note, gap));
    }
}
