package contrapposto.font;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Compares the reader with the shaper of the Java run-time (HarfBuzz), which reads the same file by itself. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FontFileTest {
    /** Pairs are set within one script: the shaper divides a text between scripts. */
    private static final List<String> SCRIPTS = List.of("AVTYWLPFRKaoecvwxytfrs.,'-’”;:1470/ÄÖßéÅ", "ΑΤΔΡΥΓαυρ.,-", "УТГАДужто.,-");
    private static final byte[] BYTES = bytes();

    private final FontFile file = new FontFile(BYTES);

    private static byte[] bytes() {
        try (var in = FontFileTest.class.getResourceAsStream("/com/formdev/flatlaf/fonts/roboto/Roboto-Regular.ttf")) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void widths_and_pairs_are_those_of_the_shaper() throws Exception {
        var plain = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(BYTES)).deriveFont(1000f);
        var kerned = plain.deriveFont(Map.of(TextAttribute.KERNING, TextAttribute.KERNING_ON));
        var context = new FontRenderContext(null, true, true);
        int closer = 0;
        for (String letters : SCRIPTS) {
            for (char left : letters.toCharArray()) {
                assertEquals(width(plain, context, "" + left), file.width(left), 1.01, "" + left);
                for (char right : letters.toCharArray()) {
                    String pair = "" + left + right;
                    double wanted = width(kerned, context, pair) - width(plain, context, pair);
                    assertEquals(wanted, file.kern(left, right), 0.51, pair);
                    closer += file.kern(left, right) < 0 ? 1 : 0;
                }
            }
        }
        assertTrue(closer > 200, "pairs set closer: " + closer);
    }

    private static double width(Font font, FontRenderContext context, String text) {
        var glyphs = font.layoutGlyphVector(context, text.toCharArray(), 0, text.length(), Font.LAYOUT_LEFT_TO_RIGHT);
        return glyphs.getGlyphPosition(glyphs.getNumGlyphs()).getX();
    }

    @Test
    void a_character_that_is_not_there_is_told() {
        assertTrue(file.has('ễ') && file.has('Ж') && file.has('Ω'));
        assertEquals(false, file.has('☃') || file.has(0x1F600));
    }
}
