package contrapposto.sketch;

/** Greys of the drawing, 0 black to 1 white. Side is told by shade: the left shoe is white, the right one dark. */
final class Tones {
    static final double BLACK = 0;
    static final double WHITE = 1;
    static final double SKIN = 1;
    static final double TOP = .90;
    static final double WAIST = .74;
    static final double SHORTS = .42;
    static final double HAIR = .30;
    static final double BAND = .22;
    static final double DARK_SHOE = .22;
    static final double DARK_SHOE_SOLE = .98;
    static final double LIGHT_SHOE = .98;
    static final double LIGHT_SHOE_SOLE = .55;
    static final double FLOOR = .93;
    static final double FLOOR_EDGE = .30;
    static final double CONTACT = .58;
    static final double GHOST = .94;
    static final double GHOST_LINE = .62;

    private Tones() { }

    /** The paler tone of a far limb. */
    static double far(double tone) {
        return tone + .48 * (1 - tone);
    }
}
