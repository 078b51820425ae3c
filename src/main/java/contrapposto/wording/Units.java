package contrapposto.wording;

import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import contrapposto.quantity.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Numbers, measures and dates as finished words, in the client's units and language: the one place where they are
 * formatted. A number never parts from its unit.
 */
public record Units(UnitSystem system, Locale locale) {
    static final String NO_BREAK = "\u00a0";
    private static final String MINUS = "\u2212";

    /** Whole centimetres, or inches to the nearest half: {@code 15 cm}, {@code 5½ in}. */
    public String length(double metres) {
        return switch (system) {
            case METRIC -> decimal(metres * 100, 0) + NO_BREAK + "cm";
            case US -> halves(metres / Length.METRES_PER_INCH) + NO_BREAK + inch();
        };
    }

    public String length(Length length) {
        return length(length.metres());
    }

    /** A weight as it is loaded: {@code 7.5 kg}, {@code 20 lb}. */
    public String mass(double kilograms) {
        return bareMass(kilograms) + NO_BREAK + massUnit();
    }

    /** The number of a weight alone, for a column that names the unit. */
    public String bareMass(double kilograms) {
        return switch (system) {
            case METRIC -> decimal(kilograms, 2);
            case US -> decimal(kilograms / Mass.KILOGRAMS_PER_POUND, 1);
        };
    }

    /** A weight as a number in the client's unit, for an axis. */
    public double massNumber(double kilograms) {
        return system == UnitSystem.METRIC ? kilograms : kilograms / Mass.KILOGRAMS_PER_POUND;
    }

    public String massUnit() {
        return system == UnitSystem.METRIC ? "kg" : "lb";
    }

    /** {@code 9 Mar}, {@code 9.3.}: it heads a narrow column. */
    public String shortDay(LocalDate date) {
        return date(date, german() ? "d.M." : "d'" + NO_BREAK + "'MMM");
    }

    /** {@code 31 May 2026}, {@code 31 de mayo de 2026}, {@code 31. Mai 2026}. */
    public String date(LocalDate date) {
        return date(date, dayForm() + of() + "MMMM" + of() + "uuuu");
    }

    /** {@code 31 May}. */
    public String dayOfYear(LocalDate date) {
        return date(date, dayForm() + of() + "MMMM");
    }

    private String date(LocalDate date, String form) {
        return date.format(DateTimeFormatter.ofPattern(form, locale));
    }

    /** German writes the day as an ordinal. */
    private String dayForm() {
        return german() ? "d." : "d";
    }

    /** What stands between day, month and year: Spanish says "of". */
    private String of() {
        return spanish() ? "'" + NO_BREAK + "de" + NO_BREAK + "'" : "'" + NO_BREAK + "'";
    }

    private boolean german() {
        return locale.getLanguage().equals("de");
    }

    private boolean spanish() {
        return locale.getLanguage().equals("es");
    }

    private String inch() {
        return german() ? "Zoll" : spanish() ? "pulg." : "in";
    }

    /** The first day of a run of days, as short as the last one allows: {@code 23}, {@code 30 March}. */
    public String from(LocalDate first, LocalDate last) {
        if (first.getYear() != last.getYear()) {
            return date(first);
        }
        return first.getMonth() == last.getMonth() ? date(first, dayForm()) : dayOfYear(first);
    }

    public String weekday(DayOfWeek day) {
        return day.getDisplayName(TextStyle.FULL, locale);
    }

    public String shortWeekday(DayOfWeek day) {
        return day.getDisplayName(TextStyle.SHORT, locale);
    }

    /** A share as a percentage, to the nearest {@code step} per cent. */
    public String percent(double share, int step) {
        return decimal(Math.round(share * 100 / step) * (double) step, 0) + NO_BREAK + "%";
    }

    /** A number that is a percentage already: {@code 92 %}. */
    public String percentOf(double percent) {
        return decimal(percent, 0) + NO_BREAK + "%";
    }

    /** A change as a signed percentage, to a tenth: {@code +4.5 %}. */
    public String signedPercent(double share) {
        String size = decimal(Math.abs(share) * 100, 1);
        return (size.equals("0") ? "" : share < 0 ? MINUS : "+") + size + NO_BREAK + "%";
    }

