package contrapposto.illustrate;

import contrapposto.figure.Canvas;
import contrapposto.figure.Circle;
import contrapposto.figure.Drawing;
import contrapposto.figure.Hatch;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.figure.Tone;
import contrapposto.quantity.Side;

/** The small signs of the key line under the exercise pages. Each fills a box of {@link #SIZE} mm. */
public final class LegendSigns {
    public static final double SIZE = 4.4;

    private LegendSigns() { }

    public static Drawing mostWeight() {
        return (width, height, label) -> new Canvas()
                .fill(Tone.BLACK, new Circle(new Point(width / 2, height / 2), 1.5).outline()).figure(width, height);
    }

    public static Drawing someWeight() {
        return (width, height, label) -> {
            Outline pad = new Circle(new Point(width / 2, height / 2), 1.5).outline();
            return new Canvas().stroke(Tone.BLACK, Lines.PAD_HATCH, Hatch.inside(pad, Lines.PAD_SPACING))
                    .line(Lines.PAD, pad).figure(width, height);
        };
    }

    public static Drawing heelUp() {
        return (width, height, label) -> {
            Sole sole = new Sole(Side.LEFT, new Point(width / 2, height - .2), height - .4, 0);
            return new Canvas().dashed(Lines.SOLE, .7, .5, sole.edge()).stroke(Tone.BLACK, Lines.SOLE, sole.toes())
                    .figure(width, height);
        };
    }

    public static Drawing onBox() {
        return (width, height, label) -> {
            double side = Math.min(width, height) - 1.2;
            double x = (width - side) / 2;
            double y = (height - side) / 2;
            return new Canvas().shape(Tone.WHITE, Lines.BOX, Outline.rectangle(x, y, side, side))
                    .fill(Tone.BLACK, Outline.rectangle(x, y + side - 1.1, side, 1.1)).figure(width, height);
        };
    }

    public static Drawing wedge() {
        return (width, height, label) -> {
            double side = Math.min(width, height) - 1.2;
            double x = (width - side) / 2;
            double y = (height - side) / 2;
            Canvas canvas = new Canvas().shape(Tone.WHITE, Lines.BOX, Outline.rectangle(x, y, side, side));
            Lines.dots(canvas, x, y, side, side);
            return canvas.figure(width, height);
        };
    }
}
