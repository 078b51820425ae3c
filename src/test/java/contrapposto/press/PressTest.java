package contrapposto.press;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.notice.NoticeText;
import contrapposto.notice.Outcome;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as a library. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PressTest {
    private static final String SPEC = """
            format: 1
            client: {code: EX-1, height: 171 cm, mass: 64 kg}
            assessment: {date: 2026-03-02, pelvis: {turned: right, degree: clear}}
            screening: {chest-pain: yes}
            schedule: {start: 2026-03-09, weeks: 1, days: [mon], minutes: 15}
            """;

    @TempDir
    Path folder;

    /** Ten lines, as docs/library.md shows them; a test holds the two together. */
    private static void example(Path folder, byte[] spec, PrintStream err) throws IOException {
        // example
        Press press = Press.house();                                  // once; serves all threads
        switch (press.press("ines.yaml", spec)) {
            case Outcome.Refused<Press.Pressed>(var notices) -> notices.forEach(n -> err.print(NoticeText.of(n)));
            case Outcome.Done<Press.Pressed>(var pressed, var notices) -> {
                for (var file : pressed.files()) {                    // client.pdf, coach.pdf, plan.yaml
                    Files.write(folder.resolve(file.ending()), file.bytes());
                }
            }
        }
        // end
    }

    @Test
    void ten_lines_print_a_spec() throws IOException {
        var err = new ByteArrayOutputStream();
        example(folder, SPEC.getBytes(StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8));
        assertEquals("", err.toString(StandardCharsets.UTF_8));
        assertTrue(Files.size(folder.resolve("referral.pdf")) > 1000 && Files.exists(folder.resolve("plan.yaml")));
        example(folder, "format: 1\n".getBytes(StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("error[missing-key]"), err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void the_ten_lines_are_those_of_the_document() throws IOException {
        String source = Files.readString(Path.of("src/test/java/contrapposto/press/PressTest.java"));
        String lines = source.substring(source.indexOf("// example\n") + 11, source.indexOf("        // end\n")).stripTrailing().stripIndent();
        assertTrue(Files.readString(Path.of("docs/library.md")).contains(lines), lines);
        assertTrue(lines.lines().count() <= 10);
    }

    @Test
    void a_client_alone_gets_the_same_bytes_from_several_threads() throws IOException {
        byte[] spec = Files.readAllBytes(Path.of("programs", "veteran-left.yaml"));
        var one = Press.house();
        var several = one.inParallel();
        assertEquals(said(one.press("veteran-left.yaml", spec)), said(several.press("veteran-left.yaml", spec)));
    }

    /** Names and bytes of all files. */
    private static List<String> said(Outcome<Press.Pressed> outcome) {
        return ((Outcome.Done<Press.Pressed>) outcome).value().files().stream()
                .map(file -> file.ending() + ": " + HexFormat.of().formatHex(file.bytes())).toList();
    }

    @Test
    void one_press_gives_the_same_bytes_on_many_threads() throws Exception {
        var press = Press.house();
        var alone = files(press, 0);
        try (var threads = Executors.newFixedThreadPool(4)) {
            var running = new ArrayList<Future<List<byte[]>>>();
            for (int i = 0; i < 24; i++) {
                int client = i % 3;
                running.add(threads.submit(() -> files(press, client)));
            }
            for (int i = 0; i < running.size(); i += 3) {
                for (int f = 0; f < alone.size(); f++) {
                    assertArrayEquals(alone.get(f), running.get(i).get().get(f));
                }
            }
        }
    }

    private static List<byte[]> files(Press press, int client) {
        var outcome = press.press("ex.yaml", SPEC.replace("EX-1", "EX-" + client).getBytes(StandardCharsets.UTF_8));
        return ((Outcome.Done<Press.Pressed>) outcome).value().files().stream().map(Press.Finished::bytes).toList();
    }
}
