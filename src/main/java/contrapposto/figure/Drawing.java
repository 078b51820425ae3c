package contrapposto.figure;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

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

    /** The same drawing, which draws each size once: several editions and passes ask for the same boxes. */
    default Drawing remembered() {
        record Box(double width, double height, double labelSize) { }
        Map<Box, Figure> drawn = new ConcurrentHashMap<>();
        return (width, height, labelSize) -> drawn.computeIfAbsent(new Box(width, height, labelSize), box -> drawn(width, height, labelSize));
    }
}
