package contrapposto.returns;

import contrapposto.yaml.YamlNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The text of a spec, edited where it must change and left as its author wrote it elsewhere: order, comments, spacing. Works
 * on maps that stand a key a line; {@link #tidied} brings any other into that form, at the price of its comments.
 */
final class SpecText {
    private final List<String> lines;
    private final YamlNode.Mapping root;
    /** Line, from 0 → what takes the place of it and of those after it. */
    private final Map<Integer, Edit> edits = new TreeMap<>(Collections.reverseOrder());

    /** Sections that were not there → their lines. */
    private final Map<String, List<String>> fresh = new TreeMap<>();

    /** @param to excluded */
    private record Edit(int to, List<String> text) { }

    /** From {@code from} to {@code to}, excluded, counted from 0. */
    private record Range(int from, int to, int column) { }

    SpecText(String text, YamlNode.Mapping root) {
        lines = new ArrayList<>(Arrays.asList(text.replace("\r\n", "\n").split("\n", -1)));
        if (lines.getLast().isEmpty()) {
            lines.removeLast();
        }
        this.root = root;
    }

    /** Whether the top of the spec, and the sections named, stand a key a line. */
    boolean editable(List<String> sections) {
        return keyALine(root) && sections.stream().allMatch(name -> section(name)
                .map(node -> node instanceof YamlNode.Mapping map && keyALine(map)).orElse(true));
    }

    /** The spec written anew with the keys of its maps a line each. */
    static String tidied(YamlNode.Mapping root) {
        return NodeText.block(root, 0);
    }

    private boolean keyALine(YamlNode.Mapping map) {
        return map.entries().stream().allMatch(entry -> {
            var span = entry.key().span();
            return span.line() >= 1 && span.line() <= lines.size()
                    && lines.get(span.line() - 1).substring(0, Math.min(span.column() - 1, lines.get(span.line() - 1).length())).isBlank();
        }) && map.entries().stream().map(e -> e.key().span().line()).distinct().count() == map.entries().size();
    }

    private Optional<YamlNode> section(String name) {
        return root.entries().stream().filter(e -> e.key().text().equals(name)).map(YamlNode.Entry::value).findFirst();
    }

    boolean has(String section, String key) {
        return section(section).filter(node -> node instanceof YamlNode.Mapping map
                && map.entries().stream().anyMatch(e -> e.key().text().equals(key))).isPresent();
    }

    /** Puts {@code text} (lines without their indentation) where the section is; at the end where there is none. */
    void section(String name, List<String> text) {
        var range = range(root, name, lines.size());
        put(range.orElse(new Range(lines.size(), lines.size(), 0)), text);
    }

    /** The same for a key of a section; a new key comes first, a new section at the end. */
    void key(String section, String name, List<String> text) {
        var within = section(section);
        if (within.isEmpty() || !(within.get() instanceof YamlNode.Mapping map)) {
            text.forEach(line -> fresh.computeIfAbsent(section, begun -> new ArrayList<>()).add("  " + line));
            return;
        }
        int end = range(root, section, lines.size()).orElseThrow().to();
        var first = map.entries().getFirst().key().span();
        put(range(map, name, end).orElse(new Range(first.line() - 1, first.line() - 1, first.column() - 1)), text);
    }

    private void put(Range range, List<String> text) {
        var indented = text.stream().map(line -> " ".repeat(range.column()) + line).toList();
        var before = edits.get(range.from());
        if (before != null) {
            var both = new ArrayList<>(before.to() == range.from() ? before.text() : indented);
            both.addAll(before.to() == range.from() ? indented : before.text());
            edits.put(range.from(), new Edit(Math.max(before.to(), range.to()), both));
        } else {
            edits.put(range.from(), new Edit(range.to(), indented));
        }
    }

    /** From the key's line to before the next key of the map or {@code end}; comments above the next key stay with it. */
    private Optional<Range> range(YamlNode.Mapping map, String name, int end) {
        var keys = map.entries().stream().map(YamlNode.Entry::key).toList();
        for (int i = 0; i < keys.size(); i++) {
            if (keys.get(i).text().equals(name)) {
                int from = keys.get(i).span().line() - 1;
                int to = i + 1 < keys.size() ? keys.get(i + 1).span().line() - 1 : end;
                while (to > from + 1 && (lines.get(to - 1).isBlank() || lines.get(to - 1).strip().startsWith("#"))) {
                    to--;
                }
                return Optional.of(new Range(from, to, keys.get(i).span().column() - 1));
            }
        }
        return Optional.empty();
    }

    /** The text with all edits, {@code head} above it. */
    String text(List<String> head) {
        var made = new ArrayList<>(lines);
        edits.forEach((from, edit) -> {
            made.subList(from, Math.min(edit.to(), made.size())).clear();
            made.addAll(from, edit.text());
        });
        fresh.forEach((section, text) -> {
            made.add(section + ":");
            made.addAll(text);
        });
        made.addAll(0, head);
        return String.join("\n", made) + "\n";
    }
}
