package contrapposto.check;

import static contrapposto.spec.Key.optional;
import static contrapposto.spec.Key.required;

import contrapposto.notice.Notice;
import contrapposto.spec.Key;
import contrapposto.spec.Value;
import contrapposto.spec.Written;
import java.util.ArrayList;
import java.util.List;

/**
 * The table of keys of a return: what was done, box by box, named as the boxes of the log are, and what a re-check found. A
 * CSV log has these names as its columns, a filled form as the last words of its boxes; all are read by this one table.
 */
public final class ReturnKeys {
    /** Boxes for sets in a row. */
    public static final int MOST_SETS = 8;
    /** The key of a line of the log that names the exercise. */
    public static final String EXERCISE = "exercise";
    private static final int MOST_LINES = 20_000;

    private ReturnKeys() { }

    /** Where a line belongs: week and day. */
    private static List<Key> slot() {
        return List.of(required("week", number(1, 52), "of the plan, from 1"),
                required("day", new Value.Word(ProgramKeys.DAYS), "of the week"));
    }

    /** A line of the log: one exercise and side on one day. */
    public static final Value.Fields LINE = new Value.Fields(line(), List.of(new Value.Between.NotBoth("kg", "lb")));

    /** What is noted once a day. */
    public static final Value.Fields DAY = new Value.Fields(day());

    /** The whole table. */
    public static final Value.Fields TABLE = new Value.Fields(List.of(
            required("format", number(1, 1), "the version of this file format"),
            optional("log", new Value.Many(LINE, MOST_LINES, false), "what was done"),
            optional("days", new Value.Many(DAY, MOST_LINES, false), "what was noted once a day"),
            optional("assessment", new Value.Fields(List.of(required("date", new Value.Day(), "of the re-check"),
                    optional("pelvis", ProgramKeys.pelvis(), "the finding, if it has changed"),
                    optional("measures", ProgramKeys.measures(), "left and right pairs, measured again"))), "what the re-check found"),
            optional("told", new Value.Fields(List.of(optional("notes", new Value.Text(ProgramKeys.NOTE, true), "what to ask or tell"),
                    optional("weeks", new Value.Text(ProgramKeys.NAME, false), "which went as planned"),
                    optional("changes", new Value.Text(ProgramKeys.NAME, false), "which did not"))), "what the client wrote for the re-check")));

    private static List<Key> line() {
        var keys = new ArrayList<>(slot());
        keys.add(required(EXERCISE, new Value.Exercise(List.of()), "which exercise"));
        keys.add(optional("side", new Value.Word(List.of("left", "right", "both")), "which side worked", "both"));
        keys.add(optional("kg", new Value.Number(new Value.Range(0, 500, "check the number"), false), "kilograms used, for one weight"));
        keys.add(optional("lb", new Value.Number(new Value.Range(0, 1100, "check the number"), false), "pounds used, for one weight"));
        for (int set = 1; set <= MOST_SETS; set++) {
            keys.add(optional("set" + set, number(0, 999), "repeats (or seconds) done in set " + set));
        }
        keys.add(optional("spare", number(0, 20), "repeats that would still have gone after the last set"));
        keys.add(optional("pain", number(0, 10), "the worst, from 0 to 10"));
        return List.copyOf(keys);
    }

    private static List<Key> day() {
        var keys = new ArrayList<>(slot());
        keys.add(optional("date", new Value.Day(), "on which it was done"));
        keys.add(optional("minutes", number(0, 600), "it took"));
        keys.add(optional("morning-pain", number(0, 10), "the next morning, from 0 to 10"));
        return List.copyOf(keys);
    }

    private static Value number(double low, double high) {
        return new Value.Number(new Value.Range(low, high, "check the number"), true);
    }

    /** The measures of a return's assessment, each in its own unit. */
    public static List<CheckedSpec.Measure> measures(Written.Fields assessment) {
        return assessment.eachFields("measures").stream().map(AssessmentSection::measure).toList();
    }

    /** What holds between the values of a return: measures in their unit, each once. */
    public static List<Notice> problems(Written.Fields given) {
        var found = new ArrayList<Notice>();
        AssessmentSection.measuresInTheirUnit(given, found::add);
        AssessmentSection.measuresOnce(given, found::add);
        return List.copyOf(found);
    }
}
