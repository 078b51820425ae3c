package contrapposto.typeset;

import contrapposto.notice.Notice;
import contrapposto.notice.Span;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Collects the characters of one document that no font has, each with the first text it was met in. */
final class Misses {
    private static final int EXCERPT = 40;

    private final Fonts fonts;
    private final Map<Integer, String> first = new TreeMap<>();

    Misses(Fonts fonts) {
        this.fonts = fonts;
    }

    void check(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) > '~') {
                fonts.missing(text).forEach(c -> first.putIfAbsent(c, text));
                return;
            }
        }
    }

    /** One error for each character, in code point order; {@code title} names the document. */
    List<Notice> notices(String title) {
        return first.entrySet().stream().map(miss -> notice(title, miss.getKey(), miss.getValue())).toList();
    }

    /** The span's source is the character: whoever has the file can look for its place. */
    private static Notice notice(String title, int character, String text) {
        boolean alone = Letters.standsAlone(character);
        return Notice.error("no-glyph", new Span(title, 0, 0, 1, Character.toString(character)), String.format(Locale.ROOT,
                        alone ? "no font has the character `%s` (U+%04X, %s), met in `%s`"
                                : "the character `%s` (U+%04X, %s) is of a script that is not set here, met in `%s`",
                        Character.toString(character), character, name(character), excerpt(text)),
                alone ? "add a font that has it with `--font FILE`, or write it in Latin, Greek or Cyrillic letters"
                        : "write it in Latin, Greek or Cyrillic letters");
    }

    private static String name(int codePoint) {
        String name = Character.getName(codePoint);
        return name == null ? "unassigned" : name.toLowerCase(Locale.ROOT);
    }

    private static String excerpt(String text) {
        return text.length() <= EXCERPT ? text : text.substring(0, EXCERPT - 1) + "…";
    }
}
