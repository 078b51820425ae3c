package contrapposto.typeset;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.IntPredicate;

/**
 * Where words may be divided at the end of a line: the words that our own templates and families use, listed for each language
 * whose words are long. What is not listed is not divided. A divided word ends in a soft hyphen, which shows as a hyphen and
 * is not part of the word for whoever reads or copies the text.
 */
final class Divisions {
    static final char MARK = '\u00ad';
    static final Divisions NONE = new Divisions(Map.of());
    private static final String FILE = "divisions-%s.txt";
    private static final Map<String, Divisions> LISTED = Map.of("de", read("de"), "es", read("es"));

    private final Map<String, List<Integer>> points;

    private Divisions(Map<String, List<Integer>> points) {
        this.points = points;
    }

    /** @param language BCP 47, as {@code de} */
    static Divisions of(String language) {
        return LISTED.getOrDefault(language, NONE);
    }

    private static Divisions read(String language) {
        try (InputStream in = Divisions.class.getResourceAsStream(String.format(Locale.ROOT, FILE, language))) {
            var text = new String(Optional.ofNullable(in).orElseThrow().readAllBytes(), StandardCharsets.UTF_8);
            var points = new TreeMap<String, List<Integer>>();
            text.lines().filter(line -> !line.startsWith("#")).flatMap(line -> List.of(line.split(" ")).stream())
                    .forEach(word -> points.put(word.replace("-", ""), points(word)));
            return new Divisions(points);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Integer> points(String divided) {
        var points = new ArrayList<Integer>();
        for (int at = divided.indexOf('-'); at >= 0; at = divided.indexOf('-', at + 1)) {
            points.add(at - points.size());
        }
        return List.copyOf(points);
    }

    /** A word in the parts that may stand alone in a line, each but the last with its hyphen. */
    List<String> parts(String text) {
        var parts = new ArrayList<String>();
        int from = 0;
        for (int at : places(text)) {
            parts.add(text.substring(from, at) + MARK);
            from = at;
        }
        parts.add(text.substring(from));
        return parts;
    }

    /** How many letters of {@code text} stand before the last place of division that fits; empty where none does. */
    OptionalInt last(String text, IntPredicate fits) {
        var places = places(text);
        for (int i = places.size() - 1; i >= 0; i--) {
            if (fits.test(places.get(i))) {
                return OptionalInt.of(places.get(i));
            }
        }
        return OptionalInt.empty();
    }

    /** Places in a word with the marks that stand before and after it. */
    private List<Integer> places(String text) {
        int from = 0;
        while (from < text.length() && !Character.isLetter(text.charAt(from))) {
            from++;
        }
        int to = from;
        while (to < text.length() && Character.isLetter(text.charAt(to))) {
            to++;
        }
        int before = from;
        return points.getOrDefault(text.substring(from, to).toLowerCase(Locale.ROOT), List.of()).stream().map(at -> before + at).toList();
    }
}
