package contrapposto.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.check.CheckedSpec.Edition;
import contrapposto.check.CheckedSpec.Paper;
import contrapposto.check.CheckedSpec.Print;
import contrapposto.notice.Outcome;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What files weigh, with their figures, fonts, form fields, tags and the plan inside; 1 KB is 1,000 bytes. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FileSizeTest {
    private static final String SHORT = """
            format: 1
            client: {name: Invented Example, age: 34, height: 171 cm, mass: 64 kg}
            assessment: {date: 2026-03-02, pelvis: {turned: right, degree: clear}}
            equipment: {dumbbells: {from: 2 kg, to: 24 kg, step: 2 kg}, boxes: [15 cm, 30 cm], bench: 43 cm, also: [mat, wall]}
            schedule: {start: 2026-03-09, weeks: 3, days: [mon], minutes: 12}
            handout: {paper: a4, editions: [client]}
            """;

    @Test
    void a_client_edition_of_six_pages_takes_no_more_than_140_kilobytes() throws IOException {
        byte[] pdf = ((Outcome.Done<Press.Pressed>) Press.house().press("short.yaml", SHORT.getBytes(StandardCharsets.UTF_8))).value().files().getFirst().bytes();
        try (var file = Loader.loadPDF(pdf)) {
            assertEquals(6, file.getNumberOfPages());
        }
        assertTrue(pdf.length <= 140_000, pdf.length + " bytes");
    }

    /** Seventeen pages, 840 form fields and 25 drawings; 365 KB while each field had an appearance of its own. */
    @Test
    void a_long_one_with_hundreds_of_fields_stays_under_300_kilobytes() {
        byte[] pdf = new DemoPages.Wish("newcomer-right", Edition.CLIENT, Paper.A4, Print.PLAIN, "en").pdf();
        assertTrue(pdf.length <= 300_000, pdf.length + " bytes");
    }

    /** The bound is for what the file holds of a font, deflated as it lies there. */
    @Test
    void no_font_takes_more_than_60_kilobytes_and_every_glyph_is_known_as_text() throws IOException {
        for (var edition : Edition.values()) {
            try (var file = Loader.loadPDF(new DemoPages.Wish("square-steady", edition, Paper.A4, Print.PLAIN, "es").pdf())) {
                var glyphs = new Glyphs();
                glyphs.getText(file);
                assertEquals(Set.of(), glyphs.unknown);
                assertTrue(glyphs.shown > 500, edition + ": " + glyphs.shown);
                fonts(file).forEach((font, bytes) -> assertTrue(bytes < 60_000, font + " takes " + bytes + " bytes"));
            }
        }
    }

    private static TreeMap<String, Integer> fonts(PDDocument file) throws IOException {
        var sizes = new TreeMap<String, Integer>();
        for (var page : file.getPages()) {
            for (COSName name : page.getResources().getFontNames()) {
                var font = page.getResources().getFont(name);
                assertTrue(font.isEmbedded(), font.getName());
                sizes.put(font.getName(), font.getFontDescriptor().getFontFile2().getCOSObject().getInt(COSName.LENGTH));
            }
        }
        return sizes;
    }

    /** Asks each glyph that is shown which text it stands for. */
    private static final class Glyphs extends PDFTextStripper {
        private final Set<String> unknown = new TreeSet<>();
        private int shown;

        @Override
        protected void showGlyph(Matrix matrix, PDFont font, int code, Vector displacement) throws IOException {
            shown++;
            String text = font.toUnicode(code);
            if (text == null || text.isEmpty() || text.indexOf('\ufffd') >= 0 || text.indexOf('\u0000') >= 0) {
                unknown.add(font.getName() + " " + code);
            }
            super.showGlyph(matrix, font, code, displacement);
        }
    }
}
