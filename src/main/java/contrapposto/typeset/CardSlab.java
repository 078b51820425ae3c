package contrapposto.typeset;

import java.util.Optional;

/**
 * An exercise card: rule, name, bar, columns, and a band below.
 *
 * @param name  as a heading, listed for navigation under {@code key}
 * @param rest  the head of what goes on on another page, without a body
 * @param gap   between bar and columns
 * @param whole whether it is divided only where no page holds it; a card of words alone is divided anywhere
 */
record CardSlab(String key, HeadingSlab name, BarSlab bar, CardBody body, CardRestSlab rest, double gap, boolean whole)
        implements Slab {
    private static final double ABOVE_NAME = 2.5;
    /** Where less is left of a page, a card begins on the next one. */
    private static final double LEAST_ROOM = 0.3;
    /** What goes over to the next page at least. */
    private static final double LEAST_REST = 25;

    private double top() {
        return ABOVE_NAME + name.height(0) + bar.height() + gap;
    }

    @Override
    public double height(double stretch) {
        return top() + body.height(stretch);
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        sheet.press().note(key);
        sheet.tags().begin("Sect");
        sheet.across(x, y + Sheet.HEAVY / 2, Stock.MEASURE, Sheet.HEAVY);
        name.paint(sheet, x, y + ABOVE_NAME, stretch);
        double under = y + ABOVE_NAME + name.height(stretch);
        bar.paintLeft(sheet, x, under);
        body.paint(sheet, x, y + top(), stretch, () -> bar.paintRight(sheet, x, under));
        sheet.tags().end();
    }

    @Override
    public Optional<Cut> cut(double room, double page) {
        if (room < LEAST_ROOM * page) {
            return Optional.empty();
        }
        double last = room - top();
        return body.cut(last, page).filter(cut -> cut.tail().height(0) >= LEAST_REST)
                .or(() -> body.cut(last - LEAST_REST, page)).map(cut -> new Cut(
                        new CardSlab(key, name, bar, (CardBody) cut.head(), rest, gap, whole),
                        rest.with((CardBody) cut.tail())));
    }
}
