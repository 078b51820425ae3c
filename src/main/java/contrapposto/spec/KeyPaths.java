package contrapposto.spec;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Dotted paths through a table of keys. */
public final class KeyPaths {
    private KeyPaths() { }

    /** Where a key of this name belongs, in the order of the table; lists and alternatives are looked into. */
    static List<String> of(Value.Fields table, String name) {
        var found = new ArrayList<String>();
        collect("", table, name, found);
        return found.stream().distinct().toList();
    }

    /** What may stand at a dotted path of fixed keys, such as {@code client.height}. */
    public static Optional<Value> at(Value.Fields table, String path) {
        int dot = path.indexOf('.');
        var first = dot < 0 ? path : path.substring(0, dot);
        var value = table.keys().stream().filter(key -> key.name().equals(first)).map(Key::value).findFirst();
        if (dot < 0) {
            return value;
        }
        return value.flatMap(v -> v instanceof Value.Fields fields ? at(fields, path.substring(dot + 1)) : Optional.empty());
    }

    /** Every dotted path of fixed keys that ends in a value, in order. */
    public static List<String> all(Value.Fields table) {
        return table.keys().stream().flatMap(key -> key.value() instanceof Value.Fields fields
                ? all(fields).stream().map(rest -> key.name() + "." + rest) : List.of(key.name()).stream()).toList();
    }

    private static void collect(String before, Value value, String name, List<String> found) {
        switch (value) {
            case Value.Plain plain -> { }
            case Value.Fields fields -> fields.keys().forEach(key -> {
                var path = before.isEmpty() ? key.name() : before + "." + key.name();
                if (key.name().equals(name)) {
                    found.add(path);
                }
                collect(path, key.value(), name, found);
            });
            case Value.Many many -> collect(before, many.item(), name, found);
            case Value.Pairs pairs -> collect(before, pairs.value(), name, found);
            case Value.ListOrMap either -> {
                collect(before, either.list(), name, found);
                collect(before, either.map(), name, found);
            }
            case Value.OneOf oneOf -> oneOf.forms().forEach(form -> collect(before, form, name, found));
        }
    }
}
