package contrapposto.catalogue;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All families in the order of the index (by stage), their words by language, and the house rules.
 *
 * @param words language → family id → words
 */
public record Catalogue(List<Family> families, Map<String, Map<String, FamilyWords>> words, HouseRules rules) {
    public Catalogue {
        families = List.copyOf(families);
    }

    public Optional<Family> family(String id) {
        return families.stream().filter(f -> f.id().equals(id)).findFirst();
    }

    /** The words of a family. @throws IllegalArgumentException if the catalogue lacks them (a bug: the reader checks) */
    public FamilyWords words(String language, String id) {
        var found = words.getOrDefault(language, Map.of()).get(id);
        if (found == null) {
            throw new IllegalArgumentException("No words for (" + id + ") in (" + language + ").");
        }
        return found;
    }
}
