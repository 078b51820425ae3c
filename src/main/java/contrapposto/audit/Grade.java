package contrapposto.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * How hard English text is to read, in school years. Formulas: Kincaid et al. 1975 (F5.1), McLaughlin 1969 (F5.7).
 * Syllables are counted by groups of vowels with the usual corrections; a list item ends a sentence.
 *
 * @param kincaid Flesch–Kincaid grade
 * @param smog    from words of three syllables and more; rough under 30 sentences
 * @param longest sentences of more than 20 words
 */
public record Grade(double kincaid, double smog, List<String> longest) {
    private static final int LONG = 20;
    private static final int MANY = 3;
    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");
    private static final Map<String, Integer> BY_HAND = Map.of("australian", 3, "reptilian", 3, "creature", 2, "triceps", 2, "whole", 1,
            "raise", 1, "goes", 1, "something", 2, "seemingly", 3);

    /** The grade of several lines, each of them at least one sentence. */
    public static Grade of(List<String> lines) {
        int sentences = 0;
        int words = 0;
        int syllables = 0;
        int heavy = 0;
        var longest = new ArrayList<String>();
        for (String line : lines) {
            for (String sentence : line.split("(?<=[.!?])\\s+")) {
                int before = words;
                for (String word : sentence.toLowerCase(Locale.ROOT).split("[^a-z']+")) {
                    if (!word.isEmpty()) {
                        int count = syllables(word);
                        words++;
                        syllables += count;
                        heavy += count >= MANY ? 1 : 0;
                    }
                }
                sentences += words > before ? 1 : 0;
                if (words - before > LONG) {
                    longest.add(sentence);
                }
            }
        }
        return new Grade(kincaid(words, Math.max(1, sentences), syllables), smog(heavy, Math.max(1, sentences)), List.copyOf(longest));
    }

    static double kincaid(int words, int sentences, int syllables) {
        return 0.39 * words / sentences + 11.8 * syllables / Math.max(1, words) - 15.59;
    }

    static double smog(int polysyllables, int sentences) {
        return 1.0430 * StrictMath.sqrt(polysyllables * 30.0 / sentences) + 3.1291;
    }

    static int syllables(String word) {
        if (BY_HAND.containsKey(word)) {
            return BY_HAND.get(word);
        }
        var spoken = word.matches(".*[^aeiouy]le$") ? word : word.replaceAll("(?<=[^aeiouy])e$", "")
                .replaceAll("(?<=[^aeiouytd])ed$", "").replaceAll("(?<=[^aeiouyszxh])es$", "");
        return Math.max(1, (int) VOWELS.matcher(spoken).results().count());
    }
}
