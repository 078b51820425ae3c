package contrapposto.returns;

import contrapposto.notice.Span;
import contrapposto.yaml.YamlNode;
import java.util.ArrayList;
import java.util.List;

/** Nodes of a return that did not come as YAML, so that one table reads them all. */
final class Nodes {
    private Nodes() { }

    static YamlNode.Entry entry(Span span, String key, String text) {
        return new YamlNode.Entry(new YamlNode.Scalar(span, key, false), new YamlNode.Scalar(span, text, false));
    }

    static YamlNode root(Span span, List<YamlNode> lines, List<YamlNode> days) {
        return root(span, lines, days, List.of());
    }

    /** @param told what the client wrote for the re-check */
    static YamlNode root(Span span, List<YamlNode> lines, List<YamlNode> days, List<YamlNode.Entry> told) {
        var entries = new ArrayList<YamlNode.Entry>();
        entries.add(entry(span, "format", "1"));
        list(entries, span, "log", lines);
        list(entries, span, "days", days);
        if (!told.isEmpty()) {
            entries.add(new YamlNode.Entry(new YamlNode.Scalar(span, "told", false), new YamlNode.Mapping(span, told)));
        }
        return new YamlNode.Mapping(span, entries);
    }

    private static void list(List<YamlNode.Entry> entries, Span span, String key, List<YamlNode> items) {
        if (!items.isEmpty()) {
            entries.add(new YamlNode.Entry(new YamlNode.Scalar(span, key, false), new YamlNode.Sequence(span, items)));
        }
    }
}
