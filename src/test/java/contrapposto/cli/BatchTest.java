package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.deliver.Ledger;
import contrapposto.notice.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many clients in one run: what is left as it is, what a run that was cut off leaves, and how the next one goes on. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class BatchTest {
    /** Held back by chest pain, so that nothing has to be solved. */
    private static final String WITHHELD = """
            format: 1
            client: {name: Invented Example, height: 171 cm, mass: 64 kg}
            assessment: {date: 2026-03-02, pelvis: {turned: right, degree: clear}}
            screening: {chest-pain: yes}
            schedule: {start: 2026-03-09, weeks: 2, days: [mon], minutes: 30}
            """;
    private static final int ROWS = 12;

    @TempDir
    Path here;

    private Terminal terminal;

    @BeforeEach
    void write_a_roster() throws IOException {
        terminal = new Terminal(here);
        Files.writeString(here.resolve("base.yaml"), WITHHELD);
        Files.writeString(here.resolve("all.csv"), roster(ROWS));
    }

    @Test
    void what_is_there_from_the_same_inputs_is_left_as_it_is() throws IOException {
        terminal.run("build", "all.csv");
        var before = times();
        assertEquals(Console.PARTLY, terminal.run("build", "all.csv"));
        assertEquals(before, times());
        assertTrue(terminal.err().contains("12 specs: 0 done, 12 withheld; 12 unchanged and left as they are"), terminal.err());
        assertEquals(Console.PARTLY, terminal.run("build", "all.csv", "--again"));
        assertFalse(terminal.err().contains("unchanged"), terminal.err());
    }

    @Test
    void a_changed_row_a_changed_option_and_a_touched_file_are_made_again() throws IOException {
        terminal.run("build", "all.csv");
        Files.writeString(here.resolve("all.csv"), roster(ROWS).replace("C-3,170 cm", "C-3,175 cm"));
        Files.writeString(here.resolve("out/C-5/base-referral.pdf"), "spilt coffee");
        terminal.run("build", "all.csv");
        assertTrue(terminal.err().contains("; 10 unchanged"), terminal.err());
        assertTrue(Files.size(here.resolve("out/C-5/base-referral.pdf")) > 1000);
        terminal.run("build", "all.csv", "--paper", "letter");
        assertFalse(terminal.err().contains("unchanged"), terminal.err());
    }

    @Test
    void a_run_that_was_cut_off_goes_on_where_it_stopped_and_ends_the_same() throws IOException {
        terminal.run("build", "all.csv", "-o", "whole");
        terminal.run("build", "all.csv", "-o", "cut");
        // as if the power had failed while the eighth client was put in place: half a ledger line, drafts, no manifest
        Path ledger = here.resolve("cut/.made");
        var lines = Files.readAllLines(ledger);
        Files.writeString(ledger, String.join("\n", lines.subList(0, 7)) + "\n" + lines.get(7).substring(0, 40));
        Files.delete(here.resolve("cut/manifest.json"));
        Files.delete(here.resolve("cut/C-9/base-referral.pdf"));
        Files.writeString(here.resolve("cut/C-9/.base-referral.pdf.part"), "%PDF-1.7 half");
        Files.writeString(here.resolve("cut/.manifest.json.part"), "{");
        terminal.run("build", "all.csv", "-o", "cut");
        assertTrue(terminal.err().contains("; 7 unchanged"), terminal.err());
        assertEquals(RunTree.of(here.resolve("whole")), RunTree.of(here.resolve("cut")));
    }

    @Test
    void two_runs_do_not_write_into_one_folder_at_once() throws IOException {
        var first = Ledger.open(here.resolve("out"));
        try (var held = ((Outcome.Done<Ledger>) first).value()) {
            assertEquals(Console.PARTLY, terminal.run("build", "all.csv"));
            assertTrue(terminal.err().contains("is written to by another run") && terminal.err().contains("hint: wait until that run is done"), terminal.err());
            assertFalse(Files.exists(here.resolve("out/C-1")));
        }
        assertEquals(Console.PARTLY, terminal.run("build", "all.csv"));
        assertTrue(Files.exists(here.resolve("out/C-1")));
    }

    @Test
    void the_summary_names_each_failure_with_its_place_and_the_others_are_made() throws IOException {
        Files.writeString(here.resolve("all.csv"), roster(4).replace("C-2,170 cm", "C-2,17 cm").replace("C-3,170 cm", "../C-3,170 cm"));
        assertEquals(Console.PARTLY, terminal.run("build", "all.csv"));
        assertTrue(terminal.err().contains("4 specs: 0 done, 2 withheld, 2 failed"), terminal.err());
        assertTrue(terminal.err().lines().anyMatch(l -> l.startsWith("  all.csv:3:15: ")) && terminal.err().lines().anyMatch(l -> l.startsWith("  all.csv:4:11: ")), terminal.err());
        try (var folders = Files.list(here.resolve("out"))) {
            assertEquals(2, folders.filter(Files::isDirectory).count());
        }
    }

    private static String roster(int rows) {
        var text = new StringBuilder("spec,client.code,client.height\n");
        for (int i = 1; i <= rows; i++) {
            text.append("base.yaml,C-").append(i).append(",170 cm\n");
        }
        return text.toString();
    }

    private Map<String, FileTime> times() throws IOException {
        var times = new TreeMap<String, FileTime>();
        try (var files = Files.walk(here.resolve("out"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".pdf")).toList()) {
                times.put(file.toString(), Files.getLastModifiedTime(file));
            }
        }
        return times;
    }
}
