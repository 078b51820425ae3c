package contrapposto.check;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import contrapposto.spec.KeyPaths;
import contrapposto.spec.Nearest;
import contrapposto.yaml.YamlNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The nodes of a pack → what it says, or every problem of the file at once. */
final class PackReader {
    private static final List<String> KEYS = List.of("pack", "title", "number", "spec", "vary");
    private static final String FORMAT = "1";
    static final Pattern NUMBER = Pattern.compile("[A-Za-z0-9][A-Za-z0-9_-]{0,15}");
    private static final String SHAPE = "write `vary: {direction: {turned left: {assessment.pelvis.turned: left}}}`: axis, value, changes";

    private final List<Notice> problems = new ArrayList<>();

    private PackReader() { }

    /** One value of an axis. @param changes dotted path of a spec → what stands there instead */
    record Value(String name, Span span, Map<String, YamlNode> changes) { }

    /** @param spec the name of the spec to start from; {@code vary} the place of the axes */
    record Written(String title, String number, YamlNode.Scalar spec, Span vary, Map<String, List<Value>> axes) {
        /** Every way to choose one value on each axis; the last axis turns fastest. Stops one after the limit. */
        List<Map<String, Value>> combinations() {
            List<Map<String, Value>> all = List.of(Map.of());
            for (var axis : axes.entrySet()) {
                all = all.stream().flatMap(before -> axis.getValue().stream().map(value -> {
                    Map<String, Value> longer = new LinkedHashMap<>(before);
                    longer.put(axis.getKey(), value);
                    return longer;
                })).limit(Pack.MOST_SHEETS + 1L).toList();
            }
            return all;
        }
    }

    static Outcome<Written> read(YamlNode root) {
        return new PackReader().written(root);
    }

    private Outcome<Written> written(YamlNode root) {
        var entries = root instanceof YamlNode.Mapping map ? map.entries() : List.<YamlNode.Entry>of();
        for (var entry : entries) {
            if (!KEYS.contains(entry.key().text())) {
                problem(entry.key().span(), "`" + entry.key().text() + "` is no key of a pack", Nearest.of(entry.key().text(), KEYS)
                        .map(near -> "did you mean `" + near + "`?").orElse("a pack has " + String.join(", ", KEYS)));
            }
        }
        scalar(entries, "pack").filter(format -> !format.text().equals(FORMAT)).ifPresent(format ->
                problem(format.span(), "this is a pack of format `" + format.text() + "`, but only format 1 is known", "write `pack: 1`"));
        var number = scalar(entries, "number");
        number.filter(n -> !NUMBER.matcher(n.text()).matches()).ifPresent(n ->
                problem(n.span(), "`" + n.text() + "` cannot begin a number", "give 1 to 16 letters, digits, hyphens or underscores"));
        var spec = scalar(entries, "spec");
        if (spec.isEmpty()) {
            problem(root.span(), "the pack names no spec to start from", "add `spec: FILE.yaml`");
        }
        var vary = entries.stream().filter(e -> e.key().text().equals("vary")).findFirst().map(YamlNode.Entry::value);
        var axes = vary.map(this::axes).orElse(Map.of());
        if (axes.isEmpty() && problems.isEmpty()) {
            problem(root.span(), "the pack varies nothing", SHAPE);
        }
        return spec.isEmpty() ? new Outcome.Refused<>(problems) : Outcome.of(new Written(
                scalar(entries, "title").map(YamlNode.Scalar::text).orElse("Standard handouts"), number.map(YamlNode.Scalar::text).orElse("P"),
                spec.get(), vary.orElse(root).span(), axes), problems);
    }

    private Optional<YamlNode.Scalar> scalar(List<YamlNode.Entry> entries, String key) {
        return entries.stream().filter(e -> e.key().text().equals(key)).findFirst().flatMap(e -> {
            if (e.value() instanceof YamlNode.Scalar scalar && !scalar.text().isBlank()) {
                return Optional.of(scalar);
            }
            problem(e.key().span(), "`" + key + "` holds no single word or text", "give one value");
            return Optional.empty();
        });
    }

    private Map<String, List<Value>> axes(YamlNode vary) {
        var axes = new LinkedHashMap<String, List<Value>>();
        for (var axis : entries(vary)) {
            var values = new ArrayList<Value>();
            for (var value : entries(axis.value())) {
                values.add(new Value(value.key().text(), value.key().span(), changes(value.value())));
            }
            axes.put(axis.key().text(), values);
        }
        return axes;
    }

    private Map<String, YamlNode> changes(YamlNode node) {
        var changes = new LinkedHashMap<String, YamlNode>();
        for (var change : entries(node)) {
            String path = change.key().text();
            if (KeyPaths.at(ProgramKeys.TABLE, path).isEmpty()) {
                problem(change.key().span(), "`" + path + "` is no path of a spec", Nearest.of(path, KeyPaths.all(ProgramKeys.TABLE))
                        .map(near -> "did you mean `" + near + "`?").orElse("write the keys from the outside in, with dots: `client.height`"));
            }
            changes.put(path, change.value());
        }
        return changes;
    }

    private List<YamlNode.Entry> entries(YamlNode node) {
        if (node instanceof YamlNode.Mapping map && !map.entries().isEmpty()) {
            return map.entries();
        }
        problem(node.span(), "here must stand keys and values", SHAPE);
        return List.of();
    }

    private void problem(Span span, String message, String hint) {
        problems.add(Notice.error("pack-slip", span, message, hint));
    }
}
