package contrapposto.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.catalogue.RestrictionTag;
import contrapposto.deliver.Json;
import contrapposto.spec.KeyPaths;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Keeps the published schema, the starting spec and the table of keys in step. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ProgramSchemaTest {
    private static final Path PUBLISHED = PublishedSchema.FILE;

    @Test
    void the_published_schema_is_the_one_the_table_makes() throws IOException {
        var made = Json.of(PublishedSchema.made(DemoSpecsTest.EXERCISES));
        if (!Files.exists(PUBLISHED) || !Files.readString(PUBLISHED).equals(made)) {
            Files.writeString(Path.of("target/program.schema.json"), made);
        }
        assertEquals(Files.readString(PUBLISHED), made, "if this is right, copy target/program.schema.json over " + PUBLISHED);
    }

    @Test
    void the_printed_reference_is_the_one_the_table_makes() throws IOException {
        var printed = Path.of("docs/spec.md");
        var made = SpecReference.of(ProgramKeys.TABLE);
        if (!Files.exists(printed) || !Files.readString(printed).equals(made)) {
            Files.writeString(Path.of("target/spec.received.md"), made);
        }
        assertEquals(Files.readString(printed), made, "if this is right, copy target/spec.received.md over " + printed);
    }

    @Test
    void the_starting_spec_checks_without_a_word() {
        var bytes = StartingSpec.text().getBytes(StandardCharsets.UTF_8);
        assertEquals("starting-spec", Quietly.value(Checks.check("starting-spec.yaml", bytes, DemoSpecsTest.EXERCISES)).fileName());
    }

    @Test
    void the_starting_spec_with_every_example_taken_checks_without_a_word_too() {
        var text = StartingSpec.text().replaceAll("(?m)^( *)# ( *(?:- )?\\{|[ ]*[a-z-]+:)", "$1$2");
        var spec = Quietly.value(Checks.check("starting-spec.yaml", text.getBytes(StandardCharsets.UTF_8), DemoSpecsTest.EXERCISES));
        assertEquals(ScreeningQuestion.values().length, spec.screening().answers().size());
        assertEquals(3, spec.restrictions().size());
        assertEquals("AB-0001", spec.client().label());
    }

    @Test
    void the_starting_spec_shows_every_key() {
        for (var path : KeyPaths.all(ProgramKeys.TABLE)) {
            var key = path.substring(path.lastIndexOf('.') + 1);
            assertTrue(StartingSpec.text().contains(key + ":") || key.equals("language") || key.equals("ratio"), path);
        }
    }

    @Test
    void every_restriction_of_the_catalogue_can_be_written() {
        for (var tag : RestrictionTag.values()) {
            assertTrue(ProgramKeys.TABLE.toString().contains(tag.word()), tag.word());
        }
    }
}
