package contrapposto.deliver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import contrapposto.notice.Outcome;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ManifestTest {
    @TempDir
    Path root;

    /** SHA-256 of "abc": FIPS 180-4 example, value from memory. */
    private static final String ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    @Test
    void another_reader_reads_back_what_it_holds() throws IOException {
        var fact = Manifest.FileFact.of("HS-1/a-client.pdf", "abc".getBytes(StandardCharsets.UTF_8), 8);
        var manifest = ((Outcome.Done<Manifest>) Manifest.begin(root)).value();
        manifest.add(new Manifest.Entry("programs/a \"b\".yaml", Manifest.Result.WITHHELD, List.of(fact), List.of(), 1.2345));
        manifest.add(new Manifest.Entry("tab\t.yaml", Manifest.Result.FAILED, List.of(), List.of("tab.yaml:2:1: a slip"), 0));
        assertFalse(Files.exists(root.resolve("manifest.json")), "whole or not at all");
        manifest.finish();
        Map<String, ?> read = read(Files.readString(root.resolve("manifest.json")));
        assertEquals(Map.of("format", 1, "specs", List.of(
                Map.of("spec", "programs/a \"b\".yaml", "outcome", "withheld", "files",
                        List.of(Map.of("path", "HS-1/a-client.pdf", "sha256", ABC, "pages", 8)), "pages", 8, "seconds", 1.234),
                Map.of("spec", "tab\t.yaml", "outcome", "failed", "files", List.of(), "problems", List.of("tab.yaml:2:1: a slip"),
                        "pages", 0, "seconds", 0))), read);
    }

    @Test
    void a_run_without_specs_has_an_empty_list_and_one_that_is_given_up_leaves_nothing() throws IOException {
        ((Outcome.Done<Manifest>) Manifest.begin(root)).value().finish();
        assertEquals(Map.of("format", 1, "specs", List.of()), read(Files.readString(root.resolve("manifest.json"))));
        Files.delete(root.resolve("manifest.json"));
        ((Outcome.Done<Manifest>) Manifest.begin(root)).value().close();
        try (var inside = Files.list(root)) {
            assertEquals(0, inside.count());
        }
    }

    @Test
    void control_characters_and_lone_surrogates_are_escaped() {
        assertEquals("\"\\u0001 \\ud83d \uD83D\uDE00 é\"\n", Json.of("\u0001 \uD83D \uD83D\uDE00 é"));
    }

    /** JSON is YAML: read by a library that knows nothing of the writer. */
    private static Map<String, ?> read(String json) {
        return new Yaml(new SafeConstructor(new LoaderOptions())).load(json);
    }
}
