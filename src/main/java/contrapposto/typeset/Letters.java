package contrapposto.typeset;

import java.lang.Character.UnicodeScript;
import java.text.Normalizer;
import java.util.EnumSet;
import java.util.Set;

/** Makes a text fit for setting: composed letters, single spaces, nothing that steers instead of showing. */
final class Letters {
    private static final char FIRST_LOOSE_MARK = '\u0300';
    /** Scripts whose letters stand one after the other as they are. */
    private static final Set<UnicodeScript> ALONE = EnumSet.of(UnicodeScript.COMMON, UnicodeScript.INHERITED, UnicodeScript.LATIN, UnicodeScript.GREEK,
            UnicodeScript.CYRILLIC, UnicodeScript.ARMENIAN, UnicodeScript.GEORGIAN, UnicodeScript.ETHIOPIC, UnicodeScript.CHEROKEE,
            UnicodeScript.CANADIAN_ABORIGINAL, UnicodeScript.HAN, UnicodeScript.HIRAGANA, UnicodeScript.KATAKANA, UnicodeScript.BOPOMOFO,
            UnicodeScript.HANGUL, UnicodeScript.YI, UnicodeScript.VAI, UnicodeScript.TIFINAGH, UnicodeScript.UNKNOWN);

    private Letters() { }

    /**
     * In normal form C; runs of white space become one space (no-break spaces stay); control characters, direction
     * marks, joiners and soft hyphens go.
     */
    static String clean(String text) {
        if (isClean(text)) {
            return text;
        }
        String composed = text;
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) >= FIRST_LOOSE_MARK) {
                composed = Normalizer.normalize(text, Normalizer.Form.NFC);
                break;
            }
        }
        var clean = new StringBuilder(composed.length());
        composed.codePoints().forEach(c -> {
            if (c == ' ' || c == '\n' || c == '\t' || c == '\r') {
                if (clean.isEmpty() || clean.charAt(clean.length() - 1) != ' ') {
                    clean.append(' ');
                }
            } else if (shows(c)) {
                clean.appendCodePoint(c);
            }
        });
        return clean.toString();
    }

    /** Whether there is nothing but visible ASCII and single spaces. */
    private static boolean isClean(String text) {
        char before = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' || c > '~' || c == ' ' && before == ' ') {
                return false;
            }
            before = c;
        }
        return true;
    }

    /**
     * Whether a letter may be set by itself from left to right: not where a script runs from the right or joins and
     * reorders its letters, since set so it would read as something else.
     */
    static boolean standsAlone(int codePoint) {
        return codePoint <= '~' || switch (Character.getDirectionality(codePoint)) {
            case Character.DIRECTIONALITY_RIGHT_TO_LEFT, Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC, Character.DIRECTIONALITY_ARABIC_NUMBER -> false;
            default -> ALONE.contains(UnicodeScript.of(codePoint));
        };
    }

    private static boolean shows(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL, Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }
}
