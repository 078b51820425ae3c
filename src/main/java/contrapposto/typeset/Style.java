package contrapposto.typeset;

/**
 * How a line of text is set.
 *
 * @param size in pt
 * @param line height of the line in mm
 */
record Style(double size, double line) {
    /** Roboto's ascender and the sum of ascender and descender, in ems. */
    private static final double ASCENT = 0.928;
    private static final double EXTENT = 1.172;

    static final double MM_PER_PT = 25.4 / 72;

    /** The type size in mm. */
    double em() {
        return size * MM_PER_PT;
    }

    /** From the top of the line to its baseline, in mm. */
    double baseline() {
        return (line - EXTENT * em()) / 2 + ASCENT * em();
    }

    /** The same letters in a line of another height. */
    Style in(double height) {
        return new Style(size, height);
    }
}
