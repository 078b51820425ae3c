package contrapposto.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.document.Block;
import contrapposto.document.Document;
import contrapposto.document.Document.Paper;
import contrapposto.document.Document.Print;
import contrapposto.figure.Figure;
import contrapposto.figure.Mark;
import contrapposto.figure.Point;
import contrapposto.figure.Raster;
import contrapposto.figure.Tone;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A practice's logo and colour keep the paper to its standards and take no room from what the paper says. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LogoPagesTest {
    private static final Tone HOUSE = Tone.of(0x1F, 0x4E, 0x5F);

    private static Block.Logo dots(int rgb) {
        var dots = new int[240 * 60];
        Arrays.fill(dots, rgb);
        var raster = new Raster(240, 60, dots);
        return new Block.Logo((width, height, label) -> new Figure(width, height, List.of(new Mark.Picture(new Point(0, 2), width, width / 4, raster))), "Logo: Millrace");
    }

    private static Document of(Paper paper, Print print, Optional<Block.Logo> logo, Tone heads) {
        var o = Samples.opening();
        var opening = new Block.Opening(o.lead(), o.name(), o.imprint(), o.sentences(), o.plates(), o.safety(), o.weekTitle(), o.week(), o.notes(), logo);
        var referral = Samples.referral().stream().map(block -> block instanceof Block.Masthead m
                ? new Block.Masthead(m.lead(), m.title(), m.imprint(), logo) : block).toList();
        var d = Samples.of("Plan", paper, print, List.of(Samples.part("Your plan", List.of(opening)), Samples.part("Referral", referral)), Optional.empty());
        return new Document(d.title(), d.author(), d.subject(), d.language(), d.paper(), d.print(), d.footer(), d.wording(), d.made(), d.identity(), d.parts(),
                d.attachment(), heads);
    }

    @ParameterizedTest
    @CsvSource({"A4, PLAIN, 1F4E5F", "A4, PLAIN, 555555", "LETTER, PLAIN, 1F4E5F", "A4, LARGE, 1F4E5F", "LETTER, LARGE, 555555"})
    void with_a_logo_of_dots_and_a_colour_it_passes_the_validator_on_as_many_pages(Paper paper, Print print, String rgb) throws IOException {
        byte[] pdf = TypesetterTest.set(of(paper, print, Optional.of(dots(Integer.parseInt(rgb, 16))), HOUSE)).bytes();
        Files.write(Files.createDirectories(Path.of("target/samples")).resolve("logo-" + paper + "-" + print + ".pdf"), pdf);
        Proof.passes("ua1", pdf);
        Proof.passes("2a", pdf);
        byte[] plain = TypesetterTest.set(of(paper, print, Optional.empty(), Tone.BLACK)).bytes();
        try (var with = Loader.loadPDF(pdf); var without = Loader.loadPDF(plain)) {
            assertEquals(without.getNumberOfPages(), with.getNumberOfPages());
            int referral = with.getNumberOfPages() - (print == Print.PLAIN ? 1 : 2);
            assertEquals(1, pictures(with, 0), "at the head of page 1");
            assertTrue(pictures(with, referral) == 1 || pictures(with, referral + 1) == 1, "at the head of the referral page");
            assertEquals(0, pictures(without, 0));
        }
        assertTrue(new String(pdf, StandardCharsets.ISO_8859_1).split("/Subtype ?/Image").length - 1 == 1, "one image, painted twice");
    }

    private static long pictures(org.apache.pdfbox.pdmodel.PDDocument pdf, int page) throws IOException {
        var resources = pdf.getPage(page).getResources();
        long found = 0;
        for (var name : resources.getXObjectNames()) {
            found += resources.getXObject(name) instanceof PDImageXObject ? 1 : 0;
        }
        return found;
    }
}
