package contrapposto.cli;

import contrapposto.audit.Formula;
import contrapposto.audit.Grade;
import contrapposto.audit.Wording;
import java.io.PrintStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** How hard a client edition reads, as the terminal shows it and as data. */
final class WordingReport {
    private final Wording wording;

    WordingReport(Wording wording) {
        this.wording = wording;
    }

    /** The grades by part; then what to shorten, with its place. */
    void print(PrintStream out) {
        grades(out);
        out.println("Long sentences (over " + Wording.MOST_WORDS + " words): " + wording.longSentences().size());
        wording.longSentences().forEach(s -> out.println("  [" + s.place() + "] " + s.words() + " words: " + s.text()));
        out.println("Rare words (words of the trade, and of " + Wording.syllables(wording.language()) + " syllables or more): " + wording.rareWords().size());
        wording.rareWords().forEach(w -> out.println("  " + w.word() + " (" + w.times() + (w.trade() ? ", trade" : "") + ") [" + w.place() + "]"));
    }

    private void grades(PrintStream out) {
        var formulas = wording.parts().stream().flatMap(part -> part.grade().by().keySet().stream()).distinct().toList();
        out.println("Reading grade, client edition, " + wording.language() + " (" + (formulas.isEmpty() ? "no formula is known for this language"
                : formulas.stream().map(WordingReport::named).collect(Collectors.joining("; "))) + ")");
        wording.parts().forEach(part -> out.println(String.format(Locale.ROOT, "  %-20s %s  at most %.0f%s", part.name(),
                numbers(part.grade(), formulas), part.most(), part.tooHard() ? ", TOO HARD" : "")));
    }

    private static String named(Formula formula) {
        return formula.words() + switch (formula.scale()) {
            case SCHOOL_YEARS -> ", school years";
            case EASE -> ", ease from 0 to 100";
        } + (formula.enough() > 1 ? ", in brackets: rough, under " + formula.enough() + " sentences" : "");
    }

    private static String numbers(Grade grade, List<Formula> formulas) {
        return formulas.stream().map(formula -> String.format(Locale.ROOT, grade.rough(formula) ? "%8s" : "%7s ",
                String.format(Locale.ROOT, grade.rough(formula) ? "(%.1f)" : "%.1f", grade.by().get(formula)))).collect(Collectors.joining(";"));
    }

    /** The same for programs. */
    Map<String, Object> tree() {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("language", wording.language());
        tree.put("parts", wording.parts().stream().map(WordingReport::part).toList());
        tree.put("long-sentences", wording.longSentences().stream().map(s -> row("place", s.place(), "words", s.words(), "text", s.text())).toList());
        tree.put("rare-words", wording.rareWords().stream().map(w -> row("word", w.word(), "trade", w.trade(), "times", w.times(), "place", w.place())).toList());
        return tree;
    }

    private static Map<String, Object> part(Wording.Part part) {
        var tree = row("part", part.name(), "sentences", part.grade().sentences(), "words", part.grade().words(), "at-most", part.most());
        part.grade().by().forEach((formula, number) -> tree.put(formula.words(), Math.round(number * 10) / 10.0));
        tree.put("too-hard", part.tooHard());
        return tree;
    }

    private static Map<String, Object> row(Object... pairs) {
        var row = new LinkedHashMap<String, Object>();
        for (int i = 0; i < pairs.length; i += 2) {
            row.put((String) pairs[i], pairs[i + 1]);
        }
        return row;
    }
}
