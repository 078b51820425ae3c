package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.typeset.Proof;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.pdmodel.encryption.PDEncryption;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.yaml.snakeyaml.Yaml;

/** What a handout gives away, read back with PDFBox; an invented client whose spec is full of things to keep private. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PrivacyTest {
    private static final String SPEC = """
            format: 1
            title: After the new knee
            client: {name: Perpetua Quist, code: HS-0707, age: 44, height: 168 cm, mass: 63 kg}
            practice: {name: Millbrook Lane, prepared-by: J. Adeyemi-Holt, contact: "+00 555 0117"}
            assessment: {date: 2026-03-02, pelvis: {turned: right}}
            screening: {cancer-history: yes, chest-pain: no, conditions: [{what: osteoporosis}]}
            clearance: {by: Dr A. Example, date: 2026-03-01, limits: nothing overhead}
            restrictions: [{avoid: overhead, because: frozen shoulder}]
            schedule: {start: 2026-03-09, weeks: 2, days: [mon], minutes: 20, start-stage: standing}
            """;
    private static final List<String> PRIVATE = List.of("Perpetua", "Quist", "knee", "cancer", "osteoporosis", "frozen", "Dr A. Example",
            "screening", "restriction", "clearance", "overhead, because");
    private static final String PASSWORD = "correct horse 7";

    @TempDir
    static Path folder;
    private static String saidWhenProtected;

    @BeforeAll
    static void build() throws IOException {
        Files.writeString(folder.resolve("block.yaml"), SPEC);
        Files.writeString(folder.resolve("secret.txt"), PASSWORD + "\nsecond line\n");
        Demos.build(folder.resolve("open"), folder.resolve("block.yaml").toString());
        saidWhenProtected = Demos.build(folder.resolve("locked"), folder.resolve("block.yaml").toString(), "--edition", "client", "--protect",
                folder.resolve("secret.txt").toString());
        Demos.build(folder.resolve("bare"), folder.resolve("block.yaml").toString(), "--edition", "client", "--no-attachment");
    }

    private static byte[] file(String run, String ending) throws IOException {
        return Files.readAllBytes(Demos.file(folder.resolve(run), ending));
    }

    private static String attached(PDDocument pdf) throws IOException {
        var file = pdf.getDocumentCatalog().getNames().getEmbeddedFiles().getNames().get("plan.yaml");
        return new String(file.getEmbeddedFile().toByteArray(), StandardCharsets.UTF_8);
    }

    @Test
    void a_clients_attachment_is_the_plan_without_a_health_fact() throws IOException {
        try (var pdf = Loader.loadPDF(file("open", "-client.pdf"))) {
            var text = attached(pdf);
            PRIVATE.stream().filter(word -> !word.equals("knee") && !word.startsWith("overhead")).forEach(word ->
                    assertFalse(text.contains(word), word));
            Map<String, Object> plan = new Yaml().load(text);
            var whole = Demos.plan(Demos.file(folder.resolve("open"), "-plan.yaml"));
            assertEquals(Map.of("code", "HS-0707", "language", "en", "units", "metric"), plan.get("client"));
            assertEquals(whole.get("spec-sha256"), plan.get("spec-sha256"));
            assertEquals(whole.get("weeks"), plan.get("weeks"));
            assertEquals(((List<?>) whole.get("days")).size(), ((List<?>) plan.get("days")).size());
            assertFalse(text.contains("because"));
        }
    }

    @Test
    void a_coachs_attachment_is_the_plan_file_to_the_byte() throws IOException {
        try (var pdf = Loader.loadPDF(file("open", "-coach.pdf"))) {
            assertEquals(Files.readString(Demos.file(folder.resolve("open"), "-plan.yaml")), attached(pdf));
        }
    }

    @Test
    void with_a_code_names_and_facts_stay_out_of_file_names_title_and_metadata() throws IOException {
        try (var pdf = Loader.loadPDF(file("open", "-client.pdf"))) {
            var facts = new StringBuilder(folder.relativize(Demos.file(folder.resolve("open"), "-client.pdf")).toString());
            var info = pdf.getDocumentInformation();
            facts.append(info.getTitle()).append(info.getSubject()).append(info.getAuthor()).append(info.getKeywords());
            facts.append(new String(pdf.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8));
            PRIVATE.forEach(word -> assertFalse(facts.toString().contains(word), word));
            assertTrue(info.getTitle().contains("HS-0707"));
        }
    }

    @Test
    void a_clients_pages_tell_no_answer_no_restriction_and_no_clearance() throws IOException {
        for (var run : List.of("open", "bare")) {
            try (var pdf = Loader.loadPDF(file(run, "-client.pdf"))) {
                var text = new PDFTextStripper().getText(pdf);
                for (var word : List.of("cancer", "osteoporosis", "frozen", "Dr A. Example", "clearance")) {
                    assertFalse(text.contains(word), word);
                }
            }
        }
    }

    /** What lies beside the handouts: paths, checksums, pages, seconds. */
    @Test
    void the_files_of_a_run_tell_nothing_of_the_person() throws IOException {
        try (var files = Files.list(folder.resolve("open"))) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                var text = Files.readString(file);
                PRIVATE.forEach(word -> assertFalse(text.contains(word), file + ": " + word));
            }
        }
    }

    @Test
    void an_attachment_makes_it_pdf_a_3_and_without_one_it_stays_2() throws IOException {
        Proof.passes("3a", file("open", "-client.pdf"));
        Proof.passes("ua1", file("open", "-client.pdf"));
        Proof.passes("3a", file("open", "-coach.pdf"));
        Proof.passes("2a", file("bare", "-client.pdf"));
        try (var pdf = Loader.loadPDF(file("bare", "-client.pdf"))) {
            assertTrue(pdf.getDocumentCatalog().getNames() == null || pdf.getDocumentCatalog().getNames().getEmbeddedFiles() == null);
        }
    }

    @Test
    void a_protected_file_opens_with_its_password_only_and_makes_no_claim_to_be_archival() throws IOException {
        var bytes = file("locked", "-client.pdf");
        assertThrows(InvalidPasswordException.class, () -> Loader.loadPDF(bytes));
        assertThrows(InvalidPasswordException.class, () -> Loader.loadPDF(bytes, "correct horse 8"));
        try (var pdf = Loader.loadPDF(bytes, PASSWORD)) {
            PDEncryption cipher = pdf.getEncryption();
            assertEquals(256, cipher.getLength());
            assertEquals(5, cipher.getVersion());
            assertTrue(new PDFTextStripper().getText(pdf).contains("Read this first"));
            assertFalse(new String(pdf.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8).contains("pdfaid:part"));
            assertTrue(attached(pdf).contains("HS-0707"));
        }
        assertTrue(saidWhenProtected.contains("archival conformance (PDF/A) is given up"));
        assertFalse(saidWhenProtected.contains(PASSWORD));
    }

    @Test
    void a_password_that_is_too_short_or_not_there_stops_the_run() throws IOException {
        Files.writeString(folder.resolve("short.txt"), "abc\n");
        for (var source : List.of(folder.resolve("short.txt").toString(), "env:CONTRAPPOSTO_NO_SUCH_VARIABLE", folder.resolve("none").toString())) {
            var said = Demos.build(folder.resolve("never"), folder.resolve("block.yaml").toString(), "--protect", source);
            assertTrue(said.startsWith("2\n"), said);
            assertFalse(said.contains("abc\n"));
        }
    }
}
