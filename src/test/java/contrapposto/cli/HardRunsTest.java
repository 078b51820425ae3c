package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.compose.Composer;
import contrapposto.compose.Templates;
import contrapposto.press.Press;
import contrapposto.press.Wanted;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Whole runs that meet a full disk, a folder they may not write, a hostile name or a hostile template. docs/hard-knocks.md lists where each knock is tried. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HardRunsTest {
    private static final int ROWS = 12;
    private static final int ROOM = 2_000_000;

    @TempDir
    Path here;

    private Terminal terminal;

    @BeforeEach
    void write() throws IOException {
        terminal = new Terminal(here);
        HeldRoster.write(here, ROWS);
    }

    /** On a disk in memory that really runs out: first with something in the way, then without. */
    @Test
    void a_disk_that_fills_up_in_the_middle_of_a_batch_leaves_whole_files_and_the_next_run_ends_as_one_that_met_no_trouble() throws IOException {
        var disk = Jimfs.newFileSystem(Configuration.unix().toBuilder().setBlockSize(512).setMaxSize(ROOM).build()).getPath("/clinic");
        Path whole = Jimfs.newFileSystem(Configuration.unix()).getPath("/clinic/out");
        assertEquals(0, run(whole).failed());
        long needed = RunTree.of(whole).values().stream().mapToLong(String::length).sum();
        Files.createDirectories(disk);
        Files.write(disk.resolve("filler"), new byte[(int) (ROOM - needed / 2)]);
        var first = run(disk.resolve("out"));
        assertTrue(first.failed() > 0 && first.withheld() > 0, first.summary().toString());
        assertTrue(terminal.err().contains("cannot-write") && terminal.err().contains("hint: check that the folder exists, may be written and has room"), terminal.err());
        assertFalse(terminal.err().contains("fault of the program"), terminal.err());
        RunTree.of(disk.resolve("out")).forEach((name, bytes) -> assertTrue(name.equals("manifest.json") || bytes.equals(RunTree.of(whole).get(name)), name + " is whole"));
        Files.delete(disk.resolve("filler"));
        assertEquals(0, run(disk.resolve("out")).failed());
        assertEquals(RunTree.of(whole), RunTree.of(disk.resolve("out")));
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void a_folder_that_may_not_be_written_is_one_notice_with_the_way_out() {
        assertEquals(Console.PARTLY, terminal.run("build", "all.csv", "-o", "/proc/contrapposto-out"));      // refused to everyone, root included
        assertEquals(1, terminal.err().lines().filter(l -> l.startsWith("error[")).count(), terminal.err());
        assertTrue(terminal.err().contains("choose another with `-o`"), terminal.err());
    }

    @Test
    void hostile_codes_and_names_write_nothing_outside_their_folder() throws IOException {
        Files.writeString(here.resolve("all.csv"), """
                spec,client.code,client.name
                base.yaml,../../up,
                base.yaml,/etc/passwd,
                base.yaml,.hidden,
                base.yaml,CON,
                base.yaml,"a b",
                base.yaml,,../../../up
                base.yaml,,C:\\windows\\up
                base.yaml,,NUL
                base.yaml,,"$(touch up)"
                """);
        assertEquals(Console.PARTLY, terminal.run("build", "all.csv"));
        assertEquals(4, terminal.err().lines().filter(l -> l.endsWith(": failed, nothing written")).count(), terminal.err());
        assertEquals(List.of("_CON", "_nul", "c-windows-up", "touch-up", "up"), names("out"));
        assertEquals(List.of("all.csv", "base.yaml", "out"), names("."));
    }

    @Test
    void a_template_that_reads_a_file_or_has_no_end_costs_its_client_a_notice_and_writes_nothing() throws IOException {
        Path own = Files.createDirectories(here.resolve("own/en"));
        for (String text : List.of("<#include '/etc/passwd'>", "<#macro m><@m/></#macro><@m/>", "<#list 1.. as i></#list>", "${\"freemarker.template.utility.Execute\"?new()(\"id\")}")) {
            Files.writeString(own.resolve("referral.ftlx"), text);
            assertEquals(Console.PARTLY, terminal.run("build", "base.yaml", "--templates", "own"));
            assertTrue(terminal.err().contains("error[template-slip]") && terminal.err().contains("= hint: "), terminal.err());
            assertEquals(List.of(), names("out"));
        }
    }

    private Tally run(Path out) {
        var streams = terminal.streams("");
        var catalogue = CatalogueReader.house(HouseRulesReader.house());
        var press = new Press(catalogue, new Composer(Templates.own()), Wanted.AS_THE_SPEC_SAYS);
        return new Run(new Run.Job(press, "any", false, 2), out, Path.of("out"), streams, new Voice()).all(Inputs.of(List.of(Path.of("all.csv")), streams, catalogue));
    }

    /** What lies in a folder, but for the books of a run and the test's own templates. */
    private List<String> names(String folder) throws IOException {
        try (var inside = Files.list(here.resolve(folder))) {
            return inside.map(p -> p.getFileName().toString()).filter(name -> !List.of(".made", "manifest.json", "own").contains(name)).sorted().toList();
        }
    }
}
