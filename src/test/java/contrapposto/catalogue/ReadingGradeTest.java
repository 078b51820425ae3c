package contrapposto.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ReadingGradeTest {
    /** Reference F5.4: 13 words, 24 syllables, 1 sentence give 11.3 (11.2646). */
    @Test
    void the_formula_gives_the_published_example() {
        assertEquals(11.2646, ReadingGrade.of(13, 1, 24), 0.0001);
    }

    /** Reference F5.4 and F5.5: counting is tested apart from the formula. */
    @Test
    void the_counter_finds_the_syllables_of_the_published_sentence() {
        assertEquals(11.2646,
                ReadingGrade.of("The Australian platypus is seemingly a hybrid of a mammal and reptilian creature."), 0.0001);
    }

    /** Reference F5.6: 120 words, 10 sentences, 160 syllables. */
    @Test
    void the_formula_gives_the_second_example() {
        assertEquals(4.8233, ReadingGrade.of(120, 10, 160), 0.0001);
    }

    /** Reference F5.3: the lowest grade there is. */
    @Test
    void one_short_word_a_sentence_is_the_easiest_text() {
        assertEquals(-3.40, ReadingGrade.of("Go. Stop. Breathe."), 0.0001);
    }
}
