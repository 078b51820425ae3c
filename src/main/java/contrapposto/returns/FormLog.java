package contrapposto.returns;

import contrapposto.check.ReturnKeys;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import contrapposto.quantity.UnitSystem;
import contrapposto.yaml.YamlNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * The log out of the boxes of a handout, which are named {@code w3/mon/split-squat/left/set1} and, once a day,
 * {@code w3/mon/minutes}; what the client has to tell stands in {@code recheck/notes} and its neighbours. The weight's box is called {@code kg} whatever the client's units; the handout prints which.
 */
final class FormLog {
    static final Pattern LINE = Pattern.compile("w(\\d+)/([a-z]{3})/([a-z0-9-]+)/(left|right|both)/([a-z]+\\d*)");
    static final Pattern DAY = Pattern.compile("w(\\d+)/([a-z]{3})/(date|minutes|morning-pain)");

    private static final Pattern TOLD = Pattern.compile("recheck/(notes|weeks|changes)");

    private FormLog() { }

    /** The nodes of a form; refused when it is not one of ours. {@code units} in which weights are written. */
    static Outcome<YamlNode> read(String file, Form form, UnitSystem units) {
        if (form.names().stream().noneMatch(name -> LINE.matcher(name).matches())) {
            return new Outcome.Refused<>(List.of(Notice.error("form-foreign", Span.whole(file), "none of its " + form.names().size()
                    + " boxes belongs to a log", "give the client edition that was built from this spec, filled")));
        }
        var lines = new LinkedHashMap<String, List<YamlNode.Entry>>();
        var days = new LinkedHashMap<String, List<YamlNode.Entry>>();
        var told = new ArrayList<YamlNode.Entry>();
        form.filled().forEach((name, text) -> {
            var note = TOLD.matcher(name);
            var line = LINE.matcher(name);
            var day = DAY.matcher(name);
            var box = new Span(file, 0, 0, 1, name);
            if (line.matches()) {
                String key = line.group(5).equals("kg") && units == UnitSystem.US ? "lb" : line.group(5);
                lines.computeIfAbsent(name.substring(0, name.lastIndexOf('/')), at -> begun(box, line.group(1), line.group(2),
                        line.group(3), line.group(4))).add(Nodes.entry(box, key, text));
            } else if (day.matches()) {
                days.computeIfAbsent(name.substring(0, name.lastIndexOf('/')), at -> begun(box, day.group(1), day.group(2)))
                        .add(Nodes.entry(box, day.group(3), text));
            } else if (note.matches()) {
                told.add(Nodes.entry(box, note.group(1), text.replace("\r\n", "\n").replace('\r', '\n')));
            }
        });
        return Outcome.done(Nodes.root(Span.whole(file), nodes(lines), nodes(days), told));
    }

    private static List<YamlNode.Entry> begun(Span at, String week, String day) {
        return new ArrayList<>(List.of(Nodes.entry(at, "week", week), Nodes.entry(at, "day", day)));
    }

    private static List<YamlNode.Entry> begun(Span at, String week, String day, String exercise, String side) {
        var begun = begun(at, week, day);
        begun.add(Nodes.entry(at, ReturnKeys.EXERCISE, exercise));
        begun.add(Nodes.entry(at, "side", side));
        return begun;
    }

    private static List<YamlNode> nodes(Map<String, List<YamlNode.Entry>> groups) {
        return groups.values().stream().<YamlNode>map(entries -> new YamlNode.Mapping(entries.getFirst().value().span(), entries)).toList();
    }

    /** Notices name the box they speak of, since a form has no lines. */
    static Notice named(Notice notice) {
        return notice.span().line() > 0 || notice.span().source().isEmpty() ? notice : new Notice(notice.severity(), notice.id(),
                Span.whole(notice.span().file()), "box `" + notice.span().source() + "`: " + notice.message(), notice.hints());
    }
}
