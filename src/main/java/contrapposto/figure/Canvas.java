package contrapposto.figure;

import contrapposto.figure.Mark.Anchor;
import contrapposto.figure.Mark.Weight;
import java.util.ArrayList;
import java.util.List;

/** Marks gathered in painting order; only the one who draws a figure holds it. */
public final class Canvas {
    private final List<Mark> marks = new ArrayList<>();

    public Canvas fill(Tone tone, Outline... outlines) {
        return fill(tone, List.of(outlines));
    }

    public Canvas fill(Tone tone, List<Outline> outlines) {
        marks.add(new Mark.Fill(outlines, tone));
        return this;
    }

    public Canvas line(double width, Outline... outlines) {
        return stroke(Tone.BLACK, width, List.of(outlines));
    }

    public Canvas line(double width, Point from, Point to) {
        return line(width, Outline.polyline(from, to));
    }

    public Canvas stroke(Tone tone, double width, List<Outline> outlines) {
        marks.add(new Mark.Stroke(outlines, tone, width, List.of()));
        return this;
    }

    public Canvas dashed(double width, double on, double off, Outline... outlines) {
        marks.add(new Mark.Stroke(List.of(outlines), Tone.BLACK, width, List.of(on, off)));
        return this;
    }

    /** A shape with an edge; the line lies half inside, half outside. */
    public Canvas shape(Tone tone, double width, Outline... outlines) {
        return fill(tone, outlines).line(width, outlines);
    }

    public Canvas words(Point at, String text, double size, Weight weight, Anchor anchor) {
        marks.add(new Mark.Label(at, text, size, weight, anchor, Tone.BLACK, false));
        return this;
    }

    public Canvas words(Point at, String text, double size, Weight weight, Anchor anchor, Tone tone, boolean halo) {
        marks.add(new Mark.Label(at, text, size, weight, anchor, tone, halo));
        return this;
    }

    public Canvas add(Mark mark) {
        marks.add(mark);
        return this;
    }

    public Canvas addAll(List<Mark> more) {
        marks.addAll(more);
        return this;
    }

    public List<Mark> marks() {
        return List.copyOf(marks);
    }

    public Figure figure(double width, double height) {
        return new Figure(width, height, marks);
    }
}
