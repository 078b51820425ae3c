package contrapposto.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.notice.Outcome;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationWidget;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The printed referral, read back by PDFBox: a clinician signs only what stands on the same page; one sheet, in large print too. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ReferralPagesTest {
    private static final String SPEC = """
            format: 1
            client: {name: Invented Example, height: 171 cm, mass: 64 kg, language: %s}
            practice: {name: Millbrook Lane Strength & Movement, prepared-by: J. Adeyemi-Holt, contact: "+00 555 0117"}
            assessment: {date: 2026-03-02, pelvis: {turned: right, degree: clear}}
            screening: {%s}
            schedule: {start: 2026-03-09, weeks: 4, days: [mon, thu], minutes: 40}
            handout: {print: %s}
            """;
    private static final String ONE = "heart-metabolic-or-kidney-disease: yes";
    private static final String MANY = """
            chest-pain: yes, breathless-at-rest: yes, faint-or-dizzy: yes, palpitations: yes, ankle-swelling: yes, calf-pain: yes,
              heart-metabolic-or-kidney-disease: yes, unexplained-night-pain: yes, recent-surgery: yes, resting-blood-pressure: 165/95""";

    @ParameterizedTest
    @CsvSource({"en, plain", "en, large", "es, plain", "es, large", "de, plain", "de, large"})
    void all_that_the_clinician_fills_in_is_on_one_page(String language, String print) throws IOException {
        for (String answers : new String[] {ONE, MANY}) {
            var spec = String.format(Locale.ROOT, SPEC, language, answers, print);
            var pressed = Press.house().press("example.yaml", spec.getBytes(StandardCharsets.UTF_8));
            assertTrue(pressed instanceof Outcome.Done<Press.Pressed>, () -> pressed.notices().toString());
            var referral = ((Outcome.Done<Press.Pressed>) pressed).value().files().stream()
                    .filter(f -> f.ending().equals("referral.pdf")).findFirst().orElseThrow();
            try (var pdf = Loader.loadPDF(referral.bytes())) {
                var pages = new TreeSet<Integer>();
                var names = new TreeSet<String>();
                for (int page = 0; page < pdf.getNumberOfPages(); page++) {
                    for (var note : pdf.getPage(page).getAnnotations()) {
                        if (note instanceof PDAnnotationWidget) {
                            pages.add(page);
                            names.add(String.valueOf(note.getCOSObject().getString(COSName.T)));
                        }
                    }
                }
                assertTrue(names.contains("reply/signature") && names.size() >= 8, names::toString);
                assertEquals(1, pages.size(), () -> language + " " + print + " " + pages);
                int most = answers.equals(ONE) ? print.equals("plain") ? 1 : 2 : 3;
                assertTrue(pdf.getNumberOfPages() <= most, () -> language + " " + print + ": " + pdf.getNumberOfPages() + " pages");
            }
        }
    }
}
