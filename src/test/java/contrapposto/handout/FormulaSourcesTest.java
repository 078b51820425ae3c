package contrapposto.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The last table of docs/numbers.md against the sources: each class that holds a formula names what the table says it rests on. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FormulaSourcesTest {
    private static final Pattern ROW = Pattern.compile("^\\| [^|]+ \\| `([a-z]+)\\.([A-Za-z]+)` \\| ([^|]+) \\|$", Pattern.MULTILINE);

    @Test
    void each_formula_names_its_source_beside_it() throws IOException {
        var rows = ROW.matcher(Files.readString(Path.of("docs/numbers.md"))).results().toList();
        assertTrue(rows.size() >= 12, () -> rows.size() + " formulas");
        var silent = new ArrayList<String>();
        for (var row : rows) {
            var file = Path.of("src/main/java/contrapposto", row.group(1), row.group(2) + ".java");
            if (!Files.exists(file) || !Files.readString(file).contains(row.group(3).strip())) {
                silent.add(file + " does not name " + row.group(3));
            }
        }
        assertEquals(List.of(), silent);
    }
}
