package contrapposto.spec;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Words in which the schemas of files without a table of keys are written down: each makes a part of a JSON Schema, draft
 * 2020-12, as a plain tree of maps, lists, text and numbers.
 */
public final class SchemaTree {
    private SchemaTree() { }

    /** A key of a map. @param about one phrase for editors */
    public record Entry(String name, boolean required, Map<String, Object> value, String about) { }

    public static Entry required(String name, Map<String, Object> value, String about) {
        return new Entry(name, true, value, about);
    }

    public static Entry optional(String name, Map<String, Object> value, String about) {
        return new Entry(name, false, value, about);
    }

    /** A map of these keys and no others. */
    public static Map<String, Object> map(Entry... entries) {
        var properties = new LinkedHashMap<String, Object>();
        for (var entry : entries) {
            var value = node("description", entry.about());
            value.putAll(entry.value());
            properties.put(entry.name(), value);
        }
        var map = node("type", "object", "additionalProperties", false, "properties", properties);
        var required = Arrays.stream(entries).filter(Entry::required).map(Entry::name).toList();
        if (!required.isEmpty()) {
            map.put("required", required);
        }
        return map;
    }

    /** A map whose keys fit {@code key}, at least one. */
    public static Map<String, Object> pairs(Map<String, Object> key, Map<String, Object> value) {
        return node("type", "object", "minProperties", 1, "propertyNames", key, "additionalProperties", value);
    }

    public static Map<String, Object> text() {
        return node("type", List.of("string", "number"));
    }

    /** Text that fits a pattern. */
    public static Map<String, Object> text(String pattern) {
        return node("type", "string", "pattern", "^" + pattern + "$");
    }

    public static Map<String, Object> words(List<String> words) {
        return node("enum", words);
    }

    public static Map<String, Object> truth() {
        return words(List.of("yes", "no"));
    }

    public static Map<String, Object> number() {
        return node("type", "number");
    }

    public static Map<String, Object> number(double low, double high) {
        return node("type", "number", "minimum", low, "maximum", high);
    }

    public static Map<String, Object> above(double low) {
        return node("type", "number", "exclusiveMinimum", low);
    }

    public static Map<String, Object> whole() {
        return node("type", "integer");
    }

    public static Map<String, Object> whole(int low, int high) {
        return node("type", "integer", "minimum", low, "maximum", high);
    }

    /** Two numbers, the lower first; that it is lower a schema cannot say. */
    public static Map<String, Object> range(Map<String, Object> number) {
        return list(number, 2, 2);
    }

    public static Map<String, Object> list(Map<String, Object> item) {
        return node("type", "array", "items", item);
    }

    public static Map<String, Object> list(Map<String, Object> item, int least) {
        return node("type", "array", "minItems", least, "items", item);
    }

    public static Map<String, Object> list(Map<String, Object> item, int least, int most) {
        return node("type", "array", "minItems", least, "maxItems", most, "items", item);
    }

    /** Whatever fits one of {@code forms}. */
    public static Map<String, Object> anyOf(List<Map<String, Object>> forms) {
        return node("anyOf", forms);
    }

    /** {@code map}, and also all of {@code rules}. */
    @SafeVarargs
    public static Map<String, Object> also(Map<String, Object> map, Map<String, Object>... rules) {
        var both = new LinkedHashMap<>(map);
        both.put("allOf", List.of(rules));
        return both;
    }

    /** {@code key} is there. */
    public static Map<String, Object> has(String key) {
        return node("required", List.of(key));
    }

    public static Map<String, Object> not(Map<String, Object> schema) {
        return node("not", schema);
    }

    /** Of the maps by their name, the first whose mark is a key of the file, else the last: one schema for all kinds of files. */
    public static Map<String, Object> firstMarked(List<String> names, List<String> marks) {
        var reference = node("$ref", "#/$defs/" + names.getFirst());
        return marks.isEmpty() ? reference : node("if", has(marks.getFirst()), "then", reference,
                "else", firstMarked(names.subList(1, names.size()), marks.subList(1, marks.size())));
    }

    /** Keys and values in turn. */
    public static Map<String, Object> node(Object... pairs) {
        var node = new LinkedHashMap<String, Object>();
        for (int i = 0; i < pairs.length; i += 2) {
            node.put((String) pairs[i], pairs[i + 1]);
        }
        return node;
    }

    /** The first list and the second. */
    public static <T> List<T> both(List<? extends T> first, List<? extends T> second) {
        var all = new ArrayList<T>(first);
        all.addAll(second);
        return all;
    }
}
