package contrapposto.sketch;

import contrapposto.figure.Bounds;
import contrapposto.figure.Canvas;
import contrapposto.figure.Drawing;
import contrapposto.figure.Figure;
import contrapposto.figure.Mark;
import contrapposto.figure.Point;
import java.util.ArrayList;
import java.util.List;

/** A drawn set-up that is still free in size: one position of a {@link Stage} with what is to be said about it. */
public final class Sketch implements Drawing {
    /** Points lie on a grid of a tenth of a point: finer than any printer, and a digit less in the file. */
    private static final double GRID = .1 * Pen.MM_PER_PT;

    private final Scene scene;
    private final List<Wish> wishes;
    private final boolean turned;

    Sketch(Scene scene, List<Wish> wishes, boolean turned) {
        this.scene = scene;
        this.wishes = List.copyOf(wishes);
        this.turned = turned;
    }

    /** How much of the start position's silhouette stays uncovered, 0 to 1; 0 without one. */
    public double ghostShare() {
        return scene.ghostShare();
    }

    /** The largest scale, mm per metre, at which everything fits into a box. */
    public double scale(double width, double height, double label) {
        return new Layout(scene, wishes).fit(width, height, label);
    }

    @Override
    public Figure drawn(double width, double height, double label) {
        return drawn(width, height, label, scale(width, height, label));
    }

    /** Drawn at a scale that several sketches share. */
    public Figure drawn(double width, double height, double label, double scale) {
        Sheet sheet = new Layout(scene, wishes).laid(width, height, label, scale);
        Figure figure = sheet.canvas().figure(width, height);
        List<Mark> marks = new ArrayList<>((turned ? figure.mirrored() : figure).marks());
        Canvas pills = new Canvas();
        for (Pill pill : sheet.pills()) {
            Point at = turned ? new Point(width - pill.centre().x(), pill.centre().y()) : pill.centre();
            new Pill(pill.side(), at, pill.height()).draw(pills, label, .45);
        }
        marks.addAll(pills.marks());
        return new Figure(width, height, marks).snapped(GRID);
    }

    /** What it needs in metres at scale 1, without words. */
    public Bounds extent() {
        return scene.bounds();
    }
}
