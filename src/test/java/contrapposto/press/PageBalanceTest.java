package contrapposto.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.check.CheckedSpec.Edition;
import contrapposto.check.CheckedSpec.Paper;
import contrapposto.check.CheckedSpec.Print;
import contrapposto.press.DemoPages.Wish;
import contrapposto.typeset.Typesetter;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What was seen on pages of the demos and mended: white where something is missing, words in pieces. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PageBalanceTest {
    @Test
    void a_page_that_only_lets_the_next_one_lie_on_its_side_is_truly_blank() throws IOException {
        var texts = texts(new Wish("seventy-bare-room", Edition.CLIENT, Paper.A4, Print.LARGE, "en").pdf());
        assertTrue(texts.contains(""), "there is a blank page");
        for (String text : texts) {
            assertTrue(text.isEmpty() || text.contains("Made 19 November 2026."), text);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"veteran-left", "seventy-bare-room"})
    void no_card_stands_alone_on_the_last_page_of_cards_where_the_page_before_has_two(String demo) {
        var pages = DemoPages.done(new Typesetter().set(new Wish(demo, Edition.CLIENT, Paper.A4, Print.PLAIN, "en").document()));
        var places = new ArrayList<>(pages.cards().values());
        int last = Collections.max(places);
        assertEquals(2, Collections.frequency(places, last), places.toString());
    }

    /** In the large print seven boxes share a row. */
    @Test
    void heads_over_the_boxes_of_the_log_keep_their_words_whole() throws IOException {
        for (String text : texts(new Wish("veteran-left", Edition.CLIENT, Paper.A4, Print.LARGE, "en").pdf())) {
            for (String piece : List.of("spar", "pai", "use 1", "d")) {
                assertFalse(Pattern.compile("(?m)(^|\\s)" + piece + "(\\s|$)").matcher(text).find(),
                        piece + " in: " + text);
            }
        }
    }

    private static List<String> texts(byte[] pdf) throws IOException {
        var texts = new ArrayList<String>();
        try (var file = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= file.getNumberOfPages(); page++) {
                var stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                texts.add(stripper.getText(file).replace('\u00a0', ' ').strip());
            }
        }
        return texts;
    }
}
