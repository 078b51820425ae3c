package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The audits and the reading grades of every demo. Targets: client edition grade 8, safety panel grade 6 (F5.13); the consensus in full. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class AuditCommandTest {
    private static final Pattern GRADE = Pattern.compile("(?m)^  (.{20}) +(-?[0-9.]+) ?; +\\(?([0-9.]+)\\)? +at most ([68])$");

    @ParameterizedTest
    @ValueSource(strings = {"newcomer-right", "seventy-bare-room", "square-steady", "veteran-left"})
    void every_demo_meets_all_that_a_machine_can_prove_and_reads_easily(String demo) {
        var text = audit(Path.of("programs", demo + ".yaml"));
        assertTrue(text.contains("coach edition: 19 met, 0 not met, 0 need a person"), text);
        assertTrue(text.contains("(PEMAT-P), client edition: 10 met, 0 not met"), text);
        assertTrue(text.contains("(CDC index), client edition: 11 met, 0 not met"), text);
        assertTrue(text.lines().filter(line -> line.matches("  (\\d+[ab]?) +(met|needs a person) .*")).allMatch(line -> line.matches(".* \\[.+]")), text);
        var grades = GRADE.matcher(text).results().toList();
        assertTrue(grades.size() >= 5, text);
        for (var grade : grades) {
            double most = grade.group(1).strip().equals("Read this first") ? 6 : 8;
            assertEquals(most, Double.parseDouble(grade.group(4)));
            for (var number : List.of(grade.group(2), grade.group(3))) {
                assertTrue(Double.parseDouble(number) <= most, grade.group());
            }
        }
    }

    @Test
    void who_gives_the_program_and_where_need_a_person_while_the_spec_does_not_say(@TempDir Path folder) throws IOException {
        var silent = Files.readAllLines(Path.of("programs/newcomer-right.yaml")).stream()
                .filter(line -> !line.matches("  (qualification|setting): .*")).toList();
        var text = audit(Files.write(folder.resolve("silent.yaml"), silent));
        assertTrue(text.contains("coach edition: 17 met, 0 not met, 2 need a person"), text);
        assertTrue(text.contains("  2    needs a person "), text);
        assertTrue(text.contains("  12   needs a person "), text);
    }

    private static String audit(Path spec) {
        var terminal = new Terminal(Path.of(""));
        assertEquals(Console.DONE, terminal.run("audit", spec.toString()));
        return terminal.out();
    }
}
