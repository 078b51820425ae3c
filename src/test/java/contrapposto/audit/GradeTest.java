package contrapposto.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Reading formulas against published and outside values; formula and counting are tested apart (reference F5.5). */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class GradeTest {
    /** Reference F5.4 (published example), F5.6 (run with an outside package). */
    @Test
    void flesch_and_kincaids_grade_gives_the_published_examples() {
        assertEquals(11.2646, Formula.FLESCH_KINCAID.of(counted(1, 13, 24, 0)), 1e-4);
        assertEquals(4.8233, Formula.FLESCH_KINCAID.of(counted(10, 120, 160, 0)), 1e-4);
        assertEquals(11.2646, Grade.of("en", List.of("The Australian platypus is seemingly a hybrid of a mammal and reptilian creature."))
                .by().get(Formula.FLESCH_KINCAID), 1e-4);
    }

    /** Reference F5.3: the lowest grade there is. */
    @Test
    void one_short_word_a_sentence_is_the_easiest_text() {
        assertEquals(-3.40, Grade.of("en", List.of("Go", "Stop. Breathe")).by().get(Formula.FLESCH_KINCAID), 1e-9);
    }

    /** Reference F5.9 (30 sentences, 64 heavy words), F5.10, F5.11. */
    @Test
    void mclaughlins_grade_gives_the_published_examples() {
        assertEquals(11.4731, Formula.SMOG.of(counted(30, 400, 600, 64)), 1e-4);
        assertEquals(9.3871, Formula.SMOG.of(counted(10, 100, 150, 12)), 1e-4);
        assertEquals(3.1291, Formula.SMOG.of(counted(7, 20, 20, 0)), 1e-9);
    }

    /**
     * The Spanish sample of textstat's tests (the Python library, its repository as of 2025): 162 words, 6 sentences, 306 syllables; it gives Crawford
     * 5.089 and Szigriszt-Pazos 62.162, the latter with the constant rounded to 206.84.
     */
    @Test
    void the_spanish_formulas_give_the_values_of_an_outside_library() {
        assertEquals(5.089, Formula.CRAWFORD.of(counted(6, 162, 306, 0)), 5e-4);
        assertEquals(62.162 - 0.005, Formula.SZIGRISZT_PAZOS.of(counted(6, 162, 306, 0)), 5e-4);
    }

    /** A nursery rhyme and a sentence on politics have 3.77 and 13.913 in textstat's tests; the first is counted here, of the second the counts are given. */
    @Test
    void the_first_viennese_formula_gives_the_values_of_an_outside_library() {
        var rhyme = Grade.of("de", List.of("Alle meine Entchen schwimmen auf dem See, Köpfchen unters Wasser, Schwänzchen in die Höh."));
        assertEquals(3.77, rhyme.by().get(Formula.WIENER_1), 5e-4);
        assertEquals(13.913, Formula.WIENER_1.of(new Counts(1, 16, 43, 6, 7, 4)), 5e-4);
    }

    /** The German sample of langcheck's tests (a Python library): 5 sentences, 30 words, 48 syllables give 80.4. */
    @Test
    void amstads_ease_gives_the_value_of_an_outside_library() {
        assertEquals(80.4, Formula.AMSTAD.of(counted(5, 30, 48, 0)), 1e-9);
    }

    @Test
    void a_text_is_too_hard_by_a_grade_that_has_text_enough() {
        var tenSentences = new Grade(10, 100, Map.of(Formula.FLESCH_KINCAID, 5.0, Formula.SMOG, 9.0));
        assertTrue(tenSentences.rough(Formula.SMOG));
        assertFalse(tenSentences.over(8));
        assertTrue(new Grade(30, 300, tenSentences.by()).over(8));
        assertFalse(new Grade(30, 300, Map.of(Formula.CRAWFORD, 6.0, Formula.SZIGRISZT_PAZOS, 60.0)).over(8));
    }

    @Test
    void a_language_without_a_formula_has_no_grade() {
        assertEquals(Map.of(), Grade.of("fr", List.of("Respirez.")).by());
    }

    private static Counts counted(int sentences, int words, int syllables, int heavy) {
        return new Counts(sentences, words, syllables, heavy, 0, 0);
    }
}
