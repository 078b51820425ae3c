package contrapposto.returns;

import contrapposto.yaml.YamlNode;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Nodes back to YAML as a person would write it: keys in their order, a map of a few plain values on its line. */
final class NodeText {
    private static final int WIDEST = 110;
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9.][A-Za-z0-9 ._/+-]*(?<! )");
    private static final String STEP = "  ";

    private NodeText() { }

    /** The entries of a map, one a line or more, indented by {@code depth} steps; a map at the top never stands on one line. */
    static String block(YamlNode.Mapping map, int depth) {
        return map.entries().stream().map(entry -> entry(entry, depth)).collect(Collectors.joining());
    }

    private static String entry(YamlNode.Entry entry, int depth) {
        String key = STEP.repeat(depth) + scalar(entry.key()) + ":";
        return switch (entry.value()) {
            case YamlNode.Scalar scalar -> key + " " + scalar(scalar) + "\n";
            case YamlNode.Mapping map -> depth > 0 && flows(map) ? key + " " + flow(map) + "\n" : key + "\n" + block(map, depth + 1);
            case YamlNode.Sequence list -> flows(list) ? key + " " + flow(list) + "\n"
                    : key + "\n" + list.items().stream().map(item -> STEP.repeat(depth + 1) + "- " + flow(item) + "\n").collect(Collectors.joining());
        };
    }

    private static boolean flows(YamlNode node) {
        return flow(node).length() <= WIDEST && depth(node) <= 2;
    }

    private static int depth(YamlNode node) {
        return switch (node) {
            case YamlNode.Scalar scalar -> 0;
            case YamlNode.Mapping map -> 1 + map.entries().stream().mapToInt(e -> depth(e.value())).max().orElse(0);
            case YamlNode.Sequence list -> 1 + list.items().stream().mapToInt(NodeText::depth).max().orElse(0);
        };
    }

    /** On one line. */
    static String flow(YamlNode node) {
        return switch (node) {
            case YamlNode.Scalar scalar -> scalar(scalar);
            case YamlNode.Mapping map -> map.entries().stream().map(e -> scalar(e.key()) + ": " + flow(e.value()))
                    .collect(Collectors.joining(", ", "{", "}"));
            case YamlNode.Sequence list -> list.items().stream().map(NodeText::flow).collect(Collectors.joining(", ", "[", "]"));
        };
    }

    static String list(List<String> words) {
        return words.stream().map(NodeText::text).collect(Collectors.joining(", ", "[", "]"));
    }

    private static String scalar(YamlNode.Scalar scalar) {
        return scalar.quoted() ? quoted(scalar.text()) : text(scalar.text());
    }

    /** Plain where nothing in it could be read as anything but itself. */
    static String text(String text) {
        return PLAIN.matcher(text).matches() ? text : quoted(text);
    }

    private static String quoted(String text) {
        var made = new StringBuilder("\"");
        text.codePoints().forEach(code -> {
            switch (code) {
                case '"' -> made.append("\\\"");
                case '\\' -> made.append("\\\\");
                case '\n' -> made.append("\\n");
                case '\t' -> made.append("\\t");
                default -> {
                    if (code < ' ') {
                        made.append(String.format(Locale.ROOT, "\\x%02x", code));
                    } else {
                        made.appendCodePoint(code);
                    }
                }
            }
        });
        return made.append('"').toString();
    }
}
