package contrapposto.quantity;

/** A plane angle, signed. */
public record Angle(double degrees) implements Comparable<Angle> {
    public Angle {
        if (Double.isNaN(degrees) || Double.isInfinite(degrees)) {
            throw new IllegalArgumentException("An angle must be finite, but was (" + degrees + ").");
        }
    }

    public static Angle ofDegrees(double degrees) {
        return new Angle(degrees);
    }

    @Override
    public int compareTo(Angle other) {
        return Double.compare(degrees, other.degrees);
    }
}
