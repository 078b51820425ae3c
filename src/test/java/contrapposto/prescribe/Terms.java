package contrapposto.prescribe;

import contrapposto.assess.Reason;
import contrapposto.wording.Said;
import contrapposto.wording.Term;
import java.util.List;

/** The values a statement speaks of, as numbers and words, whatever a language makes of them. */
final class Terms {
    private Terms() { }

    static double number(Said said, String name) {
        return switch (said.terms().get(name)) {
            case Term.Count(var count) -> count;
            case Term.Number(var value, var places) -> value;
            case Term.Measure(var kind, var value, var places) -> value;
            case Term other -> throw new AssertionError(name + " of " + said.key() + " is no number: " + other);
        };
    }

    static String word(Said said, String name) {
        return switch (said.terms().get(name)) {
            case Term.Word(var word) -> word;
            case Term.Text(var text) -> text;
            case Term.Exercise(var id) -> id;
            case Term other -> throw new AssertionError(name + " of " + said.key() + " is no word: " + other);
        };
    }

    /** The one reason of this rule. */
    static Reason of(List<Reason> reasons, String rule) {
        return reasons.stream().filter(reason -> reason.rule().equals(rule)).reduce((a, b) -> {
            throw new AssertionError("two of " + rule);
        }).orElseThrow(() -> new AssertionError(rule + " is not in " + reasons.stream().map(Reason::rule).toList()));
    }

    static List<String> rules(List<Reason> reasons) {
        return reasons.stream().map(Reason::rule).toList();
    }

    static List<String> keys(List<Said> lines) {
        return lines.stream().map(Said::key).toList();
    }
}
