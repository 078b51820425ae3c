package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs in a process of their own: with a small heap, and killed. {@code -Dcontrapposto.rows=10000 -Dcontrapposto.heap=48m}
 * tries the long roster of docs/hard-knocks.md.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ForkedRunsTest {
    private static final int ROWS = Integer.getInteger("contrapposto.rows", 200);
    /** Of which a program with its catalogue takes about 12 MB: who kept 70 KB of each client would not get through. */
    private static final String HEAP = System.getProperty("contrapposto.heap", "28m");

    @TempDir
    Path here;

    @BeforeEach
    void write() throws IOException {
        HeldRoster.write(here, ROWS);
    }

    @Test
    void a_long_roster_fits_a_small_heap_and_a_run_that_was_killed_ends_as_one_that_was_not() throws Exception {
        assertEquals(Console.PARTLY, started("-Xmx" + HEAP, "whole").waitFor(), () -> said("whole"));
        assertEquals("", said("whole").lines().filter(line -> line.contains("Error") || line.contains("fault")).collect(Collectors.joining("\n")));
        var whole = RunTree.of(here.resolve("whole"));
        assertEquals(2 * ROWS + 1, whole.size());

        var process = started("-Xmx" + HEAP, "out");
        while (process.isAlive() && !Files.exists(here.resolve("out/C-15/base-plan.yaml"))) {
            Thread.sleep(5);
        }
        var terminal = new Terminal(here);
        terminal.run("build", "all.csv", "--quiet");
        assertTrue(!process.isAlive() || terminal.err().contains("is written to by another run"), terminal.err());      // two processes, one folder
        process.destroyForcibly().waitFor();      // SIGKILL where there are signals
        assumeTrue(!Files.exists(here.resolve("out/manifest.json")), "the run was done before it could be killed");
        RunTree.of(here.resolve("out")).forEach((name, bytes) -> assertTrue(name.contains("/.") || name.startsWith(".") || bytes.equals(whole.get(name)), name + " is whole"));
        terminal.run("build", "all.csv", "--verbose");
        assertTrue(terminal.err().contains("unchanged and left as they are"), terminal.err());
        assertEquals(whole, RunTree.of(here.resolve("out")));
    }

    private Process started(String heap, String out) throws IOException {
        var command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), heap, "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-cp",
                classPath(), "contrapposto.cli.Main", "build", "all.csv", "--quiet", "--jobs", "2", "-o", out));
        return new ProcessBuilder(command).directory(here.toFile()).redirectErrorStream(true).redirectOutput(words(out)).start();
    }

    private File words(String out) {
        return here.resolve("said-" + out).toFile();
    }

    private String said(String out) {
        try {
            return Files.exists(words(out).toPath()) ? Files.readString(words(out).toPath()) : "";
        } catch (IOException e) {
            return e.toString();
        }
    }

    private static String classPath() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator)).map(p -> Path.of(p).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }
}
