package contrapposto.typeset;

import java.util.Optional;

/** What stands under the head of a card: columns, and a band below them; one of the two may be missing. */
record CardBody(Optional<Slab> columns, Optional<Slab> band) implements Slab {
    private static final double ABOVE_RULE = 1.5;
    private static final double BELOW_RULE = 1.3;

    private double between() {
        return columns.isPresent() ? ABOVE_RULE + BELOW_RULE : 0;
    }

    private double columns(double stretch) {
        return columns.map(c -> c.height(stretch)).orElse(0.0);
    }

    @Override
    public double height(double stretch) {
        return columns(stretch) + band.map(b -> between() + b.height(stretch)).orElse(0.0);
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        paint(sheet, x, y, stretch, () -> { });
    }

    /** @param right paints what is read before the right column, or before everything where there is one column */
    void paint(Sheet sheet, double x, double y, double stretch, Runnable right) {
        if (columns.orElse(Stack.EMPTY) instanceof TwoColumns two) {
            two.paint(sheet, x, y, stretch, right);
        } else {
            right.run();
            columns.ifPresent(c -> c.paint(sheet, x, y, stretch));
        }
        double foot = y + columns(stretch);
        band.ifPresent(b -> {
            if (columns.isPresent()) {
                sheet.across(x, foot + ABOVE_RULE, Stock.MEASURE, Sheet.HAIR);
            }
            b.paint(sheet, x, foot + between(), stretch);
        });
    }

    @Override
    public Optional<Cut> cut(double room, double page) {
        if (columns(0) > room) {
            return columns.flatMap(c -> c.cut(room, page)).filter(cut -> cut.head().height(0) > 0)
                    .map(cut -> new Cut(new CardBody(Optional.of(cut.head()), Optional.empty()),
                            new CardBody(Optional.of(cut.tail()), band)));
        }
        var inside = band.flatMap(b -> b.cut(room - columns(0) - between(), page))
                .filter(cut -> cut.head().height(0) > 0)
                .map(cut -> new Cut(new CardBody(columns, Optional.of(cut.head())),
                        new CardBody(Optional.empty(), Optional.of(cut.tail()))));
        return inside.isPresent() || columns.isEmpty() || band.isEmpty() ? inside
                : Optional.of(new Cut(new CardBody(columns, Optional.empty()), new CardBody(Optional.empty(), band)));
    }
}
