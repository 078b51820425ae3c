package contrapposto.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
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
 * Our writer against SnakeYAML's, which it took the place of. Keys that are empty or have a line end are left out: the library
 * writes them in its long form, we on one line.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class YamlTextAgainstLibraryTest {
    private static final Pattern NUMBER = Pattern.compile("[-+]?(\\.\\d+|\\d+(\\.\\d*)?)([eE][-+]?\\d+)?|0o[0-7]+|0x[0-9a-fA-F]+");
    private static final List<String> PIECES = List.of("left", "press", " ", "  ", ":", ": ", "#", " #", "-", "- ", ",", "[", "]", "{", "}", "?",
            "'", "\"", "1", "0", ".", "e", "true", "no", "null", "~", "=", "<<", "!", "&", "*", "@", "%", "|", ">", "ü", "°", "·", "–", "𝄞",
            "2026-03-02", "12:30", "/", "(", ")", "+", "\t", "\n", "Ω", "\u00A0", "...", "---", "y", "n", "off", "0x1F", "`");

    @Test
    void trees_of_all_shapes_come_out_byte_for_byte_the_same() {
        var random = new Random(20261125);
        for (int i = 0; i < 3000; i++) {
            var tree = map(random, 4);
            assertEquals(library(tree), YamlText.of(tree));
        }
    }

    @Test
    void a_branch_that_hangs_in_several_places_is_written_out_in_each() {
        var shared = new LinkedHashMap<String, Object>(Map.of("deep", List.of(Map.of("a", List.of(1, 2)))));
        var tree = new LinkedHashMap<String, Object>();
        tree.put("one", shared);
        tree.put("lists", List.of(shared, List.of(shared, "end"), shared));
        tree.put("two", shared);
        tree.put("lower", new LinkedHashMap<>(Map.of("three", shared)));
        assertEquals(library(tree), YamlText.of(tree));
    }

    @Test
    void numbers_round_as_exact_decimals_do() {
        var random = new Random(7);
        var numbers = new ArrayList<Double>(List.of(0.0, -0.0, 0.00005, 0.00015, -0.00005, 0.00004999999, 1e9, 123456.78905, 99999.99995,
                1e15, -1e-9, 0.5, 2.5, 0.12345, 1.00005, 4.35, 1.0 / 3));
        for (int i = 0; i < 50_000; i++) {
            numbers.add((random.nextDouble() - 0.5) * StrictMath.pow(10, random.nextInt(12) - 3));
            numbers.add(random.nextInt(2_000_000) / 20_000.0);
        }
        for (double number : numbers) {
            var exact = new BigDecimal(number).setScale(4, RoundingMode.HALF_EVEN).stripTrailingZeros();
            assertEquals("{v: " + (exact.signum() == 0 ? "0" : exact.toPlainString()) + "}\n", YamlText.of(Map.of("v", number)));
        }
    }

    private static Map<String, Object> map(Random random, int depth) {
        var map = new LinkedHashMap<String, Object>();
        for (int i = random.nextInt(5); i >= 0; i--) {
            var key = text(random).replace("\n", "");
            map.put(key.isEmpty() ? "key" : key, value(random, depth));
        }
        return map;
    }

    private static Object value(Random random, int depth) {
        return switch (random.nextInt(depth > 0 ? 9 : 5)) {
            case 0 -> random.nextInt(2000) - 1000;
            case 1 -> (random.nextDouble() - 0.5) * 1000;
            case 2 -> random.nextBoolean();
            case 3, 4 -> text(random);
            case 5, 6 -> map(random, depth - 1);
            default -> {
                var list = new ArrayList<>();
                for (int i = random.nextInt(6); i > 0; i--) {
                    list.add(value(random, depth - 1));
                }
                yield list;
            }
        };
    }

    private static String text(Random random) {
        var text = new StringBuilder();
        for (int i = random.nextInt(6); i >= 0; i--) {
            text.append(PIECES.get(random.nextInt(PIECES.size())));
        }
        return text.toString();
    }

    private static String library(Map<String, ?> tree) {
        var options = new DumperOptions();
        options.setLineBreak(DumperOptions.LineBreak.UNIX);
        options.setSplitLines(false);
        options.setWidth(Integer.MAX_VALUE);
        options.setIndent(2);
        options.setIndicatorIndent(2);
        options.setIndentWithIndicator(true);
        options.setAllowUnicode(true);
        options.setMaxSimpleKeyLength(1000);
        var text = new java.io.StringWriter();
        new Yaml(new SafeConstructor(new LoaderOptions()), new Representer(options), options).serialize(node(tree), text);
        return text.toString();
    }

    private static Node node(Object value) {
        return switch (value) {
            case Map<?, ?> map -> new MappingNode(Tag.MAP, true, map.entrySet().stream()
                    .map(entry -> new NodeTuple(node(entry.getKey()), node(entry.getValue()))).toList(), null, null, style(map.values(), map.toString()));
            case List<?> list -> new SequenceNode(Tag.SEQ, true, list.stream().map(YamlTextAgainstLibraryTest::node).toList(), null, null,
                    style(list, list.toString()));
            case String text -> new ScalarNode(Tag.STR, text, null, null, text.contains("\n") ? ScalarStyle.DOUBLE_QUOTED
                    : NUMBER.matcher(text).matches() ? ScalarStyle.SINGLE_QUOTED : ScalarStyle.PLAIN);
            case Boolean truth -> new ScalarNode(Tag.BOOL, truth.toString(), null, null, ScalarStyle.PLAIN);
            case Double real -> {
                var exact = new BigDecimal(real).setScale(4, RoundingMode.HALF_EVEN).stripTrailingZeros();
                yield number(exact.signum() == 0 ? "0" : exact.toPlainString());
            }
            default -> number(value.toString());
        };
    }

    private static Node number(String text) {
        return new ScalarNode(new Resolver().resolve(NodeId.scalar, text, true), text, null, null, ScalarStyle.PLAIN);
    }

    private static FlowStyle style(Iterable<?> values, String about) {
        boolean leaf = true;
        for (var value : values) {
            leaf &= !(value instanceof Map<?, ?> || value instanceof List<?>);
        }
        return leaf && about.length() <= 160 ? FlowStyle.FLOW : FlowStyle.BLOCK;
    }
}
