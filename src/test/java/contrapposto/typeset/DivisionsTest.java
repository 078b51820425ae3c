package contrapposto.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.document.Block;
import contrapposto.document.Block.Table.Align;
import contrapposto.document.Block.Table.Column;
import contrapposto.document.Block.Table.Group;
import contrapposto.document.Block.Table.Row;
import contrapposto.document.Cell;
import contrapposto.document.Document;
import contrapposto.document.Document.Paper;
import contrapposto.document.Document.Print;
import contrapposto.document.Inline;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The lists of divided words against the rules of their languages. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DivisionsTest {
    private static final Pattern VOWEL = Pattern.compile("[aeiouyäöüáéíóúü]");

    @ParameterizedTest
    @ValueSource(strings = {"de", "es"})
    void every_part_has_a_vowel_and_no_part_is_a_stray_letter(String language) throws IOException {
        for (String word : words(language)) {
            var parts = List.of(word.split("-"));
            assertTrue(parts.size() > 1, word);
            assertTrue(parts.getFirst().length() >= 2 && parts.getLast().length() >= 3, word);
            parts.forEach(part -> assertTrue(VOWEL.matcher(part).find(), word));
        }
    }

    /**
     * Amtliche Regelung der deutschen Rechtschreibung 2006, § 108 to 112: of several consonants the last goes over; ch, ck,
     * sch, ph and th stand for one sound and stay together; st and sp may part; prefixes and parts of a compound stay whole.
     * The rule and these words' places from memory of the rule; the patterns of TeX (hyph-utf8, de-1996) divide them so too.
     */
    @ParameterizedTest
    @CsvSource({"Kisten, Kis-ten", "drücken, drü-cken", "Rücken, Rü-cken", "zwischen, zwi-schen", "Wochen, Wo-chen", "Finger, Fin-ger", "Gesäßmuskel, Ge-säß-mus-kel",
            "Schulterblatt, Schul-ter-blatt", "Wiederholungen, Wie-der-ho-lun-gen", "Oberschenkel, Ober-schen-kel", "Brustbein, Brust-bein", "auszugleichen, aus-zu-glei-chen"})
    void German_words_part_by_the_rules(String word, String divided) {
        assertEquals(divided, String.join("", Divisions.of("de").parts(word)).replace(Divisions.MARK, '-'));
    }

    @Test
    void no_German_letters_of_one_sound_are_parted() throws IOException {
        for (String word : words("de")) {
            assertFalse(word.contains("c-h") || word.contains("c-k") || word.contains("s-ch") || word.contains("q-u"), word);
        }
    }

    /**
     * Ortografía de la lengua española (RAE 2010), division at the end of a line: one consonant between vowels goes over; of
     * two both part unless the second is l or r after p b f g c k, or r after t d; ch, ll and rr never part; vowels that
     * stand together are not divided. The rule from memory; written out here without the list.
     */
    @Test
    void every_Spanish_place_of_division_keeps_the_rule_of_the_Academy() throws IOException {
        for (String word : words("es")) {
            String plain = word.replace("-", "");
            int at = 0;
            for (String part : List.of(word.split("-"))) {
                at += part.length();
                if (at < plain.length()) {
                    assertTrue(mayPart(plain, at) || PREFIXED.contains(plain), word + " at " + at);
                }
            }
        }
    }

    /** Prefixes may stay whole against the rule of syllables. */
    private static final List<String> PREFIXED = List.of("desaconsejado");
    private static final Pattern SPANISH_VOWEL = Pattern.compile("[aeiouáéíóúü]");
    private static final Pattern TOGETHER = Pattern.compile("[pbfgck][lr]|[td]r|ch|ll|rr|qu|gu");

    private static boolean mayPart(String word, int at) {
        int next = at;
        while (next < word.length() && !isVowel(word, next)) {
            next++;
        }
        String onset = word.substring(at, next);
        boolean starts = onset.length() == 1 || TOGETHER.matcher(onset).matches();
        boolean leaves = isVowel(word, at - 1) || !TOGETHER.matcher(word.substring(at - 1, Math.min(word.length(), at + 1))).matches();
        return starts && leaves;
    }

    private static boolean isVowel(String word, int at) {
        return SPANISH_VOWEL.matcher(word.substring(at, at + 1)).matches();
    }

    @ParameterizedTest
    @CsvSource({"Repeticiones, Re-pe-ti-cio-nes", "registro, re-gis-tro", "(rodilla), (ro-di-lla)", "barandilla, ba-ran-di-lla", "músculo, mús-culo"})
    void words_are_found_with_the_marks_around_them(String word, String divided) {
        assertEquals(divided, String.join("", Divisions.of("es").parts(word)).replace(Divisions.MARK, '-'));
    }

    @Test
    void what_is_not_listed_is_not_divided() {
        assertEquals(List.of("Kray-Whitlow"), Divisions.of("de").parts("Kray-Whitlow"));
        assertEquals(List.of("Repetitions"), Divisions.of("en").parts("Repetitions"));
    }

    /**
     * ISO 32000-1, 14.8.2.2.3: the hyphen of a divided word is U+00AD in tagged text, so that a reader can join it; a hyphen
     * that belongs to a word stays U+002D.
     */
    @ParameterizedTest
    @CsvSource({"de, 9", "es, 6", "en, 0"})
    void a_divided_word_reads_as_one_and_passes_both_standards(String language, int divided) throws IOException {
        String words = language.equals("de") ? "Die Wiederholungen zusammendrücken. Halb-Kniestand. " : "La articulación: repeticiones. Kray-Whitlow. ";
        var narrow = new Block.Table("", List.of(new Column(14, Align.LEFT, false), new Column(20, Align.LEFT, false)), List.of(new Row(List.of(cell("A"), cell("B")), 0)),
                List.of(new Group(List.of(new Row(List.of(cell(words.repeat(3)), cell("B")), 0)))), List.of());
        var plan = Samples.of("Plan", Paper.A4, Print.PLAIN, List.of(Samples.part("Plan", List.of(narrow))), Optional.empty());
        byte[] pdf = TypesetterTest.set(new Document(plan.title(), plan.author(), plan.subject(), language, plan.paper(), plan.print(), plan.footer(), plan.wording(),
                plan.made(), plan.identity(), plan.parts(), plan.attachment())).bytes();
        Proof.passes("ua1", pdf);
        Proof.passes("2a", pdf);
        try (var read = new ReadBack(pdf)) {
            String text = read.tree().all("TH").getLast().text();
            long marks = text.chars().filter(c -> c == Divisions.MARK).count();
            assertTrue(divided == 0 ? marks == 0 : marks >= divided, marks + " in " + text);
            assertEquals(words.repeat(3).strip(), text.replace(Character.toString(Divisions.MARK), "").strip());
        }
    }

    private static Cell cell(String words) {
        return new Cell.Words(List.of(List.of(Inline.plain(words))));
    }

    private static List<String> words(String language) throws IOException {
        try (var in = Divisions.class.getResourceAsStream("divisions-" + language + ".txt")) {
            var text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            return new ArrayList<>(text.lines().filter(line -> !line.startsWith("#")).flatMap(line -> List.of(line.split(" ")).stream()).toList());
        }
    }
}
