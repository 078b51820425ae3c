package contrapposto.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * What reading formulas count in a text. A line ends a sentence; numbers are no words; a word with a hyphen is two.
 *
 * @param heavy  words of three syllables and more
 * @param long7  words of seven letters and more
 * @param single words of one syllable
 */
record Counts(int sentences, int words, int syllables, int heavy, int long7, int single) {
    private static final Pattern SENTENCE = Pattern.compile("(?<=[.!?])\\s+");
    /** A point behind a digit mostly makes an ordinal in German: no end. */
    private static final Pattern GERMAN_SENTENCE = Pattern.compile("(?<=[.!?])(?<!\\d\\.)\\s+");
    private static final int HEAVY = 3;
    private static final int LETTERS = 7;

    static Counts of(String language, List<String> lines) {
        int sentences = 0;
        int words = 0;
        int syllables = 0;
        int heavy = 0;
        int long7 = 0;
        int single = 0;
        for (String line : lines) {
            for (String sentence : sentences(language, line)) {
                var inIt = words(sentence);
                sentences += inIt.isEmpty() ? 0 : 1;
                words += inIt.size();
                for (String word : inIt) {
                    int count = Syllables.of(language, word);
                    syllables += count;
                    heavy += count >= HEAVY ? 1 : 0;
                    single += count == 1 ? 1 : 0;
                    long7 += word.length() >= LETTERS ? 1 : 0;
                }
            }
        }
        return new Counts(sentences, words, syllables, heavy, long7, single);
    }

    static List<String> sentences(String language, String line) {
        return List.of((language.equals("de") ? GERMAN_SENTENCE : SENTENCE).split(line));
    }

    /** In small letters, apostrophes kept. */
    static List<String> words(String text) {
        var words = new ArrayList<String>();
        var word = new StringBuilder();
        String small = text.toLowerCase(Locale.ROOT) + " ";
        for (int i = 0; i < small.length(); i++) {
            char letter = small.charAt(i);
            if (Character.isLetter(letter) || letter == '\'') {
                word.append(letter);
            } else if (!word.isEmpty()) {
                words.add(word.toString());
                word.setLength(0);
            }
        }
        return words;
    }

    double wordsASentence() {
        return words / (double) Math.max(1, sentences);
    }

    double syllablesAWord() {
        return syllables / (double) Math.max(1, words);
    }

    /** How many of a hundred words. */
    double percent(int number) {
        return 100.0 * number / Math.max(1, words);
    }
}
