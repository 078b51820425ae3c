package contrapposto.spec;

import contrapposto.notice.Notice;
import contrapposto.notice.Unseen;
import contrapposto.quantity.Colour;
import contrapposto.yaml.YamlNode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads single words, numbers, dates and texts, each by its {@link Value.Plain}; what does not fit becomes a notice. */
final class ScalarReader {
    static final String NUMBER = "[+-]?\\d{1,9}(?:\\.\\d{1,9})?";
    static final String CODE = "[A-Za-z0-9_-][A-Za-z0-9._-]{0,39}";
    private static final Pattern DATE = Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})");
    private static final Pattern PRESSURE = Pattern.compile("(\\d{1,3})\\s*/\\s*(\\d{1,3})");
    private static final Value.Range SYSTOLIC = new Value.Range(60, 260, "");
    private static final Value.Range DIASTOLIC = new Value.Range(30, 160, "");
    private static final int WORDS_LISTED = 25;

    private final Collection<String> exercises;
    private final List<Notice> notices;
    private final AmountReader amounts;

    ScalarReader(Collection<String> exercises, List<Notice> notices) {
        this.exercises = exercises;
        this.notices = notices;
        this.amounts = new AmountReader(notices);
    }

    Optional<Written> read(Place place, YamlNode.Scalar scalar, Value.Plain value) {
        boolean lines = value instanceof Value.Text text && text.lines();
        return hidden(place, scalar, lines) ? Optional.empty() : switch (value) {
            case Value.Text text -> text(place, scalar, text);
            case Value.Code code -> code(place, scalar);
            case Value.Word word -> word(place, scalar, word.words());
            case Value.Exercise exercise -> exercise(place, scalar, exercise.words());
            case Value.Number number -> number(place, scalar, number);
            case Value.Amount amount -> amounts.read(place, scalar, List.of(amount.dimension()), Optional.of(amount.range()));
            case Value.AnyAmount any -> amounts.read(place, scalar, any.dimensions(), Optional.empty());
            case Value.Day day -> day(place, scalar);
            case Value.Colour colour -> colour(place, scalar);
            case Value.Truth truth -> truth(place, scalar);
            case Value.Pressure pressure -> pressure(place, scalar);
        };
    }

    private boolean hidden(Place place, YamlNode.Scalar scalar, boolean lines) {
        if (!lines && scalar.text().contains("\n")) {
            error("several-lines", scalar, place.called() + " runs over several lines", "write it on one line");
            return true;
        }
        var found = scalar.text().codePoints().filter(c -> Unseen.is(c) && !(lines && c == '\n')).findFirst();
        found.ifPresent(code -> error("hidden-character", scalar, String.format(Locale.ROOT,
                "this text holds the character U+%04X (%s), which cannot be seen", code,
                Optional.ofNullable(Character.getName(code)).orElse("no character").toLowerCase(Locale.ROOT)), "delete it"));
        return found.isPresent();
    }

    private Optional<Written> text(Place place, YamlNode.Scalar scalar, Value.Text text) {
        int length = scalar.text().codePointCount(0, scalar.text().length());
        if (length > text.most()) {
            return error("text-too-long", scalar, place.called() + " has " + length + " characters, but the limit is "
                    + text.most(), "shorten it");
        }
        return Optional.of(new Written.Text(scalar.span(), scalar.text()));
    }

    private Optional<Written> code(Place place, YamlNode.Scalar scalar) {
        if (!scalar.text().matches(CODE)) {
            return error("bad-code", scalar, "`" + scalar.text() + "` cannot be " + place.called()
                    + ", which becomes part of file names",
                    "use letters, digits, `.`, `-` and `_`, at most 40, not beginning with a dot");
        }
        return Optional.of(new Written.Text(scalar.span(), scalar.text()));
    }

    private Optional<Written> word(Place place, YamlNode.Scalar scalar, List<String> words) {
        if (words.contains(scalar.text())) {
            return Optional.of(new Written.Text(scalar.span(), scalar.text()));
        }
        return error("unknown-word", scalar, "`" + scalar.text() + "` is no word for " + place.called(),
                hints(scalar.text(), words, "words here: " + String.join(", ", words)));
    }

    private Optional<Written> exercise(Place place, YamlNode.Scalar scalar, List<String> words) {
        if (words.contains(scalar.text()) || exercises.contains(scalar.text())) {
            return Optional.of(new Written.Text(scalar.span(), scalar.text()));
        }
        var all = new ArrayList<>(words);
        all.addAll(exercises);
        return words.isEmpty() ? error("unknown-exercise", scalar, "`" + scalar.text() + "` is no exercise of the catalogue",
                hints(scalar.text(), all, "`contrapposto exercises` lists them"))
                : error("unknown-word", scalar, "`" + scalar.text() + "` is no word for " + place.called()
                + ", and no exercise of the catalogue", hints(scalar.text(), all, "words here: " + String.join(", ", words)));
    }

    private static String[] hints(String text, List<String> words, String listing) {
        var near = Nearest.of(text, words).map(word -> "did you mean `" + word + "`?");
        if (near.isPresent() && words.size() > WORDS_LISTED) {
            return new String[] {near.get()};
        }
        return near.map(hint -> new String[] {hint, listing}).orElseGet(() -> new String[] {listing});
    }

    private Optional<Written> number(Place place, YamlNode.Scalar scalar, Value.Number number) {
        var kind = number.whole() ? "whole number" : "number";
        if (!scalar.text().matches(number.whole() ? "[+-]?\\d{1,9}" : NUMBER)) {
            return error("not-a-number", scalar, "`" + scalar.text() + "` is no " + kind, "write "
                    + place.called() + " as a " + kind + " alone, without a unit");
        }
        double read = Double.parseDouble(scalar.text());
        if (!number.range().holds(read)) {
            return error("out-of-range", scalar, "`" + scalar.text() + "` is out of range: " + place.called()
                    + (number.range().low() == number.range().high() ? " is " + Digits.of(number.range().low())
                    : " goes from " + Digits.of(number.range().low()) + " to " + Digits.of(number.range().high())),
                    number.range().wayOut());
        }
        return Optional.of(new Written.Number(scalar.span(), read));
    }

    private Optional<Written> day(Place place, YamlNode.Scalar scalar) {
        var parts = DATE.matcher(scalar.text());
        if (!parts.matches()) {
            return error("not-a-date", scalar, "`" + scalar.text() + "` is no date", "write " + place.called()
                    + " as year-month-day, such as `2026-03-09`");
        }
        int year = Integer.parseInt(parts.group(1));
        int month = Integer.parseInt(parts.group(2));
        int day = Integer.parseInt(parts.group(3));
        if (year < 1900 || year > 2100) {
            return error("out-of-range", scalar, "`" + scalar.text() + "` is out of range: years go from 1900 to 2100",
                    "check the year");
        }
        if (month < 1 || month > 12) {
            return error("no-such-date", scalar, "`" + scalar.text() + "` does not exist: a year has 12 months",
                    "write year-month-day, in this order");
        }
        int days = YearMonth.of(year, month).lengthOfMonth();
        if (day < 1 || day > days) {
            return error("no-such-date", scalar, "`" + scalar.text() + "` does not exist: month " + month + " of " + year
                    + " has " + days + " days", "check the day");
        }
        return Optional.of(new Written.Day(scalar.span(), LocalDate.of(year, month, day)));
    }

    private Optional<Written> colour(Place place, YamlNode.Scalar scalar) {
        return Colour.of(scalar.text()).isPresent() ? Optional.of(new Written.Text(scalar.span(), scalar.text()))
                : error("bad-colour", scalar, "`" + scalar.text() + "` is no colour", "write " + place.called()
                + " as six hexadecimal digits, red, green and blue, in quotes, such as `\"#1f4e5f\"`");
    }

    private Optional<Written> truth(Place place, YamlNode.Scalar scalar) {
        return switch (scalar.text()) {
            case "yes" -> Optional.of(new Written.Truth(scalar.span(), true));
            case "no" -> Optional.of(new Written.Truth(scalar.span(), false));
            default -> error("not-yes-or-no", scalar, "`" + scalar.text() + "` answers " + place.called()
                    + " with neither yes nor no", "write `yes` or `no`");
        };
    }

    private Optional<Written> pressure(Place place, YamlNode.Scalar scalar) {
        var parts = PRESSURE.matcher(scalar.text());
        if (!parts.matches()) {
            return error("not-a-blood-pressure", scalar, "`" + scalar.text() + "` is no blood pressure",
                    "write systolic over diastolic in mmHg, such as `118/74`");
        }
        int systolic = Integer.parseInt(parts.group(1));
        int diastolic = Integer.parseInt(parts.group(2));
        if (!SYSTOLIC.holds(systolic) || !DIASTOLIC.holds(diastolic) || systolic <= diastolic) {
            return error("out-of-range", scalar, "`" + scalar.text() + "` cannot be " + place.called()
                    + ": systolic goes from 60 to 260, diastolic from 30 to 160 and is the lower of the two",
                    "check the two numbers; measure again at rest");
        }
        return Optional.of(new Written.Pressure(scalar.span(), systolic, diastolic));
    }

    private Optional<Written> error(String id, YamlNode.Scalar scalar, String message, String... hints) {
        notices.add(Notice.error(id, scalar.span(), message, hints));
        return Optional.empty();
    }
}
