package contrapposto.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NoticeTourTest {
    private static final Path PRINTED = Path.of("docs/notices.md");
    /** The first argument of whatever makes a notice: words with hyphens, in quotes, right behind the parenthesis. */
    private static final Pattern ID = Pattern.compile("(?:Notice\\.(?:error|warning)|\\b(?:error|wrong|refuse|refused|warning|slip))\\(\\s*\"([a-z0-9]+(?:-[a-z0-9]+)+)\"");

    /** A mismatch leaves {@code target/notices.received.md}; look at it, then copy it over the page. */
    @Test
    void the_printed_tour_shows_what_the_pairs_show() throws IOException {
        var made = NoticeTour.page();
        if (!Files.exists(PRINTED) || !Files.readString(PRINTED).equals(made)) {
            Files.writeString(Path.of("target/notices.received.md"), made);
        }
        assertEquals(Files.readString(PRINTED), made, "if this is right, copy target/notices.received.md over " + PRINTED);
    }

    @Test
    void every_id_in_the_code_is_on_the_tour() throws IOException {
        var missing = new TreeSet<String>();
        try (var sources = Files.walk(Path.of("src/main/java"))) {
            for (var source : sources.filter(file -> file.toString().endsWith(".java")).toList()) {
                ID.matcher(Files.readString(source)).results().forEach(found -> missing.add(found.group(1)));
            }
        }
        assertTrue(missing.size() > 60, "the scan finds the ids: " + missing);
        missing.removeAll(NoticeTour.examples().keySet());
        missing.removeAll(NoticeTour.RUN.keySet());
        assertEquals(new TreeSet<String>(), missing);
    }
}
