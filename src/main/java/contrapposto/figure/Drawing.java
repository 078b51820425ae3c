package contrapposto.figure;

/**
 * A figure that is still free in size: the page decides how large it is, then it is drawn once for that box, with
 * line widths and label sizes that do not scale. A pure function: equal arguments give equal figures.
 */
@FunctionalInterface
public interface Drawing {
    /**
     * @param width     of the box, mm
     * @param height    of the box, mm
     * @param labelSize of the words on it, pt
     */
    Figure drawn(double width, double height, double labelSize);
}
