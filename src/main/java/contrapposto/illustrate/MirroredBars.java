package contrapposto.illustrate;

import contrapposto.figure.Canvas;
import contrapposto.figure.Drawing;
import contrapposto.figure.Figure;
import contrapposto.figure.Mark.Anchor;
import contrapposto.figure.Mark.Weight;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.figure.TextWidth;
import contrapposto.figure.Tone;
import contrapposto.quantity.Side;
import contrapposto.sketch.Pill;
import java.util.List;

/** Sets a week per muscle, left bars growing left and right bars growing right from the names on the midline. */
public final class MirroredBars {
    public static final double WIDTH = 112;
    private static final double ROW = 5.6;
    private static final double BAR = 3.9;
    private static final double NAMES = 41;
    private static final double HEAD = 9;
    private static final double FOOT = 7;
    private static final int TICK = 4;

    /** One muscle and its weekly sets per side. */
    public record Bar(String name, double left, double right) {
        double on(Side side) {
            return side == Side.LEFT ? left : right;
        }
    }

    private MirroredBars() { }

    /** The height that {@code bars} rows want, mm. */
    public static double height(int bars) {
        return HEAD + ROW * bars + FOOT;
    }

    /** @param unit what the bars count, as "sets a week" */
    public static Drawing of(List<Bar> bars, String unit) {
        List<Bar> rows = List.copyOf(bars);
        return (width, height, label) -> drawn(rows, unit, width, height, label);
    }

    private static Figure drawn(List<Bar> bars, String unit, double width, double height, double label) {
        Canvas canvas = new Canvas();
        double largest = bars.stream().mapToDouble(b -> Math.max(b.left(), b.right())).max().orElse(0);
        double names = NAMES * label / 11;
        double wing = (width - names) / 2;
        double value = 1.2 + TextWidth.of(Numerals.number(largest), label, Weight.BOLD);
        double perSet = Math.min(2.75 * label / 11, (wing - value) / Math.max(1, largest));
        double row = Math.max(ROW, label * .51);
        double bottom = HEAD + row * bars.size();
        for (Side side : Side.values()) {
            int out = -side.sign();
            double zero = width / 2 + out * names / 2;
            head(canvas, side, zero, out, unit, label);
            for (int sets = TICK; sets <= Math.ceil(largest / TICK) * TICK && sets * perSet + TextWidth.of(Integer.toString(sets), label, Weight.REGULAR) / 2 < wing; sets += TICK) {
                double x = zero + out * sets * perSet;
                canvas.dashed(Lines.THIN, .25, 1.2, Outline.polyline(new Point(x, HEAD - 1), new Point(x, bottom + .6)));
                canvas.words(new Point(x, bottom + 1.6 + TextWidth.capHeight(label)), Integer.toString(sets), label,
                        Weight.REGULAR, Anchor.MIDDLE);
            }
            for (int i = 0; i < bars.size(); i++) {
                bar(canvas, side, bars.get(i).on(side) * perSet, Numerals.number(bars.get(i).on(side)), zero, out,
                        HEAD + row * (i + .5), label);
            }
            canvas.line(.4, new Point(zero, HEAD - 1), new Point(zero, bottom + .6));
        }
        for (int i = 0; i < bars.size(); i++) {
            canvas.words(new Point(width / 2, HEAD + row * (i + .5) + TextWidth.capHeight(label) / 2), bars.get(i).name(),
                    label, Weight.REGULAR, Anchor.MIDDLE);
        }
        return canvas.figure(width, height);
    }

    private static void head(Canvas canvas, Side side, double zero, int out, String unit, double label) {
        double pill = Math.max(5, Pill.heightFor(label));
        double x = zero + out * pill / 2;
        new Pill(side, new Point(x, 3.2), pill).draw(canvas, Pill.letterSize(pill, label), 0);
        canvas.words(new Point(x + out * (pill / 2 + 1.2), 3.2 + TextWidth.capHeight(label) / 2), unit, label,
                Weight.REGULAR, out < 0 ? Anchor.END : Anchor.START);
    }

    private static void bar(Canvas canvas, Side side, double length, String value, double zero, int out, double y,
                            double label) {
        if (length > 0) {
            Outline bar = Outline.rectangle(Math.min(zero, zero + out * length), y - BAR / 2, length, BAR);
            if (side == Side.LEFT) {
                canvas.shape(Tone.WHITE, .4, bar);
            } else {
                canvas.fill(Tone.BLACK, bar);
            }
        }
        Point at = new Point(zero + out * (length + 1.2), y + TextWidth.capHeight(label) / 2);
        double wide = TextWidth.of(value, label, Weight.BOLD);
        canvas.fill(Tone.WHITE, Outline.rectangle(at.x() - (out < 0 ? wide + .3 : .3), y - BAR / 2, wide + .6, BAR));
        canvas.words(at, value, label, Weight.BOLD, out < 0 ? Anchor.END : Anchor.START);
    }
}
