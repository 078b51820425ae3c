package contrapposto.typeset;

import contrapposto.document.Inline;
import contrapposto.figure.Tone;
import java.util.List;

/** The line at the foot of a page: plan code and dates at the left; part and page at the right. Never read aloud. */
record Footer(Desk desk, List<Inline> words) {
    private static final double GAP = 6;
    private static final double WIDEST_FOLIO = 24;

    private Style style() {
        return desk.type().body();
    }

    private List<Line> left(double room) {
        return desk.lines(style()).broken(words, room);
    }

    /** Height beyond one line, which the live area must give up. */
    double extra() {
        double room = Stock.MEASURE - GAP - desk.gap(WIDEST_FOLIO);
        return (left(room).size() - 1) * style().line();
    }

    /** @param folio printed page number, {@code total} of how many */
    void paint(Sheet sheet, String part, String folio, String total) {
        var count = List.<Inline>of(Inline.bold(folio), Inline.plain(" " + desk.wording().of() + " " + total));
        var breaker = desk.lines(style());
        var bare = breaker.single(count);
        var named = breaker.single(List.of(Inline.plain(part + "\u00a0\u00a0 "), count.get(0), count.get(1)));
        boolean fits = left(Stock.MEASURE).getFirst().width() + GAP + named.width() <= Stock.MEASURE;
        var right = fits ? named : bare;
        var lines = left(Stock.MEASURE - GAP - right.width());
        var stock = desk.stock();
        double top = stock.folio() - style().baseline();
        sheet.tags().artifact("Pagination", () -> {
            for (int i = 0; i < lines.size(); i++) {
                double up = (lines.size() - 1 - i) * style().line();
                sheet.letters(lines.get(i), style(), stock.margin(), top - up, Tone.BLACK);
            }
            sheet.letters(right, style(), stock.margin() + Stock.MEASURE - right.width(), top, Tone.BLACK);
        });
    }
}
