package contrapposto.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.document.Block;
import contrapposto.document.Document;
import contrapposto.document.Document.Paper;
import contrapposto.document.Document.Print;
import contrapposto.document.Inline;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDCheckBox;
import org.apache.pdfbox.pdmodel.interactive.form.PDTextField;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reads printed pages back with PDFBox and holds them to the rules of the page. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PageRulesTest {
    @ParameterizedTest
    @CsvSource({"A4, PLAIN, 11", "LETTER, PLAIN, 11", "A4, LARGE, 18", "LETTER, LARGE, 18"})
    void text_keeps_the_margins_the_floor_and_its_own_room(Paper paper, Print print, double floor) throws IOException {
        var stock = Stock.of(paper);
        var pages = TypesetterTest.set(Samples.every(paper, print));
        var faults = new TreeSet<String>();
        try (var read = new ReadBack(pages.bytes())) {
            for (int page = 1; page <= pages.count(); page++) {
                boolean folded = print == Print.PLAIN && page >= pages.parts().get("Pocket");
                var runs = Letterpress.of(read.file, page);
                for (var run : runs) {
                    String where = "page " + page + " `" + run.text() + "`";
                    if (run.size() < floor) {
                        faults.add(where + " is set in " + run.size() + " pt");
                    }
                    if (!folded && (run.left() < stock.margin() - 0.1
                            || run.right() > stock.margin() + Stock.MEASURE + 0.1)) {
                        faults.add(where + " runs from " + run.left() + " to " + run.right());
                    }
                    if (run.top() < stock.top() - 4 || run.bottom() > stock.folio() + 0.01 && !folded) {
                        faults.add(where + " stands at " + run.bottom());
                    }
                }
                faults.addAll(overlaps(runs, page));
            }
        }
        assertEquals(Set.of(), faults);
    }

    /** The key at the foot of a page stands between two halves of a paragraph that goes on, and is read after both. */
    @Test
    void a_paragraph_that_goes_on_over_the_foot_of_a_page_is_read_whole() throws IOException {
        String words = "Sink for three counts and breathe out. ".repeat(260).strip();
        var text = new Block.Paragraph(Block.Paragraph.Role.BODY, List.of(Inline.plain(words)));
        var part = new Document.Part("Exercises", "", Document.Format.WHOLE, List.of(text), Optional.of(Samples.legend()), false);
        try (var read = new ReadBack(TypesetterTest.set(Samples.of("Plan", Paper.A4, Print.PLAIN, List.of(part), Optional.empty())).bytes())) {
            assertTrue(read.file.getNumberOfPages() > 1);
            var paragraphs = read.tree().all("P");
            assertEquals(words, paragraphs.getFirst().text().strip());
            assertTrue(paragraphs.getLast().text().contains(Samples.legend().items().getFirst().words()), paragraphs.getLast().text());
        }
    }

    private static List<String> overlaps(List<Letterpress.Run> runs, int page) {
        var found = new ArrayList<String>();
        for (int i = 0; i < runs.size(); i++) {
            for (int k = i + 1; k < runs.size(); k++) {
                if (runs.get(i).overlaps(runs.get(k)) && !runs.get(i).isTwin(runs.get(k))) {
                    found.add("page " + page + " `" + runs.get(i).text() + "` under `" + runs.get(k).text() + "`");
                }
            }
        }
        return found;
    }

    @ParameterizedTest
    @CsvSource({"A4, PLAIN", "LETTER, LARGE"})
    void all_that_is_painted_lies_in_one_marked_content(Paper paper, Print print) throws IOException {
        try (var read = new ReadBack(TypesetterTest.set(Samples.every(paper, print)).bytes())) {
            assertEquals(Set.of(), read.strays());
        }
    }

    @ParameterizedTest
    @CsvSource({"A4, PLAIN", "LETTER, LARGE"})
    void contents_and_annotations_meet_their_elements_both_ways(Paper paper, Print print) throws IOException {
        try (var read = new ReadBack(TypesetterTest.set(Samples.every(paper, print)).bytes())) {
            var findings = Ties.of(read.file);
            assertEquals(Set.of(), findings.loose());
            assertTrue(findings.ties() > 100, "only " + findings.ties() + " ties found");
        }
    }

    @Test
    void a_card_is_read_left_side_first_then_right_then_the_band() throws IOException {
        try (var read = new ReadBack(TypesetterTest.set(Samples.every(Paper.A4, Print.PLAIN)).bytes())) {
            var card = read.tree().all("Part").get(1).kids().getFirst();
            String half = "Start | Down | feet | 15 cm  | box under your left foot | 80 cm  | left heel back to right "
                    + "toes | Right hand  | holds the weight | 1  | Slide your left hip forward over the heel. | 2  | "
                    + "Sink for 3 counts. Keep the left shin upright. | 3  | Breathe out. Press down. | You should feel "
                    + "high up the back of the left thigh, and the inner thigh.";
            assertEquals("1 Split squat | Rest 90 s. Sets and weights: page  | 4 | L Left foot in front | first | "
                    + half + " | R Right foot in front | second | " + half
                    + " | Usual mistake: The hips swing out to the side. | Easier: hand on a rail, no weight.",
                    card.allText());
        }
    }

    @Test
    void headings_never_skip_a_level() throws IOException {
        try (var read = new ReadBack(TypesetterTest.set(Samples.every(Paper.A4, Print.PLAIN)).bytes())) {
            int level = 0;
            for (var type : types(read.tree())) {
                if (type.matches("H[1-6]")) {
                    int next = type.charAt(1) - '0';
                    assertTrue(next <= level + 1, type + " after H" + level);
                    level = next;
                }
            }
        }
    }

    private static List<String> types(ReadBack.Element element) {
        var types = new ArrayList<String>(List.of(element.type()));
        element.kids().forEach(kid -> types.addAll(types(kid)));
        return types;
    }

    @Test
    void the_head_of_a_table_is_repeated_where_it_goes_on() throws IOException {
        try (var read = new ReadBack(TypesetterTest.set(Samples.every(Paper.A4, Print.LARGE)).bytes())) {
            var tables = read.tree().all("Part").get(3).all("Table");
            assertEquals(2, tables.size());
            for (var table : tables) {
                assertEquals(List.of("Plan", "kg", "set 1", "set 2", "spare"),
                        table.kids().getFirst().all("TH").stream().map(ReadBack.Element::text).toList());
            }
        }
    }

    @Test
    void one_row_gives_its_cells_the_name_once_over_both_sides() throws IOException {
        try (var read = new ReadBack(TypesetterTest.set(Samples.every(Paper.A4, Print.PLAIN)).bytes())) {
            var rows = read.tree().all("Part").get(2).all("Table").getFirst().all("TR");
            assertEquals(10, rows.get(2).kids().size());
            assertEquals(9, rows.get(3).kids().size());
            assertEquals("1 Split squat rest 90 s", rows.get(2).kids().getFirst().text());
            assertEquals("3 × 10  |  | 12", rows.get(2).kids().get(4).allText().strip());
        }
    }

    @Test
    void fields_can_be_filled_and_the_filled_file_still_passes() throws IOException {
        byte[] pdf = TypesetterTest.set(Samples.every(Paper.A4, Print.PLAIN)).bytes();
        var out = new ByteArrayOutputStream();
        try (var file = Loader.loadPDF(pdf)) {
            var form = file.getDocumentCatalog().getAcroForm();
            ((PDTextField) form.getField("w1/mon/exercise-1/left/set1")).setValue("8 Żółć");
            ((PDTextField) form.getField("w1/mon/exercise-1/right/set1")).setValue("12");
            ((PDCheckBox) form.getField("reply/yes")).check();
            file.save(out);
        }
        try (var file = Loader.loadPDF(out.toByteArray())) {
            var form = file.getDocumentCatalog().getAcroForm();
            assertEquals("8 Żółć", form.getField("w1/mon/exercise-1/left/set1").getValueAsString());
            assertEquals("", form.getField("w1/mon/exercise-1/left/spare").getValueAsString());
            assertTrue(seen(form, "w1/mon/exercise-1/right/set1").contains("Tj"));
            assertNotEquals(seen(form, "w1/mon/exercise-1/left/set1"), seen(form, "w1/mon/exercise-1/right/set1"));
            assertEquals("", seen(form, "w1/mon/exercise-1/left/spare"));
            assertTrue(((PDCheckBox) form.getField("reply/yes")).isChecked());
        }
        Proof.passes("ua1", out.toByteArray());
        Proof.passes("3a", out.toByteArray());
    }

    /** What a text field shows. */
    private static String seen(PDAcroForm form, String field) throws IOException {
        var appearance = form.getField(field).getWidgets().getFirst().getNormalAppearanceStream();
        return new String(appearance.getContents().readAllBytes(), StandardCharsets.ISO_8859_1).strip();
    }

    @Test
    void fonts_are_embedded_and_small() throws IOException {
        var sizes = new TreeMap<String, Integer>();
        try (var file = Loader.loadPDF(TypesetterTest.set(Samples.every(Paper.A4, Print.PLAIN)).bytes())) {
            for (var page : file.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    var font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded(), font.getName());
                    var stream = font.getFontDescriptor().getFontFile2().getCOSObject();
                    sizes.put(font.getName(), stream.getInt(COSName.LENGTH));
                }
            }
        }
        assertEquals(Set.of("BBBBBB+Roboto-Bold", "RRRRRR+Roboto-Regular"), sizes.keySet());
        sizes.forEach((font, bytes) -> assertTrue(bytes < 60_000, font + " takes " + bytes + " bytes"));
    }
}
