package contrapposto.wording;

import contrapposto.quantity.UnitSystem;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * Puts statements into the words of one language and the units of one client.
 *
 * @param exercises the name of an exercise by its id
 */
public record Teller(Phrasebook book, Units units, UnaryOperator<String> exercises) {
    /** English and metric, exercises by their ids: for notices and tests. */
    public static final Teller PLAIN = screen(UnitSystem.METRIC);

    /** For screens and data files: English, exercises by their ids. */
    public static Teller screen(UnitSystem system) {
        return new Teller(Phrasebook.of("en"), new Units(system, Locale.ENGLISH), id -> id);
    }

    /** The statement in words, as it stands inside a sentence: lower case, no full stop; numbers do not part from units. */
    public String of(Said said) {
        return book.sentence(said.key()).fill(name -> told(term(said, name)), name -> chosen(term(said, name)));
    }

    /** As {@link #of} with ordinary spaces, for text that is not set in lines. */
    public String plain(Said said) {
        return of(said).replace(Units.NO_BREAK, " ");
    }

    private static Term term(Said said, String name) {
        var term = said.terms().get(name);
        if (term == null) {
            throw new IllegalArgumentException("The statement (" + said.key() + ") has no value (" + name + ").");
        }
        return term;
    }

    private String told(Term term) {
        return switch (term) {
            case Term.Word(var word) -> book.word(word);
            case Term.Text(var text) -> text;
            case Term.Count(var count) -> Long.toString(count);
            case Term.Number(var value, var places) -> units.number(value, places);
            case Term.Measure measure -> units.measure(measure);
            case Term.Day(var day) -> units.date(day);
            case Term.Exercise(var id) -> exercises.apply(id);
            case Term.Told(var said) -> of(said);
            case Term.Listed(var terms) -> terms.stream().map(this::told).collect(Collectors.joining(", "));
        };
    }

    /** What a choice goes by. */
    private static String chosen(Term term) {
        return switch (term) {
            case Term.Word(var word) -> word;
            case Term.Text(var text) -> text.isEmpty() ? "none" : "some";
            case Term.Count(var count) -> Long.toString(count);
            case Term.Number(var value, var places) -> value == 1 ? "1" : Double.toString(value);
            case Term.Measure measure -> measure.value() > 0 ? "more" : measure.value() < 0 ? "less" : "zero";
            case Term.Day day -> "some";
            case Term.Exercise(var id) -> id;
            case Term.Told(var said) -> said.key();
            case Term.Listed(var terms) -> terms.isEmpty() ? "none" : Integer.toString(terms.size());
        };
    }
}
