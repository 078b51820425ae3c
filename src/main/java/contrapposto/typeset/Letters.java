package contrapposto.typeset;

import java.text.Normalizer;

/** Makes a text fit for setting: composed letters, single spaces, nothing that steers instead of showing. */
final class Letters {
    private static final char FIRST_LOOSE_MARK = '\u0300';

    private Letters() { }

    /**
     * In normal form C; runs of white space become one space (no-break spaces stay); control characters, direction
     * marks, joiners and soft hyphens go.
     */
    static String clean(String text) {
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

    private static boolean shows(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL, Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }
}
