package contrapposto.press;

import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.notice.Outcome;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The longest safety panel there is: age unknown, pregnant, questions unanswered, a barbell; read back by PDFBox. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SafetyPageTest {
    private static final String SPEC = """
            format: 1
            client: {name: Invented Example, height: 171 cm, mass: 64 kg}
            practice: {name: Millbrook Lane Strength & Movement, prepared-by: J. Adeyemi-Holt, contact: "+00 555 0117"}
            assessment: {date: 2026-03-02, pelvis: {turned: right, degree: clear}}
            screening: {pregnant: yes}
            equipment: {barbell: {bar: 20 kg, plates: {20 kg: 4, 10 kg: 2, 5 kg: 2}}, also: [mat, wall]}
            schedule: {start: 2026-03-09, weeks: 4, days: [mon, thu], minutes: 40}
            handout: {print: %s}
            """;

    @ParameterizedTest
    @ValueSource(strings = {"plain", "large"})
    void all_of_it_stands_on_the_first_page(String print) throws IOException {
        var pressed = Press.house().press("example.yaml", String.format(Locale.ROOT, SPEC, print).getBytes(StandardCharsets.UTF_8));
        assertTrue(pressed instanceof Outcome.Done<Press.Pressed>, () -> pressed.notices().toString());
        var client = ((Outcome.Done<Press.Pressed>) pressed).value().files().stream()
                .filter(f -> f.ending().equals("client.pdf")).findFirst().orElseThrow();
        try (var pdf = Loader.loadPDF(client.bytes())) {
            var stripper = new PDFTextStripper();
            stripper.setEndPage(1);
            var text = stripper.getText(pdf).replaceAll("\\s+", " ");
            for (var words : List.of("Read this first", "belly pain that comes and goes", "Some health answers are missing.", "Have someone near",
                    "With a bar, have help by.", "local rules come first.")) {
                assertTrue(text.contains(words), () -> words + " is not in: " + text);
            }
        }
    }

    /** Reference E3.2, seen through a second source. */
    @Test
    void the_coach_reads_where_the_pain_rule_is_from() throws IOException {
        var pressed = Press.house().press("example.yaml", String.format(Locale.ROOT, SPEC, "plain").getBytes(StandardCharsets.UTF_8));
        var coach = ((Outcome.Done<Press.Pressed>) pressed).value().files().stream()
                .filter(f -> f.ending().equals("coach.pdf")).findFirst().orElseThrow();
        try (var pdf = Loader.loadPDF(coach.bytes())) {
            assertTrue(new PDFTextStripper().getText(pdf).contains("Silbernagel KG et al. 2007"));
        }
    }
}
