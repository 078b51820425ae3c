package contrapposto.assess;

import contrapposto.wording.Said;
import contrapposto.wording.Teller;
import java.util.List;

/**
 * Why something was decided. No number reaches a page without one.
 *
 * @param rule    kebab-case id
 * @param said    one plain sentence for the coach, with the values the rule saw; each language words it in its phrasebook
 * @param source  what it rests on
 * @param reference where published or house: the id or key ("D3.1", "house-rules: bands"), else empty
 */
public record Reason(String rule, Said said, Source source, String reference) {
    /** What a statement rests on, in the words the coach edition prints. */
    public enum Source { PUBLISHED, PRACTICE, HOUSE, SOLVED, EXPECTED, COACH }

    public static Reason of(String rule, Said said, Source source) {
        return new Reason(rule, said, source, "");
    }

    /** The sentence in English, with metric units and the ids of exercises: for notices and tests. Pages have their own {@link Teller}. */
    public String because() {
        return Teller.PLAIN.plain(said);
    }

    /** All reasons of several lists, in order. */
    public static List<Reason> all(List<Reason> first, List<Reason> second) {
        return java.util.stream.Stream.concat(first.stream(), second.stream()).toList();
    }
}
