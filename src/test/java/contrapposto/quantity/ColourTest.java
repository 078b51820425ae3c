package contrapposto.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Contrast against white as WCAG 2.2 defines it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ColourTest {
    /**
     * Black on white is 21 to 1 and white on white 1 to 1 by the definition. #767676 is the lightest grey of 4.5 to 1 and #595959 of 7 to 1,
     * red reaches 4.0, blue 8.59: values known to whoever works with the criteria, from memory.
     */
    @ParameterizedTest
    @CsvSource({"#000000, 21", "#ffffff, 1", "#767676, 4.54", "#595959, 7.00", "#ff0000, 4.00", "#0000ff, 8.59"})
    void contrast_is_that_of_the_published_definition(String text, double contrast) {
        assertEquals(contrast, Colour.of(text).orElseThrow().contrastOnWhite(), 0.005);
    }

    @Test
    void the_greys_on_both_sides_of_each_level_are_told_apart() {
        assertTrue(Colour.of("595959").orElseThrow().contrastOnWhite() >= Colour.READABLE);
        assertTrue(Colour.of("5a5a5a").orElseThrow().contrastOnWhite() < Colour.READABLE);
        assertTrue(Colour.of("767676").orElseThrow().contrastOnWhite() >= 4.5 && Colour.of("777777").orElseThrow().contrastOnWhite() < 4.5);
    }

    @Test
    void the_three_parts_are_read_in_their_order_with_or_without_the_sign() {
        assertEquals(Optional.of(new Colour(0x1F, 0x4E, 0x5F)), Colour.of("#1f4E5f"));
        assertEquals(Colour.of("#1f4E5f"), Colour.of("1F4e5F"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "#", "#fff", "#1f4e5g", "petrol", "##1f4e5f", "1f4e5f0", " 1f4e5f"})
    void other_text_is_no_colour(String text) {
        assertEquals(Optional.empty(), Colour.of(text));
    }

    @ParameterizedTest
    @CsvSource({"256, 0, 0", "0, -1, 0", "0, 0, 300"})
    void a_part_beyond_a_byte_is_a_bug(int red, int green, int blue) {
        assertThrows(IllegalArgumentException.class, () -> new Colour(red, green, blue));
    }
}
