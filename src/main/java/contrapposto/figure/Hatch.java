package contrapposto.figure;

import java.util.ArrayList;
import java.util.List;

/** Parallel lines at 45 degrees inside an outline, as chords: patterns that every reader and printer draws alike. */
public final class Hatch {
    private Hatch() { }

    /** Chords {@code spacing} apart inside {@code outline}, at places that do not depend on the outline. */
    public static List<Outline> inside(Outline outline, double spacing) {
        List<Point> corners = outline.flattened();
        double step = spacing * Math.sqrt(2);
        double least = corners.stream().mapToDouble(p -> p.x() + p.y()).min().orElseThrow();
        double most = corners.stream().mapToDouble(p -> p.x() + p.y()).max().orElseThrow();
        List<Outline> chords = new ArrayList<>();
        for (double sum = Math.ceil(least / step) * step; sum < most; sum += step) {
            List<Point> crossings = crossings(corners, sum);
            for (int i = 0; i + 1 < crossings.size(); i += 2) {
                chords.add(Outline.polyline(crossings.get(i), crossings.get(i + 1)));
            }
        }
        return chords;
    }

    private static List<Point> crossings(List<Point> corners, double sum) {
        List<Point> found = new ArrayList<>();
        Point a = corners.getLast();
        for (Point b : corners) {
            double da = a.x() + a.y() - sum;
            double db = b.x() + b.y() - sum;
            if (da > 0 != db > 0) {
                found.add(a.toward(b, da / (da - db)));
            }
            a = b;
        }
        found.sort(java.util.Comparator.comparingDouble(Point::x));
        return found;
    }
}
