package contrapposto;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Counts lines and reads names: small files, and no name that says nothing. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SizesTest {
    private static final int MOST_LINES = 400;
    private static final Pattern EMPTY_NAME = Pattern.compile("(Helper|Manager|Utils?|Common|Impl|BaseOfSupport)\\.java$");

    @Test
    void no_file_is_over_400_lines() throws IOException {
        var long_ = new TreeMap<String, Integer>();
        for (Path file : sources(Path.of("src"))) {
            int lines = Files.readAllLines(file).size();
            if (lines > MOST_LINES) {
                long_.put(file.toString(), lines);
            }
        }
        assertEquals(Map.of(), long_);
    }

    @Test
    void the_middle_file_is_short() throws IOException {
        var sizes = new java.util.ArrayList<Integer>();
        for (Path file : sources(Path.of("src/main/java"))) {
            sizes.add(Files.readAllLines(file).size());
        }
        sizes.sort(null);
        assertTrue(sizes.get(sizes.size() / 2) <= 90, "median lines of a file: " + sizes.get(sizes.size() / 2));
    }

    @Test
    void names_say_what_a_type_is() throws IOException {
        var vague = sources(Path.of("src/main/java")).stream().map(p -> p.getFileName().toString())
                .filter(n -> EMPTY_NAME.matcher(n).find() && !n.equals("BaseOfSupport.java")).toList();
        assertEquals(List.of(), vague);
    }

    static List<Path> sources(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            return files.filter(p -> p.toString().endsWith(".java")).sorted().toList();
        }
    }
}
