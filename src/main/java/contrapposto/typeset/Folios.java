package contrapposto.typeset;

import java.util.Map;
import java.util.Optional;

/** The page numbers on which parts begin, by name, as they are printed. */
record Folios(Map<String, String> byPart) {
    /** Before the first layout: one figure wide, so that most layouts need no third. */
    static final Folios UNKNOWN = new Folios(Map.of());

    String of(String part) {
        return Optional.ofNullable(byPart.get(part)).orElse("0");
    }
}
