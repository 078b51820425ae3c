package contrapposto.compose;

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
record Units(UnitSystem system, Locale locale) {
    private static final String NO_BREAK = "\u00a0";
    private static final String MINUS = "\u2212";

    /** Whole centimetres, or inches to the nearest half: {@code 15 cm}, {@code 5½ in}. */
    String length(double metres) {
        return switch (system) {
            case METRIC -> decimal(metres * 100, 0) + NO_BREAK + "cm";
            case US -> halves(metres / Length.METRES_PER_INCH) + NO_BREAK + "in";
        };
    }

    String length(Length length) {
        return length(length.metres());
    }

    /** A weight as it is loaded: {@code 7.5 kg}, {@code 20 lb}. */
    String mass(double kilograms) {
        return bareMass(kilograms) + NO_BREAK + massUnit();
    }

    /** The number of a weight alone, for a column that names the unit. */
    String bareMass(double kilograms) {
        return switch (system) {
            case METRIC -> decimal(kilograms, 2);
            case US -> decimal(kilograms / Mass.KILOGRAMS_PER_POUND, 1);
        };
    }

    /** A weight as a number in the client's unit, for an axis. */
    double massNumber(double kilograms) {
        return system == UnitSystem.METRIC ? kilograms : kilograms / Mass.KILOGRAMS_PER_POUND;
    }

    String massUnit() {
        return system == UnitSystem.METRIC ? "kg" : "lb";
    }

    /** {@code 9 Mar}. */
    String shortDay(LocalDate date) {
        return date.format(DateTimeFormatter.ofPattern("d'" + NO_BREAK + "'MMM", locale));
    }

    /** {@code 31 May 2026}. */
    String date(LocalDate date) {
        return date.format(DateTimeFormatter.ofPattern("d'" + NO_BREAK + "'MMMM'" + NO_BREAK + "'uuuu", locale));
    }

    /** {@code 31 May}. */
    String dayOfYear(LocalDate date) {
        return date.format(DateTimeFormatter.ofPattern("d'" + NO_BREAK + "'MMMM", locale));
    }

    /** The first day of a run of days, as short as the last one allows: {@code 23}, {@code 30 March}. */
    String from(LocalDate first, LocalDate last) {
        if (first.getYear() != last.getYear()) {
            return date(first);
        }
        return first.getMonth() == last.getMonth() ? Integer.toString(first.getDayOfMonth()) : dayOfYear(first);
    }

    String weekday(DayOfWeek day) {
        return day.getDisplayName(TextStyle.FULL, locale);
    }

    String shortWeekday(DayOfWeek day) {
        return day.getDisplayName(TextStyle.SHORT, locale);
    }

    /** A share as a percentage, to the nearest {@code step} per cent. */
    String percent(double share, int step) {
        return decimal(Math.round(share * 100 / step) * (double) step, 0) + NO_BREAK + "%";
    }

    /** An angle without a sign: {@code 3°}. */
    String degrees(double degrees) {
        return decimal(degrees, 0) + "°";
    }

    /** A signed angle: {@code +3°}. */
    String signedDegrees(double degrees) {
        String size = decimal(Math.abs(degrees), 0);
        return (size.equals("0") ? "" : degrees < 0 ? MINUS : "+") + size + "°";
    }

    /** Numbers in order, runs of three or more joined: {@code 1–3, 5, 8}. */
    String numbers(List<Integer> numbers) {
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
    String moment(double newtonMetres) {
        String size = decimal(Math.abs(newtonMetres), Math.abs(newtonMetres) < 10 ? 1 : 0);
        return (size.equals("0") ? "" : newtonMetres < 0 ? MINUS : "") + size + NO_BREAK + "N·m";
    }

    /** A count that may hold halves: {@code 4.5}. */
    String count(double value) {
        return decimal(value, 1);
    }

    /** The measured value with its unit as the spec has it. */
    String measured(double value, String unit) {
        return decimal(value, 1) + (unit.equals("deg") ? "°" : NO_BREAK + unit);
    }

    /** Sets and repeats, or sets and seconds. */
    String amount(int sets, int reps, int seconds) {
        return sets + NO_BREAK + "×" + NO_BREAK + (seconds > 0 ? seconds + NO_BREAK + "s" : Integer.toString(reps));
    }

    String seconds(int seconds) {
        return seconds + NO_BREAK + "s";
    }

    String minutes(int minutes) {
        return minutes + NO_BREAK + "min";
    }

    /** Whether {@code value} is known. */
    static OptionalDouble known(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private String decimal(double value, int places) {
        var rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).stripTrailingZeros();
        return (rounded.signum() == 0 ? "0" : rounded.toPlainString()).replace("-", MINUS);
    }

    private static String halves(double inches) {
        long halves = Math.round(inches * 2);
        String whole = halves / 2 == 0 && halves % 2 != 0 ? "" : Long.toString(halves / 2);
        return whole + (halves % 2 == 0 ? "" : "½");
    }
}
