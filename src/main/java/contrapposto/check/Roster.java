package contrapposto.check;

import contrapposto.catalogue.Catalogue;
import contrapposto.check.CsvSheet.Cell;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.spec.KeyPaths;
import contrapposto.spec.Nearest;
import contrapposto.yaml.YamlNode;
import contrapposto.yaml.YamlReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * A CSV of clients: the first column, {@code spec}, names a spec to start from; every other column is a dotted path
 * ({@code client.name}, {@code assessment.pelvis.turned}) whose value the row replaces. An empty cell leaves what the spec
 * says; a cell that begins with a bracket is read as YAML ({@code [mon, thu]}). A bad header refuses the roster; a bad
 * row refuses that row alone, and its notices point to the cell.
 */
public final class Roster implements Iterable<Roster.Row> {
    private final String file;
    private final CsvSheet sheet;
    private final List<Cell> header;
    private final Function<String, Optional<byte[]>> specs;
    private final List<String> exercises;
    private final Map<String, Optional<Start>> starts = new LinkedHashMap<>();

    private Roster(String file, CsvSheet sheet, List<Cell> header, Function<String, Optional<byte[]>> specs, List<String> exercises) {
        this.file = file;
        this.sheet = sheet;
        this.header = header;
        this.specs = specs;
        this.exercises = exercises;
    }

    /** @param line of the roster, from 1 */
    public record Row(int line, Outcome<CheckedSpec> outcome) { }

    /** A spec that rows start from, read once. */
    private record Start(YamlReader.Reading reading, String sha256) {
        static Start of(String name, byte[] bytes) {
            return new Start(YamlReader.readOn(name, bytes), Checks.sha256(bytes));
        }
    }

    /**
     * Opens a roster; rows are read and checked one by one, as they are asked for, so that a long roster takes no more
     * memory than a short one.
     *
     * @param specs the bytes of a spec by the name that the roster gives, empty if there is none
     */
    public static Outcome<Roster> open(String file, byte[] csv, Function<String, Optional<byte[]>> specs, Catalogue catalogue) {
        return open(file, csv, specs, Checks.ids(catalogue));
    }

    static Outcome<Roster> open(String file, byte[] csv, Function<String, Optional<byte[]>> specs, List<String> exercises) {
        return CsvSheet.read(file, csv, "spec,client.name,client.height").then(sheet -> {
            var lines = sheet.lines();
            var header = lines.next();
            var problems = problems(header);
            if (!lines.hasNext() && problems.isEmpty()) {
                problems.add(Notice.error("roster-empty", header.getFirst().span(), "the roster has a header but no row",
                        "add a line for each client"));
            }
            return Outcome.of(new Roster(file, sheet, header, specs, exercises), problems);
        });
    }

    /** How many rows there are. */
    public int size() {
        return sheet.count() - 1;
    }

    /** The rows in the order of the file. */
    @Override
    public Iterator<Row> iterator() {
        var lines = sheet.lines();
        lines.next();
        var labels = new TreeSet<String>();
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                return lines.hasNext();
            }

            @Override
            public Row next() {
                var cells = lines.next();
                return new Row(cells.getFirst().span().line(), checked(cells).then(spec -> once(spec, cells, labels)));
            }
        };
    }

    private static List<Notice> problems(List<Cell> header) {
        var problems = new ArrayList<Notice>();
        var first = header.getFirst();
        if (!first.text().equals("spec")) {
            problems.add(Notice.error("roster-header", first.span(), "the first column is `" + first.text() + "`, but must be `spec`",
                    "put `spec` first; separate columns by commas"));
            return problems;
        }
        var seen = new TreeSet<String>();
        var paths = KeyPaths.all(ProgramKeys.TABLE);
        for (var cell : header.subList(1, header.size())) {
            if (KeyPaths.at(ProgramKeys.TABLE, cell.text()).isEmpty()) {
                problems.add(Notice.error("roster-column", cell.span(), "`" + cell.text() + "` is no path of a spec",
                        Nearest.of(cell.text(), paths).map(path -> "did you mean `" + path + "`?")
                                .orElse("write the keys from the outside in, with dots: `client.height`")));
            } else if (!seen.add(cell.text())) {
                problems.add(Notice.error("roster-column-twice", cell.span(), "the column `" + cell.text() + "` stands here twice",
                        "delete one of the two"));
            }
        }
        return problems;
    }

    private Outcome<CheckedSpec> checked(List<Cell> cells) {
        var name = cells.getFirst();
        if (cells.size() != header.size()) {
            return refused(Notice.error("roster-cells", name.span(), "this row has " + cells.size()
                    + " cells, but the header has " + header.size(), "give every row as many cells; quote a cell that holds a comma"));
        }
        var start = starts.computeIfAbsent(name.text(), spec -> spec.isEmpty() ? Optional.empty() : specs.apply(spec).map(bytes -> Start.of(spec, bytes)));
        if (start.isEmpty()) {
            return refused(Notice.error("roster-no-spec", name.span(), "there is no spec `" + name.text() + "`",
                    "name a file that stands beside the roster"));
        }
        var reading = start.get().reading();
        return reading.root().map(root -> grafted(root, cells, reading.notices(), start.get().sha256()))
                .orElseGet(() -> new Outcome.Refused<>(reading.notices()));
    }

    private Outcome<CheckedSpec> grafted(YamlNode root, List<Cell> cells, List<Notice> before, String sha256) {
        var notices = new ArrayList<>(before);
        var spec = root;
        var identity = new StringBuilder(sha256);
        for (int i = 1; i < cells.size(); i++) {
            var cell = cells.get(i);
            if (!cell.text().isEmpty()) {
                var value = value(cell, notices);
                spec = value.isPresent() ? Graft.at(spec, header.get(i).text(), value.get()) : spec;
                identity.append('\n').append(header.get(i).text()).append('=').append(cell.text());
            }
        }
        return Checks.check(spec, notices, Checks.plainName(cells.getFirst().text()),
                Checks.sha256(identity.toString().getBytes(StandardCharsets.UTF_8)), exercises);
    }

    private Optional<YamlNode> value(Cell cell, List<Notice> notices) {
        if (!cell.text().startsWith("[") && !cell.text().startsWith("{")) {
            return Optional.of(new YamlNode.Scalar(cell.span(), cell.text(), false));
        }
        return switch (YamlReader.read(file, cell.text().getBytes(StandardCharsets.UTF_8))) {
            case Outcome.Done<YamlNode>(var node, var none) -> Optional.of(Graft.moved(node, cell.span()));
            case Outcome.Refused<YamlNode>(var found) -> {
                found.forEach(n -> notices.add(new Notice(n.severity(), n.id(), cell.span(), n.message(), n.hints())));
                yield Optional.empty();
            }
        };
    }

    /** Refuses a row whose files would take the place of an earlier row's. */
    private static Outcome<CheckedSpec> once(CheckedSpec spec, List<Cell> cells, Set<String> labels) {
        var label = spec.client().label();
        boolean first = labels.add(spec.fileName() + "/" + label.toLowerCase(Locale.ROOT));
        return first ? Outcome.done(spec) : refused(Notice.error("roster-label-twice", cells.getFirst().span(), "`" + label
                + "` has a row already, and this one would overwrite its files", "give each client a `client.code` of their own"));
    }

    private static Outcome<CheckedSpec> refused(Notice notice) {
        return new Outcome.Refused<>(List.of(notice));
    }
}
