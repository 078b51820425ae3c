package contrapposto.typeset;

import java.util.Map;
import java.util.Optional;

/** The page numbers on which parts begin, by name, as they are printed. */
record Folios(Map<String, String> byPart) {
    /** Before the first layout: one figure wide, so that most layouts need no third. */
    static final Folios UNKNOWN = new Folios(Map.of());

    /** Whether lines broken with these numbers also hold the others: figures are all equally wide. */
    boolean fits(Folios others) {
        return others.byPart().entrySet().stream().allMatch(e -> shape(of(e.getKey())).equals(shape(e.getValue())));
    }

    private static String shape(String folio) {
        return folio.replaceAll("[0-9]", "0");
    }

    String of(String part) {
        return Optional.ofNullable(byPart.get(part)).orElse("0");
    }
}
