package contrapposto.wording;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/** A value in a statement. What it looks like is the language's and the units' affair. */
public sealed interface Term {
    /** A word of the phrasebooks, in kebab-case. */
    record Word(String word) implements Term { }

    /** The same in every language: names, what a coach wrote. */
    record Text(String text) implements Term { }

    record Count(long count) implements Term { }

    /** @param places at most so many decimals */
    record Number(double value, int places) implements Term { }

    /** A value with a unit: metres, kilograms, degrees, a share of one, newton metres. */
    record Measure(Kind kind, double value, int places) implements Term { }

    enum Kind { LENGTH, MASS, ANGLE, SIGNED_ANGLE, SHARE, MOMENT }

    record Day(LocalDate day) implements Term { }

    record Exercise(String id) implements Term { }

    record Told(Said said) implements Term { }

    /** Several, one after the other. */
    record Listed(List<Term> terms) implements Term {
        public Listed {
            terms = List.copyOf(terms);
        }
    }

    /** The statements in it. */
    default Stream<Said> inside() {
        return switch (this) {
            case Told(var said) -> Stream.of(said);
            case Listed(var terms) -> terms.stream().flatMap(Term::inside);
            case Word word -> Stream.empty();
            case Text text -> Stream.empty();
            case Count count -> Stream.empty();
            case Number number -> Stream.empty();
            case Measure measure -> Stream.empty();
            case Day day -> Stream.empty();
            case Exercise exercise -> Stream.empty();
        };
    }
}
