package contrapposto.typeset;

import java.util.List;
import java.util.Optional;

/**
 * An exercise card: rule, name, bar, columns, and a band below.
 *
 * @param name      as a heading, listed for navigation under {@code key}
 * @param band      empty for none
 * @param gap       between bar and columns
 */
record CardSlab(String key, HeadingSlab name, BarSlab bar, Slab body, Optional<Slab> band, double gap)
        implements Slab {
    private static final double ABOVE_NAME = 2.5;
    private static final double ABOVE_RULE = 1.5;
    private static final double BELOW_RULE = 1.3;

    private double top() {
        return ABOVE_NAME + name.height(0) + bar.height() + gap;
    }

    @Override
    public double height(double stretch) {
        return top() + body.height(stretch)
                + band.map(b -> ABOVE_RULE + BELOW_RULE + b.height(stretch)).orElse(0.0);
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        sheet.press().note(key);
        sheet.tags().begin("Sect");
        sheet.across(x, y + Sheet.HEAVY / 2, Stock.MEASURE, Sheet.HEAVY);
        name.paint(sheet, x, y + ABOVE_NAME, stretch);
        double under = y + ABOVE_NAME + name.height(stretch);
        bar.paintLeft(sheet, x, under);
        if (body instanceof TwoColumns columns) {
            columns.paint(sheet, x, y + top(), stretch, () -> bar.paintRight(sheet, x, under));
        } else {
            bar.paintRight(sheet, x, under);
            body.paint(sheet, x, y + top(), stretch);
        }
        double foot = y + top() + body.height(stretch) + ABOVE_RULE;
        band.ifPresent(b -> {
            sheet.across(x, foot, Stock.MEASURE, Sheet.HAIR);
            b.paint(sheet, x, foot + BELOW_RULE, stretch);
        });
        sheet.tags().end();
    }

    @Override
    public Optional<Cut> cut(double room) {
        var parts = body.height(0) <= room - top() ? Optional.of(new Cut(body, Stack.EMPTY)) : body.cut(room - top());
        return parts.filter(cut -> cut.head().height(0) > 0).map(cut -> new Cut(
                new CardSlab(key, name, bar, cut.head(), Optional.empty(), gap),
                new CardSlab(key, name.quiet(), bar, cut.tail(), band, gap)));
    }
}
