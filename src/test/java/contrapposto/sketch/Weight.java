package contrapposto.sketch;

import contrapposto.figure.Figure;
import contrapposto.figure.Mark;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.figure.Tone;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.Deflater;

/** What a figure costs in a PDF: its marks as page operators, hundredths of a point kept, deflated. */
public final class Weight {
    private Weight() { }

    public static int deflated(Figure figure) {
        byte[] plain = operators(figure).getBytes(StandardCharsets.US_ASCII);
        Deflater deflater = new Deflater(9);
        deflater.setInput(plain);
        deflater.finish();
        int size = deflater.deflate(new byte[plain.length + 64]);
        deflater.end();
        return size;
    }

    /** The operators of the PDF specification, ISO 32000-1, 8.5 (paths) and 9.4 (text). */
    public static String operators(Figure figure) {
        StringBuilder out = new StringBuilder("q 1 0 0 -1 0 ").append(pt(figure.height())).append(" cm\n");
        figure.marks().forEach(mark -> {
            switch (mark) {
                case Mark.Fill(var outlines, var tone) -> path(out.append(ink(tone)).append(" g\n"), outlines, figure).append("f\n");
                case Mark.Stroke(var outlines, var tone, var width, var dash) ->
                        path(out.append(ink(tone)).append(" G ").append(pt(width)).append(" w\n"), outlines, figure).append("S\n");
                case Mark.Label label -> out.append("BT /F ").append(label.size()).append(" Tf ").append(pt(label.at().x())).append(' ')
                        .append(pt(label.at().y())).append(" Td (").append(label.text()).append(") Tj ET\n");
            }
        });
        return out.append("Q\n").toString();
    }

    private static String ink(Tone tone) {
        return switch (tone) {
            case Tone.Grey(var lightness) -> number(lightness);
            case Tone.Spot spot -> ".04 .32 .38";
        };
    }

    private static StringBuilder path(StringBuilder out, List<Outline> outlines, Figure figure) {
        for (Outline outline : outlines) {
            out.append(at(outline.start(), figure)).append("m\n");
            for (Outline.Segment segment : outline.segments()) {
                switch (segment) {
                    case Outline.Segment.Line(var end) -> out.append(at(end, figure)).append("l\n");
                    case Outline.Segment.Curve(var a, var b, var end) -> out.append(at(a, figure)).append(at(b, figure))
                            .append(at(end, figure)).append("c\n");
                }
            }
            out.append(outline.closed() ? "h\n" : "");
        }
        return out;
    }

    private static String at(Point p, Figure figure) {
        return pt(p.x()) + " " + pt(p.y()) + " ";
    }

    private static String pt(double mm) {
        return number(mm * 72 / 25.4);
    }

    private static String number(double value) {
        return Double.toString(Math.round(value * 100) / 100.0).replaceAll("\\.0$", "");
    }
}
