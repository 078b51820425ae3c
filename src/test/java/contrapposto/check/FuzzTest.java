package contrapposto.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.Fuzz;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Damaged specs, rosters and packs; how they are damaged: {@link Fuzz}. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FuzzTest {
    private static final long SLOWEST_NANOS = 5_000_000_000L;
    private static final List<String> SNIPPETS = List.of("&a ", "*a", "!!binary ", "{", "}", "[", "]", ": ", "- ", "|", ">", "? ", "#", "\"", "'", ",", "\n", "\r\n", "\t", "\u0000",
            "\u202E", "\uFEFF", "\uD83D\uDE00", "---\n", "...\n", "%YAML 9.9\n", "<<: ", "1e999", "-0", "9999999999999999999", "0x1F", ".nan", "2026-02-30", "5 ft 99 in", "64 kg",
            "null", "yes", "client.name", "assessment.pelvis.turned", "\\x00", "é", "\u0301");

    @Test
    void specs() throws IOException {
        var seeds = Fuzz.seeds(Path.of("programs"), ".yaml");
        seeds.addAll(Fuzz.seeds(Path.of("src/test/resources/rejected"), ".yaml"));
        Fuzz.tried("specs", seeds, SNIPPETS, bytes -> Checks.check("f.yaml", bytes, DemoSpecsTest.EXERCISES).notices());
    }

    @Test
    void rosters() throws IOException {
        var seeds = Fuzz.seeds(Path.of("src/test/resources/rejected"), ".csv");
        seeds.add("spec,client.name,client.height\nplain.yaml,\"Quill, Ada\",171 cm\nplain.yaml,Bo,5 ft 7 in\n".getBytes(StandardCharsets.UTF_8));
        Fuzz.tried("rosters", seeds, SNIPPETS, bytes -> {
            var roster = Roster.open("f.csv", bytes, RosterTest::spec, DemoSpecsTest.EXERCISES);
            var notices = new ArrayList<>(roster.notices());
            roster.map(rows -> {
                rows.forEach(row -> notices.addAll(row.outcome().notices()));
                return rows;
            });
            return notices;
        });
    }

    @Test
    void packs() throws IOException {
        var seeds = Fuzz.seeds(Path.of("programs/packs"), ".yaml");
        seeds.addAll(Fuzz.seeds(Path.of("src/test/resources/rejected"), "pack-slip.yaml"));
        Fuzz.tried("packs", seeds, SNIPPETS, bytes -> Pack.open("f.yaml", bytes, name -> Optional.of(seeds.getFirst()), DemoSpecsTest.EXERCISES).notices());
    }

    @Test
    void a_file_of_fifty_megabytes_is_refused_at_once() {
        var large = new byte[50_000_000];
        Arrays.fill(large, (byte) 'a');
        long start = System.nanoTime();
        var notice = Checks.check("large.yaml", large, DemoSpecsTest.EXERCISES).notices().getFirst();
        assertEquals("yaml-too-big", notice.id());
        assertTrue(System.nanoTime() - start < SLOWEST_NANOS);
    }
}
