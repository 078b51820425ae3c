package contrapposto.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.illustrate.SetUpSketch;
import contrapposto.illustrate.SolvedCards;
import contrapposto.illustrate.SolvedCards.Half;
import contrapposto.quantity.Side;
import contrapposto.quantity.UnitSystem;
import java.awt.geom.Point2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openpdf.text.Document;
import org.openpdf.text.Rectangle;

/** The shin that the coach's page shows, read back from the page's path operators by PDFBox, is the shin that was solved. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ShinAngleTest {
    private static final double[] PLATE = {85, 40};

    @ParameterizedTest
    @ValueSource(doubles = {1.52, 1.95})
    void the_drawn_shin_is_the_solved_one_to_half_a_degree(double stature) throws IOException {
        int read = 0;
        double worst = 0;
        for (Map.Entry<String, Map<Side, Half>> family : SolvedCards.halves(stature, UnitSystem.METRIC).entrySet()) {
            for (Half half : family.getValue().values()) {
                var drawing = SetUpSketch.withShin(half.solved(), half.words());
                if (drawing.isPresent()) {
                    double solved = half.solved().pose().mechanics().shinWorking();
                    double drawn = tilt(drawing.get().drawn(PLATE[0], PLATE[1], 11));
                    double forward = half.solved().problem().working() == Side.LEFT ? -drawn : drawn;
                    assertEquals(solved, forward, .5, family.getKey());
                    worst = Math.max(worst, Math.abs(solved - forward));
                    read++;
                }
            }
        }
        assertTrue(read > 30, "shins read: " + read);
        System.out.println("shins at " + stature + " m: " + read + ", farthest off " + Math.round(worst * 100) / 100.0 + " degrees");
    }

    /** To page-right from the vertical, degrees: of the solid straight line that follows the dashed plumb line from the same point. */
    private static double tilt(contrapposto.figure.Figure figure) throws IOException {
        var bytes = new ByteArrayOutputStream();
        var document = new Document(new Rectangle(595, 842));
        var writer = TaggedWriter.of(document, bytes);
        document.open();
        writer.begin();
        var fonts = Fonts.roboto();
        new FigurePainter(fonts, new Misses(fonts)).paint(figure, new Pen(writer.ink(), 21.3, 201.7));
        writer.ink().turn();
        document.close();
        try (var file = Loader.loadPDF(bytes.toByteArray())) {
            var lines = new Lines(file.getPage(0));
            lines.processPage(file.getPage(0));
            for (int i = 0; i + 1 < lines.found.size(); i++) {
                Line plumb = lines.found.get(i);
                Line bone = lines.found.get(i + 1);
                if (plumb.dashed() && !bone.dashed() && plumb.from().distance(bone.from()) < .3 && Math.abs(plumb.to().getX() - plumb.from().getX()) < .01) {
                    return StrictMath.toDegrees(StrictMath.atan2(bone.to().getX() - bone.from().getX(), bone.to().getY() - bone.from().getY()));
                }
            }
        }
        throw new AssertionError("no shin is drawn");
    }

    private record Line(Point2D from, Point2D to, boolean dashed) { }

    /** Every stroked path of one straight line that is not white, as the page has it. */
    private static final class Lines extends PDFGraphicsStreamEngine {
        private final List<Line> found = new ArrayList<>();
        private final List<Point2D> path = new ArrayList<>();
        private boolean curved;

        Lines(PDPage page) {
            super(page);
        }

        @Override
        public void moveTo(float x, float y) {
            path.add(new Point2D.Double(x, y));
        }

        @Override
        public void lineTo(float x, float y) {
            path.add(new Point2D.Double(x, y));
        }

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
            curved = true;
        }

        @Override
        public void strokePath() throws IOException {
            boolean white = getGraphicsState().getStrokingColor().toRGB() == 0xFFFFFF;
            if (path.size() == 2 && !curved && !white) {
                found.add(new Line(path.get(0), path.get(1), getGraphicsState().getLineDashPattern().getDashArray().length > 0));
            }
            endPath();
        }

        @Override
        public void fillPath(int rule) {
            endPath();
        }

        @Override
        public void fillAndStrokePath(int rule) {
            endPath();
        }

        @Override
        public void endPath() {
            path.clear();
            curved = false;
        }

        @Override
        public Point2D getCurrentPoint() {
            return path.isEmpty() ? new Point2D.Double() : path.getLast();
        }

        @Override
        public void closePath() { }

        @Override
        public void clip(int rule) { }

        @Override
        public void shadingFill(COSName name) { }

        @Override
        public void drawImage(PDImage image) { }

        @Override
        public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) { }
    }
}
