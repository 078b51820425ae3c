package contrapposto.audit;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How hard a text is to read, by every formula that its language has.
 *
 * @param sentences in it
 * @param words     in it
 * @param by        formula → its number, in the order of {@link Formula}; empty for a language without one
 */
public record Grade(int sentences, int words, Map<Formula, Double> by) {
    /** @param lines each of them at least one sentence */
    public static Grade of(String language, List<String> lines) {
        return of(language, Counts.of(language, lines));
    }

    static Grade of(String language, Counts counts) {
        var by = new EnumMap<Formula, Double>(Formula.class);
        Formula.in(language).forEach(formula -> by.put(formula, formula.of(counts)));
        return new Grade(counts.sentences(), counts.words(), Collections.unmodifiableMap(by));
    }

    /** Whether the text is so short that this formula gives a rough number only. */
    public boolean rough(Formula formula) {
        return sentences < formula.enough();
    }

    /** Whether a formula that has text enough says, to a tenth, that it takes more years of school. */
    public boolean over(double years) {
        return by.entrySet().stream().anyMatch(e -> e.getKey().scale() == Formula.Scale.SCHOOL_YEARS && !rough(e.getKey()) && Math.round(e.getValue() * 10) > Math.round(years * 10));
    }
}
