package contrapposto.spec;

import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The units that a spec may use. */
public enum Unit {
    CM("cm", Dimension.LENGTH), M("m", Dimension.LENGTH), MM("mm", Dimension.LENGTH), IN("in", Dimension.LENGTH),
    FT("ft", Dimension.LENGTH), KG("kg", Dimension.MASS), LB("lb", Dimension.MASS), DEG("deg", Dimension.ANGLE),
    S("s", Dimension.TIME);

    private final String word;
    private final Dimension dimension;

    Unit(String word, Dimension dimension) {
        this.word = word;
        this.dimension = dimension;
    }

    public String word() {
        return word;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** {@code number} of this unit in the unit of its dimension. The inch and the pound are exact. */
    public double toStandard(double number) {
        return switch (this) {
            case CM -> number / 100;
            case MM -> number / 1000;
            case IN -> number * Length.METRES_PER_INCH;
            case FT -> number * 12 * Length.METRES_PER_INCH;
            case LB -> number * Mass.KILOGRAMS_PER_POUND;
            case M, KG, DEG, S -> number;
        };
    }

    /** The inverse of {@link #toStandard}. */
    public double fromStandard(double standard) {
        return switch (this) {
            case CM -> standard * 100;
            case MM -> standard * 1000;
            case IN -> standard / Length.METRES_PER_INCH;
            case FT -> standard / (12 * Length.METRES_PER_INCH);
            case LB -> standard / Mass.KILOGRAMS_PER_POUND;
            case M, KG, DEG, S -> standard;
        };
    }

    public static Optional<Unit> of(String word) {
        return Arrays.stream(values()).filter(u -> u.word.equals(word)).findFirst();
    }

    /** All units of {@code dimension}, the usual one first. */
    public static List<Unit> of(Dimension dimension) {
        return Arrays.stream(values()).filter(u -> u.dimension == dimension).toList();
    }
}
