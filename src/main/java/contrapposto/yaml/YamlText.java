package contrapposto.yaml;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeId;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.representer.Representer;
import org.yaml.snakeyaml.resolver.Resolver;

/**
 * Plain trees to YAML text: {@link Map} with string keys (kept in the order given), {@link List}, {@link String},
 * {@link Number}, {@link Boolean}. The same tree gives the same text everywhere. Maps are written in block style; a
 * map or list of a few plain values fits on its line. A {@link Double} is rounded to four decimals; a
 * {@link BigDecimal} keeps the decimals it has. A string that would be read back as something else is quoted.
 */
public final class YamlText {
    private static final int DECIMALS = 4;
    private static final int WIDEST_FLOW = 160;
    /** Numbers of the YAML 1.2 core schema that the library, which speaks 1.1, leaves unquoted. */
    private static final Pattern NUMBER = Pattern.compile("[-+]?(\\.\\d+|\\d+(\\.\\d*)?)([eE][-+]?\\d+)?|0o[0-7]+|0x[0-9a-fA-F]+");

    private final Resolver resolver = new Resolver();

    private YamlText() { }

    /** @throws IllegalArgumentException if the tree holds anything else, a null, or a number that is not finite */
    public static String of(Map<String, ?> tree) {
        var options = new DumperOptions();
        options.setLineBreak(DumperOptions.LineBreak.UNIX);
        options.setSplitLines(false);
        options.setWidth(Integer.MAX_VALUE);
        options.setIndent(2);
        options.setIndicatorIndent(2);
        options.setIndentWithIndicator(true);
        options.setAllowUnicode(true);
        options.setMaxSimpleKeyLength(1000);
        var text = new StringWriter();
        new Yaml(new SafeConstructor(new LoaderOptions()), new Representer(options), options)
                .serialize(new YamlText().node(tree), text);
        return text.toString();
    }

    private Node node(Object value) {
        return switch (value) {
            case Map<?, ?> map -> new MappingNode(Tag.MAP, true, map.entrySet().stream()
                    .map(entry -> new NodeTuple(key(entry.getKey()), node(entry.getValue()))).toList(), null, null,
                    style(map.values(), map.toString()));
            case List<?> list -> new SequenceNode(Tag.SEQ, true, list.stream().map(this::node).toList(), null, null,
                    style(list, list.toString()));
            case String text -> string(text);
            case Boolean truth -> scalar(Tag.BOOL, truth.toString());
            case Number number -> number(number);
            case null -> throw new IllegalArgumentException("A YAML tree holds no null: leave the key out.");
            default -> throw new IllegalArgumentException("A YAML tree holds no (" + value.getClass().getName() + ").");
        };
    }

    private Node key(Object key) {
        if (!(key instanceof String text)) {
            throw new IllegalArgumentException("The keys of a YAML tree are strings, but was (" + key + ").");
        }
        return string(text);
    }

    private Node string(String text) {
        var style = NUMBER.matcher(text).matches() ? ScalarStyle.SINGLE_QUOTED : ScalarStyle.PLAIN;
        return new ScalarNode(Tag.STR, text, null, null, text.contains("\n") ? ScalarStyle.DOUBLE_QUOTED : style);
    }

    private Node number(Number number) {
        var text = text(number);
        return scalar(resolver.resolve(NodeId.scalar, text, true), text);
    }

    private static Node scalar(Tag tag, String text) {
        return new ScalarNode(tag, text, null, null, ScalarStyle.PLAIN);
    }

    private static FlowStyle style(Iterable<?> values, String about) {
        boolean leaf = true;
        for (var value : values) {
            leaf &= !(value instanceof Map<?, ?> || value instanceof List<?>);
        }
        return leaf && about.length() <= WIDEST_FLOW ? FlowStyle.FLOW : FlowStyle.BLOCK;
    }

    /** The number in digits, with a point, without exponent, never minus zero. */
    private static String text(Number number) {
        return switch (number) {
            case Integer whole -> whole.toString();
            case Long whole -> whole.toString();
            case BigDecimal exact -> exact.toPlainString();
            case Double real when Double.isFinite(real) -> {
                var rounded = new BigDecimal(real).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
                yield rounded.signum() == 0 ? "0" : rounded.toPlainString();
            }
            default -> throw new IllegalArgumentException("A YAML tree holds no number such as (" + number + ").");
        };
    }
}
