package contrapposto.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.notice.Notice;
import contrapposto.notice.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The published schema, run by a JSON Schema validator over a YAML 1.2 parser that is not ours, against the reader: what an editor
 * underlines and what the tool refuses must be the same, but for the ids a schema has no words for, listed here one by one.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SchemaVerdictTest {
    /** Of the text itself: there the parser of the editor speaks before a schema is asked. */
    private static final String TEXT = "yaml-";
    /** Compare two values, or one with the calendar or the catalogue: draft 2020-12 has no words for it. */
    private static final Set<String> BETWEEN_VALUES = Set.of("born-later", "from-above-to", "impossible-age", "impossible-segment",
            "include-and-exclude", "measure-unit", "measured-twice", "odd-plates", "pale-colour", "pack-no-spec", "pack-too-many", "repeated",
            "start-before-assessment", "step-misses-end", "test-after-start", "too-many-weights",
            "trained-longer-than-alive", "unknown-exercise", "until-over");
    /** Numbers with a unit, days and blood pressures outside their limits; a schema bounds plain numbers only. */
    private static final Set<String> LIMITS_IN_WORDS = Set.of("blood-pressure-20-over-300", "blood-pressure-swapped", "mass-of-900-kg", "measure-impossible",
            "negative-mass", "stature-of-2-ft", "stature-of-71-cm", "year-far-off");

    static List<Path> parsed() throws IOException {
        var files = new ArrayList<Path>();
        for (var file : PairsTest.rejected()) {
            if (ids(file).stream().noneMatch(id -> id.startsWith(TEXT))) {
                files.add(file);
            }
        }
        return files;
    }

    @ParameterizedTest
    @MethodSource("parsed")
    void what_the_reader_refuses_the_schema_refuses(Path file) throws IOException {
        var said = new TreeSet<>(ids(file));
        said.removeAll(BETWEEN_VALUES);
        if (LIMITS_IN_WORDS.contains(stem(file))) {
            said.remove("out-of-range");
        }
        assertTrue(said.isEmpty() || !refusals(file).isEmpty(), () -> "a schema could say " + said + " too");
    }

    static Stream<Path> accepted() throws IOException {
        try (var demos = Files.list(Path.of("programs"))) {
            var specs = demos.filter(file -> file.toString().endsWith(".yaml") && !stem(file).equals("house-rules")).sorted().toList();
            return Stream.concat(specs.stream(), PairsTest.warned().stream());
        }
    }

    @ParameterizedTest
    @MethodSource("accepted")
    void what_the_reader_accepts_the_schema_accepts(Path file) throws IOException {
        assertEquals(List.of(), refusals(file));
    }

    @Test
    void the_starting_spec_is_accepted() throws IOException {
        assertEquals(List.of(), PublishedSchema.refusals(StartingSpec.text()));
    }

    @Test
    void the_exceptions_are_no_wider_than_they_must_be() throws IOException {
        var met = new TreeSet<String>();
        var stems = new TreeSet<String>();
        for (var file : parsed()) {
            if (refusals(file).isEmpty()) {
                met.addAll(ids(file));
                stems.add(stem(file));
            }
        }
        assertTrue(stems.containsAll(LIMITS_IN_WORDS), "each of these is accepted by the schema, else it needs no exception");
        met.remove("out-of-range");
        assertTrue(BETWEEN_VALUES.containsAll(met), met.toString());
    }

    private static Set<String> ids(Path file) throws IOException {
        return PairsTest.check(file).notices().stream().filter(n -> n.severity() == Severity.ERROR).map(Notice::id).collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<String> refusals(Path file) throws IOException {
        return PublishedSchema.refusals(Files.readString(file));
    }

    private static String stem(Path file) {
        return file.getFileName().toString().replaceFirst("\\.\\w+$", "");
    }
}
