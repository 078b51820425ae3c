package contrapposto;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Every published figure we were given has one row in docs/checks.md: a test that exists, or the reason why none applies. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ReferenceAuditTest {
    private static final Pattern ROW = Pattern.compile("^\\| ([A-Z]\\d+(?:\\.\\d+)?) \\| ([^|]+) \\| ([^|]+) \\| ([^|]+) \\|$", Pattern.MULTILINE);
    private static final Pattern NAMED = Pattern.compile("\\b([a-z]+\\.[A-Z]\\w+Test)#([A-Za-z0-9_]+)");
    private static final String NONE = "does not apply, because ";

    private record Row(String id, String says, String used, String checked) { }

    /** The ids as they were handed over: strength (A), dose and sides (B), equipment (G), traps (J). Groups without rows of their own have one. */
    private static List<String> handedOver() {
        return Stream.of(to("A1.", 13), Stream.of("A2"), to("A3.", 8), Stream.of("A4"), to("A5.", 3), Stream.of("A6"), to("A7.", 10), to("B1.", 15),
                to("B2.", 6), to("B3.", 20), to("B4.", 13), to("G1.", 22), to("J", 18)).flatMap(ids -> ids).toList();
    }

    private static Stream<String> to(String group, int last) {
        return IntStream.rangeClosed(1, last).mapToObj(number -> group + number);
    }

    private static List<Row> rows(String text) {
        return ROW.matcher(text).results().map(m -> new Row(m.group(1), m.group(2).strip(), m.group(3).strip(), m.group(4).strip())).toList();
    }

    private static String table() throws IOException {
        return Files.readString(Path.of("docs/checks.md"));
    }

    /** What is wrong with a table, in words. */
    private static List<String> faults(String text) {
        var rows = rows(text);
        var faults = new ArrayList<String>();
        var ids = rows.stream().map(Row::id).toList();
        handedOver().stream().filter(id -> ids.stream().filter(id::equals).count() != 1).forEach(id -> faults.add(id + " has not one row"));
        ids.stream().filter(id -> !handedOver().contains(id)).forEach(id -> faults.add(id + " was never handed over"));
        for (var row : rows) {
            var tests = NAMED.matcher(row.checked()).results().toList();
            boolean none = row.checked().startsWith(NONE) && row.checked().length() > NONE.length() + 10;
            if (tests.isEmpty() && !none) {
                faults.add(row.id() + " names neither a test nor a reason");
            }
            tests.stream().filter(test -> !exists(test.group(1), test.group(2))).forEach(test -> faults.add(row.id() + " names a test that is not there: " + test.group()));
        }
        return faults;
    }

    private static boolean exists(String type, String method) {
        try {
            return Arrays.stream(Class.forName("contrapposto." + type).getDeclaredMethods()).anyMatch(m -> m.getName().equals(method)
                    && Arrays.stream(m.getAnnotations()).anyMatch(a -> a.annotationType().getName().startsWith("org.junit.jupiter")));
        } catch (ClassNotFoundException absent) {
            return false;
        }
    }

    @Test
    void every_figure_has_one_row_with_a_test_that_exists_or_a_reason() throws IOException {
        assertEquals(List.of(), faults(table()));
    }

    @Test
    void a_missing_row_a_row_too_many_a_test_that_is_not_there_and_an_empty_reason_are_found() throws IOException {
        String table = table();
        assertEquals(List.of("A1.1 has not one row"), faults(table.replaceFirst("\\| A1\\.1 \\|[^\\n]*\\n", "")));
        assertEquals(List.of("A1.99 was never handed over"), faults(table + "| A1.99 | x | y | does not apply, because it was made up here |\n"));
        assertTrue(faults(table.replace("#every_cell_of_the_grid", "#no_such_check")).getFirst().startsWith("A1.1 names a test that is not there"));
        assertTrue(faults(table.replaceFirst("does not apply, because [^|]*\\|", "does not apply |")).getFirst().endsWith("names neither a test nor a reason"));
    }

    /** Ids that code, reasons or docs cite are ids of the table, where they are of its groups. */
    @Test
    void no_id_is_cited_that_was_never_handed_over() throws IOException {
        var cited = Pattern.compile("\\b((?:A[1-7]|B[1-4]|G1)\\.\\d+)\\b");
        var strays = new TreeSet<String>();
        try (var files = Stream.of("src/main", "docs", "templates", "programs").flatMap(ReferenceAuditTest::below)) {
            for (var file : files.filter(f -> f.toString().matches(".*\\.(java|md|yaml|ftlx)")).toList()) {
                cited.matcher(Files.readString(file)).results().map(m -> m.group(1)).filter(id -> !handedOver().contains(id))
                        .forEach(id -> strays.add(file + ": " + id));
            }
        }
        assertEquals(new TreeSet<>(), strays);
    }

    private static Stream<Path> below(String folder) {
        try (var files = Files.walk(Path.of(folder))) {
            return files.filter(Files::isRegularFile).toList().stream();
        } catch (IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }
}
