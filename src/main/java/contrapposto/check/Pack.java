package contrapposto.check;

import contrapposto.catalogue.Catalogue;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Severity;
import contrapposto.notice.Span;
import contrapposto.yaml.YamlNode;
import contrapposto.yaml.YamlReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A clinic's set of standard handouts: one spec to start from, and the ways it is varied. Every combination becomes a
 * handout with a number and a name of its own, which stand in place of the client's.
 *
 * @param title  what the set is called
 * @param sheets every combination; the last axis turns fastest
 */
public record Pack(String title, List<Sheet> sheets) {
    /** More than this is a mistake in the file. */
    static final int MOST_SHEETS = 400;
    private static final int DIGITS = 2;

    public Pack {
        sheets = List.copyOf(sheets);
    }

    /**
     * One handout of the set.
     *
     * @param number {@code HS-01}; folder, footer and index page carry it
     * @param chosen axis → value, in the order of the file
     */
    public record Sheet(String number, Map<String, String> chosen, Outcome<CheckedSpec> outcome) {
        public Sheet {
            chosen = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(chosen));
        }
    }

    /** Whether the bytes are those of a pack: its first key is {@code pack}. */
    public static boolean is(byte[] bytes) {
        String start = new String(bytes, 0, Math.min(bytes.length, YamlReader.MOST_BYTES), StandardCharsets.UTF_8);
        return start.lines().map(String::strip).filter(line -> !line.isEmpty() && !line.startsWith("#") && !line.equals("\uFEFF"))
                .findFirst().filter(line -> line.replace("\uFEFF", "").startsWith("pack:")).isPresent();
    }

    /**
     * Reads a pack and checks each of its handouts. A slip in the pack refuses all of it; a combination that makes no
     * sound spec is refused alone.
     *
     * @param specs the bytes of a spec by the name that the pack gives, empty if there is none
     */
    public static Outcome<Pack> open(String file, byte[] bytes, Function<String, Optional<byte[]>> specs, Catalogue catalogue) {
        return open(file, bytes, specs, Checks.ids(catalogue));
    }

    static Outcome<Pack> open(String file, byte[] bytes, Function<String, Optional<byte[]>> specs, List<String> exercises) {
        return YamlReader.read(file, bytes).then(PackReader::read).then(written -> {
            var base = specs.apply(written.spec().text());
            if (base.isEmpty()) {
                return new Outcome.Refused<>(List.of(Notice.error("pack-no-spec", written.spec().span(), "there is no spec `" + written.spec().text() + "`",
                        "name a file that stands beside the pack")));
            }
            return sheets(written, base.get(), exercises).map(sheets -> new Pack(written.title(), sheets));
        });
    }

    private static Outcome<List<Sheet>> sheets(PackReader.Written written, byte[] base, List<String> exercises) {
        var combinations = written.combinations();
        if (combinations.size() > MOST_SHEETS) {
            return new Outcome.Refused<>(List.of(Notice.error("pack-too-many", written.vary(), "the pack makes more handouts than the limit of " + MOST_SHEETS,
                    "make two packs of it")));
        }
        int width = Math.max(DIGITS, Integer.toString(combinations.size()).length());
        var reading = YamlReader.readOn(written.spec().text(), base);
        String sha256 = Checks.sha256(base);
        var sheets = new ArrayList<Sheet>();
        for (var combination : combinations) {
            String number = written.number() + "-" + String.format(Locale.ROOT, "%0" + width + "d", sheets.size() + 1);
            var chosen = new LinkedHashMap<String, String>();
            combination.forEach((axis, value) -> chosen.put(axis, value.name()));
            var spec = reading.root().map(root -> checked(root, reading.notices(), number, combination, sha256, exercises))
                    .orElseGet(() -> new Outcome.Refused<>(reading.notices()));
            sheets.add(new Sheet(number, chosen, spec));
        }
        return Outcome.done(sheets);
    }

    private static Outcome<CheckedSpec> checked(YamlNode root, List<Notice> before, String number, Map<String, PackReader.Value> combination,
                                                String sha256, List<String> exercises) {
        if (before.stream().anyMatch(n -> n.severity() == Severity.ERROR)) {
            return new Outcome.Refused<>(before);
        }
        String label = combination.values().stream().map(PackReader.Value::name).collect(Collectors.joining(", "));
        Span place = combination.values().stream().findFirst().map(PackReader.Value::span).orElse(root.span());
        var spec = Graft.at(root, "client.name", new YamlNode.Scalar(place, label.isEmpty() ? number : label, true));
        spec = Graft.at(spec, "client.code", new YamlNode.Scalar(place, number, true));
        var identity = new StringBuilder(sha256).append('\n').append(number).append('\n').append(label);
        for (var value : combination.values()) {
            for (var change : value.changes().entrySet()) {
                spec = Graft.at(spec, change.getKey(), change.getValue());
                identity.append('\n').append(change.getKey()).append('=').append(plain(change.getValue()));
            }
        }
        String name = label.isEmpty() ? number : label.replace(", ", "-").replace(' ', '-');
        return Checks.check(spec, before, name, Checks.sha256(identity.toString().getBytes(StandardCharsets.UTF_8)), exercises);
    }

    /** A value without its places, so that it counts the same wherever it stands. */
    private static String plain(YamlNode node) {
        return switch (node) {
            case YamlNode.Scalar scalar -> scalar.text().length() + ":" + scalar.text();
            case YamlNode.Sequence list -> list.items().stream().map(Pack::plain).collect(Collectors.joining(",", "[", "]"));
            case YamlNode.Mapping map -> map.entries().stream().map(e -> plain(e.key()) + ">" + plain(e.value())).collect(Collectors.joining(",", "{", "}"));
        };
    }
}
