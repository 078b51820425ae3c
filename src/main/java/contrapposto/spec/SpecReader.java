package contrapposto.spec;

import contrapposto.notice.Notice;
import contrapposto.notice.Span;
import contrapposto.yaml.YamlNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads nodes by a table of keys: every value gets its type, every unknown key, missing key, wrong word, unit or number
 * its notice. Goes on after each problem, so that one run finds them all; nothing is repaired or ignored.
 */
public final class SpecReader {
    private final Value.Fields table;
    private final ScalarReader scalars;
    private final List<Notice> notices = new ArrayList<>();

    private SpecReader(Value.Fields table, Collection<String> exercises) {
        this.table = table;
        scalars = new ScalarReader(exercises, notices);
    }

    /**
     * What could be read.
     *
     * @param fields  every value that is right in itself
     * @param notices in file order
     */
    public record Reading(Written.Fields fields, List<Notice> notices) { }

    /** @param exercises the ids that the catalogue knows, in order */
    public static Reading read(YamlNode root, Value.Fields table, Collection<String> exercises) {
        var reader = new SpecReader(table, exercises);
        var fields = reader.read(new Place("", root.span()), root, table).map(Written.Fields.class::cast)
                .orElseGet(() -> new Written.Fields(root.span(), Map.of(), List.of()));
        reader.notices.sort(Notice.IN_FILE_ORDER);
        return new Reading(fields, List.copyOf(reader.notices));
    }

    private Optional<Written> read(Place place, YamlNode node, Value value) {
        if (isAbsent(node)) {
            error("missing-value", place, place.called() + " has no value", "write one, or delete the key");
            return Optional.empty();
        }
        return switch (value) {
            case Value.Plain plain -> node instanceof YamlNode.Scalar scalar ? scalars.read(place, scalar, plain)
                    : wrongShape(place, node, "a single value");
            case Value.Many many -> node instanceof YamlNode.Sequence list ? Optional.of(many(place, list, many))
                    : wrongShape(place, node, "a list, such as `[…, …]`");
            case Value.Fields fields -> node instanceof YamlNode.Mapping map ? Optional.of(fields(place, map, fields))
                    : wrongShape(place, node, "a map of keys: " + names(fields));
            case Value.Pairs pairs -> node instanceof YamlNode.Mapping map ? Optional.of(pairs(place, map, pairs))
                    : wrongShape(place, node, "a map of " + pairs.about());
            case Value.OneOf oneOf -> node instanceof YamlNode.Mapping map ? oneOf(place, map, oneOf)
                    : wrongShape(place, node, "a map of keys");
            case Value.ListOrMap either -> switch (node) {
                case YamlNode.Sequence list -> read(place, list, either.list());
                case YamlNode.Mapping map -> read(place, map, either.map());
                case YamlNode.Scalar scalar -> wrongShape(place, node, "a list or a map");
            };
        };
    }

    private Written.Many many(Place place, YamlNode.Sequence list, Value.Many many) {
        if (list.items().isEmpty()) {
            error("empty-list", place, place.called() + " is an empty list", "give its values, or delete the key");
        }
        if (list.items().size() > many.most()) {
            error("too-many", place, place.called() + " holds " + list.items().size() + " values, but the limit is "
                    + many.most(), "keep those that matter");
        }
        var items = new ArrayList<Written>();
        for (var item : list.items().subList(0, Math.min(list.items().size(), many.most()))) {
            read(new Place(place.path(), item.span()), item, many.item()).ifPresent(read -> {
                if (many.distinct() && items.stream().anyMatch(before -> same(before, read))) {
                    notices.add(Notice.error("repeated", read.span(), "`" + text(item) + "` stands in " + place.called()
                            + " twice", "delete one of the two"));
                } else {
                    items.add(read);
                }
            });
        }
        return new Written.Many(place.span(), items);
    }

    private Written.Fields fields(Place place, YamlNode.Mapping map, Value.Fields form) {
        var values = new LinkedHashMap<String, Written>();
        var given = new ArrayList<String>();
        for (var entry : map.entries()) {
            var name = entry.key().text();
            var key = form.keys().stream().filter(k -> k.name().equals(name)).findFirst();
            if (key.isEmpty()) {
                unknownKey(place, entry.key(), form);
                continue;
            }
            given.add(name);
            read(place.under(name, entry.key().span()), entry.value(), key.get().value())
                    .ifPresent(written -> values.put(name, written));
        }
        for (var key : form.keys()) {
            if (key.required() && !given.contains(key.name())) {
                error("missing-key", place, place.called() + " lacks `" + key.name() + "`",
                        "add `" + key.name() + ":`, " + key.about());
            }
        }
        return new Written.Fields(place.span(), values, given);
    }

