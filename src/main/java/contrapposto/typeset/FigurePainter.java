package contrapposto.typeset;

import contrapposto.figure.Figure;
import contrapposto.figure.Mark;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.figure.Raster;
import contrapposto.figure.Tone;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.openpdf.text.Image;

/** Paints the marks of a figure in their order with plain path operators; the only one who does. */
final class FigurePainter {
    private static final double HALO = 0.9;

    private final Fonts fonts;
    private final Misses misses;
    /** One image of the document for each picture, however often it is painted. */
    private final Map<Raster, Image> pictures = new LinkedHashMap<>();

    FigurePainter(Fonts fonts, Misses misses) {
        this.fonts = fonts;
        this.misses = misses;
    }

    /** @param pen whose origin is the top left corner of the figure */
    void paint(Figure figure, Pen pen) {
        FigureInk ink = new FigureInk(pen);
        for (var mark : figure.marks()) {
            switch (mark) {
                case Mark.Fill(List<Outline> outlines, Tone tone) -> ink.fill(outlines, tone);
                case Mark.Stroke(List<Outline> outlines, Tone tone, double width, List<Double> dash) ->
                        ink.stroke(outlines, tone, width, dash);
                case Mark.Label label -> {
                    ink.lift();
                    label(label, pen);
                }
                case Mark.Picture(Point at, double width, double height, Raster raster) -> {
                    ink.lift();
                    pen.picture(pictures.computeIfAbsent(raster, FigurePainter::image), at.x(), at.y(), width, height);
                }
            }
        }
        ink.lift();
    }

    /** In the greys or the sRGB of the document's output intent. */
    private static Image image(Raster raster) {
        return Image.getInstance(raster.width(), raster.height(), raster.isGrey() ? 1 : 3, Byte.SIZE, raster.bytes());
    }

    private void label(Mark.Label label, Pen pen) {
        String text = Letters.clean(label.text());
        misses.check(text);
        var face = fonts.of(label.weight() == Mark.Weight.BOLD);
        double width = face.width(text) * label.size() * Style.MM_PER_PT / 1000;
        Point at = label.at();
        double x = switch (label.anchor()) {
            case START -> at.x();
            case MIDDLE -> at.x() - width / 2;
            case END -> at.x() - width;
        };
        pen.beginText(label.tone());
        if (label.halo()) {
            pen.edge(HALO);
            pen.words(face, label.size(), x, at.y(), text);
            pen.plain();
        }
        pen.words(face, label.size(), x, at.y(), text);
        pen.endText();
    }
}