    /** An angle without a sign: {@code 3°}. */
    public String degrees(double degrees) {
        return decimal(degrees, 0) + "°";
    }

    /** A signed angle: {@code +3°}. */
    public String signedDegrees(double degrees) {
        return signed(degrees, 0) + "°";
    }

    /** Numbers in order, runs of three or more joined: {@code 1–3, 5, 8}. */
    public String numbers(List<Integer> numbers) {
        var sorted = numbers.stream().sorted().distinct().toList();
        var runs = new ArrayList<String>();
        for (int from = 0, to; from < sorted.size(); from = to + 1) {
            to = from;
            while (to + 1 < sorted.size() && sorted.get(to + 1) == sorted.get(to) + 1) {
                to++;
            }
            if (to - from < 2) {
                to = from;
            }
            runs.add(to == from ? sorted.get(from).toString() : sorted.get(from) + "–" + sorted.get(to));
        }
        return String.join(", ", runs);
    }

    /** A signed moment: {@code +12 N·m}. */
    public String moment(double newtonMetres) {
        String size = decimal(Math.abs(newtonMetres), Math.abs(newtonMetres) < 10 ? 1 : 0);
        return (size.equals("0") ? "" : newtonMetres < 0 ? MINUS : "") + size + NO_BREAK + "N·m";
    }

    /** A count that may hold halves: {@code 4.5}. */
    public String count(double value) {
        return decimal(value, 1);
    }

    /** The measured value with its unit as the spec has it. */
    public String measured(double value, String unit) {
        return decimal(value, 1) + (unit.equals("deg") ? "°" : NO_BREAK + unit);
    }

    /** Sets and repeats, or sets and seconds. */
    public String amount(int sets, int reps, int seconds) {
        return sets + NO_BREAK + "×" + NO_BREAK + (seconds > 0 ? seconds + NO_BREAK + "s" : Integer.toString(reps));
    }

    /** Repeats, or seconds to hold. */
    public String repeats(int reps, int seconds) {
        return seconds > 0 ? seconds(seconds) : Integer.toString(reps);
    }

    public String seconds(int seconds) {
        return seconds + NO_BREAK + "s";
    }

    public String minutes(int minutes) {
        return minutes + NO_BREAK + "min";
    }

    /** Whether {@code value} is known. */
    public static OptionalDouble known(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** A number with at most so many decimals: {@code 4.5}, {@code 4,5}. */
    public String number(double value, int places) {
        return decimal(value, places);
    }

    /** A value of a statement with its unit. */
    String measure(Term.Measure measure) {
        double value = measure.value();
        int places = measure.places();
        return switch (measure.kind()) {
            case LENGTH -> system == UnitSystem.METRIC ? decimal(value * 100, places) + NO_BREAK + "cm" : length(value);
            case MASS -> decimal(massNumber(value), places) + NO_BREAK + massUnit();
            case ANGLE -> decimal(Math.abs(value), places) + "°";
            case SIGNED_ANGLE -> signed(value, places) + "°";
            case SHARE -> decimal(value * 100, places) + NO_BREAK + "%";
            case MOMENT -> decimal(Math.abs(value), places) + NO_BREAK + "N·m";
        };
    }

    private String signed(double value, int places) {
        String size = decimal(Math.abs(value), places);
        return (size.equals("0") ? "" : value < 0 ? MINUS : "+") + size;
    }

    /** English has a decimal point; Spanish and German have a comma. */
    private String decimal(double value, int places) {
        var rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).stripTrailingZeros();
        String plain = (rounded.signum() == 0 ? "0" : rounded.toPlainString()).replace("-", MINUS);
        return locale.getLanguage().equals("en") || locale.getLanguage().isEmpty() ? plain : plain.replace('.', ',');
    }

    private static String halves(double inches) {
        long halves = Math.round(inches * 2);
        String whole = halves / 2 == 0 && halves % 2 != 0 ? "" : Long.toString(halves / 2);
        return whole + (halves % 2 == 0 ? "" : "½");
    }
}
