package contrapposto.sketch;

import contrapposto.figure.Bounds;
import contrapposto.figure.Canvas;
import contrapposto.figure.Mark.Anchor;
import contrapposto.figure.Mark.Weight;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.figure.TextWidth;
import contrapposto.figure.Tone;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A figure being drawn at one size: what it shows, where it falls, what is taken.
 *
 * @param label   size of words, pt
 * @param large   whether lines of measures are the thicker kind
 * @param pills   side marks, kept apart since they are not mirrored with the rest
 */
record Sheet(Scene scene, Placing placing, Occupancy occupancy, Canvas canvas, double width, double height, double label,
             boolean large, List<Pill> pills) {

    Point at(Vector3D p) {
        return placing.place(scene.camera().see(p));
    }

    double capHeight() {
        return TextWidth.capHeight(label);
    }

    double textWidth(String text) {
        return TextWidth.of(text, label, Weight.REGULAR);
    }

    /** Lines of measures: .40 pt, or .50 pt in a large figure; never under a quarter of a millimetre's half. */
    double thin() {
        return (large ? .5 : .4) * Pen.MM_PER_PT;
    }

    void thinLine(Point a, Point b) {
        canvas.line(thin(), a, b);
    }

    /** A solid head of a measure line. */
    void head(Point tip, Point direction) {
        Point side = direction.quarterTurn();
        Point back = tip.along(direction, -1.5);
        canvas.fill(Tone.BLACK, Outline.polygon(tip, back.along(side, .45), back.along(side, -.45)));
    }

    /** The box that words centred on a point need. */
    Bounds wordsAround(Point centre, String text) {
        double half = textWidth(text) / 2 + .3;
        double tall = capHeight() / 2 + .5;
        return new Bounds(centre.x() - half, centre.y() - tall, centre.x() + half, centre.y() + tall);
    }

    /** Sets words centred on a point, over a white edge, and claims their room. */
    void words(Point centre, String text, boolean bold) {
        canvas.words(new Point(centre.x(), centre.y() + capHeight() / 2), text, label, bold ? Weight.BOLD : Weight.REGULAR,
                Anchor.MIDDLE, Tone.BLACK, true);
        occupancy.claim(wordsAround(centre, text), Occupancy.LABEL);
    }

    /** A white edge under what follows. */
    void clear(double width, Outline... outlines) {
        canvas.stroke(Tone.WHITE, width, List.of(outlines));
    }
}
