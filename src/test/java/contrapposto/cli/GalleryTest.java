package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
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
    private static final int DOTS_PER_INCH = 80;

    @TempDir
    Path out;

    @Test
    void the_pictures_of_the_gallery_can_be_made_from_a_demo() throws IOException {
        var into = Optional.ofNullable(System.getProperty("gallery")).map(Path::of).orElse(out.resolve("gallery"));
        Files.createDirectories(into);
        assertTrue(Demos.build(out, "programs/newcomer-right.yaml").startsWith("0\n"));
        var made = new TreeSet<String>();
        for (var edition : List.of("client", "coach")) {
            made.addAll(pictures(Demos.file(out, "-" + edition + ".pdf").toFile(), edition, into));
        }
        var shown = new TreeSet<String>();
        try (var files = Files.list(Path.of("docs/gallery"))) {
            files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".png")).forEach(shown::add);
        }
        assertEquals(shown, made, "the gallery holds what the command makes");
    }

    /** One picture for each bookmark of the first level. */
    private static List<String> pictures(File pdf, String edition, Path into) throws IOException {
        var made = new ArrayList<String>();
        try (var document = Loader.loadPDF(pdf)) {
            var renderer = new PDFRenderer(document);
            for (var part : document.getDocumentCatalog().getDocumentOutline().children()) {
                var name = edition + "-" + part.getTitle().toLowerCase(Locale.ROOT).replace(' ', '-') + ".png";
                var page = document.getPages().indexOf(part.findDestinationPage(document));
                var image = renderer.renderImageWithDPI(page, DOTS_PER_INCH, ImageType.RGB);
                assertTrue(inked(image) > 0.005, name + " shows a page");
                ImageIO.write(image, "png", into.resolve(name).toFile());
                made.add(name);
            }
        }
        return made;
    }

    /** The share of dots darker than a light grey. */
    private static double inked(BufferedImage image) {
        long dark = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                dark += (image.getRGB(x, y) & 0xFF) < 200 ? 1 : 0;
            }
        }
        return (double) dark / image.getWidth() / image.getHeight();
    }
}
