package contrapposto.wording;

import contrapposto.quantity.Side;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;

/**
 * A statement without its language: a key and the values it speaks of. A {@link Teller} puts it into words. Two are equal
 * when they say the same of the same values.
 *
 * @param key of its sentence in the phrasebooks, as {@code load-rounded} or {@code stage/opens}
 */
public record Said(String key, SequencedMap<String, Term> terms) {
    public Said {
        terms = java.util.Collections.unmodifiableSequencedMap(new LinkedHashMap<>(terms));
    }

    public static Said of(String key) {
        return new Said(key, new LinkedHashMap<>());
    }

    /** The same with one more value. */
    public Said with(String name, Term term) {
        var more = new LinkedHashMap<>(terms);
        more.put(name, term);
        return new Said(key, more);
    }

    /** A word that the phrasebooks know, or that a sentence chooses by: {@code gluteus-maximus}, {@code yes}. */
    public Said word(String name, String word) {
        return with(name, new Term.Word(word));
    }

    public Said side(String name, Side side) {
        return word(name, side.word());
    }

    /** {@code none} where there is no side. */
    public Said side(String name, Optional<Side> side) {
        return word(name, side.map(Side::word).orElse("none"));
    }

    public Said words(String name, List<String> words) {
        return with(name, new Term.Listed(words.stream().map(word -> (Term) new Term.Word(word)).toList()));
    }

    /** What a person wrote, or a name: the same in every language. */
    public Said text(String name, String text) {
        return with(name, new Term.Text(text));
    }

    public Said count(String name, long count) {
        return with(name, new Term.Count(count));
    }

    /** A number with at most so many decimals. */
    public Said number(String name, double value, int places) {
        return with(name, new Term.Number(value, places));
    }

    public Said length(String name, double metres) {
        return with(name, new Term.Measure(Term.Kind.LENGTH, metres, 1));
    }

    public Said mass(String name, double kilograms) {
        return with(name, new Term.Measure(Term.Kind.MASS, kilograms, 1));
    }

    /** An angle without a sign, to a whole degree. */
    public Said degrees(String name, double degrees) {
        return with(name, new Term.Measure(Term.Kind.ANGLE, degrees, 0));
    }

    /** An angle with its sign. */
    public Said signedDegrees(String name, double degrees, int places) {
        return with(name, new Term.Measure(Term.Kind.SIGNED_ANGLE, degrees, places));
    }

    /** A share, 0 to 1, as a percentage. */
    public Said percent(String name, double share, int places) {
        return with(name, new Term.Measure(Term.Kind.SHARE, share, places));
    }

    /** A moment without a sign, N·m. */
    public Said moment(String name, double newtonMetres) {
        return with(name, new Term.Measure(Term.Kind.MOMENT, newtonMetres, 1));
    }

    public Said day(String name, LocalDate day) {
        return with(name, new Term.Day(day));
    }

    /** An exercise, by its id; told by its name. */
    public Said exercise(String name, String id) {
        return with(name, new Term.Exercise(id));
    }

    public Said said(String name, Said inner) {
        return with(name, new Term.Told(inner));
    }

    public Said listed(String name, List<Said> inner) {
        return with(name, new Term.Listed(inner.stream().map(one -> (Term) new Term.Told(one)).toList()));
    }

    /** The same with left and right exchanged. */
    public Said mirrored() {
        var other = new LinkedHashMap<String, Term>();
        terms.forEach((name, term) -> other.put(name, term instanceof Term.Word(var word) ? new Term.Word(
                word.equals("left") ? "right" : word.equals("right") ? "left" : word) : term));
        return new Said(key, other);
    }

    /** Every key that is said in it, its own first. */
    public List<String> keys() {
        var keys = new java.util.ArrayList<>(List.of(key));
        terms.values().forEach(term -> term.inside().forEach(said -> keys.addAll(said.keys())));
        return List.copyOf(keys);
    }
}
