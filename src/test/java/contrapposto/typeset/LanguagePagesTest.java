package contrapposto.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.check.CheckedSpec.Edition;
import contrapposto.check.CheckedSpec.Paper;
import contrapposto.check.CheckedSpec.Print;
import contrapposto.compose.Composer;
import contrapposto.compose.Plans;
import contrapposto.compose.Templates;
import contrapposto.document.Document;
import contrapposto.notice.Outcome;
import java.io.IOException;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LanguagePagesTest {
    @ParameterizedTest
    @CsvSource({"es, CLIENT", "de, CLIENT"})
    void a_handout_in_another_language_says_so_and_passes_both_standards(String language, Edition edition) throws IOException {
        var order = new Composer.Order(edition, Paper.A4, Print.PLAIN, true, Optional.of(language));
        var document = ((Outcome.Done<Document>) new Composer(Templates.own()).compose(Plans.turnedRight(), order)).value();
        byte[] pdf = ((Outcome.Done<Pages>) new Typesetter().set(document)).value().bytes();
        Proof.passes("ua1", pdf);
        Proof.passes("2a", pdf);
        try (var read = Loader.loadPDF(pdf)) {
            assertEquals(language, read.getDocumentCatalog().getLanguage());
            String text = new PDFTextStripper().getText(read);
            assertEquals(language.equals("es"), Pattern.compile("^I Pie izquierdo delante", Pattern.MULTILINE).matcher(text).find(),
                    "the letter of the left side is the language's");
        }
    }
}
