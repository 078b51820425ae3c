package contrapposto.typeset;

import contrapposto.handout.Contrast;
import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** The contrast of each letter with what was painted under its middle last: white paper, a filled shape, or the edge of its own in a drawing. */
final class Inks extends PDFGraphicsStreamEngine {
    /** WCAG 2.2, success criterion 1.4.6 (enhanced). */
    private static final double ENOUGH = 7;

    private record Fill(Rectangle2D box, GeneralPath path, double[] colour) { }

    private final List<Fill> fills = new ArrayList<>();
    private final Set<String> faint = new TreeSet<>();
    private GeneralPath path = new GeneralPath();

    private Inks(PDPage page) {
        super(page);
    }

    /** Letters of too little contrast. */
    static Set<String> faint(PDPage page) throws IOException {
        var inks = new Inks(page);
        inks.processPage(page);
        return inks.faint;
    }

    private static double[] rgb(PDColor colour) throws IOException {
        float[] values = colour.getColorSpace().toRGB(colour.getComponents());
        return new double[] {values[0], values[1], values[2]};
    }

    @Override
    protected void showGlyph(Matrix matrix, PDFont font, int code, Vector displacement) throws IOException {
        double x = matrix.getTranslateX() + displacement.getX() * matrix.getScalingFactorX() / 2;
        double y = matrix.getTranslateY() + 0.35 * matrix.getScalingFactorY();
        if (getGraphicsState().getTextState().getRenderingMode() == RenderingMode.STROKE) {
            edge(x, y, rgb(getGraphicsState().getStrokingColor()));
            return;
        }
        double[] under = {1, 1, 1};
        for (int i = fills.size() - 1; i >= 0; i--) {
            if (fills.get(i).box().contains(x, y) && fills.get(i).path().contains(x, y)) {
                under = fills.get(i).colour();
                break;
            }
        }
        var text = font.toUnicode(code);
        double ratio = Contrast.ratio(rgb(getGraphicsState().getNonStrokingColor()), under);
        if (ratio < ENOUGH && text != null && !text.isBlank()) {
            faint.add("`" + text + "` has a contrast of " + Math.round(10 * ratio) / 10.0 + " at " + Math.round(x) + ", " + Math.round(y) + " pt");
        }
    }

    /** The outline of a letter, stroked wide before the letter itself. */
    private void edge(double x, double y, double[] colour) {
        var around = new GeneralPath(new Rectangle2D.Double(x - 1, y - 1, 2, 2));
        fills.add(new Fill(around.getBounds2D(), around, colour));
    }

    @Override
    public void fillPath(int rule) throws IOException {
        fills.add(new Fill(path.getBounds2D(), path, rgb(getGraphicsState().getNonStrokingColor())));
        path = new GeneralPath();
    }

    @Override
    public void fillAndStrokePath(int rule) throws IOException {
        fillPath(rule);
    }

    @Override
    public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
        path.moveTo(a.getX(), a.getY());
        path.lineTo(b.getX(), b.getY());
        path.lineTo(c.getX(), c.getY());
        path.lineTo(d.getX(), d.getY());
        path.closePath();
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        path.closePath();
    }

    @Override
    public void endPath() {
        path = new GeneralPath();
    }

    @Override
    public void strokePath() {
        path = new GeneralPath();
    }

    @Override
    public void clip(int rule) { }

    @Override
    public void shadingFill(COSName name) { }

    @Override
    public void drawImage(PDImage image) { }
}
