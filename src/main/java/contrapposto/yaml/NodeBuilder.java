package contrapposto.yaml;

import contrapposto.notice.Notice;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** Library nodes → {@link YamlNode}: aliases are written out, within a budget; duplicate and complex keys are noticed. */
final class NodeBuilder {
    /** Far above any real spec; an alias bomb passes it at once. */
    static final int MOST_NODES = 200_000;

    private final SourceText source;
    private final List<Notice> notices = new ArrayList<>();
    /** Nodes being built; a library node equals only itself. */
    private final Set<Node> open = new LinkedHashSet<>();
    private int nodes;
    private boolean tooMany;

    NodeBuilder(SourceText source) {
        this.source = source;
    }

    List<Notice> notices() {
        return notices;
    }

    /** The tree under {@code root}; empty if aliases make it endless or too big. */
    Optional<YamlNode> build(Node root) {
        var built = node(root);
        return tooMany ? Optional.empty() : Optional.of(built);
    }

    private YamlNode node(Node node) {
        var span = source.span(node.getStartMark(), node.getEndMark());
        boolean loop = !open.add(node);
        nodes++;
        if (loop || nodes > MOST_NODES) {
            if (!tooMany) {
                notices.add(Notice.error("yaml-alias-bomb", span, loop ? "this value holds an alias of itself"
                        : "written out, the aliases of this file make more than " + MOST_NODES + " values",
                        "write the values out instead of using `&` and `*`"));
            }
            tooMany = true;
        }
        if (tooMany) {
            return new YamlNode.Scalar(span, "", false);
        }
        var built = switch (node) {
            case ScalarNode scalar -> scalar(scalar);
            case SequenceNode sequence -> new YamlNode.Sequence(span, sequence.getValue().stream().map(this::node).toList());
            case MappingNode mapping -> new YamlNode.Mapping(span, entries(mapping));
            default -> throw new IllegalStateException("A YAML node of kind (" + node.getNodeId() + ").");
        };
        open.remove(node);
        return built;
    }

    private YamlNode.Scalar scalar(ScalarNode scalar) {
        return new YamlNode.Scalar(source.span(scalar.getStartMark(), scalar.getEndMark()), scalar.getValue(),
                scalar.getScalarStyle() != ScalarStyle.PLAIN);
    }

    private List<YamlNode.Entry> entries(MappingNode mapping) {
        var entries = new LinkedHashMap<String, YamlNode.Entry>();
        for (NodeTuple pair : mapping.getValue()) {
            if (!(pair.getKeyNode() instanceof ScalarNode written)) {
                notices.add(Notice.error("yaml-complex-key", source.span(pair.getKeyNode().getStartMark()),
                        "a list or map stands where a key is expected", "write a single word before the colon"));
                continue;
            }
            var key = scalar(written);
            var first = entries.get(key.text());
            if (first != null) {
                notices.add(Notice.error("yaml-duplicate-key", key.span(),
                        "`" + key.text() + "` was given already in line " + first.key().span().line(),
                        "keep one of the two"));
                continue;
            }
            entries.put(key.text(), new YamlNode.Entry(key, node(pair.getValueNode())));
        }
        return List.copyOf(entries.values());
    }
}
