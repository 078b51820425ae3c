package contrapposto;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Reads the compiled classes with jdeps and holds them against the floors table of DEVELOPERS.md, its one home. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FloorsTest {
    private static final Path CLASSES = Path.of("target/classes");
    private static final Pattern EDGE = Pattern.compile("^\\s+contrapposto\\.(\\w+)\\s+->\\s+([\\w.]+)", Pattern.MULTILINE);
    private static final Pattern ROW = Pattern.compile("^\\| *\\d+ *\\| `(\\w+)` *\\|[^|]*\\|([^|]*)\\|([^|]*)\\|$", Pattern.MULTILINE);

    /** Packages of the outside libraries that have one door, by the words of the table. */
    private static final Map<String, String> LIBRARY = Map.of(
            "SnakeYAML", "org.yaml.snakeyaml", "Hipparchus", "org.hipparchus", "FreeMarker", "freemarker",
            "OpenPDF", "org.openpdf", "picocli", "picocli", "progressbar", "me.tongfei", "Commons CSV", "org.apache.commons.csv",
            "PDFBox", "org.apache.pdfbox", "Angus Mail", "jakarta.mail");

    private record Floor(Set<String> mayImport, Set<String> libraries) { }

    @Test
    void every_import_goes_down_the_floors() throws IOException {
        var floors = table();
        var strays = new TreeSet<String>();
        var unknown = new TreeSet<String>();
        EDGE.matcher(dependencies()).results().forEach(edge -> {
            String from = edge.group(1);
            String to = edge.group(2);
            Floor floor = floors.get(from);
            if (floor == null) {
                unknown.add(from);
                return;
            }
            if (to.startsWith("contrapposto.") && !to.equals("contrapposto." + from)
                    && !floor.mayImport().contains(to.substring("contrapposto.".length()))) {
                strays.add(from + " -> " + to);
            }
            LIBRARY.forEach((word, packages) -> {
                if ((to.equals(packages) || to.startsWith(packages + ".")) && !floor.libraries().contains(word)) {
                    strays.add(from + " -> " + to + " (the door to " + word + " is elsewhere)");
                }
            });
        });
        assertEquals(Set.of(), unknown, "packages that the table of DEVELOPERS.md does not know");
        assertEquals(Set.of(), strays, "imports against the floors");
    }

    @Test
    void no_package_may_import_one_above_it() throws IOException {
        var seen = new TreeSet<String>();
        table().forEach((name, floor) -> {
            assertTrue(seen.containsAll(floor.mayImport()), name + " may import only rows below it, but lists " + floor.mayImport());
            seen.add(name);
        });
    }

    /** The table from the bottom up: the last row is the lowest. */
    private static Map<String, Floor> table() throws IOException {
        var rows = ROW.matcher(Files.readString(Path.of("DEVELOPERS.md"))).results().toList().reversed();
        var table = new LinkedHashMap<String, Floor>();
        for (var row : rows) {
            table.put(row.group(1), new Floor(words(row.group(2).replace("`", "")), words(row.group(3))));
        }
        assertTrue(table.size() > 10, "the floors table of DEVELOPERS.md was not found");
        return table;
    }

    private static Set<String> words(String cell) {
        return Arrays.stream(cell.split(",")).map(String::strip).filter(w -> !w.isEmpty() && !w.equals("–"))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String dependencies() {
        var out = new StringWriter();
        var problems = new StringWriter();
        ToolProvider.findFirst("jdeps").orElseThrow().run(new PrintWriter(out), new PrintWriter(problems),
                "-verbose:package", "-e", ".+", CLASSES.toString());
        assertTrue(out.toString().contains("contrapposto"), "jdeps saw no classes: " + problems);
        return out.toString();
    }
}
