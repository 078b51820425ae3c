package contrapposto.prescribe;

import contrapposto.quantity.Mass;
import contrapposto.quantity.UnitSystem;
import java.util.Locale;

/** Says a mass in reasons, in the units the handout prints: {@code 8 kg}, {@code 13.5 kg}, {@code 30 lb}. */
record MassWords(UnitSystem units) {
    /** To a tenth; a whole number without a decimal. */
    String of(double kilograms) {
        return switch (units) {
            case METRIC -> tenth(kilograms) + " kg";
            case US -> tenth(Mass.ofKilograms(kilograms).pounds()) + " lb";
        };
    }

    private static String tenth(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
