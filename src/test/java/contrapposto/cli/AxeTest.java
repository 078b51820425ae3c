package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import contrapposto.wording.Phrasebook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Asks axe-core, another project's checker of accessibility, in headless Chromium, at phone and at desktop width. Needs
 * node, Chromium and a folder with {@code npm install axe-core puppeteer-core}, named by {@code -Daxe=FOLDER}.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class AxeTest {
    @TempDir
    private Path folder;

    @Test
    void axe_finds_nothing_to_mend_in_any_edition_and_language() throws IOException, InterruptedException {
        String modules = System.getProperty("axe", "");
        assumeTrue(Files.isDirectory(Path.of(modules, "node_modules", "axe-core")), "no axe-core: give its folder with -Daxe=FOLDER");
        var chromium = onPath("chromium", "chromium-browser", "google-chrome");
        assumeTrue(onPath("node").isPresent() && chromium.isPresent(), "no node or no Chromium on this machine");
        var command = new ArrayList<>(List.of("node", Path.of("src/test/resources/axe.mjs").toAbsolutePath().toString(), chromium.get().toString()));
        pages().forEach(page -> command.add(page.toString()));
        var run = new ProcessBuilder(command).directory(Path.of(modules).toFile()).redirectErrorStream(true).start();
        String said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        run.waitFor(1, TimeUnit.MINUTES);
        assertEquals("looked at " + (command.size() - 3), said.strip());
    }

    /** Both editions of the four demos in each language. */
    private List<Path> pages() throws IOException {
        for (String language : Phrasebook.LANGUAGES) {
            Demos.build(folder.resolve(language), "programs", "--html", "--language", language);
        }
        try (var files = Files.walk(folder)) {
            var pages = files.filter(file -> file.toString().endsWith(".html")).sorted().toList();
            assertEquals(8 * Phrasebook.LANGUAGES.size(), pages.size());
            return pages;
        }
    }

    private static Optional<Path> onPath(String... names) {
        return Stream.of(names).flatMap(name -> Stream.of(System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator))
                .map(place -> Path.of(place, name))).filter(Files::isExecutable).findFirst();
    }
}
