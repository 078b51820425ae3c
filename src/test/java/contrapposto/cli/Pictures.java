package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Pictures of pages for the documents, drawn by PDFBox. */
record Pictures(int dotsPerInch) {
    /** Where the pictures go: the folder that the property names, else one that is thrown away. */
    static Path folder(String property, Path otherwise) throws IOException {
        return Files.createDirectories(Optional.ofNullable(System.getProperty(property)).map(Path::of).orElse(otherwise));
    }

    /** The names of the pictures in a folder, in order. */
    static TreeSet<String> in(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            var names = new TreeSet<String>();
            files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".png")).forEach(names::add);
            return names;
        }
    }

    /** Title of a part of the first level → its first page, from 0. */
    static TreeMap<String, Integer> parts(PDDocument pdf) throws IOException {
        var parts = new TreeMap<String, Integer>();
        for (var part : pdf.getDocumentCatalog().getDocumentOutline().children()) {
            parts.put(part.getTitle(), pdf.getPages().indexOf(part.findDestinationPage(pdf)));
        }
        return parts;
    }

    void page(Path pdf, int page, Path to) throws IOException {
        try (var document = Loader.loadPDF(pdf.toFile())) {
            page(document, page, to);
        }
    }

    /** Draws a page, from 0, and looks whether it shows anything. */
    void page(PDDocument pdf, int page, Path to) throws IOException {
        var image = new PDFRenderer(pdf).renderImageWithDPI(page, dotsPerInch, ImageType.RGB);
        assertTrue(inked(image) > 0.005, to + " shows a page");
        ImageIO.write(image, "png", to.toFile());
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
