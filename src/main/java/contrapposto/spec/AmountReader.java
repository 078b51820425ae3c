package contrapposto.spec;

import contrapposto.notice.Notice;
import contrapposto.yaml.YamlNode;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads numbers with a unit: {@code 171 cm}, {@code 5 ft 7 in}, {@code 5'7"}, {@code 24 deg}. Never guesses a unit. */
final class AmountReader {
    private static final Pattern ONE = Pattern.compile("(" + ScalarReader.NUMBER + ")\\s*(\\S.*)?");
    private static final Pattern FEET_AND_INCHES = Pattern.compile(
            "(\\d{1,2})\\s*(?:ft|['’′])\\s*(\\d{1,2}(?:\\.\\d{1,6})?)\\s*(?:in|[\"”″])");

    private final List<Notice> notices;

    AmountReader(List<Notice> notices) {
        this.notices = notices;
    }

    /** @param range in the unit of the only dimension; empty when what it belongs to decides */
    Optional<Written> read(Place place, YamlNode.Scalar scalar, List<Dimension> dimensions, Optional<Value.Range> range) {
        var both = FEET_AND_INCHES.matcher(scalar.text());
        if (both.matches() && Double.parseDouble(both.group(2)) < 12) {
            double inches = 12 * Double.parseDouble(both.group(1)) + Double.parseDouble(both.group(2));
            return within(place, scalar, Unit.IN, inches, dimensions, range);
        }
        var one = ONE.matcher(scalar.text());
        if (!one.matches() || one.group(2) != null && one.group(2).matches(",\\d.*")) {
            return error("not-an-amount", scalar, "`" + scalar.text() + "` cannot be read as " + words(dimensions),
                    "write a number, with a point if need be, and its unit: " + units(dimensions));
        }
        double number = Double.parseDouble(one.group(1));
        if (one.group(2) == null) {
            return error("missing-unit", scalar, "`" + scalar.text() + "` in " + place.called() + " has no unit",
                    "write `" + scalar.text() + " " + likely(number, dimensions, range).word() + "`, if that is meant; units are "
                    + units(dimensions));
        }
        var unit = unit(one.group(2));
        if (unit.isEmpty()) {
            return error("unknown-unit", scalar, "`" + one.group(2) + "` is no unit here",
                    "units are " + units(dimensions));
        }
        return within(place, scalar, unit.get(), number, dimensions, range);
    }

    private Optional<Written> within(Place place, YamlNode.Scalar scalar, Unit unit, double number,
                                     List<Dimension> dimensions, Optional<Value.Range> range) {
        if (!dimensions.contains(unit.dimension())) {
            return error("wrong-unit", scalar, "`" + scalar.text() + "` is " + unit.dimension().called() + ", but "
                    + place.called() + " takes " + words(dimensions), "units here are " + units(dimensions));
        }
        double standard = unit.toStandard(number);
        if (range.isPresent() && !range.get().holds(standard)) {
            return error("out-of-range", scalar, "`" + scalar.text() + "` is out of range: " + place.called()
                    + " goes from " + Digits.of(range.get().low(), unit) + " to " + Digits.of(range.get().high(), unit),
                    range.get().wayOut());
        }
        return Optional.of(new Written.Amount(scalar.span(), number, unit));
    }

    private static Optional<Unit> unit(String written) {
        return switch (written) {
            case "'", "’", "′" -> Optional.of(Unit.FT);
            case "\"", "”", "″" -> Optional.of(Unit.IN);
            case "°" -> Optional.of(Unit.DEG);
            default -> Unit.of(written);
        };
    }

    /** The first unit that brings the number into range, else the usual one. */
    private static Unit likely(double number, List<Dimension> dimensions, Optional<Value.Range> range) {
        var units = dimensions.stream().flatMap(d -> Unit.of(d).stream()).toList();
        return units.stream().filter(u -> range.map(r -> r.holds(u.toStandard(number))).orElse(true)).findFirst()
                .orElse(units.getFirst());
    }

    private static String words(List<Dimension> dimensions) {
        return dimensions.stream().map(Dimension::called).collect(Collectors.joining(" or "));
    }

    private static String units(List<Dimension> dimensions) {
        var words = dimensions.stream().flatMap(d -> Unit.of(d).stream()).map(Unit::word).collect(Collectors.joining(", "));
        return dimensions.contains(Dimension.LENGTH) ? words + " (also `5 ft 7 in`)" : words;
    }

    private Optional<Written> error(String id, YamlNode.Scalar scalar, String message, String... hints) {
        notices.add(Notice.error(id, scalar.span(), message, hints));
        return Optional.empty();
    }
}
