package contrapposto.typeset;

import contrapposto.document.Badge;
import contrapposto.figure.Tone;
import java.util.List;
import java.util.Optional;

/**
 * The rest of a card that goes on on the next page: its name and side marks in place of the bar, not read a second
 * time.
 *
 * @param bar  of the card, for the sides its columns belong to
 * @param pill height of the side marks
 */
record CardRestSlab(List<Line> name, Style style, BarSlab bar, CardBody body, double pill) implements Slab {
    private static final double ABOVE_NAME = 1;
    private static final double BELOW_NAME = 1.5;
    private static final double BELOW_PILL = 1.5;

    CardRestSlab with(CardBody rest) {
        return new CardRestSlab(name, style, bar, rest, pill);
    }

    private boolean marked() {
        return bar.isSplit() && body.columns().isPresent();
    }

    private double top() {
        return ABOVE_NAME + name.size() * style.line() + BELOW_NAME + (marked() ? pill + BELOW_PILL : 0);
    }

    @Override
    public double height(double stretch) {
        return top() + body.height(stretch);
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        sheet.across(x, y, Stock.MEASURE, Sheet.FOOT);
        sheet.tags().artifact("Pagination", () -> {
            for (int i = 0; i < name.size(); i++) {
                sheet.letters(name.get(i), style, x, y + ABOVE_NAME + i * style.line(), Tone.BLACK);
            }
        });
        if (marked()) {
            double row = y + top() - pill - BELOW_PILL;
            mark(sheet, bar.left(), Badge.LEFT, x, row);
            mark(sheet, bar.right(), Badge.RIGHT, x + CardSetter.SECOND, row);
        }
        sheet.tags().begin("Sect");
        body.paint(sheet, x, y + top(), stretch);
        sheet.tags().end();
    }

    private void mark(Sheet sheet, Optional<BarSlab.End> end, Badge side, double x, double y) {
        if (end.map(BarSlab.End::present).orElse(false)) {
            sheet.tags().artifact("Pagination", () -> {
                Signs.shape(sheet.pen(), side, x, y, pill);
                sheet.pillLetters(side, x, y, pill);
            });
        }
    }

    @Override
    public boolean whole() {
        return false;
    }

    @Override
    public Optional<Cut> cut(double room, double page) {
        return body.cut(room - top(), page).map(cut -> new Cut(with((CardBody) cut.head()),
                with((CardBody) cut.tail())));
    }
}
