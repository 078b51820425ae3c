package contrapposto.quantity;

/** A length of at least 0 m. */
public record Length(double metres) implements Comparable<Length> {
    /** The international inch, exactly (agreement of 1959). */
    public static final double METRES_PER_INCH = 0.0254;
    public static final Length ZERO = new Length(0);

    public Length {
        if (!(metres >= 0) || Double.isInfinite(metres)) {
            throw new IllegalArgumentException("A length must be finite and at least 0 m, but was (" + metres + ").");
        }
    }

    public static Length ofMetres(double metres) {
        return new Length(metres);
    }

    public static Length ofCentimetres(double centimetres) {
        return new Length(centimetres / 100);
    }

    public double centimetres() {
        return metres * 100;
    }

    public double inches() {
        return metres / METRES_PER_INCH;
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(metres, other.metres);
    }
}
