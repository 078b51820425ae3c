package contrapposto.catalogue;

import java.util.Arrays;
import java.util.regex.Pattern;

/**
 * What has to be known of a language to check its words. A placeholder is filled with the stem of the side's word and the
 * ending follows it in the text: {@code {side}} is "left" in English, {@code {side}a} is "izquierda" in Spanish,
 * {@code {side}en} is "linken" in German.
 */
enum Tongue {
    EN("left|right", "right", 1),
    ES("izquierd[oa]s?|derech[oa]s?", "izquierd", 1.4),
    DE("links|rechts|(?:link|recht)e[nmrs]?", "recht", 1.4);

    private final Pattern named;
    private final String longestStem;
    private final double room;

    Tongue(String named, String longestStem, double room) {
        this.named = Pattern.compile("(?iU)\\b(?:" + named + ")\\b");
        this.longestStem = longestStem;
        this.room = room;
    }

    /** English for a language that only a practice has. */
    static Tongue of(String language) {
        return Arrays.stream(values()).filter(tongue -> Words.of(tongue).equals(language)).findFirst().orElse(EN);
    }

    /** Whether {@code text} names a side outright. */
    boolean namesASide(String text) {
        return named.matcher(text).find();
    }

    /** What a placeholder prints at most. */
    String longestStem() {
        return longestStem;
    }

    /** The most characters where English has {@code most}: Spanish and German say the same in more, and lines may be more. */
    int room(int most) {
        return (int) (most * room);
    }
}
