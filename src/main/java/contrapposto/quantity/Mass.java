package contrapposto.quantity;

/** A mass of at least 0 kg: of a person, or of a weight as it is loaded. */
public record Mass(double kilograms) implements Comparable<Mass> {
    /** The international avoirdupois pound, exactly (agreement of 1959). */
    public static final double KILOGRAMS_PER_POUND = 0.45359237;
    public static final Mass ZERO = new Mass(0);

    public Mass {
        if (!(kilograms >= 0) || Double.isInfinite(kilograms)) {
            throw new IllegalArgumentException("A mass must be finite and at least 0 kg, but was (" + kilograms + ").");
        }
    }

    public static Mass ofKilograms(double kilograms) {
        return new Mass(kilograms);
    }

    public static Mass ofPounds(double pounds) {
        return new Mass(pounds * KILOGRAMS_PER_POUND);
    }

    public double pounds() {
        return kilograms / KILOGRAMS_PER_POUND;
    }

    @Override
    public int compareTo(Mass other) {
        return Double.compare(kilograms, other.kilograms);
    }
}
