package contrapposto.returns;

import contrapposto.check.ReturnKeys;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Severity;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Side;
import contrapposto.returns.Log.DayNote;
import contrapposto.returns.Log.Line;
import contrapposto.returns.Log.Slot;
import contrapposto.spec.SpecReader;
import contrapposto.spec.Written;
import contrapposto.yaml.YamlNode;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;

/** Reads the nodes of a return, whatever it came as, by the table of {@link ReturnKeys}: every problem at once. */
final class LogReader {
    private static final List<String> DAYS = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");

    private LogReader() { }

    /** @param exercises the ids that the catalogue knows */
    static Outcome<Log> read(YamlNode root, Collection<String> exercises) {
        var reading = SpecReader.read(root, ReturnKeys.TABLE, exercises);
        var notices = new ArrayList<>(reading.notices());
        notices.addAll(ReturnKeys.problems(reading.fields()));
        reading.fields().eachFields("log").stream().filter(line -> line.has("kg") && line.has("lb")).forEach(line -> notices.add(
                Notice.error("kg-and-lb", line.spanOf("lb").orElse(line.span()), "this line has both `kg` and `lb`",
                        "keep the one that was on the weight")));
        notices.sort(Notice.IN_FILE_ORDER);
        if (notices.stream().anyMatch(n -> n.severity() == Severity.ERROR)) {
            return new Outcome.Refused<>(notices);
        }
        var fields = reading.fields();
        return new Outcome.Done<>(new Log(fields.eachFields("log").stream().map(LogReader::line).toList(),
                fields.eachFields("days").stream().map(LogReader::day).toList(), fields.at("assessment", Written.Fields.class),
                new Log.Told(fields.fields("told").text("notes"), fields.fields("told").text("weeks"), fields.fields("told").text("changes"))), notices);
    }

    private static Line line(Written.Fields given) {
        var sets = new TreeMap<Integer, Integer>();
        for (int set = 1; set <= ReturnKeys.MOST_SETS; set++) {
            int number = set;
            given.number("set" + set).ifPresent(reps -> sets.put(number, reps.intValue()));
        }
        return new Line(given.spanOf("exercise").orElse(given.span()), slot(given), given.text("exercise").orElseThrow(),
                given.text("side").flatMap(LogReader::side), load(given), sets, whole(given, "spare"), whole(given, "pain"));
    }

    private static OptionalDouble load(Written.Fields given) {
        return given.number("kg").or(() -> given.number("lb").map(pounds -> Mass.ofPounds(pounds).kilograms()))
                .map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    private static Optional<Side> side(String word) {
        return word.equals("both") ? Optional.empty() : Optional.of(word.equals("left") ? Side.LEFT : Side.RIGHT);
    }

    private static DayNote day(Written.Fields given) {
        return new DayNote(given.spanOf("day").orElse(given.span()), slot(given), given.day("date"), whole(given, "minutes"),
                whole(given, "morning-pain"));
    }

    private static Slot slot(Written.Fields given) {
        return new Slot(given.number("week").orElseThrow().intValue(),
                DayOfWeek.of(DAYS.indexOf(given.text("day").orElseThrow()) + 1));
    }

    private static OptionalInt whole(Written.Fields given, String key) {
        return given.number(key).map(number -> OptionalInt.of(number.intValue())).orElseGet(OptionalInt::empty);
    }
}
