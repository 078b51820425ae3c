package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Makes the pictures of docs/gallery: of each edition of one demo, the first page of each part.
 * {@code mvn -q -B test -Dtest=GalleryTest -Dgallery=docs/gallery} writes them there; without the property, the test still makes them all.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class GalleryTest {
    @TempDir
    Path out;

    @Test
    void the_pictures_of_the_gallery_can_be_made_from_a_demo() throws IOException {
        var into = Pictures.folder("gallery", out.resolve("gallery"));
        assertTrue(Demos.build(out, "programs/newcomer-right.yaml").startsWith("0\n"));
        var made = new TreeSet<String>();
        for (var edition : List.of("client", "coach")) {
            try (var document = Loader.loadPDF(Demos.file(out, "-" + edition + ".pdf").toFile())) {
                for (var part : Pictures.parts(document).entrySet()) {
                    var name = edition + "-" + part.getKey().toLowerCase(Locale.ROOT).replace(' ', '-') + ".png";
                    new Pictures(80).page(document, part.getValue(), into.resolve(name));
                    made.add(name);
                }
            }
        }
        assertEquals(Pictures.in(Path.of("docs/gallery")), made, "the gallery holds what the command makes");
    }
}
