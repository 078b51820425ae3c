package contrapposto.typeset;

import contrapposto.document.Block.Logo;

/**
 * A logo in the upper right corner of a head, beside the head's first lines: it takes no height of its own, so that a page with it
 * holds what one without it holds.
 *
 * @param measure of the head and the logo together, mm
 */
record CornerSlab(Logo logo, double measure) implements Slab {
    /** The box it is fitted into, mm: lower than the two lines it stands beside. */
    private static final double WIDTH = 32;
    private static final double HEIGHT = 13;
    private static final double GAP = 5;

    /** What is left of {@code measure} for the lines beside it. */
    static double beside(double measure) {
        return measure - WIDTH - GAP;
    }

    @Override
    public double height(double stretch) {
        return 0;
    }

    @Override
    public void paint(Sheet sheet, double x, double y, double stretch) {
        sheet.figure(logo.drawing(), logo.alt(), x + measure - WIDTH, y, WIDTH, HEIGHT);
    }
}
