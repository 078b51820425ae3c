package contrapposto.illustrate;

import contrapposto.figure.Canvas;
import contrapposto.figure.Circle;
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
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Load week by week: the left as a thin line with open circles, the right as a heavy one with solid squares. */
public final class LoadPlot {
    public static final double WIDTH = 60;
    public static final double HEIGHT = 74;
    private static final Tone EASY = new Tone.Grey(237 / 255.0);
    private static final double HEAD = 7;
    private static final double FOOT = 12;
    private static final double APART = 5.2;

    /** One week: loads in the unit of the axis; empty where there is none. */
    public record Week(int number, boolean easy, OptionalDouble left, OptionalDouble right) {
        OptionalDouble on(Side side) {
            return side == Side.LEFT ? left : right;
        }
    }

    /** @param load the unit on the y axis, {@code week} the word under the x axis */
    public record Words(String load, String week) { }

    private LoadPlot() { }

    public static Drawing of(List<Week> weeks, Words words) {
        List<Week> all = List.copyOf(weeks);
        return (width, height, label) -> new Plot(all, width, height, label).drawn(words);
    }

    private record Plot(List<Week> weeks, double width, double height, double label) {
        double largest() {
            double most = weeks.stream().flatMap(w -> List.of(w.left(), w.right()).stream())
                    .mapToDouble(load -> load.orElse(0)).max().orElse(0);
            double step = step(most);
            return Math.max(step, Math.ceil(most / step - 1e-9) * step);
        }

        /** A tick of 1, 2 or 4 times a power of ten, giving at most six. */
        static double step(double most) {
            double step = 1;
            while (most / step > 5) {
                step = most / (2 * step) <= 5 ? 2 * step : most / (4 * step) <= 5 ? 4 * step : 10 * step;
            }
            return step;
        }

        double left() {
            return TextWidth.of(Numerals.number(largest()), label, Weight.REGULAR) + 2;
        }

        double right() {
            return width - 8;
        }

        double x(int index) {
            double cell = (right() - left()) / weeks.size();
            return left() + cell * (index + .5);
        }

        double y(double load) {
            double bottom = height - FOOT;
            return bottom - (bottom - HEAD) * load / largest();
        }

        Figure drawn(Words words) {
            Canvas canvas = new Canvas();
            easyWeeks(canvas);
            axes(canvas, words);
            List<Double> ends = new ArrayList<>();
            for (Side side : Side.values()) {
                line(canvas, side);
                ends.add(end(side));
            }
            tags(canvas, ends);
            return canvas.figure(width, height);
        }

        private void easyWeeks(Canvas canvas) {
            double cell = (right() - left()) / weeks.size();
            for (int i = 0; i < weeks.size(); i++) {
                if (weeks.get(i).easy()) {
                    double a = x(i) - cell / 2;
                    canvas.fill(EASY, Outline.rectangle(a, HEAD, cell, height - FOOT - HEAD))
                            .line(Lines.THIN, new Point(a, HEAD), new Point(a, height - FOOT))
                            .line(Lines.THIN, new Point(a + cell, HEAD), new Point(a + cell, height - FOOT));
                }
            }
        }

        private void axes(Canvas canvas, Words words) {
            double cap = TextWidth.capHeight(label);
            double step = step(largest());
            for (int i = 0; i * step <= largest() + 1e-9; i++) {
                double y = y(i * step);
                if (i > 0) {
                    canvas.dashed(Lines.THIN, .25, 1.2, Outline.polyline(new Point(left(), y), new Point(right(), y)));
                }
                canvas.words(new Point(left() - 1.2, y + cap / 2), Numerals.number(i * step), label, Weight.REGULAR, Anchor.END);
            }
            canvas.line(.4, new Point(left(), y(0)), new Point(right(), y(0)));
            canvas.words(new Point(0, cap), words.load(), label, Weight.REGULAR, Anchor.START);
            canvas.words(new Point((left() + right()) / 2, height - 1.2), words.week(), label, Weight.REGULAR, Anchor.MIDDLE);
            double cell = (right() - left()) / weeks.size();
            double widest = TextWidth.of(Integer.toString(weeks.getLast().number()), label, Weight.BOLD) + .6;
            int every = Math.max(1, (int) Math.ceil(widest / cell));
            for (int i = 0; i < weeks.size(); i += every) {
                canvas.words(new Point(x(i), height - FOOT + 1.5 + cap), Integer.toString(weeks.get(i).number()), label,
                        weeks.get(i).easy() ? Weight.BOLD : Weight.REGULAR, Anchor.MIDDLE);
            }
        }

        private void line(Canvas canvas, Side side) {
            List<Point> points = new ArrayList<>();
            for (int i = 0; i < weeks.size(); i++) {
                int at = i;
                weeks.get(i).on(side).ifPresent(load -> points.add(new Point(x(at), y(load))));
            }
            if (points.size() > 1) {
                canvas.line(side == Side.LEFT ? .35 : .7, Outline.polyline(points.toArray(Point[]::new)));
            }
            for (Point p : points) {
                if (side == Side.LEFT) {
                    canvas.shape(Tone.WHITE, .35, new Circle(p, 1.15).outline());
                } else {
                    canvas.fill(Tone.BLACK, Outline.rectangle(p.x() - 1.1, p.y() - 1.1, 2.2, 2.2));
                }
            }
        }

        /** Where a side's line ends; NaN without one. */
        private double end(Side side) {
            return weeks.reversed().stream().map(w -> w.on(side)).filter(OptionalDouble::isPresent)
                    .mapToDouble(load -> y(load.getAsDouble())).findFirst().orElse(Double.NaN);
        }

        private void tags(Canvas canvas, List<Double> ends) {
            double left = ends.get(0);
            double right = ends.get(1);
            double pill = Math.max(5, Pill.heightFor(label));
            double apart = Math.max(APART, pill + .2);
            if (Math.abs(left - right) < apart) {
                double middle = (left + right) / 2;
                double sign = left < right ? -1 : 1;
                left = middle + sign * apart / 2;
                right = middle - sign * apart / 2;
            }
            for (Side side : Side.values()) {
                double y = side == Side.LEFT ? left : right;
                if (Double.isFinite(y)) {
                    new Pill(side, new Point(width - pill * .52, y), pill).draw(canvas, Pill.letterSize(pill, label), 0);
                }
            }
        }
    }
}
