package contrapposto.catalogue;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What part of a text depends on: {@code {loaded: Use no weight.}} is said only where a weight is held, {@code {free: …}}
 * only where none is, {@code {raised: …}} only where a box or a bench is used, {@code {level: …}} only where none is. A card
 * may not tell someone who holds nothing to take a lighter weight.
 */
public enum Clause {
    /** Something is held that has a weight. */
    LOADED,
    /** Nothing is held. */
    FREE,
    /** A foot or a hand is on a box or a bench. */
    RAISED,
    /** All is on the floor. */
    LEVEL;

    private static final Pattern WRITTEN = Pattern.compile("\\{(loaded|free|raised|level): *((?:[^{}]|\\{[A-Za-z]+})*)}");

    /** What holds of a set-up. */
    public static Set<Clause> holding(boolean loaded, boolean raised) {
        return EnumSet.of(loaded ? LOADED : FREE, raised ? RAISED : LEVEL);
    }

    /** {@code text} with what holds in its place and the rest, with the space it leaves, taken out. */
    public static String told(String text, Set<Clause> holds) {
        return text.indexOf(": ") < 0 ? text : WRITTEN.matcher(text).replaceAll(m -> holds.contains(valueOf(m.group(1).toUpperCase(Locale.ROOT)))
                ? Matcher.quoteReplacement(m.group(2)) : "").replaceAll("  +", " ").strip();
    }

    /** Every way in which {@code text} may be told; one where it has no clause. */
    public static List<String> ways(String text) {
        return Stream.of(holding(true, true), holding(true, false), holding(false, true), holding(false, false))
                .map(holds -> told(text, holds)).distinct().toList();
    }
}
