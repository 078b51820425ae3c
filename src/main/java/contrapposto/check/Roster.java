package contrapposto.check;

import contrapposto.catalogue.Catalogue;
import contrapposto.check.RosterSheet.Cell;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.spec.KeyPaths;
import contrapposto.spec.Nearest;
import contrapposto.yaml.YamlNode;
import contrapposto.yaml.YamlReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
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
public final class Roster {
    private final String file;
    private final List<Cell> header;
    private final Function<String, Optional<byte[]>> specs;
    private final List<String> exercises;
    private final Map<String, Optional<byte[]>> bytes = new LinkedHashMap<>();
    private final Set<String> labels = new TreeSet<>();

    private Roster(String file, List<Cell> header, Function<String, Optional<byte[]>> specs, List<String> exercises) {
        this.file = file;
        this.header = header;
        this.specs = specs;
        this.exercises = exercises;
    }

    /** @param line of the roster, from 1 */
    public record Row(int line, Outcome<CheckedSpec> outcome) { }

    /**
     * @param specs the bytes of a spec by the name that the roster gives, empty if there is none
     * @return rows in the order of the file
     */
    public static Outcome<List<Row>> read(String file, byte[] csv, Function<String, Optional<byte[]>> specs, Catalogue catalogue) {
        return read(file, csv, specs, Checks.ids(catalogue));
    }

    static Outcome<List<Row>> read(String file, byte[] csv, Function<String, Optional<byte[]>> specs, List<String> exercises) {
        return RosterSheet.read(file, csv).then(sheet -> {
            var header = sheet.lines().getFirst();
            var problems = problems(header);
            if (sheet.lines().size() == 1 && problems.isEmpty()) {
                problems.add(Notice.error("roster-empty", header.getFirst().span(), "the roster has a header but no row",
                        "add a line for each client"));
            }
            var roster = new Roster(file, header, specs, exercises);
            return Outcome.of(problems.isEmpty() ? sheet.lines().stream().skip(1).map(roster::row).toList() : List.of(), problems);
        });
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

    private Row row(List<Cell> cells) {
        return new Row(cells.getFirst().span().line(), checked(cells));
    }

    private Outcome<CheckedSpec> checked(List<Cell> cells) {
        var name = cells.getFirst();
        if (cells.size() != header.size()) {
            return refused(Notice.error("roster-cells", name.span(), "this row has " + cells.size()
                    + " cells, but the header has " + header.size(), "give every row as many cells; quote a cell that holds a comma"));
        }
        var base = bytes.computeIfAbsent(name.text(), specs);
        if (name.text().isEmpty() || base.isEmpty()) {
            return refused(Notice.error("roster-no-spec", name.span(), "there is no spec `" + name.text() + "`",
                    "name a file that stands beside the roster"));
        }
        var reading = YamlReader.readOn(name.text(), base.get());
        return reading.root().map(root -> grafted(root, cells, reading.notices(), base.get()))
                .orElseGet(() -> new Outcome.Refused<>(reading.notices()));
    }

    private Outcome<CheckedSpec> grafted(YamlNode root, List<Cell> cells, List<Notice> before, byte[] base) {
        var notices = new ArrayList<>(before);
        var spec = root;
        var identity = new StringBuilder(Checks.sha256(base));
        for (int i = 1; i < cells.size(); i++) {
            var cell = cells.get(i);
            if (!cell.text().isEmpty()) {
                var value = value(cell, notices);
                spec = value.isPresent() ? Graft.at(spec, header.get(i).text(), value.get()) : spec;
                identity.append('\n').append(header.get(i).text()).append('=').append(cell.text());
            }
        }
        return Checks.check(spec, notices, Checks.plainName(cells.getFirst().text()),
                Checks.sha256(identity.toString().getBytes(StandardCharsets.UTF_8)), exercises).then(made -> once(made, cells));
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
    private Outcome<CheckedSpec> once(CheckedSpec spec, List<Cell> cells) {
        var label = spec.client().label();
        boolean first = labels.add(spec.fileName() + "/" + label.toLowerCase(Locale.ROOT));
        return first ? Outcome.done(spec) : refused(Notice.error("roster-label-twice", cells.getFirst().span(), "`" + label
                + "` has a row already, and this one would overwrite its files", "give each client a `client.code` of their own"));
    }

    private static Outcome<CheckedSpec> refused(Notice notice) {
        return new Outcome.Refused<>(List.of(notice));
    }
}
