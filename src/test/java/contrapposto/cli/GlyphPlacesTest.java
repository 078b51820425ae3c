package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.typeset.AddedFont;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class GlyphPlacesTest {
    private static final String SPEC = """
            format: 1
            title: A first block
            client: {name: %s, age: 40, height: 170 cm, mass: 65 kg}
            assessment: {date: 2026-03-02, pelvis: {turned: right, degree: mild}}
            screening: {chest-pain: yes}
            schedule: {start: 2026-03-09, weeks: 1, days: [mon], minutes: 20}
            """;

    @TempDir
    private Path here;

    private int run(ByteArrayOutputStream said, String... args) {
        var stream = new PrintStream(said, true, StandardCharsets.UTF_8);
        return new Console(new Streams(new BufferedReader(Reader.nullReader()), stream, stream, here, false)).run(args);
    }

    @Test
    void a_character_no_font_has_costs_its_own_handout_only_and_is_told_with_its_place() throws IOException {
        Files.writeString(here.resolve("ani.yaml"), SPEC.formatted("Ani \u0531\u0532"));
        Files.writeString(here.resolve("ben.yaml"), SPEC.formatted("Ben Quill"));
        var said = new ByteArrayOutputStream();
        assertEquals(Console.PARTLY, run(said, "build", "ani.yaml", "ben.yaml"));
        String text = said.toString(StandardCharsets.UTF_8);
        assertTrue(text.contains("ani.yaml:3:20") && text.contains("U+0531") && text.contains("--font FILE"), text);
        assertTrue(Files.notExists(here.resolve("out/ani")) && Files.exists(here.resolve("out/ben-quill/ben-referral.pdf")), text);
    }

    @Test
    void an_added_font_prints_it() throws IOException {
        Files.writeString(here.resolve("ani.yaml"), SPEC.formatted("Ani \u0531\u0532"));
        Files.write(here.resolve("more.ttf"), AddedFont.of(0x531, 0));
        var said = new ByteArrayOutputStream();
        run(said, "build", "ani.yaml", "--font", "more.ttf");
        assertTrue(said.toString(StandardCharsets.UTF_8).contains("referral.pdf"), said.toString(StandardCharsets.UTF_8));
    }

    @Test
    void a_font_that_is_none_is_bad_usage() throws IOException {
        Files.writeString(here.resolve("ani.yaml"), SPEC.formatted("Ani"));
        Files.writeString(here.resolve("more.ttf"), "no font");
        var said = new ByteArrayOutputStream();
        assertEquals(Console.NOTHING, run(said, "build", "ani.yaml", "--font", "more.ttf"));
        assertTrue(said.toString(StandardCharsets.UTF_8).contains("font-unreadable"), said.toString(StandardCharsets.UTF_8));
    }
}
