package contrapposto.figure;

import java.util.List;
import java.util.Locale;

/** A plain SVG painter for looking at figures: for tests and eyes only. */
public final class Svg {
    private Svg() { }

    public static String of(Figure figure) {
        StringBuilder svg = new StringBuilder();
        svg.append(text("<svg xmlns='http://www.w3.org/2000/svg' width='%smm' height='%smm' viewBox='0 0 %s %s'>"
                + "<rect width='%s' height='%s' fill='#fff'/>\n", n(figure.width()), n(figure.height()),
                n(figure.width()), n(figure.height()), n(figure.width()), n(figure.height())));
        figure.marks().forEach(mark -> svg.append(of(mark)).append('\n'));
        return svg.append("</svg>\n").toString();
    }

    public static String of(Mark mark) {
        return switch (mark) {
            case Mark.Fill(var outlines, var tone) -> text("<path d='%s' fill='%s'/>", path(outlines), ink(tone));
            case Mark.Stroke(var outlines, var tone, var width, var dash) -> text(
                    "<path d='%s' fill='none' stroke='%s' stroke-width='%s' stroke-linejoin='round'%s/>",
                    path(outlines), ink(tone), n(width), dash.isEmpty() ? " stroke-linecap='round'"
                            : " stroke-dasharray='" + String.join(" ", dash.stream().map(Svg::n).toList()) + "'");
            case Mark.Label label -> words(label);
            case Mark.Picture(var at, var width, var height, var raster) -> text("<rect x='%s' y='%s' width='%s' height='%s' fill='none' stroke='#000'/>",
                    n(at.x()), n(at.y()), n(width), n(height));
        };
    }

    private static String words(Mark.Label label) {
        String anchor = switch (label.anchor()) {
            case START -> "start";
            case MIDDLE -> "middle";
            case END -> "end";
        };
        String set = text("<text x='%s' y='%s' font-family='Roboto, Liberation Sans' font-size='%s' text-anchor='%s'%s fill='%s'",
                n(label.at().x()), n(label.at().y()), n(label.size() * 25.4 / 72), anchor,
                label.weight() == Mark.Weight.BOLD ? " font-weight='bold'" : "", ink(label.tone()));
        String halo = label.halo() ? set.replace(ink(label.tone()), "#fff")
                + " stroke='#fff' stroke-width='.9' stroke-linejoin='round'>" + label.text() + "</text>" : "";
        return halo + set + ">" + label.text() + "</text>";
    }

    public static String path(List<Outline> outlines) {
        StringBuilder d = new StringBuilder();
        for (Outline outline : outlines) {
            d.append('M').append(p(outline.start()));
            for (Outline.Segment segment : outline.segments()) {
                d.append(switch (segment) {
                    case Outline.Segment.Line(var end) -> "L" + p(end);
                    case Outline.Segment.Curve(var first, var second, var end) ->
                            "C" + p(first) + " " + p(second) + " " + p(end);
                });
            }
            d.append(outline.closed() ? "Z" : "");
        }
        return d.toString();
    }

    private static String ink(Tone tone) {
        return switch (tone) {
            case Tone.Grey(var lightness) -> {
                String two = text("%02x", Math.round(255 * lightness));
                yield "#" + two + two + two;
            }
            case Tone.Own(var red, var green, var blue) -> text("#%02x%02x%02x", red, green, blue);
            case Tone.Spot spot -> "#0A5160";
        };
    }

    private static String p(Point p) {
        return n(p.x()) + " " + n(p.y());
    }

    private static String n(double value) {
        return text("%.4f", value);
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
