package contrapposto.setup;

import java.util.Locale;

/** Numbers as reasons write them: centimetres, whole degrees with their sign, newton metres. */
final class Wording {
    private Wording() { }

    static String cm(double metres) {
        double tenths = StrictMath.rint(metres * 1000);
        return String.format(Locale.ROOT, tenths % 10 == 0 ? "%.0f cm" : "%.1f cm", tenths / 10);
    }

    static String degrees(double value) {
        long whole = Math.round(value);
        return (whole > 0 ? "+" : whole < 0 ? "−" : "") + Math.abs(whole) + "°";
    }

    /** To a tenth, where whole degrees would hide the difference. */
    static String fineDegrees(double value) {
        return String.format(Locale.ROOT, "%+.1f°", value).replace('-', '−');
    }

    /** Without a sign. */
    static String plainDegrees(double value) {
        return Math.round(Math.abs(value)) + "°";
    }

    static String percent(double share) {
        return Math.round(share * 100) + " %";
    }

    static String moment(double newtonMetres) {
        return String.format(Locale.ROOT, "%.1f N·m", Math.abs(newtonMetres));
    }

    static String kg(double kilograms) {
        return String.format(Locale.ROOT, kilograms == StrictMath.rint(kilograms) ? "%.0f kg" : "%.1f kg", kilograms);
    }
}
