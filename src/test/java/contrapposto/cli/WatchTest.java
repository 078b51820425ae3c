package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

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

    /** The work of each round: build, and, as an editor would meanwhile, save the next version. */
    @Test
    void a_saved_slip_shows_its_notice_and_keeps_the_last_good_handout_and_mending_it_builds_again() throws IOException {
        Path spec = Files.writeString(here.resolve("ex.yaml"), WITHHELD);
        var versions = List.of(WITHHELD.replace("weeks: 2", "weks: 2"), WITHHELD.replace("Invented", "Another"));
        var round = new AtomicInteger();
        var pages = new byte[4][];
        var terminal = new Terminal(here);
        var told = new StringBuilder();
        var saved = new AtomicInteger();
        var watch = new Watch(List.of(here.resolve("ex.yaml"), here.resolve("not-there")), terminal.streams(""), () -> {
            if (saved.get() < round.get() && saved.get() < versions.size()) {
                write(spec, versions.get(saved.getAndIncrement()));
            }
            return round.get() < 3;
        });
        int code = watch.each(() -> {
            int made = terminal.run("build", "ex.yaml");
            told.append(terminal.err());
            pages[round.getAndIncrement()] = read(here.resolve("out/EX-7/ex-referral.pdf"));
            return made;
        });
        assertEquals(Console.PARTLY, code);
        assertArrayEquals(pages[0], pages[1], "the last good page stays");
        assertTrue(!Arrays.equals(pages[1], pages[2]), "and is made again when the slip is mended");
        assertTrue(told.toString().contains("`weeks`"), "the slip is told");
    }

    /** What a save may touch; each is saved once while the watch goes on, and the work is done again. */
    @ParameterizedTest
    @ValueSource(strings = {"ex.yaml", "base.yaml", "set.yaml", "all.csv", "own/catalogue/en/x.yaml", "own/rules.yaml", "own/templates/en/client.ftlx"})
    void a_saved_spec_catalogue_template_or_rule_is_seen(String saved) throws IOException {
        for (String name : List.of("ex.yaml", "base.yaml", "own/catalogue/en/x.yaml", "own/rules.yaml", "own/templates/en/client.ftlx")) {
            Files.createDirectories(here.resolve(name).getParent());
            Files.writeString(here.resolve(name), WITHHELD);
        }
        Files.writeString(here.resolve("all.csv"), "spec,client.code\nbase.yaml,A\n");
        Files.writeString(here.resolve("set.yaml"), "pack: 1\nspec: base.yaml\n");
        var terminal = new Terminal(here);
        for (String given : List.of("ex.yaml", "all.csv", "set.yaml")) {
            if (saved.startsWith("own") || saved.equals(given) || saved.equals("base.yaml") && !given.equals("ex.yaml")) {
                assertEquals(2, rounds(terminal, saved, given), saved + " while " + given + " is watched");
            }
        }
    }

    @Test
    void what_the_build_itself_writes_beside_a_roster_does_not_begin_it_again() throws IOException {
        Files.writeString(here.resolve("base.yaml"), WITHHELD);
        Files.writeString(here.resolve("all.csv"), "spec,client.code\nbase.yaml,A\n");
        assertEquals(1, rounds(new Terminal(here), "out/A/base-plan.yaml", "all.csv"));
    }

    /** How often the work is done when {@code saved} is saved in the middle. */
    private int rounds(Terminal terminal, String saved, String given) throws IOException {
        Files.createDirectories(here.resolve("out/A"));
        Files.writeString(here.resolve("out/.made"), "");
        var streams = terminal.streams("");
        var build = new BuildCommand(streams);
        new CommandLine(build).parseArgs(given, "--catalogue", "own/catalogue", "--rules", "own/rules.yaml", "--templates", "own/templates");
        var looks = new AtomicInteger();
        var rounds = new AtomicInteger();
        new Watch(build.watched(), streams, () -> {
            if (looks.incrementAndGet() == 1) {
                write(here.resolve(saved), "saved " + given);
            }
            return looks.get() < 3;
        }).each(rounds::incrementAndGet);
        return rounds.get();
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
