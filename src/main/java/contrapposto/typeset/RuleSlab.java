package contrapposto.typeset;

import contrapposto.document.Block.Rule.Weight;

/** A line across, with words centred below it. */
record RuleSlab(Weight weight, Line words, Style style, double measure) implements Slab {
    private static final double DASH_ON = 1.2;
    private static final double DASH_OFF = 0.9;
    private static final double BELOW = 0.6;

    @Override
    public double height(double stretch) {
        return words.width() > 0 ? BELOW + style.line() : Sheet.HEAVY;
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        switch (weight) {
            case HAIR -> sheet.across(x, y, measure, Sheet.HAIR);
            case HEAVY -> sheet.across(x, y, measure, Sheet.HEAVY);
            case CUT -> sheet.tags().artifact(() -> {
                sheet.pen().moveTo(x, y);
                sheet.pen().lineTo(x + measure, y);
                sheet.pen().dashed(sheet.desk().heads(), Sheet.HAIR, DASH_ON, DASH_OFF);
            });
        }
        if (words.width() > 0) {
            sheet.leaf("P", words, style, x + (measure - words.width()) / 2, y + BELOW);
        }
    }
}
