package contrapposto.returns;

import contrapposto.check.CsvSheet;
import contrapposto.check.CsvSheet.Cell;
import contrapposto.check.ReturnKeys;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.spec.Key;
import contrapposto.spec.Nearest;
import contrapposto.spec.Value;
import contrapposto.yaml.YamlNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A log as CSV: a line for each exercise, side and day, columns named as the boxes of the log. What is noted once a day
 * ({@code date}, {@code minutes}, {@code morning-pain}) may stand in any line of that day. An empty cell is an empty box.
 */
final class CsvLog {
    static final String HEADER = "week,day,exercise,side,kg,set1,set2,set3,spare,pain";
    private static final List<String> LINE = names(ReturnKeys.LINE);
    private static final List<String> DAY = names(ReturnKeys.DAY);
    private static final List<String> ALL = Stream.concat(LINE.stream(), DAY.stream()).distinct().toList();

    private CsvLog() { }

    private static List<String> names(Value.Fields fields) {
        return fields.keys().stream().map(Key::name).toList();
    }

    /** The log as nodes. */
    static Outcome<YamlNode> read(String file, byte[] bytes) {
        return CsvSheet.read(file, bytes, HEADER).then(sheet -> {
            var rows = new ArrayList<List<Cell>>();
            sheet.lines().forEachRemaining(rows::add);
            var header = rows.removeFirst();
            var problems = problems(header);
            rows.stream().filter(row -> row.size() != header.size()).forEach(row -> problems.add(Notice.error("log-cells",
                    row.getFirst().span(), "this row has " + row.size() + " cells, but the header has " + header.size(),
                    "give every row as many cells; separate them by commas, decimals by a point")));
            return Outcome.of(problems.isEmpty() ? nodes(header, rows) : new YamlNode.Sequence(header.getFirst().span(), List.of()), problems);
        });
    }

    private static List<Notice> problems(List<Cell> header) {
        var problems = new ArrayList<Notice>();
        var seen = new TreeSet<String>();
        for (var cell : header) {
            if (!ALL.contains(cell.text())) {
                problems.add(Notice.error("log-column", cell.span(), "`" + cell.text() + "` is no column of a log",
                        Nearest.of(cell.text(), ALL).map(name -> "did you mean `" + name + "`?")
                                .orElse("columns are: " + String.join(", ", ALL))));
            } else if (!seen.add(cell.text())) {
                problems.add(Notice.error("log-column-twice", cell.span(), "the column `" + cell.text() + "` stands here twice",
                        "delete one of the two"));
            }
        }
        if (problems.isEmpty() && !seen.containsAll(List.of("week", "day"))) {
            problems.add(Notice.error("log-header", header.getFirst().span(), "the header names no `week` and `day`",
                    "begin with a header line: `" + HEADER + "`"));
        }
        return problems;
    }

    private static YamlNode nodes(List<Cell> header, List<List<Cell>> rows) {
        var lines = new ArrayList<YamlNode>();
        var days = new LinkedHashMap<List<String>, YamlNode>();
        for (var row : rows) {
            if (row.stream().allMatch(cell -> cell.text().isEmpty())) {
                continue;
            }
            var line = picked(header, row, LINE);
            var day = picked(header, row, DAY);
            if (line.entries().stream().anyMatch(e -> !DAY.contains(e.key().text())) || day.entries().size() <= 2) {
                lines.add(line);
            }
            if (day.entries().size() > 2) {
                days.putIfAbsent(day.entries().stream().map(e -> e.key().text() + "=" + ((YamlNode.Scalar) e.value()).text()).toList(), day);
            }
        }
        return Nodes.root(header.getFirst().span(), lines, List.copyOf(days.values()));
    }

    private static YamlNode.Mapping picked(List<Cell> header, List<Cell> row, List<String> names) {
        var entries = new ArrayList<YamlNode.Entry>();
        for (int i = 0; i < header.size(); i++) {
            if (names.contains(header.get(i).text()) && !row.get(i).text().isEmpty()) {
                entries.add(Nodes.entry(row.get(i).span(), header.get(i).text(), row.get(i).text()));
            }
        }
        return new YamlNode.Mapping(row.getFirst().span(), entries);
    }
}
