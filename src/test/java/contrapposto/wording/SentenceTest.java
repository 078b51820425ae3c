package contrapposto.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The forms are those of the ICU message format: https://unicode-org.github.io/icu/userguide/format_parse/messages/ */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SentenceTest {
    private static String fill(String written, Map<String, String> values) {
        return Sentence.parse(written).fill(values::get, values::get);
    }

    @Test
    void values_stand_in_their_places() {
        assertEquals("left before right", fill("{one} before {other}", Map.of("one", "left", "other", "right")));
    }

    @ParameterizedTest
    @CsvSource({"1, 1 set", "0, 0 sets", "3, 3 sets"})
    void a_plural_goes_by_its_number(String count, String said) {
        assertEquals(said, fill("{n, plural, one {# set} other {# sets}}", Map.of("n", count)));
    }

    @ParameterizedTest
    @CsvSource({"left, la mano izquierda", "right, la mano derecha", "none, la mano"})
    void a_choice_goes_by_its_word_and_may_be_empty(String side, String said) {
        assertEquals(said, fill("la mano{s, select, left { izquierda} right { derecha} other {}}", Map.of("s", side)));
    }

    @Test
    void choices_may_hold_places() {
        assertEquals("on 12 kg", fill("{s, select, none {} other {on {load}}}", Map.of("s", "some", "load", "12 kg")));
        assertEquals(Set.of("load", "s"), Sentence.parse("{s, select, none {} other {on {load}}}").places());
    }

    @ParameterizedTest
    @ValueSource(strings = {"{open", "shut}", "{n, select, left {x}}", "{n, plural, one {x"})
    void a_slip_is_refused(String written) {
        assertThrows(IllegalArgumentException.class, () -> Sentence.parse(written));
    }
}
