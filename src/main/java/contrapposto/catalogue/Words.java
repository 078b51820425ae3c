package contrapposto.catalogue;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The words of the file formats: kebab-case in files, constants and field names in code. */
final class Words {
    private Words() { }

    /** {@code EARLY_TO_MID} → {@code early-to-mid}. */
    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** {@code rear-knee-clear} → {@code rearKneeClear}. */
    static String field(String word) {
        var name = new StringBuilder();
        for (var part : word.split("-")) {
            name.append(name.isEmpty() || part.isEmpty() ? part
                    : part.substring(0, 1).toUpperCase(Locale.ROOT) + part.substring(1));
        }
        return name.toString();
    }

    /** {@code rearKneeClear} → {@code rear-knee-clear}. */
    static String word(String field) {
        return field.replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    }

    /** A map in the order written, from kind and list in turn. */
    @SuppressWarnings("unchecked")
    static Map<String, List<String>> ordered(Object... kindsAndFields) {
        var map = new LinkedHashMap<String, List<String>>();
        for (int i = 0; i < kindsAndFields.length; i += 2) {
            map.put((String) kindsAndFields[i], (List<String>) kindsAndFields[i + 1]);
        }
        return Collections.unmodifiableMap(map);
    }
}
