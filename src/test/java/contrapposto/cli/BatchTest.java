package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import contrapposto.deliver.Ledger;
import contrapposto.notice.Outcome;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
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

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @BeforeEach
    void write_a_roster() throws IOException {
        Files.writeString(here.resolve("base.yaml"), WITHHELD);
        Files.writeString(here.resolve("all.csv"), roster(ROWS));
    }

    @Test
    void what_is_there_from_the_same_inputs_is_left_as_it_is() throws IOException {
        run("build", "all.csv");
        var before = times();
        assertEquals(Console.PARTLY, run("build", "all.csv"));
        assertEquals(before, times());
        assertTrue(said(err).contains("12 specs: 0 done, 12 withheld; 12 unchanged and left as they are"), said(err));
        assertEquals(Console.PARTLY, run("build", "all.csv", "--again"));
        assertFalse(said(err).contains("unchanged"), said(err));
    }

    @Test
    void a_changed_row_a_changed_option_and_a_touched_file_are_made_again() throws IOException {
        run("build", "all.csv");
        Files.writeString(here.resolve("all.csv"), roster(ROWS).replace("C-3,170 cm", "C-3,175 cm"));
        Files.writeString(here.resolve("out/C-5/base-referral.pdf"), "spilt coffee");
        run("build", "all.csv");
        assertTrue(said(err).contains("; 10 unchanged"), said(err));
        assertTrue(Files.size(here.resolve("out/C-5/base-referral.pdf")) > 1000);
        run("build", "all.csv", "--paper", "letter");
        assertFalse(said(err).contains("unchanged"), said(err));
    }

    @Test
    void a_run_that_was_cut_off_goes_on_where_it_stopped_and_ends_the_same() throws IOException {
        run("build", "all.csv", "-o", "whole");
        run("build", "all.csv", "-o", "cut");
        // as if the power had failed while the eighth client was put in place: half a ledger line, drafts, no manifest
        Path ledger = here.resolve("cut/.made");
        var lines = Files.readAllLines(ledger);
        Files.writeString(ledger, String.join("\n", lines.subList(0, 7)) + "\n" + lines.get(7).substring(0, 40));
        Files.delete(here.resolve("cut/manifest.json"));
        Files.delete(here.resolve("cut/C-9/base-referral.pdf"));
        Files.writeString(here.resolve("cut/C-9/.base-referral.pdf.part"), "%PDF-1.7 half");
        Files.writeString(here.resolve("cut/.manifest.json.part"), "{");
        run("build", "all.csv", "-o", "cut");
        assertTrue(said(err).contains("; 7 unchanged"), said(err));
        assertEquals(tree("whole"), tree("cut"));
    }

    @Test
    void a_run_that_is_killed_leaves_only_whole_files_and_the_next_one_ends_the_same() throws Exception {
        int rows = 200;
        Files.writeString(here.resolve("all.csv"), roster(rows));
        var process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1", "-cp",
                classPath(), "contrapposto.cli.Main", "build", "all.csv", "--quiet", "--jobs", "2").directory(here.toFile())
                .redirectErrorStream(true).redirectOutput(new File(here.toFile(), "said")).start();
        while (process.isAlive() && !Files.exists(here.resolve("out/C-15/base-plan.yaml"))) {
            Thread.sleep(5);
        }
        process.destroyForcibly().waitFor();      // SIGKILL where there are signals
        assumeTrue(!Files.exists(here.resolve("out/manifest.json")), "the run was done before it could be killed");
        run("build", "all.csv", "-o", "whole", "--quiet");
        var whole = tree("whole");
        tree("out").forEach((name, bytes) -> assertTrue(name.contains("/.") || name.startsWith(".") || bytes.equals(whole.get(name)), name + " is whole"));
        run("build", "all.csv", "--verbose");
        assertTrue(said(err).contains("unchanged and left as they are"), said(err));
        assertEquals(whole, tree("out"));
    }

    @Test
    void two_runs_do_not_write_into_one_folder_at_once() throws IOException {
        var first = Ledger.open(here.resolve("out"));
        try (var held = ((Outcome.Done<Ledger>) first).value()) {
            assertEquals(Console.PARTLY, run("build", "all.csv"));
            assertTrue(said(err).contains("is written to by another run") && said(err).contains("hint: wait until that run is done"), said(err));
            assertFalse(Files.exists(here.resolve("out/C-1")));
        }
        assertEquals(Console.PARTLY, run("build", "all.csv"));
        assertTrue(Files.exists(here.resolve("out/C-1")));
    }

    @Test
    void the_summary_names_each_failure_with_its_place_and_the_others_are_made() throws IOException {
        Files.writeString(here.resolve("all.csv"), roster(4).replace("C-2,170 cm", "C-2,17 cm").replace("C-3,170 cm", "../C-3,170 cm"));
        assertEquals(Console.PARTLY, run("build", "all.csv"));
        assertTrue(said(err).contains("4 specs: 0 done, 2 withheld, 2 failed"), said(err));
        assertTrue(said(err).lines().anyMatch(l -> l.startsWith("  all.csv:3:15: ")) && said(err).lines().anyMatch(l -> l.startsWith("  all.csv:4:11: ")), said(err));
        try (var folders = Files.list(here.resolve("out"))) {
            assertEquals(2, folders.filter(Files::isDirectory).count());
        }
    }

    private static String classPath() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator)).map(p -> Path.of(p).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }

    private static String roster(int rows) {
        var text = new StringBuilder("spec,client.code,client.height\n");
        for (int i = 1; i <= rows; i++) {
            text.append("base.yaml,C-").append(i).append(",170 cm\n");
        }
        return text.toString();
    }

    private int run(String... args) {
        out.reset();
        err.reset();
        var streams = new Streams(new BufferedReader(new StringReader("")), new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8), here, false);
        return new Console(streams).run(args);
    }

    private static String said(ByteArrayOutputStream stream) {
        return stream.toString(StandardCharsets.UTF_8);
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

    /** Every file but the ledger, whose lines come in the order of work; of the manifest all but the seconds. */
    private Map<String, String> tree(String folder) throws IOException {
        var tree = new TreeMap<String, String>();
        Path root = here.resolve(folder);
        try (var files = Files.walk(root)) {
            for (Path file : files.filter(Files::isRegularFile).filter(f -> !f.getFileName().toString().equals(".made")).toList()) {
                tree.put(root.relativize(file).toString(), Files.readString(file, StandardCharsets.ISO_8859_1).replaceAll("\"seconds\": [0-9.]+", ""));
            }
        }
        return tree;
    }
}
