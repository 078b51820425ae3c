package contrapposto.check;

import contrapposto.notice.Span;
import contrapposto.yaml.YamlNode;
import java.util.ArrayList;
import java.util.List;

/** Puts a value at a dotted path of a spec's nodes; maps on the way are made where they are missing. */
final class Graft {
    private Graft() { }

    /** {@code root} with {@code value} at {@code path}; new keys stand where the value stands. */
    static YamlNode at(YamlNode root, String path, YamlNode value) {
        int dot = path.indexOf('.');
        var first = dot < 0 ? path : path.substring(0, dot);
        var entries = new ArrayList<YamlNode.Entry>(root instanceof YamlNode.Mapping map ? map.entries() : List.of());
        var nothing = new YamlNode.Mapping(value.span(), List.of());
        for (int i = 0; i < entries.size(); i++) {
            var entry = entries.get(i);
            if (entry.key().text().equals(first)) {
                entries.set(i, new YamlNode.Entry(entry.key(), dot < 0 ? value : at(entry.value(), path.substring(dot + 1), value)));
                return new YamlNode.Mapping(root.span(), entries);
            }
        }
        entries.add(new YamlNode.Entry(new YamlNode.Scalar(value.span(), first, false),
                dot < 0 ? value : at(nothing, path.substring(dot + 1), value)));
        return new YamlNode.Mapping(root.span(), entries);
    }

    /** {@code node} with every place in it replaced by {@code span}. */
    static YamlNode moved(YamlNode node, Span span) {
        return switch (node) {
            case YamlNode.Scalar scalar -> new YamlNode.Scalar(span, scalar.text(), scalar.quoted());
            case YamlNode.Sequence list -> new YamlNode.Sequence(span, list.items().stream().map(item -> moved(item, span)).toList());
            case YamlNode.Mapping map -> new YamlNode.Mapping(span, map.entries().stream().map(entry -> new YamlNode.Entry(
                    new YamlNode.Scalar(span, entry.key().text(), entry.key().quoted()), moved(entry.value(), span))).toList());
        };
    }
}
