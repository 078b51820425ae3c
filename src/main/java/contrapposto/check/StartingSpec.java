package contrapposto.check;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.yaml.YamlNode;
import contrapposto.yaml.YamlReader;
import contrapposto.yaml.YamlText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.regex.Pattern;

/**
 * The commented spec from which a new one is begun; it checks without a notice. Facts known already are written over its
 * examples, in place, so that the comments beside them stay. Whether they make sense is for {@link Checks} to say.
 */
public final class StartingSpec {
    private static final String RESOURCE = "/contrapposto/starting-spec.yaml";
    private static final int LONGEST_IN_BRACKETS = 100;
    private static final Pattern COMMENT_AFTER = Pattern.compile("^(.*?\\S)( {2,})(# .*)$");

    private final List<String> lines;

    private StartingSpec(List<String> lines) {
        this.lines = lines;
    }

    public static String text() {
        try (var in = StartingSpec.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("The class path lacks (" + RESOURCE + ").");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * The text with {@code facts} in place of its examples.
     *
     * @param facts answers as typed; an empty one takes the key out, where the key is one that may be missing
     */
    public static String with(SortedMap<FirstFact, String> facts) {
        var draft = new StartingSpec(new ArrayList<>(Arrays.asList(text().split("\n", -1))));
        for (Map.Entry<FirstFact, String> fact : facts.entrySet()) {
            draft.put(fact.getKey(), fact.getValue());
        }
        return String.join("\n", draft.lines);
    }

    /** What is wrong with a text made by {@link #with}: nothing, unless an answer was. It names no exercise, so no catalogue is asked. */
    public static List<Notice> problems(String file, String text) {
        return Checks.check(file, text.getBytes(StandardCharsets.UTF_8), List.of()) instanceof Outcome.Refused<?>(var notices) ? notices : List.of();
    }

    private void put(FirstFact fact, String answer) {
        var keys = fact.path().split("\\.");
        var leaf = keys[keys.length - 1];
        if (answer.isBlank()) {
            find(keys).ifPresent(node -> silence(node.span().line() - 1));
            return;
        }
        if (find(keys).isEmpty()) {
            wake(leaf);
        }
        var node = find(keys).orElseThrow(() -> new IllegalStateException("The starting spec has no place for (" + fact.path() + ")."));
        int at = node.span().line() - 1;
        int from = node.span().column() - 1;
        var line = lines.get(at);
        int to = switch (node) {
            case YamlNode.Scalar scalar -> from + scalar.span().length();
            case YamlNode.Sequence list -> line.indexOf(']', from) + 1;
            case YamlNode.Mapping map -> line.indexOf('}', from) + 1;
        };
        lines.set(at, aligned(line, line.substring(0, from) + written(fact, answer) + line.substring(to)));
    }

    private Optional<YamlNode> find(String... keys) {
        Optional<YamlNode> node = Optional.of(YamlReader.shipped(RESOURCE, String.join("\n", lines).getBytes(StandardCharsets.UTF_8)));
        for (var key : keys) {
            node = node.flatMap(n -> n instanceof YamlNode.Mapping map
                    ? map.entries().stream().filter(e -> e.key().text().equals(key)).map(YamlNode.Entry::value).findFirst() : Optional.empty());
        }
        return node;
    }

    /** Takes the mark of a comment from the first line that shows how {@code leaf} is written. */
    private void wake(String leaf) {
        for (int i = 0; i < lines.size(); i++) {
            var line = lines.get(i);
            if (line.stripLeading().startsWith("# " + leaf + ": ")) {
                lines.set(i, aligned(line, line.replaceFirst("# ", "")));
                return;
            }
        }
    }

    private void silence(int at) {
        var line = lines.get(at);
        var text = line.stripLeading();
        lines.set(at, aligned(line, line.substring(0, line.length() - text.length()) + "# " + text));
    }

    private static String written(FirstFact fact, String answer) {
        var values = fact.values(answer).stream().map(StartingSpec::scalar).toList();
        return fact.list() ? "[" + String.join(", ", values) + "]" : values.getFirst();
    }

    /** {@code value} as it must be written to be read back as itself, within brackets too; numbers stay bare. */
    private static String scalar(String value) {
        if (value.matches("-?\\d+(\\.\\d+)?") || value.matches("\\d{4}-\\d{2}-\\d{2}")) {
            return value;
        }
        boolean fits = value.length() <= LONGEST_IN_BRACKETS;
        var line = YamlText.of(Map.of("v", fits ? List.of(value) : value)).strip();
        return fits ? line.substring(line.indexOf('[') + 1, line.lastIndexOf(']')) : line.substring(line.indexOf(':') + 2);
    }

    /** {@code changed} with its comment where it stood in {@code before}, or two spaces on. */
    private static String aligned(String before, String changed) {
        var old = COMMENT_AFTER.matcher(before);
        var now = COMMENT_AFTER.matcher(changed);
        if (!old.matches() || !now.matches()) {
            return changed;
        }
        return now.group(1) + " ".repeat(Math.max(2, old.start(3) - now.end(1))) + now.group(3);
    }
}
