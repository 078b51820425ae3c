package contrapposto.audit;

import java.util.Map;

/**
 * Counts the syllables of a word by its vowels, for the languages that handouts are written in. A rule of thumb in all of
 * them, with the words it gets wrong listed: what it is worth beside hyphenation by another project's tables is in docs/safety.md.
 */
final class Syllables {
    private static final Map<String, Integer> ENGLISH = Map.ofEntries(Map.entry("australian", 3), Map.entry("reptilian", 3), Map.entry("creature", 2),
            Map.entry("triceps", 2), Map.entry("whole", 1), Map.entry("raise", 1), Map.entry("goes", 1), Map.entry("something", 2),
            Map.entry("seemingly", 3), Map.entry("quiet", 2), Map.entry("lying", 2), Map.entry("dial", 2), Map.entry("easier", 3),
            Map.entry("heavier", 3), Map.entry("serious", 3), Map.entry("usual", 3), Map.entry("diagnosis", 4), Map.entry("measurement", 3),
            Map.entry("measurements", 3), Map.entry("every", 2));
    /** Where one of the pairs below is two sounds. */
    private static final Map<String, Integer> GERMAN = Map.of("linie", 3, "linien", 4, "familie", 4, "knien", 2, "kniend", 2, "museum", 3, "beenden", 3);
    private static final String GERMAN_PAIRS = " ei ai ey ay au eu äu ie aa ee oo oi ou ";
    private static final String STRONG = "aeoáéó";
    private static final String STRESSED_WEAK = "íú";

    private Syllables() { }

    /** @param word in small letters; every word has at least one syllable */
    static int of(String language, String word) {
        return Math.max(1, switch (language) {
            case "es" -> spanish(word);
            case "de" -> GERMAN.containsKey(word) ? GERMAN.get(word) : german(word);
            default -> ENGLISH.containsKey(word) ? ENGLISH.get(word) : english(word);
        });
    }

    /** Groups of vowels; a final e is silent but behind consonant and l, as are the endings ed and es where no sound asks for them. */
    private static int english(String word) {
        return groups(endsInLe(word.endsWith("s") ? word.substring(0, word.length() - 1) : word) ? word : spoken(word));
    }

    private static boolean endsInLe(String word) {
        int n = word.length();
        return n > 2 && word.endsWith("le") && !vowel(word.charAt(n - 3));
    }

    private static String spoken(String word) {
        String left = word;
        if (left.endsWith("e") && left.length() > 1 && !vowel(left.charAt(left.length() - 2))) {
            left = left.substring(0, left.length() - 1);
        }
        left = withoutEnding(left, "ed", "td");
        return withoutEnding(left, "es", "szxhcg");
    }

    /** Without an ending that is silent: behind a consonant that is none of {@code sounding}. */
    private static String withoutEnding(String word, String ending, String sounding) {
        int stem = word.length() - ending.length();
        boolean silent = word.endsWith(ending) && stem > 0 && !vowel(word.charAt(stem - 1)) && sounding.indexOf(word.charAt(stem - 1)) < 0;
        return silent ? word.substring(0, stem) : word;
    }

    private static boolean vowel(char letter) {
        return "aeiouy".indexOf(letter) >= 0;
    }

    private static int groups(String word) {
        int count = 0;
        for (int i = 0; i < word.length(); i++) {
            count += vowel(word.charAt(i)) && (i == 0 || !vowel(word.charAt(i - 1))) ? 1 : 0;
        }
        return count;
    }

    /** Two strong vowels part, as does a stressed weak one beside a strong one; all other neighbours make one syllable. */
    private static int spanish(String word) {
        int count = 0;
        char before = 0;
        for (int i = 0; i < word.length(); i++) {
            char letter = word.charAt(i);
            boolean silent = letter == 'u' && i > 0 && (word.charAt(i - 1) == 'q'
                    || word.charAt(i - 1) == 'g' && i + 1 < word.length() && "eiéí".indexOf(word.charAt(i + 1)) >= 0);
            boolean sounds = !silent && ("aeiouáéíóúü".indexOf(letter) >= 0
                    || letter == 'y' && (i + 1 == word.length() || "aeiouáéíóú".indexOf(word.charAt(i + 1)) < 0));
            if (sounds) {
                count += before == 0 || parted(before, letter) ? 1 : 0;
                before = letter;
            } else if (!silent) {
                before = 0;
            }
        }
        return count;
    }

    private static boolean parted(char one, char two) {
        boolean strong = STRONG.indexOf(one) >= 0;
        boolean next = STRONG.indexOf(two) >= 0;
        return strong && next || strong && STRESSED_WEAK.indexOf(two) >= 0 || next && STRESSED_WEAK.indexOf(one) >= 0 || one == two;
    }

    /** Vowels one by one, but the pairs that are one sound. */
    private static int german(String word) {
        int count = 0;
        int i = 0;
        while (i < word.length()) {
            char letter = word.charAt(i);
            boolean sounds = "aeiouyäöüé".indexOf(letter) >= 0 && !(letter == 'u' && i > 0 && word.charAt(i - 1) == 'q');
            count += sounds ? 1 : 0;
            i += sounds && i + 1 < word.length() && GERMAN_PAIRS.contains(" " + word.substring(i, i + 2) + " ") ? 2 : 1;
        }
        return count;
    }
}
