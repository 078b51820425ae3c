package contrapposto.typeset;

import contrapposto.document.Inline;
import contrapposto.figure.Tone;
import java.util.List;

/** The line at the foot of a page: plan code and dates at the left; part and page at the right. Never read aloud. */
record Footer(Desk desk, List<Inline> words) {
    private static final double GAP = 6;
    private static final String WIDEST_NUMBER = "88";

    private Style style() {
        return desk.type().body();
    }

    private List<Line> left(double room) {
        return desk.lines(style()).broken(words, room);
    }

    /** Height beyond one line, which the live area must give up. */
    double extra() {
        return (left(Stock.MEASURE - GAP - count(WIDEST_NUMBER, WIDEST_NUMBER).width()).size() - 1) * style().line();
    }

    private Line count(String folio, String total) {
        return desk.lines(style()).single(List.of(Inline.bold(folio), of(total)));
    }

    private Inline of(String total) {
        return Inline.plain(" " + desk.wording().of() + " " + total);
    }

    /** @param folio printed page number, {@code total} of how many */
    void paint(Sheet sheet, String part, String folio, String total) {
        var bare = count(folio, total);
        var named = desk.lines(style()).single(
                List.of(Inline.plain(part + "\u00a0\u00a0 "), Inline.bold(folio), of(total)));
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
