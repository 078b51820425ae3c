package contrapposto.handout;

/** Contrast of two colours by the formula of WCAG 2.2 (W3C), reference F6.6 and F6.7. */
public final class Contrast {
    private Contrast() { }

    /** From 1 to 21; channels from 0 to 1. */
    public static double ratio(double[] one, double[] other) {
        double first = luminance(one);
        double second = luminance(other);
        return (StrictMath.max(first, second) + 0.05) / (StrictMath.min(first, second) + 0.05);
    }

    private static double luminance(double[] colour) {
        return 0.2126 * linear(colour[0]) + 0.7152 * linear(colour[1]) + 0.0722 * linear(colour[2]);
    }

    private static double linear(double channel) {
        return channel <= 0.04045 ? channel / 12.92 : StrictMath.pow((channel + 0.055) / 1.055, 2.4);
    }
}
