package contrapposto.typeset;

import contrapposto.figure.Tone;
import java.awt.Color;
import org.openpdf.text.pdf.PdfContentByte;
import org.openpdf.text.pdf.PdfTextArray;

/** Draws on one surface in mm from its top left corner, y down; lines have round caps and joins unless said. */
final class Pen {
    private static final Color SPOT = new Color(0x0A, 0x51, 0x60);
    private static final double KAPPA = 0.5522847498;

    private final PdfContentByte ink;
    private final double left;
    private final double top;

    /** @param top height of the origin above the surface's lower edge, mm */
    Pen(PdfContentByte ink, double left, double top) {
        this.ink = ink;
        this.left = left;
        this.top = top;
    }

    /** The same surface with another origin. */
    Pen at(double x, double y) {
        return new Pen(ink, left + x, top - y);
    }

    PdfContentByte ink() {
        return ink;
    }

    /** Makes this pen's origin the surface's own, y down, with {@code unit} points to a unit. */
    void frame(float unit) {
        ink.concatCTM(unit, 0, 0, -unit, x(0), y(0));
    }

    static float pt(double mm) {
        return (float) (mm / Style.MM_PER_PT);
    }

    private float x(double x) {
        return pt(left + x);
    }

    private float y(double y) {
        return pt(top - y);
    }

    void moveTo(double x, double y) {
        ink.moveTo(x(x), y(y));
    }

    void lineTo(double x, double y) {
        ink.lineTo(x(x), y(y));
    }

    void curveTo(double x1, double y1, double x2, double y2, double x3, double y3) {
        ink.curveTo(x(x1), y(y1), x(x2), y(y2), x(x3), y(y3));
    }

    void close() {
        ink.closePath();
    }

    void rectangle(double x, double y, double width, double height) {
        ink.rectangle(x(x), y(y + height), pt(width), pt(height));
    }

    /** The outline of a half pill; the round end is on the left or on the right. */
    void halfPill(double x, double y, double width, double height, boolean roundLeft) {
        double r = height / 2;
        double flat = roundLeft ? x + width : x;
        double round = roundLeft ? x + r : x + width - r;
        double k = roundLeft ? -KAPPA * r : KAPPA * r;
        double end = roundLeft ? x : x + width;
        moveTo(flat, y);
        lineTo(round, y);
        curveTo(round + k, y, end, y + r - KAPPA * r, end, y + r);
        curveTo(end, y + r + KAPPA * r, round + k, y + height, round, y + height);
        lineTo(flat, y + height);
        close();
    }

    /** A capsule with two round ends. */
    void capsule(double x, double y, double width, double height) {
        double r = height / 2;
        double k = KAPPA * r;
        moveTo(x + r, y);
        lineTo(x + width - r, y);
        curveTo(x + width - r + k, y, x + width, y + r - k, x + width, y + r);
        curveTo(x + width, y + r + k, x + width - r + k, y + height, x + width - r, y + height);
        lineTo(x + r, y + height);
        curveTo(x + r - k, y + height, x, y + r + k, x, y + r);
        curveTo(x, y + r - k, x + r - k, y, x + r, y);
        close();
    }

    /** Strokes the path. */
    void stroke(Tone tone, double width) {
        strokes(tone);
        ink.setLineWidth(pt(width));
        ink.stroke();
    }

    void dashed(Tone tone, double width, double on, double off) {
        ink.setLineDash(pt(on), pt(off), 0);
        stroke(tone, width);
        ink.setLineDash(0);
    }

    void fill(Tone tone) {
        fills(tone);
        ink.fill();
    }

    void fills(Tone tone) {
        switch (tone) {
            case Tone.Grey(double lightness) -> ink.setGrayFill((float) lightness);
            case Tone.Spot() -> ink.setColorFill(SPOT);
        }
    }

    void strokes(Tone tone) {
        switch (tone) {
            case Tone.Grey(double lightness) -> ink.setGrayStroke((float) lightness);
            case Tone.Spot() -> ink.setColorStroke(SPOT);
        }
    }

    void beginText(Tone tone) {
        fills(tone);
        ink.beginText();
    }

    void endText() {
        ink.endText();
    }

    /** Words on a baseline, kerned; between {@link #beginText} and {@link #endText}. */
    void words(Face face, double size, double x, double baseline, String text) {
        ink.setTextMatrix(x(x), y(baseline));
        for (var stretch : face.stretches(text)) {
            ink.setFontAndSize(stretch.base(), (float) size);
            ink.showText(kerned(face, stretch.text()));
        }
    }

    private static PdfTextArray kerned(Face face, String text) {
        var array = new PdfTextArray();
        int from = 0;
        for (int i = 1; i < text.length(); i++) {
            int kern = face.kern(text.charAt(i - 1), text.charAt(i));
            if (kern != 0) {
                array.add(text.substring(from, i));
                array.add(-kern);
                from = i;
            }
        }
        array.add(text.substring(from));
        return array;
    }

    /** The white edge of words: the same words stroked first. */
    void edge(double width) {
        ink.setTextRenderingMode(PdfContentByte.TEXT_RENDER_MODE_STROKE);
        strokes(Tone.WHITE);
        ink.setLineWidth(pt(width));
        ink.setLineJoin(1);
    }

    void plain() {
        ink.setTextRenderingMode(PdfContentByte.TEXT_RENDER_MODE_FILL);
        ink.setLineJoin(0);
    }
}
