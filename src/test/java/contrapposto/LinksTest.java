package contrapposto;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Every link of a document to a file of this project leads somewhere. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LinksTest {
    private static final Pattern LINK = Pattern.compile("]\\(([^)#:]+)(?:#[^)]*)?\\)");

    @Test
    void lead_to_files_that_are_there() throws IOException {
        var dead = new ArrayList<String>();
        int seen = 0;
        try (var docs = Files.walk(Path.of("docs"))) {
            for (var page : Stream.concat(Stream.of(Path.of("README.md"), Path.of("DEVELOPERS.md"), Path.of("templates/README.md")), docs)
                    .filter(file -> file.toString().endsWith(".md")).toList()) {
                for (var link : LINK.matcher(Files.readString(page)).results().map(found -> found.group(1)).toList()) {
                    seen++;
                    if (!Files.exists(page.resolveSibling(link).normalize())) {
                        dead.add(page + " → " + link);
                    }
                }
            }
        }
        assertEquals(List.of(), dead);
        assertTrue(seen > 20, seen + " links");
    }
}
