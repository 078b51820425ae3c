package contrapposto.typeset;

import contrapposto.document.Document.Legend;
import contrapposto.figure.Tone;
import java.util.ArrayList;
import java.util.List;

/** What the marks of a part's drawings mean, at the foot of its pages: read on the first, decoration on the others. */
record LegendSlab(List<List<Entry>> rows, List<Line> aside, Style style, boolean read) implements Slab {
    private record Entry(Legend.Item item, Line words) {
        double width() {
            return item.width() + INNER + words.width();
        }
    }

    private static final double INNER = 1;
    private static final double GAP = 3.2;
    private static final double ROW = 5.2;

    static LegendSlab of(Legend legend, Desk desk) {
        var style = desk.type().body();
        var breaker = desk.lines(style);
        var rows = new ArrayList<List<Entry>>();
        double filled = Stock.MEASURE;
        for (var item : legend.items()) {
            var entry = new Entry(item, breaker.single(item.words() + " ", false));
            if (filled + entry.width() > Stock.MEASURE) {
                rows.add(new ArrayList<>());
                filled = 0;
            }
            rows.getLast().add(entry);
            filled += entry.width() + GAP;
        }
        var aside = legend.aside().isEmpty() ? List.<Line>of() : breaker.broken(legend.aside(), false, Stock.MEASURE);
        for (int i = 0; i < aside.size(); i++) {
            if (i > 0 || filled + aside.getFirst().width() > Stock.MEASURE) {
                rows.add(new ArrayList<>());
            }
        }
        return new LegendSlab(rows, aside, style, true);
    }

    LegendSlab unread() {
        return new LegendSlab(rows, aside, style, false);
    }

    private double row() {
        return Math.max(ROW, style.line());
    }

    @Override
    public double height(double stretch) {
        return rows.size() * row();
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        sheet.tags().artifact(() -> each(x, y, (entry, left, top) -> {
            double size = sheet.desk().type().body().size();
            var item = entry.item();
            sheet.press().figures().paint(item.drawing().drawn(item.width(), item.height(), size),
                    sheet.pen().at(left, top + (row() - item.height()) / 2));
        }));
        if (read) {
            sheet.tags().passing(() -> sheet.tags().leaf("P", () -> words(sheet, x, y)));
        } else {
            sheet.tags().artifact(() -> words(sheet, x, y));
        }
    }

    private void words(Sheet sheet, double x, double y) {
        each(x, y, (entry, left, top) -> sheet.letters(entry.words(), style, left + entry.item().width() + INNER,
                top + (row() - style.line()) / 2, Tone.BLACK));
        for (int i = 0; i < aside.size(); i++) {
            double left = aside.size() > 1 ? x : x + Stock.MEASURE - aside.get(i).width();
            sheet.letters(aside.get(i), style, left,
                    y + (rows.size() - aside.size() + i) * row() + (row() - style.line()) / 2, Tone.BLACK);
        }
    }

    private interface Step {
        void take(Entry entry, double x, double y);
    }

    private void each(double x, double y, Step step) {
        for (int i = 0; i < rows.size(); i++) {
            double left = x;
            for (var entry : rows.get(i)) {
                step.take(entry, left, y + i * row());
                left += entry.width() + GAP;
            }
        }
    }
}
