package contrapposto.spec;

import static contrapposto.spec.SchemaTree.node;

import contrapposto.quantity.Colour;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A table of keys as a part of a JSON Schema, draft 2020-12, for editors: completion, and most of what {@link SpecReader} refuses.
 * It says which keys need or exclude each other; it cannot compare two values, nor the limits of an amount, which it gives in words.
 */
public final class JsonSchema {
    private static final String FAMILY_ID = "^[a-z][a-z0-9-]*$";
    /** A day with a month and a day that exist in some month; the format says the rest. */
    private static final String DAY = "^\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])$";
    /** What {@link contrapposto.notice.Unseen} knows, as far as editors see it. */
    private static final String UNSEEN = "\\u0000-\\u0008\\u000b-\\u001f\\u007f-\\u009f\\u061c\\u200e\\u200f\\u2028-\\u202e\\u2066-\\u2069\\ufeff";

    private final List<String> exercises;

    private JsonSchema(List<String> exercises) {
        this.exercises = exercises;
    }

    /**
     * The table as a plain tree of maps, lists, text and numbers, in its own order.
     *
     * @param exercises ids to suggest; others are allowed, since a practice may bring its own families
     */
    public static Map<String, Object> of(Value.Fields table, List<String> exercises) {
        return new JsonSchema(exercises).schema(table);
    }

    private Map<String, Object> schema(Value value) {
        return switch (value) {
            case Value.Text text -> node("type", List.of("string", "number"), "minLength", 1, "maxLength", text.most(),
                    "pattern", "^[^" + UNSEEN + (text.lines() ? "" : "\\u0009\\u000a") + "]*$");
            case Value.Code code -> node("type", List.of("string", "number"), "pattern", "^" + ScalarReader.CODE + "$");
            case Value.Word word -> node("enum", word.words());
            case Value.Exercise exercise -> exercise(exercise);
            case Value.Number number -> node("type", number.whole() ? "integer" : "number",
                    "minimum", number.range().low(), "maximum", number.range().high());
            case Value.Amount amount -> node("type", "string", "pattern", pattern(List.of(amount.dimension())), "description", limits(amount));
            case Value.AnyAmount any -> node("type", "string", "pattern", pattern(any.dimensions()));
            case Value.Day day -> node("type", "string", "format", "date", "pattern", DAY);
            case Value.Colour colour -> node("type", List.of("string", "number"), "pattern", "^" + Colour.PATTERN + "$");
            case Value.Truth truth -> node("enum", List.of("yes", "no"));
            case Value.Pressure pressure -> node("type", "string", "pattern", "^\\d{2,3} ?/ ?\\d{2,3}$");
            case Value.Many many -> node("type", "array", "minItems", 1, "maxItems", many.most(), "uniqueItems", many.distinct(),
                    "items", schema(many.item()));
            case Value.Fields fields -> fields(fields);
            case Value.Pairs pairs -> node("type", "object", "minProperties", 1, "propertyNames", schema(pairs.key()),
                    "additionalProperties", schema(pairs.value()));
            case Value.ListOrMap either -> node("anyOf", List.of(schema(either.list()), schema(either.map())));
            case Value.OneOf oneOf -> node("anyOf", oneOf.forms().stream().map(this::schema).toList());
        };
    }

    private Map<String, Object> exercise(Value.Exercise exercise) {
        var family = node("type", "string", "pattern", FAMILY_ID, "examples", exercises);
        return exercise.words().isEmpty() ? family : node("anyOf", List.of(node("enum", exercise.words()), family));
    }

    private Map<String, Object> fields(Value.Fields fields) {
        var properties = new LinkedHashMap<String, Object>();
        for (var key : fields.keys()) {
            var schema = schema(key.value());
            var limits = schema.containsKey("description") ? "; " + schema.get("description") : "";
            var standard = key.standard().isEmpty() ? "" : " (without it: " + key.standard() + ")";
            var described = node("description", key.about() + limits + standard);
            schema.forEach(described::putIfAbsent);
            properties.put(key.name(), described);
        }
        var required = fields.keys().stream().filter(Key::required).map(Key::name).toList();
        var schema = node("type", "object", "additionalProperties", false, "properties", properties);
        if (!required.isEmpty()) {
            schema.put("required", required);
        }
        if (!fields.between().isEmpty()) {
            schema.put("allOf", fields.between().stream().map(JsonSchema::between).toList());
        }
        return schema;
    }

    private static Map<String, Object> between(Value.Between between) {
        return switch (between) {
            case Value.Between.AtLeastOne(var keys) -> node("anyOf", keys.stream().map(key -> node("required", List.of(key))).toList());
            case Value.Between.NotBoth(var one, var other) -> node("not", node("required", List.of(one, other)));
        };
    }

    /** What {@link AmountReader} reads, as far as a pattern can say. */
    private static String pattern(List<Dimension> dimensions) {
        var units = dimensions.stream().flatMap(d -> Unit.of(d).stream()).map(Unit::word).collect(Collectors.joining("|"));
        var one = "[+-]?\\d+(\\.\\d+)? *(" + units + (dimensions.contains(Dimension.ANGLE) ? "|°" : "")
                + (dimensions.contains(Dimension.LENGTH) ? "|['’′]|[\"”″]" : "") + ")";
        var feet = "\\d{1,2} *(ft|['’′]) *(\\d|1[01])(\\.\\d+)? *(in|[\"”″])";
        return dimensions.contains(Dimension.LENGTH) ? "^(" + one + "|" + feet + ")$" : "^" + one + "$";
    }

    private static String limits(Value.Amount amount) {
        var unit = Unit.of(amount.dimension()).getFirst();
        return "from " + Digits.of(amount.range().low(), unit) + " to " + Digits.of(amount.range().high(), unit);
    }

}
