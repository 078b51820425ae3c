package contrapposto.quantity;

import java.util.Optional;

/** A colour of the sRGB space: red, green and blue, each from 0 to 255. */
public record Colour(int red, int green, int blue) {
    /** From here on text counts as well readable, large or small: WCAG 2.2, criterion 1.4.6, level AAA. */
    public static final double READABLE = 7;
    /** How a colour is written, with or without the sign before it: in YAML {@code #} begins a remark unless it is quoted. */
    public static final String PATTERN = "#?[0-9a-fA-F]{6}";

    public Colour {
        if (((red | green | blue) & ~0xFF) != 0) {
            throw new IllegalArgumentException("Parts of a colour lie between 0 and 255, but were (" + red + ", " + green + ", " + blue + ").");
        }
    }

    /** {@code #rrggbb} or {@code rrggbb}; empty for other text. */
    public static Optional<Colour> of(String text) {
        if (!text.matches(PATTERN)) {
            return Optional.empty();
        }
        int rgb = Integer.parseInt(text.substring(text.length() - 6), 16);
        return Optional.of(new Colour(rgb >> 16, rgb >> 8 & 0xFF, rgb & 0xFF));
    }

    /** Contrast against white paper, from 1 (white) to 21 (black). Source: WCAG 2.2, contrast ratio. */
    public double contrastOnWhite() {
        return 1.05 / (luminance() + 0.05);
    }

    /** Relative luminance, from 0 (black) to 1 (white). Source: WCAG 2.2, relative luminance. */
    public double luminance() {
        return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
    }

    private static double linear(int part) {
        double share = part / 255.0;
        return share <= 0.04045 ? share / 12.92 : StrictMath.pow((share + 0.055) / 1.055, 2.4);
    }
}
