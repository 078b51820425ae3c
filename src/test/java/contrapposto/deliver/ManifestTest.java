package contrapposto.deliver;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ManifestTest {
    /** SHA-256 of "abc": FIPS 180-4 example, value from memory. */
    private static final String ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    @Test
    void another_reader_reads_back_what_it_holds() {
        var fact = Manifest.FileFact.of("HS-1/a-client.pdf", "abc".getBytes(StandardCharsets.UTF_8), 8);
        var text = new Manifest(List.of(new Manifest.Entry("programs/a \"b\".yaml", Manifest.Result.WITHHELD, List.of(fact), 1.2345),
                new Manifest.Entry("tab\t.yaml", Manifest.Result.FAILED, List.of(), 0))).text();
        Map<String, ?> read = read(text);
        assertEquals(Map.of("format", 1, "specs", List.of(
                Map.of("spec", "programs/a \"b\".yaml", "outcome", "withheld", "files",
                        List.of(Map.of("path", "HS-1/a-client.pdf", "sha256", ABC, "pages", 8)), "pages", 8, "seconds", 1.234),
                Map.of("spec", "tab\t.yaml", "outcome", "failed", "files", List.of(), "pages", 0, "seconds", 0))), read);
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
