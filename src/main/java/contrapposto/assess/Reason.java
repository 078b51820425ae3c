package contrapposto.assess;

import java.util.List;

/**
 * Why something was decided. No number reaches a page without one.
 *
 * @param rule    kebab-case id
 * @param because one plain sentence in English for the coach, with the values the rule saw
 * @param source  what it rests on
 * @param reference where published or house: the id or key ("D3.1", "house-rules: bands"), else empty
 */
public record Reason(String rule, String because, Source source, String reference) {
    /** What a statement rests on, in the words the coach edition prints. */
    public enum Source { PUBLISHED, PRACTICE, HOUSE, SOLVED, EXPECTED, COACH }

    public static Reason of(String rule, String because, Source source) {
        return new Reason(rule, because, source, "");
    }

    /** All reasons of several lists, in order. */
    public static List<Reason> all(List<Reason> first, List<Reason> second) {
        return java.util.stream.Stream.concat(first.stream(), second.stream()).toList();
    }
}
