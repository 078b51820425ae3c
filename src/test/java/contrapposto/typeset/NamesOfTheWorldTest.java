package contrapposto.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.document.Block;
import contrapposto.document.Document;
import contrapposto.document.Document.Paper;
import contrapposto.document.Document.Print;
import contrapposto.document.Inline;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names are invented; what is read back is read by another project's parser (PDFBox). */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NamesOfTheWorldTest {
    private static final String ARMENIAN = "\u0531\u0532\u0533";

    private static Document named(String name) {
        return Samples.of("Block for " + name, Paper.A4, Print.PLAIN, List.of(Samples.part("Your plan", List.of(new Block.Heading(1, name),
                new Block.Paragraph(Block.Paragraph.Role.BODY, List.of(Inline.plain("For " + name + " alone.")))))), Optional.empty());
    }

    private static byte[] pdf(Typesetter typesetter, String name) {
        return switch (typesetter.set(named(name))) {
            case Outcome.Done<Pages>(var pages, var notices) -> pages.bytes();
            case Outcome.Refused<Pages>(var notices) -> throw new AssertionError(notices.toString());
        };
    }

    private static String text(byte[] pdf) throws IOException {
        try (var read = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(read);
        }
    }

    private static List<Notice> refused(Typesetter typesetter, String name) {
        return ((Outcome.Refused<Pages>) typesetter.set(named(name))).notices();
    }

    private static Outcome<Typesetter> with(byte[] font) {
        var fonts = new LinkedHashMap<String, byte[]>();
        fonts.put("more.ttf", font);
        return Typesetter.with(fonts);
    }

    private static Typesetter armenian() {
        return ((Outcome.Done<Typesetter>) with(AddedFont.of(0x531, 0))).value();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Zo\u00eb \u0141uk\u00e1\u0161 \u00d8degaard", "\u015eeyma \u0130nc\u00ed \u011e\u00fcl", "\u0395\u03bb\u03ad\u03bd\u03b7 \u039e\u03ac\u03bd\u03b8\u03bf\u03c5",
            "\u0418\u0432\u0430\u043d \u0429\u0451\u043b\u043a\u0438\u043d", "\u0407\u0440\u0438\u043d\u0430 \u0490\u0440\u0435\u0447\u043d\u0430", "Nguy\u1ec5n Th\u1ecb Ph\u01b0\u1ee3ng", "D\u1eb7ng \u1ed4n V\u1eef"})
    void latin_extended_greek_cyrillic_and_vietnamese_are_set_and_read_back(String name) throws IOException {
        byte[] pdf = pdf(new Typesetter(), name);
        assertTrue(text(pdf).contains("For " + name + " alone."), text(pdf));
        Proof.passes("ua1", pdf);
    }

    @Test
    void letters_written_as_letter_and_mark_are_set_as_one() throws IOException {
        assertTrue(text(pdf(new Typesetter(), "Nguye\u0302\u0303n Zoe\u0308")).contains("For Nguy\u1ec5n Zo\u00eb alone."));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Ada\u202e lliuQ", "Ada \u2066Quill\u2069", "Ada\u200b Quill", "Ada\u200d Quill", "Ada\u2028Quill", "Ada\u2029 Quill", "Ada\ufeff Quill", "A\u00adda Quill", "Ada\u0007 Quill", "Ada\u061c Quill"})
    void what_steers_instead_of_showing_neither_breaks_a_line_nor_forges_text(String name) throws IOException {
        String shown = name.replaceAll("[^A-Za-z ]", "");
        assertTrue(text(pdf(new Typesetter(), name)).contains("For " + shown + " alone."), text(pdf(new Typesetter(), name)));
    }

    @Test
    void a_character_without_a_glyph_is_an_error_that_names_it_and_the_way_out() {
        var notices = refused(new Typesetter(), "Ani " + ARMENIAN);
        assertEquals(List.of("\u0531", "\u0532", "\u0533"), notices.stream().map(n -> n.span().source()).toList());
        assertEquals("no font has the character `\u0531` (U+0531, armenian capital letter ayb), met in `Block for Ani " + ARMENIAN + "`", notices.getFirst().message());
        assertTrue(notices.getFirst().hints().getFirst().contains("--font FILE"));
    }

    @Test
    void an_added_font_shows_it_embedded_as_a_subset() throws IOException {
        byte[] pdf = pdf(armenian(), "Ani " + ARMENIAN);
        assertTrue(text(pdf).contains("For Ani " + ARMENIAN + " alone."), text(pdf));
        Proof.passes("ua1", pdf);
        Proof.passes("2a", pdf);
        try (var read = Loader.loadPDF(pdf)) {
            var resources = read.getPage(0).getResources();
            for (var name : resources.getFontNames()) {
                var font = (PDType0Font) resources.getFont(name);
                assertTrue(font.isEmbedded() && font.getName().matches("[A-Z]{6}\\+.*"), font.getName());
                assertTrue(font.getFontDescriptor().getFontFile2().toByteArray().length < 60_000);
            }
        }
    }

    @Test
    void the_same_name_gives_the_same_bytes_with_an_added_font_too() {
        assertTrue(java.util.Arrays.equals(pdf(armenian(), ARMENIAN), pdf(armenian(), ARMENIAN)));
    }

    @ParameterizedTest
    @ValueSource(ints = {0x5d0, 0x627, 0x915})
    void scripts_that_run_from_the_right_or_join_are_refused_even_with_a_font(int first) {
        var typesetter = ((Outcome.Done<Typesetter>) with(AddedFont.of(first, 0))).value();
        var notice = refused(typesetter, "Ani " + Character.toString(first)).getFirst();
        assertTrue(notice.message().contains("is of a script that is not set here"), notice.message());
    }

    @Test
    void a_font_is_read_before_it_is_used_and_asked_whether_it_may_be_embedded() {
        byte[] font = AddedFont.of(0x531, 0);
        assertEquals("font-unreadable", with("no font".getBytes(java.nio.charset.StandardCharsets.US_ASCII)).notices().getFirst().id());
        assertEquals("font-unreadable", with(java.util.Arrays.copyOf(font, 3000)).notices().getFirst().id());
        assertEquals("font-not-embeddable", with(AddedFont.of(0x531, 0x0002)).notices().getFirst().id());
        assertEquals("font-not-embeddable", with(AddedFont.of(0x531, 0x0100)).notices().getFirst().id());
        assertEquals(List.of(), with(AddedFont.of(0x531, 0x0008)).notices());
    }
}
