package contrapposto.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.audit.Grade;
import contrapposto.notice.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Does what {@code docs/add-a-family.md} says, with the files it prints. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class AddAFamilyTest {
    private static final Path GUIDE = Path.of("docs/add-a-family.md");
    private static final Pattern BLOCK = Pattern.compile("```yaml\n# file: (\\S+)\n(.*?)```", Pattern.DOTALL);

    @TempDir
    Path practice;

    @Test
    void the_guide_s_files_add_a_family_without_a_notice() throws IOException {
        write(GUIDE);
        var outcome = CatalogueReader.withFolder(practice, CatalogueTest.RULES);
        assertEquals(List.of(), outcome.notices());
        var catalogue = ((Outcome.Done<Catalogue>) outcome).value();
        assertEquals(CatalogueTest.CATALOGUE.families().size() + 1, catalogue.families().size());
        assertEquals("Band pull-back", catalogue.words("en", "band-pull-back").name());
        assertTrue(!Grade.of("en", List.of(CatalogueTest.clientWords(catalogue.words("en", "band-pull-back")))).over(6));
    }

    @Test
    void a_file_of_the_same_name_takes_the_place_of_ours() throws IOException {
        Files.createDirectories(practice.resolve("en"));
        var ours = Files.readString(Path.of("src/main/resources/contrapposto/catalogue/en/calf-raise.yaml"));
        Files.writeString(practice.resolve("en/calf-raise.yaml"), ours.replace("name: Calf raise", "name: Heel lift"));
        var outcome = CatalogueReader.withFolder(practice, CatalogueTest.RULES);
        assertEquals(List.of(), outcome.notices());
        assertEquals("Heel lift", ((Outcome.Done<Catalogue>) outcome).value().words("en", "calf-raise").name());
        assertEquals("Calf raise", CatalogueTest.CATALOGUE.words("en", "calf-raise").name());
    }

    @Test
    void a_folder_that_is_not_there_is_a_notice() {
        var outcome = CatalogueReader.withFolder(practice.resolve("nowhere"), CatalogueTest.RULES);
        assertEquals(List.of("catalogue-no-folder"), outcome.notices().stream().map(n -> n.id()).toList());
    }

    private void write(Path guide) throws IOException {
        var blocks = BLOCK.matcher(Files.readString(guide));
        int written = 0;
        while (blocks.find()) {
            var file = practice.resolve(blocks.group(1));
            Files.createDirectories(file.getParent());
            Files.writeString(file, blocks.group(2));
            written++;
        }
        assertEquals(2, written);
    }
}
