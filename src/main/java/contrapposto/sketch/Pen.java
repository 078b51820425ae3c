package contrapposto.sketch;

/** Line widths in shares of the figure's own line, which grows a little with its height. */
public final class Pen {
    public static final double MM_PER_PT = 25.4 / 72;
    static final double FAR = .52;
    static final double HEM = .5;
    static final double RIB = .5;
    static final double TAB = .65;
    static final double EAR = .45;
    static final double NOSE = .55;
    static final double EDGE = .45;
    static final double THING = .65;
    static final double GHOST = .6;
    static final double FLOOR = .9;
    /** Nothing is drawn thinner, mm (.3 pt). */
    static final double THINNEST = .3 * MM_PER_PT;

    private Pen() { }

    /** The line of a near limb in mm for a figure of {@code height} mm: .75 pt at 45 mm, 1.05 pt at 90 mm. */
    static double line(double height) {
        return (.45 + height / 150) * MM_PER_PT;
    }
}
