package contrapposto.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Syllables beside those of other projects, run 2026-11-25 by hand: Spanish and German words as {@code hyphen} 1.14.1 (npm, the TeX patterns) breaks them,
 * English ones as {@code syllable} 5.0.1 (npm) counts them. TeX leaves a lone vowel at the edge of a word, so such words are not among these.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SyllablesTest {
    @ParameterizedTest
    @CsvSource({"breathe, 1", "shoulder, 2", "ankles, 2", "knuckles, 2", "faces, 2", "hinges, 2", "table, 2", "exercise, 3", "emergency, 4",
        "measurements, 3", "lifted, 2", "quiet, 2", "lying, 2", "easier, 3", "serious, 3", "bladder, 2", "numb, 1", "doctor, 2"})
    void english(String word, int count) {
        assertEquals(count, Syllables.of("en", word));
    }

    @ParameterizedTest
    @CsvSource({"respira, 3", "pie, 1", "cuello, 2", "peso, 2", "columna, 3", "cuidado, 3", "rodilla, 3", "espalda, 3", "siguiente, 3", "quieto, 2",
        "construido, 3", "muy, 1", "mayor, 2", "biceps, 2", "repeticiones, 5", "cambio, 2", "fuerza, 2", "suave, 2", "mientras, 2"})
    void spanish(String word, int count) {
        assertEquals(count, Syllables.of("es", word));
    }

    /** By the rules of the written language (Real Academia, from memory): two strong vowels, or a stressed weak one, part. */
    @ParameterizedTest
    @CsvSource({"línea, 3", "guía, 2", "polea, 3", "gateando, 4", "todavía, 4", "vacío, 3", "caída, 3", "ahora, 3", "aéreo, 4", "estudiáis, 3"})
    void spanish_vowels_that_part(String word, int count) {
        assertEquals(count, Syllables.of("es", word));
    }

    @ParameterizedTest
    @CsvSource({"schulter, 2", "atmen, 2", "knie, 1", "beenden, 3", "gewicht, 2", "wiederholungen, 5", "schmerzen, 2", "bequem, 2",
        "gleichgewicht, 3", "beschwerden, 3", "rauen, 2", "häufig, 2", "position, 4", "steuern, 2", "boot, 1", "heimtrainer, 3"})
    void german(String word, int count) {
        assertEquals(count, Syllables.of("de", word));
    }
}
