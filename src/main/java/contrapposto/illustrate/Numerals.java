package contrapposto.illustrate;

/** How numbers are written inside drawings. */
final class Numerals {
    private Numerals() { }

    /** Whole, or with a half: sets count by halves, loads by quarters of a kilogram at least. */
    static String number(double value) {
        long hundredths = Math.round(value * 100);
        String whole = Long.toString(hundredths / 100);
        long rest = hundredths % 100;
        return rest == 0 ? whole : rest % 10 == 0 ? whole + "." + rest / 10 : whole + "." + (rest < 10 ? "0" : "") + rest;
    }
}
