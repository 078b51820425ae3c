package contrapposto.typeset;

import contrapposto.figure.Tone;
import org.openpdf.text.Image;

/** Draws on one surface in mm from its top left corner, y down; lines have round caps and joins unless said. */
final class Pen {
    /** The one colour: red, green and blue. */
    private static final float[] SPOT = {0x0A / 255f, 0x51 / 255f, 0x60 / 255f};
    private static final double KAPPA = 0.5522847498;

    private final Ink ink;
    private final double left;
    private final double top;

    /** @param top height of the origin above the surface's lower edge, mm */
    Pen(Ink ink, double left, double top) {
        this.ink = ink;
        this.left = left;
        this.top = top;
    }

    /** The same surface with another origin. */
    Pen at(double x, double y) {
        return new Pen(ink, left + x, top - y);
    }

    Ink ink() {
        return ink;
    }

    /** Makes this pen's origin the surface's own, y down, with {@code unit} points to a unit. */
    void frame(float unit) {
        ink.operator(unit, 0, 0, -unit, x(0), y(0), "cm");
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
        ink.operator(x(x), y(y), "m");
    }

    void lineTo(double x, double y) {
        ink.operator(x(x), y(y), "l");
    }

    void curveTo(double x1, double y1, double x2, double y2, double x3, double y3) {
        ink.operator(x(x1), y(y1), x(x2), y(y2), x(x3), y(y3), "c");
    }

    void close() {
        ink.operator("h");
    }

    void rectangle(double x, double y, double width, double height) {
        ink.operator(x(x), y(y + height), pt(width), pt(height), "re");
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
        ink.operator(pt(width), "w");
        ink.operator("S");
    }

    void dashed(Tone tone, double width, double on, double off) {
        ink.dash(pt(on), pt(off));
        stroke(tone, width);
        ink.dash();
    }

    void fill(Tone tone) {
        fills(tone);
        ink.operator("f");
    }

    void fills(Tone tone) {
        switch (tone) {
            case Tone.Grey(double lightness) -> ink.operator((float) lightness, "g");
            case Tone.Own(int red, int green, int blue) -> ink.operator(red / 255f, green / 255f, blue / 255f, "rg");
            case Tone.Spot() -> ink.operator(SPOT[0], SPOT[1], SPOT[2], "rg");
        }
    }

    void strokes(Tone tone) {
        switch (tone) {
            case Tone.Grey(double lightness) -> ink.operator((float) lightness, "G");
            case Tone.Own(int red, int green, int blue) -> ink.operator(red / 255f, green / 255f, blue / 255f, "RG");
            case Tone.Spot() -> ink.operator(SPOT[0], SPOT[1], SPOT[2], "RG");
        }
    }

    /** A picture in a box. */
    void picture(Image image, double x, double y, double width, double height) {
        ink.picture(image, pt(width), pt(height), x(x), y(y + height));
    }

    void beginText(Tone tone) {
        fills(tone);
        ink.operator("BT");
    }

    void endText() {
        ink.operator("ET");
    }

    /** Words on a baseline, kerned; between {@link #beginText} and {@link #endText}. */
    void words(Face face, double size, double x, double baseline, String text) {
        ink.operator(1, 0, 0, 1, x(x), y(baseline), "Tm");
        for (var stretch : face.stretches(text)) {
            ink.letters(stretch, face, (float) size);
        }
    }

    /** The white edge of words: the same words stroked first. */
    void edge(double width) {
        ink.operator(1, "Tr");
        strokes(Tone.WHITE);
        ink.operator(pt(width), "w");
        ink.operator(1, "j");
    }

    void plain() {
        ink.operator(0, "Tr");
        ink.operator(0, "j");
    }
}
