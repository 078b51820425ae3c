package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Folders of specs: what is found in them, and that one bad file costs the others nothing. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FoldersTest {
    private static final String WITHHELD = """
            format: 1
            client: {name: Invented Example, code: CODE, height: 171 cm, mass: 64 kg}
            assessment: {date: 2026-03-02, pelvis: {turned: right, degree: clear}}
            screening: {chest-pain: yes}
            schedule: {start: 2026-03-09, weeks: 2, days: [mon], minutes: 30}
            """;

    @TempDir
    Path here;

    private Terminal terminal;

    @BeforeEach
    void write() throws IOException {
        terminal = new Terminal(here);
        spec("clinic/b.yaml", "B");
        spec("clinic/a.yml", "A");
        spec("clinic/north/c.yaml", "C");
        spec("clinic/north/desk/d.yaml", "D");
    }

    @Test
    void folders_inside_a_folder_are_read_too_by_name_and_files_first() {
        assertEquals(Console.PARTLY, terminal.run("build", "clinic"));
        assertEquals(List.of("clinic/a.yml", "clinic/b.yaml", "clinic/north/c.yaml", "clinic/north/desk/d.yaml"),
                terminal.err().lines().filter(l -> l.contains(": withheld")).map(l -> l.substring(0, l.indexOf(':'))).toList());
        assertTrue(Files.exists(here.resolve("out/D/d-referral.pdf")));
    }

    @Test
    void one_failure_stops_no_other_and_stands_in_the_summary_and_the_manifest_with_its_place() throws IOException {
        Files.writeString(here.resolve("clinic/north/bad.yaml"), WITHHELD.replace("64 kg", "6400 kg"));
        Files.write(here.resolve("clinic/north/noise.yaml"), new byte[] {(byte) 0xC3, 0x28, 0});
        assertEquals(Console.PARTLY, terminal.run("build", "clinic"));
        assertTrue(terminal.err().contains("6 specs: 0 done, 4 withheld, 2 failed"), terminal.err());
        assertTrue(terminal.err().lines().anyMatch(l -> l.startsWith("  clinic/north/bad.yaml:2:")), terminal.err());
        assertTrue(Files.readString(here.resolve("out/manifest.json")).contains("clinic/north/bad.yaml:2:"));
    }

    @Test
    void what_a_run_has_written_is_no_spec() {
        terminal.run("build", "clinic", "-o", "clinic/out");
        terminal.run("build", "clinic", "-o", "clinic/out");
        assertTrue(terminal.err().contains("4 specs: 0 done, 4 withheld; 4 unchanged"), terminal.err());
    }

    @Test
    void a_folder_inside_that_holds_a_pack_is_left_to_its_pack() throws IOException {
        spec("clinic/packs/base.yaml", "P");
        Files.writeString(here.resolve("clinic/packs/set.yaml"), "pack: 1\nspec: base.yaml\nvary: {direction: {turned left: {assessment.pelvis.turned: left}}}\n");
        terminal.run("check", "clinic");
        assertTrue(terminal.err().contains("clinic/packs: left out, for it holds a pack; build it by its name, `clinic/packs/set.yaml`"), terminal.err());
        assertTrue(terminal.err().contains("4 specs"), terminal.err());
    }

    @Test
    void a_link_to_a_folder_is_not_followed_so_that_a_circle_ends() throws IOException {
        Files.createSymbolicLink(here.resolve("clinic/north/up"), here.resolve("clinic"));
        terminal.run("check", "clinic");
        assertTrue(terminal.err().contains("4 specs"), terminal.err());
    }

    @Test
    void a_folder_that_cannot_be_looked_into_is_one_failure() throws IOException {
        Path closed = Files.createDirectory(here.resolve("clinic/closed"));
        Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("---------"));
        assumeTrue(!Files.isReadable(closed), "nothing is closed to this user");
        terminal.run("check", "clinic");
        assertTrue(terminal.out().contains("`clinic/closed` is a folder that cannot be looked into"), terminal.out());
        assertTrue(terminal.err().contains("5 specs"), terminal.err());
    }

    @Test
    void a_spec_of_fifty_megabytes_is_refused_without_being_read() throws IOException {
        try (var file = Files.newByteChannel(here.resolve("clinic/large.yaml"), java.nio.file.StandardOpenOption.CREATE, java.nio.file.StandardOpenOption.WRITE)) {
            file.position(50_000_000);
            file.write(java.nio.ByteBuffer.wrap(new byte[] {'a'}));
        }
        terminal.run("build", "clinic");
        assertTrue(terminal.err().contains("`clinic/large.yaml` has 50000001 bytes, but the limit is 4000000"), terminal.err());
        assertTrue(terminal.err().contains("5 specs: 0 done, 4 withheld, 1 failed"), terminal.err());
        assertFalse(terminal.err().contains("fault of the program"), terminal.err());
    }

    private void spec(String name, String code) throws IOException {
        Path file = here.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, WITHHELD.replace("CODE", code));
    }
}
