package contrapposto.typeset;

import contrapposto.document.Document.Paper;

/**
 * A sheet of paper and the live area on it, in mm from its top left corner.
 *
 * @param margin left and right
 * @param top    where the live area starts
 * @param bottom where it ends
 * @param folio  baseline of the footer
 */
record Stock(double width, double height, double margin, double top, double bottom, double folio) {
    /** Width of the live area, the same on all papers so that line breaks are the same too. */
    static final double MEASURE = 178;

    private static final Stock A4 = new Stock(210, 297, 16, 12, 282, 289.5);
    private static final Stock LETTER = new Stock(215.9, 279.4, 18.95, 10, 265.9, 272.4);

    static Stock of(Paper paper) {
        return switch (paper) {
            case A4 -> A4;
            case LETTER -> LETTER;
        };
    }

    double live() {
        return bottom - top;
    }
}
