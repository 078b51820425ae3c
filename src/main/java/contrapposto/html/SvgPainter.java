package contrapposto.html;

import contrapposto.figure.Figure;
import contrapposto.figure.Mark;
import contrapposto.figure.Outline;
import contrapposto.figure.Outline.Segment;
import contrapposto.figure.Point;
import contrapposto.figure.Tone;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Base64;
import java.util.List;
import java.util.stream.Collectors;

/** Paints a figure as one inline SVG element in mm, hundredths kept. */
final class SvgPainter {
    /** Millimetres in a typographic point of 1/72 inch. */
    private static final double MM_PER_POINT = 25.4 / 72;
    private static final double HALO = 0.9;

    private SvgPainter() { }

    /** @param alternative text for those who cannot see the drawing; empty hides it from them as decoration */
    static String svg(Figure figure, String alternative) {
        var out = new Markup();
        String box = "0 0 " + number(figure.width()) + " " + number(figure.height());
        if (alternative.isEmpty()) {
            out.open("svg", "xmlns", "http://www.w3.org/2000/svg", "viewBox", box, "aria-hidden", "true",
                    "style", "width:" + number(figure.width()) + "mm");
        } else {
            out.open("svg", "xmlns", "http://www.w3.org/2000/svg", "viewBox", box, "role", "img",
                    "aria-label", alternative, "style", "width:" + number(figure.width()) + "mm");
        }
        figure.marks().forEach(mark -> paint(mark, out));
        return out.close().finished();
    }

    private static void paint(Mark mark, Markup out) {
        switch (mark) {
            case Mark.Fill(var outlines, var tone) -> out.open("path", "d", path(outlines), "fill", ink(tone)).close();
            case Mark.Stroke(var outlines, var tone, var width, var dash) -> {
                if (dash.isEmpty()) {
                    out.open("path", "d", path(outlines), "fill", "none", "stroke", ink(tone),
                            "stroke-width", number(width), "stroke-linecap", "round", "stroke-linejoin", "round").close();
                } else {
                    out.open("path", "d", path(outlines), "fill", "none", "stroke", ink(tone), "stroke-width",
                            number(width), "stroke-dasharray", dash.stream().map(SvgPainter::number)
                                    .collect(Collectors.joining(" "))).close();
                }
            }
            case Mark.Picture(var at, var width, var height, var raster) -> out.open("image", "x", number(at.x()), "y", number(at.y()),
                    "width", number(width), "height", number(height), "href", "data:image/png;base64," + Base64.getEncoder().encodeToString(PngWriter.bytes(raster))).close();
            case Mark.Label label -> {
                if (label.halo()) {
                    words(label, out, "fill", "#fff", "stroke", "#fff", "stroke-width", number(HALO));
                }
                words(label, out, "fill", ink(label.tone()));
            }
        }
    }

    private static void words(Mark.Label label, Markup out, String... paint) {
        var attributes = new java.util.ArrayList<>(List.of("x", number(label.at().x()), "y", number(label.at().y()),
                "font-size", number(label.size() * MM_PER_POINT), "text-anchor", switch (label.anchor()) {
                    case START -> "start";
                    case MIDDLE -> "middle";
                    case END -> "end";
                }, "font-weight", label.weight() == Mark.Weight.BOLD ? "700" : "400"));
        attributes.addAll(List.of(paint));
        out.element("text", label.text(), attributes.toArray(String[]::new));
    }

    private static String path(List<Outline> outlines) {
        var d = new StringBuilder();
        for (Outline outline : outlines) {
            d.append('M').append(at(outline.start()));
            for (Segment segment : outline.segments()) {
                switch (segment) {
                    case Segment.Line(var end) -> d.append('L').append(at(end));
                    case Segment.Curve(var first, var second, var end) ->
                            d.append('C').append(at(first)).append(' ').append(at(second)).append(' ').append(at(end));
                }
            }
            if (outline.closed()) {
                d.append('Z');
            }
        }
        return d.toString();
    }

    static String ink(Tone tone) {
        return switch (tone) {
            case Tone.Grey(var lightness) -> {
                String two = hex((int) StrictMath.round(255 * lightness));
                yield "#" + two + two + two;
            }
            case Tone.Own(var red, var green, var blue) -> "#" + hex(red) + hex(green) + hex(blue);
            case Tone.Spot spot -> "#0a5160";
        };
    }

    private static String hex(int value) {
        return (value < 16 ? "0" : "") + Integer.toHexString(value);
    }

    private static String at(Point point) {
        return number(point.x()) + " " + number(point.y());
    }

    /** Hundredths of a millimetre, without trailing zeros. */
    static String number(double value) {
        var rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
