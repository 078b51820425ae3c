package contrapposto.compose;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What a template may see: text, truth values, lists and maps of them, nothing else. A record becomes a map of its
 * components, an empty {@code Optional} a missing key. A number is refused: it must come as a finished word.
 */
final class Values {
    private static final ClassValue<List<Part>> PARTS = new ClassValue<>() {
        @Override
        protected List<Part> computeValue(Class<?> kind) {
            return Arrays.stream(kind.getRecordComponents()).map(c -> new Part(c.getName(), c.getAccessor())).toList();
        }
    };

    private Values() { }

    /** @throws IllegalArgumentException if {@code value} holds anything a template may not see (a bug) */
    static Object of(Object value) {
        return switch (value) {
            case String text -> text;
            case Boolean truth -> truth;
            case Enum<?> constant -> word(constant);
            case List<?> list -> list.stream().map(Values::of).toList();
            case Map<?, ?> map -> ofMap(map);
            case Record record -> ofRecord(record);
            default -> throw new IllegalArgumentException("A template may not see a (" + value.getClass().getSimpleName() + ").");
        };
    }

    /** The word of a constant: lower case with hyphens. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Map<String, Object> ofMap(Map<?, ?> map) {
        var made = new LinkedHashMap<String, Object>();
        map.forEach((key, value) -> made.put((String) key, of(value)));
        return made;
    }

    private static Map<String, Object> ofRecord(Record record) {
        var made = new LinkedHashMap<String, Object>();
        for (Part part : PARTS.get(record.getClass())) {
            Object value = part.of(record);
            if (value instanceof Optional<?> perhaps) {
                perhaps.ifPresent(v -> made.put(part.name(), of(v)));
            } else {
                made.put(part.name(), of(value));
            }
        }
        return made;
    }

    /** A component of a record class, found once: each look-up by reflection makes a new method with everything behind it. */
    private record Part(String name, Method accessor) {
        Object of(Record record) {
            try {
                return accessor.invoke(record);
            } catch (IllegalAccessException | InvocationTargetException e) {
                throw new IllegalStateException("The component (" + name + ") could not be read.", e);
            }
        }
    }
}
