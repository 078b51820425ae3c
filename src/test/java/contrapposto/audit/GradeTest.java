package contrapposto.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Reading grades against published and outside values; formula and counting of syllables are tested apart (F5.5). */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class GradeTest {
    /** Reference F5.4 (published example), F5.6 (run with an outside package). */
    @Test
    void flesch_and_kincaids_grade_gives_the_published_examples() {
        assertEquals(11.2646, Grade.kincaid(13, 1, 24), 1e-4);
        assertEquals(4.8233, Grade.kincaid(120, 10, 160), 1e-4);
        assertEquals(11.2646, Grade.of(List.of("The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.")).kincaid(), 1e-4);
    }

    /** Reference F5.9 (30 sentences, 64 heavy words), F5.10, F5.11. */
    @Test
    void mclaughlins_grade_gives_the_published_examples() {
        assertEquals(11.4731, Grade.smog(64, 30), 1e-4);
        assertEquals(9.3871, Grade.smog(12, 10), 1e-4);
        assertEquals(3.1291, Grade.smog(0, 7), 1e-9);
    }

    @Test
    void a_line_ends_a_sentence_and_long_ones_are_named() {
        assertEquals(-3.40, Grade.of(List.of("Go", "Stop. Breathe")).kincaid(), 1e-9);
        String words = "one two ".repeat(11).strip();
        assertEquals(List.of(words), Grade.of(List.of(words, "short")).longest());
    }
}
