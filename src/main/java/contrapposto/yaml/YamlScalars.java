package contrapposto.yaml;

import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
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
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.representer.Representer;
import org.yaml.snakeyaml.resolver.Resolver;

/**
 * How a string is written so that it is read back as itself: bare where nothing in it means something to YAML, quoted
 * where it would be taken for something else. Strings of ordinary characters are judged here, by the rules of the
 * library's writer (YAML 1.1, 5.3 and 9.1.3); for the others the library itself is asked. What was said is remembered
 * while one text is written.
 */
final class YamlScalars {
    /** Numbers of the YAML 1.2 core schema that the library, which speaks 1.1, leaves unquoted. */
    private static final Pattern NUMBER = Pattern.compile("[-+]?(\\.\\d+|\\d+(\\.\\d*)?)([eE][-+]?\\d+)?|0o[0-7]+|0x[0-9a-fA-F]+");
    /** A string that begins so means something, whatever follows. */
    private static final String BEGINNINGS = "#,[]{}&*!|>'\"%@` ";
    /** A string that begins so may mean something: for the library to say. */
    private static final String DOUBTFUL_BEGINNINGS = "?:-";
    private static final String IN_BRACKETS = ",?[]{}:";
    /** Characters that end a line, in YAML 1.1; within quotes of one kind they would be folded. */
    private static final Pattern LINE_END = Pattern.compile("[\n\r\u0085\u2028\u2029]");
    private static final Resolver RESOLVER = new Resolver();

    private final Map<String, String> alone = new LinkedHashMap<>();
    private final Map<String, String> within = new LinkedHashMap<>();
    private final Map<String, String> keys = new LinkedHashMap<>();
    private final Map<String, String> flowKeys = new LinkedHashMap<>();

    /** As a value after its key, or an item of a list with a line of its own. */
    String alone(String text) {
        return remembered(alone, text, t -> written(t, false, FlowStyle.BLOCK, YamlScalars::asked));
    }

    /** As a value within brackets. */
    String within(String text) {
        return remembered(within, text, t -> written(t, true, FlowStyle.FLOW, YamlScalars::asked));
    }

    /** As a key with a line of its own. */
    String key(String text) {
        return remembered(keys, text, t -> written(t, false, FlowStyle.BLOCK, YamlScalars::askedAsKey));
    }

    /** As a key within brackets. */
    String flowKey(String text) {
        return remembered(flowKeys, text, t -> written(t, true, FlowStyle.FLOW, YamlScalars::askedAsKey));
    }

    /** Not {@code computeIfAbsent}: it looks twice where nothing is there, and most strings come once. */
    private static String remembered(Map<String, String> said, String text, Function<String, String> written) {
        var before = said.get(text);
        if (before == null) {
            before = written.apply(text);
            said.put(text, before);
        }
        return before;
    }

    private static String written(String text, boolean within, FlowStyle style, BiFunction<String, FlowStyle, String> library) {
        if (text.isEmpty()) {
            return "''";
        }
        if (DOUBTFUL_BEGINNINGS.indexOf(text.charAt(0)) >= 0 || !ordinary(text)) {
            return library.apply(text, style);
        }
        return bare(text, within) ? text : "'" + text.replace("'", "''") + "'";
    }

    private static boolean ordinary(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (!(c >= 0x20 && c <= 0x7E || c >= 0xA0 && c < 0x2000)) {
                return false;
            }
        }
        return true;
    }

    private static boolean bare(String text, boolean within) {
        int end = text.length() - 1;
        if (BEGINNINGS.indexOf(text.charAt(0)) >= 0 || text.charAt(end) == ' ' || text.startsWith("...")) {
            return false;
        }
        for (int i = 1; i <= end; i++) {
            char c = text.charAt(i);
            if (c == '#' && text.charAt(i - 1) == ' ' || c == ':' && (i == end || text.charAt(i + 1) == ' ')
                    || within && IN_BRACKETS.indexOf(c) >= 0) {
                return false;
            }
        }
        return RESOLVER.resolve(NodeId.scalar, text, true) == Tag.STR && !NUMBER.matcher(text).matches();
    }

    private static String asked(String text, FlowStyle style) {
        var line = library(new ScalarNode(Tag.STR, "k", null, null, ScalarStyle.PLAIN), node(text), style);
        return style == FlowStyle.FLOW ? line.substring("{k: ".length(), line.length() - "}\n".length())
                : line.substring("k: ".length(), line.length() - "\n".length());
    }

    /** A key with a line end in it stands in double quotes on one line; the library would write the long form. */
    private static String askedAsKey(String text, FlowStyle style) {
        if (LINE_END.matcher(text).find()) {
            return asked(text, style);
        }
        var line = library(node(text), new ScalarNode(Tag.INT, "0", null, null, ScalarStyle.PLAIN), style);
        return style == FlowStyle.FLOW ? line.substring("{".length(), line.length() - ": 0}\n".length())
                : line.substring(0, line.length() - ": 0\n".length());
    }

    private static Node node(String text) {
        var style = NUMBER.matcher(text).matches() ? ScalarStyle.SINGLE_QUOTED : ScalarStyle.PLAIN;
        return new ScalarNode(Tag.STR, text, null, null, LINE_END.matcher(text).find() ? ScalarStyle.DOUBLE_QUOTED : style);
    }


    private static String library(Node key, Node value, FlowStyle style) {
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
                .serialize(new MappingNode(Tag.MAP, true, List.of(new NodeTuple(key, value)), null, null, style), text);
        return text.toString();
    }
}
