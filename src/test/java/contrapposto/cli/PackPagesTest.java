package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.handout.PdfTables;
import contrapposto.typeset.Proof;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The index page of a pack, built by the command line and read back by PDFBox: what it lists is what lies in the folders. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PackPagesTest {
    @TempDir
    static Path here;
    private static Terminal terminal;
    private static String said;

    @BeforeAll
    static void build() throws IOException {
        terminal = new Terminal(here);
        Files.writeString(here.resolve("base.yaml"), """
                format: 1
                client: {name: Nobody, height: 171 cm, mass: 64 kg}
                practice: {name: Invented Practice, contact: "+00 555 0100"}
                assessment: {date: 2026-03-02, pelvis: {turned: right, degree: clear}}
                equipment: {dumbbells: [4 kg, 8 kg]}
                choose: {include: [floor-bridge]}
                schedule: {start: 2026-03-09, weeks: 1, days: [mon], minutes: 15}
                handout: {editions: [client]}
                """);
        Files.writeString(here.resolve("set.yaml"), """
                pack: 1
                title: A small set
                number: SM
                spec: base.yaml
                vary:
                  kind:
                    turned right: {assessment.pelvis.turned: right}
                    turned left: {assessment.pelvis.turned: left, client.training-years: 2, handout.print: large, handout.paper: letter, client.language: es}
                    held back: {screening.chest-pain: yes}
                    impossible: {client.height: 17 cm}
                """);
        Files.writeString(here.resolve("held.yaml"), Files.readString(here.resolve("base.yaml")) + "screening: {chest-pain: yes}\n");
        Files.writeString(here.resolve("held-set.yaml"), Files.readString(here.resolve("set.yaml")).replace("base.yaml", "held.yaml"));
        assertEquals(Console.PARTLY, terminal.run("build", "set.yaml"));
        said = terminal.err();
    }

    @Test
    void every_handout_is_listed_with_its_number_and_what_it_is_for() throws IOException {
        var rows = rows("out/set-index.pdf");
        assertEquals(5, rows.size());
        assertEquals(List.of("SM-01", "Turned right", "right", "none", "A4", "plain", "English", "client " + pages("SM-01", "turned-right-client")), rows.get(1));
        assertEquals(List.of("SM-02", "Turned left", "left", "2 years", "Letter", "large", "Spanish", "client " + pages("SM-02", "turned-left-client")), rows.get(2));
        assertEquals(List.of("SM-03", "Held back", "right", "none", "A4", "plain", "English", "referral"), rows.get(3));
        assertEquals("SM-04", rows.get(4).getFirst());
        assertEquals("not printed", rows.get(4).getLast());
        String text = text("out/set-index.pdf");
        assertTrue(text.contains("A small set") && text.contains("Invented Practice") && text.contains("dumbbells of 4 kg to 8 kg"), text);
    }

    /** A side left blank, so that a log starts a fresh sheet or the halves of a large card face each other, says nothing at all. */
    @Test
    void every_page_of_a_handout_carries_the_number_that_the_index_gives_it() throws IOException {
        for (String handout : List.of("SM-01/turned-right-client.pdf", "SM-02/turned-left-client.pdf", "SM-03/held-back-referral.pdf")) {
            try (var pdf = Loader.loadPDF(here.resolve("out").resolve(handout).toFile())) {
                int blank = 0;
                for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                    var words = new PDFTextStripper();
                    words.setStartPage(page);
                    words.setEndPage(page);
                    String text = words.getText(pdf);
                    blank += text.isBlank() ? 1 : 0;
                    assertTrue(text.isBlank() || text.contains(handout.substring(0, 5)), handout + " page " + page);
                }
                assertTrue(blank <= pdf.getNumberOfPages() / 4, handout + ": " + blank + " blank");
            }
        }
    }

    @Test
    void the_page_is_tagged_and_comes_on_both_papers_and_in_every_language() throws IOException {
        for (String paper : List.of("a4", "letter")) {
            for (String language : List.of("en", "es", "de")) {
                String out = paper + language;
                terminal.run("build", "held-set.yaml", "--paper", paper, "--language", language, "-o", out, "--quiet");
                byte[] pdf = Files.readAllBytes(here.resolve(out + "/held-set-index.pdf"));
                Proof.passes("ua1", pdf);
                try (var read = Loader.loadPDF(pdf)) {
                    var size = paper.equals("a4") ? PDRectangle.A4 : PDRectangle.LETTER;
                    assertEquals(size.getHeight(), read.getPage(0).getMediaBox().getHeight(), 1);
                    assertEquals(language, read.getDocumentCatalog().getLanguage());
                    assertEquals(1, read.getNumberOfPages());
                }
            }
        }
        assertTrue(text("a4es/held-set-index.pdf").contains("derecha") && text("letterde/held-set-index.pdf").contains("rechts"));
    }

    @Test
    void the_manifest_has_the_page_and_a_second_run_leaves_it_as_it_is() throws IOException {
        assertTrue(Files.readString(here.resolve("out/manifest.json")).contains("\"path\": \"set-index.pdf\""));
        assertTrue(said.contains("4 specs: 2 done, 1 withheld, 1 failed"), said);
        byte[] before = Files.readAllBytes(here.resolve("out/set-index.pdf"));
        terminal.run("build", "set.yaml");
        assertTrue(terminal.err().contains("set.yaml: unchanged, left as it is"), terminal.err());
        Files.delete(here.resolve("out/set-index.pdf"));
        Files.delete(here.resolve("out/manifest.json"));
        terminal.run("build", "set.yaml");
        assertArrayEquals(before, Files.readAllBytes(here.resolve("out/set-index.pdf")), "a run that is taken up again ends the same");
    }

    @Test
    void a_pack_of_which_nothing_is_sound_has_no_page() throws IOException {
        Files.writeString(here.resolve("void.yaml"), "format: 1\n");
        Files.writeString(here.resolve("void-set.yaml"), Files.readString(here.resolve("set.yaml")).replace("base.yaml", "void.yaml"));
        assertEquals(Console.PARTLY, terminal.run("build", "void-set.yaml", "-o", "void"));
        assertFalse(Files.exists(here.resolve("void/void-set-index.pdf")));
    }

    private List<List<String>> rows(String pdf) throws IOException {
        return PdfTables.read(Files.readAllBytes(here.resolve(pdf))).all("TR").stream().map(row -> row.kids().stream().map(cell -> cell.text().replace('\u00a0', ' ').strip()).toList()).toList();
    }

    private int pages(String number, String name) throws IOException {
        try (var pdf = Loader.loadPDF(here.resolve("out/" + number + "/" + name + ".pdf").toFile())) {
            return pdf.getNumberOfPages();
        }
    }

    private String text(String pdf) throws IOException {
        try (var read = Loader.loadPDF(here.resolve(pdf).toFile())) {
            return new PDFTextStripper().getText(read).replaceAll("[\\s\u00a0]+", " ");
        }
    }
}
