package contrapposto.sketch;

import contrapposto.figure.Bounds;
import contrapposto.figure.Corners;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import java.util.ArrayList;
import java.util.List;

/** What already lies where on a figure: a grid of weights, and the boxes of words, which nothing may overlap. */
final class Occupancy {
    static final double HEAD = 14;
    static final double BODY = 6;
    static final double COLUMN = 2.5;
    static final double CORD = 2.5;
    static final double MAT = 1.2;
    static final double GHOST = .5;
    static final double MEASURE = 9;
    static final double ARROW = 12;
    static final double LABEL = 20;
    /** A drawn line, which words keep off. */
    static final double LINE = 30;
    static final double TAG = 40;
    /** What no place may cost. */
    static final double FORBIDDEN = 1e4;
    private static final double CELL = .5;

    private final double width;
    private final double height;
    private final int columns;
    private final int rows;
    private final double[] weight;
    private final List<Bounds> words = new ArrayList<>();

    Occupancy(double width, double height) {
        this.width = width;
        this.height = height;
        this.columns = (int) (width / CELL) + 1;
        this.rows = (int) (height / CELL) + 1;
        this.weight = new double[columns * rows];
    }

    void outline(Outline outline, double value) {
        Corners corners = Corners.of(outline);
        Bounds b = corners.bounds();
        int top = Math.max(0, (int) Math.floor(b.minY() / CELL));
        int bottom = Math.min(rows - 1, (int) Math.ceil(b.maxY() / CELL));
        double[] crossings = new double[corners.size()];
        for (int row = top; row <= bottom; row++) {
            int count = corners.crossings((row + .5) * CELL, crossings);
            for (int i = 0; i + 1 < count; i += 2) {
                int from = Math.max(0, (int) Math.ceil(crossings[i] / CELL - .5));
                int to = Math.min(columns - 1, (int) Math.floor(crossings[i + 1] / CELL - .5));
                for (int c = from; c <= to; c++) {
                    raise(row, c, value);
                }
            }
        }
    }

    private void raise(int row, int column, double value) {
        int at = row * columns + column;
        weight[at] = Math.max(weight[at], value);
    }

    void box(Bounds b, double value) {
        for (int row = Math.max(0, cell(b.minY())); row <= Math.min(rows - 1, cell(b.maxY())); row++) {
            for (int c = Math.max(0, cell(b.minX())); c <= Math.min(columns - 1, cell(b.maxX())); c++) {
                raise(row, c, value);
            }
        }
    }

    void line(Point a, Point b, double value, double thick) {
        int steps = (int) (a.distance(b) / CELL) + 1;
        for (int i = 0; i <= steps; i++) {
            Point p = a.toward(b, (double) i / steps);
            box(new Bounds(p.x() - thick / 2, p.y() - thick / 2, p.x() + thick / 2, p.y() + thick / 2), value);
        }
    }

    void path(Outline path, double value, double thick) {
        List<Point> points = path.flattened();
        for (int i = 0; i + 1 < points.size(); i++) {
            line(points.get(i), points.get(i + 1), value, thick);
        }
    }

    /** A line in the cells it runs through. */
    void edge(Outline outline, double value) {
        List<Point> points = new ArrayList<>(outline.flattened());
        if (outline.closed()) {
            points.add(outline.start());
        }
        for (int i = 0; i + 1 < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get(i + 1);
            int steps = (int) (2 * a.distance(b) / CELL) + 1;
            for (int k = 0; k <= steps; k++) {
                Point p = a.toward(b, (double) k / steps);
                int row = cell(p.y());
                int column = cell(p.x());
                if (row >= 0 && column >= 0 && row < rows && column < columns) {
                    raise(row, column, value);
                }
            }
        }
    }

    /** Words or a tag now stand here: nothing else may. */
    void claim(Bounds b, double value) {
        words.add(b);
        box(b, value);
    }

    /** Whether words may stand here at all. */
    boolean free(Bounds b) {
        if (b.minX() < 0 || b.minY() < 0 || b.maxX() > width || b.maxY() > height) {
            return false;
        }
        for (Bounds word : words) {
            if (b.meets(word)) {
                return false;
            }
        }
        return true;
    }

    /** Weight times area of what lies under a box; {@link #FORBIDDEN} off the page or over words. */
    double cost(Bounds b) {
        if (!free(b)) {
            return FORBIDDEN;
        }
        double sum = 0;
        for (int row = cell(b.minY()); row <= Math.min(rows - 1, cell(b.maxY())); row++) {
            for (int c = cell(b.minX()); c <= Math.min(columns - 1, cell(b.maxX())); c++) {
                sum += weight[row * columns + c];
            }
        }
        return sum * CELL * CELL;
    }

    /** As {@link #cost(Bounds)}, but {@link #FORBIDDEN} over a line too. */
    double clearCost(Bounds b) {
        if (!free(b)) {
            return FORBIDDEN;
        }
        double sum = 0;
        for (int row = cell(b.minY()); row <= Math.min(rows - 1, cell(b.maxY())); row++) {
            for (int c = cell(b.minX()); c <= Math.min(columns - 1, cell(b.maxX())); c++) {
                double here = weight[row * columns + c];
                if (here == LINE) {
                    return FORBIDDEN;
                }
                sum += here;
            }
        }
        return sum * CELL * CELL;
    }

    double cost(Point centre, double side) {
        return cost(new Bounds(centre.x() - side / 2, centre.y() - side / 2, centre.x() + side / 2, centre.y() + side / 2));
    }

    /** Weight along a line. */
    double lineCost(Point a, Point b) {
        int steps = Math.max(2, (int) (a.distance(b) / CELL));
        double sum = 0;
        for (int i = 0; i <= steps; i++) {
            Point p = a.toward(b, (double) i / steps);
            int row = cell(p.y());
            int c = cell(p.x());
            if (row >= 0 && c >= 0 && row < rows && c < columns) {
                sum += weight[row * columns + c] * CELL;
            }
        }
        return sum;
    }

    /** The area of all cells that hold at least {@code value}, mm². */
    double area(double value) {
        double cells = 0;
        for (double w : weight) {
            cells += w >= value ? 1 : 0;
        }
        return cells * CELL * CELL;
    }

    /** The area where this grid holds at least {@code value} and the other one holds nothing, mm². */
    double areaOutside(double value, Occupancy other) {
        double cells = 0;
        for (int i = 0; i < weight.length; i++) {
            cells += weight[i] >= value && other.weight[i] == 0 ? 1 : 0;
        }
        return cells * CELL * CELL;
    }

    private static int cell(double at) {
        return (int) Math.floor(at / CELL);
    }
}
