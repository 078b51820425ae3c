package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WatchTest {
    private static final String WITHHELD = """
            format: 1
            client: {name: Invented Example, code: EX-7, height: 171 cm, mass: 64 kg}
            assessment: {date: 2026-03-02, pelvis: {turned: right, degree: clear}}
            screening: {chest-pain: yes}
            schedule: {start: 2026-03-09, weeks: 2, days: [mon], minutes: 30}
            """;

    @TempDir
    Path here;

    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    /** The work of each round: build, and, as an editor would meanwhile, save the next version. */
    @Test
    void a_saved_slip_shows_its_notice_and_keeps_the_last_good_handout_and_mending_it_builds_again() throws IOException {
        Path spec = Files.writeString(here.resolve("ex.yaml"), WITHHELD);
        var versions = List.of(WITHHELD.replace("weeks: 2", "weks: 2"), WITHHELD.replace("Invented", "Another"));
        var round = new AtomicInteger();
        var pages = new byte[4][];
        var streams = new Streams(new BufferedReader(new StringReader("")), new PrintStream(err, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8), here, false);
        var saved = new AtomicInteger();
        var watch = new Watch(List.of(here.resolve("ex.yaml"), here.resolve("not-there")), streams, () -> {
            if (saved.get() < round.get() && saved.get() < versions.size()) {
                write(spec, versions.get(saved.getAndIncrement()));
            }
            return round.get() < 3;
        });
        int code = watch.each(() -> {
            int made = new Console(streams).run("build", "ex.yaml");
            pages[round.getAndIncrement()] = read(here.resolve("out/EX-7/ex-referral.pdf"));
            return made;
        });
        assertEquals(Console.PARTLY, code);
        assertArrayEquals(pages[0], pages[1], "the last good page stays");
        assertTrue(!java.util.Arrays.equals(pages[1], pages[2]), "and is made again when the slip is mended");
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("`weeks`"), "the slip is told");
    }

    private static void write(Path file, String text) {
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static byte[] read(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
