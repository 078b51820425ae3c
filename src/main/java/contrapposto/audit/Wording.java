package contrapposto.audit;

import contrapposto.document.Block;
import contrapposto.document.Document;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How hard the words of a client edition are: the grade of each part, then what to shorten.
 *
 * @param parts in the order of the pages, the safety panel last
 * @param longSentences of more than {@link #MOST_WORDS} words, in the order of the pages
 * @param rareWords     in the order in which they are first met: words of many syllables stand in for rare ones, and {@link TradeWords}
 */
public record Wording(String language, List<Part> parts, List<LongSentence> longSentences, List<RareWord> rareWords) {
    /** School years that the client edition may ask for (F5.13: materials at the sixth to eighth). */
    public static final double MOST_YEARS = 8;
    /** School years that the safety panel may ask for. */
    public static final double SAFETY_YEARS = 6;
    /** Words a sentence may have (house default). */
    public static final int MOST_WORDS = 20;
    /** Syllables from which a word is listed: Spanish and German words are longer (house default). */
    private static final Map<String, Integer> SYLLABLES = Map.of("en", 4, "es", 5, "de", 5);

    /** @param most school years it may ask for */
    public record Part(String name, Grade grade, double most) {
        public boolean tooHard() {
            return grade.over(most);
        }
    }

    public record LongSentence(String place, String text, int words) { }

    /** @param trade whether it is a word of the trade, else one of many syllables; {@code times} in the whole edition; {@code place} the first of them */
    public record RareWord(String word, boolean trade, int times, String place) { }

    public static Wording of(Document client) {
        var reader = new Reader(client);
        String language = client.language();
        var parts = new ArrayList<Part>();
        var all = new ArrayList<Reader.Line>();
        for (var part : client.parts()) {
            var lines = reader.lines(part);
            all.addAll(lines);
            if (!lines.isEmpty()) {
                parts.add(new Part(part.name(), grade(language, lines), MOST_YEARS));
            }
        }
        reader.all(client.parts().getFirst(), Block.Panel.class).stream().findFirst().ifPresent(panel -> parts.add(new Part(panel.heading(),
                grade(language, Reader.lines("", List.of(panel))), SAFETY_YEARS)));
        return new Wording(language, List.copyOf(parts), longSentences(language, all), rareWords(language, all));
    }

    /** Syllables from which a word of {@code language} is listed. */
    public static int syllables(String language) {
        return SYLLABLES.getOrDefault(language, SYLLABLES.get("en"));
    }

    private static Grade grade(String language, List<Reader.Line> lines) {
        return Grade.of(language, lines.stream().map(Reader.Line::text).toList());
    }

    private static List<LongSentence> longSentences(String language, List<Reader.Line> lines) {
        var found = new ArrayList<LongSentence>();
        for (var line : lines) {
            for (var sentence : Counts.sentences(language, line.text())) {
                int words = Counts.words(sentence).size();
                if (words > MOST_WORDS) {
                    found.add(new LongSentence(line.place(), sentence, words));
                }
            }
        }
        return List.copyOf(found);
    }

    private static List<RareWord> rareWords(String language, List<Reader.Line> lines) {
        var trade = TradeWords.of(language);
        var found = new LinkedHashMap<String, RareWord>();
        for (var line : lines) {
            for (var word : Counts.words(line.text())) {
                if (trade.contains(word) || Syllables.of(language, word) >= syllables(language)) {
                    found.merge(word, new RareWord(word, trade.contains(word), 1, line.place()),
                            (first, again) -> new RareWord(word, first.trade(), first.times() + 1, first.place()));
                }
            }
        }
        return List.copyOf(found.values());
    }
}