    private void unknownKey(Place place, YamlNode.Scalar key, Value.Fields here) {
        var names = here.keys().stream().map(Key::name).toList();
        var near = Nearest.of(key.text(), names);
        var elsewhere = KeyPaths.of(table, key.text());
        var hint = near.map(name -> "did you mean `" + name + "`?").orElseGet(() -> elsewhere.isEmpty()
                ? "keys here: " + String.join(", ", names)
                : "`" + key.text() + "` belongs at `" + elsewhere.getFirst() + "`");
        notices.add(Notice.error("unknown-key", key.span(), "`" + key.text() + "` is no key of " + place.called(), hint));
    }

    private Written.Pairs pairs(Place place, YamlNode.Mapping map, Value.Pairs form) {
        var pairs = new ArrayList<Written.Pair>();
        if (map.entries().isEmpty()) {
            error("empty-list", place, place.called() + " is empty", "give its values, or delete the key");
        }
        for (var entry : map.entries()) {
            var under = place.under(entry.key().text(), entry.key().span());
            var key = read(new Place(place.path(), entry.key().span()), entry.key(), form.key());
            var value = read(under, entry.value(), form.value());
            key.ifPresent(k -> value.ifPresent(v -> {
                if (pairs.stream().anyMatch(before -> same(before.key(), k))) {
                    notices.add(Notice.error("repeated", k.span(), "`" + entry.key().text() + "` stands in "
                            + place.called() + " twice", "add the two up, or delete one"));
                } else {
                    pairs.add(new Written.Pair(k, v));
                }
            }));
        }
        return new Written.Pairs(place.span(), pairs);
    }

    private Optional<Written> oneOf(Place place, YamlNode.Mapping map, Value.OneOf oneOf) {
        var shared = oneOf.forms().stream().filter(form -> entry(map, form).isPresent()).toList();
        if (shared.isEmpty()) {
            var firsts = oneOf.forms().stream().map(form -> "`" + form.keys().getFirst().name() + "`").distinct().toList();
            error("missing-key", place, place.called() + " lacks " + String.join(" or ", firsts) + " here",
                    "begin with one of them");
            return Optional.empty();
        }
        var fitting = shared.stream().filter(form -> entry(map, form).map(e -> accepts(form, e)).orElse(false)).findFirst();
        if (fitting.isEmpty() && shared.size() > 1) {
            var words = shared.stream().flatMap(form -> words(form).stream()).toList();
            var entry = entry(map, shared.getFirst()).orElseThrow();
            read(place.under(entry.key().text(), entry.key().span()), entry.value(), new Value.Word(words));
            return Optional.empty();
        }
        return Optional.of(fields(place, map, fitting.orElse(shared.getFirst())));
    }

    private static Optional<YamlNode.Entry> entry(YamlNode.Mapping map, Value.Fields form) {
        var first = form.keys().getFirst().name();
        return map.entries().stream().filter(e -> e.key().text().equals(first)).findFirst();
    }

    private static boolean accepts(Value.Fields form, YamlNode.Entry entry) {
        return entry.value() instanceof YamlNode.Scalar scalar && words(form).contains(scalar.text());
    }

    private static List<String> words(Value.Fields form) {
        return form.keys().getFirst().value() instanceof Value.Word word ? word.words() : List.of();
    }

    private Optional<Written> wrongShape(Place place, YamlNode node, String wanted) {
        var found = switch (node) {
            case YamlNode.Mapping map -> "a map of keys";
            case YamlNode.Sequence list -> "a list";
            case YamlNode.Scalar scalar -> "`" + scalar.text() + "`";
        };
        var span = node instanceof YamlNode.Scalar ? node.span() : place.span();
        notices.add(Notice.error("wrong-shape", span, place.called() + " holds " + found + ", but wants another form",
                "write " + wanted));
        return Optional.empty();
    }

    private void error(String id, Place place, String message, String hint) {
        notices.add(Notice.error(id, place.span(), message, hint));
    }

    private static String names(Value.Fields fields) {
        return String.join(", ", fields.keys().stream().map(Key::name).toList());
    }

    private static boolean isAbsent(YamlNode node) {
        return node instanceof YamlNode.Scalar scalar && scalar.text().isBlank();
    }

    private static String text(YamlNode node) {
        return node instanceof YamlNode.Scalar scalar ? scalar.text() : "this value";
    }

    private static boolean same(Written one, Written other) {
        return switch (one) {
            case Written.Text(Span at, String text) -> other instanceof Written.Text t && t.text().equals(text);
            case Written.Amount a -> other instanceof Written.Amount b && Math.abs(a.standard() - b.standard()) < 1e-9;
            default -> false;
        };
    }
}
