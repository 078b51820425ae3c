package contrapposto.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a packaged program reads in place of its YAML says the same. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ShippedTest {
    private static final Path CLASSES = Path.of("target", "classes");

    @TempDir
    private Path folder;

    @Test
    void every_tree_comes_back_as_the_yaml_has_it() throws IOException {
        Shipped.main(new String[] {CLASSES.toString(), folder.toString()});
        var compiled = TreeFile.read(Files.readAllBytes(Path.of(folder + Shipped.TREES)));
        var read = Shipped.all(CLASSES);
        assertTrue(read.size() > 200, "files: " + read.size());
        assertTrue(read.containsKey("/contrapposto/catalogue/en/split-squat.yaml") && read.containsKey("/contrapposto/templates/de/reasons.yaml")
                && read.containsKey("/contrapposto/house-rules.yaml"), "catalogue, phrasebooks and house rules are there");
        read.forEach((file, tree) -> assertEquals(said(tree), compiled.tree(file).map(ShippedTest::said).orElse("nothing"), file));
        assertEquals(Optional.empty(), compiled.tree("/contrapposto/catalogue/no-such.yaml"));
    }

    @Test
    void in_a_build_without_trees_the_yaml_itself_is_read() {
        assertTrue(Shipped.class.getResource(Shipped.TREES) == null, "tests never read what a package has compiled");
        assertEquals("/contrapposto/house-rules.yaml", Shipped.tree("/contrapposto/house-rules.yaml").map(tree -> "/" + tree.span().file()).orElse(""));
        assertEquals(Optional.empty(), Shipped.tree("/contrapposto/no-such.yaml"));
    }

    /** All of a tree but the places. */
    private static String said(YamlNode node) {
        return switch (node) {
            case YamlNode.Scalar(var span, var text, var quoted) -> (quoted ? "quoted " : "bare ") + text.length() + ":" + text;
            case YamlNode.Sequence(var span, var items) -> items.stream().map(ShippedTest::said).toList().toString();
            case YamlNode.Mapping(var span, var entries) -> entries.stream().map(e -> "{" + said(e.key()) + "=" + said(e.value()) + "}").toList().toString();
        };
    }
}
