package contrapposto.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.audit.Formula;
import contrapposto.audit.Grade;
import contrapposto.audit.Wording;
import contrapposto.wording.Phrasebook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** How hard the card of each family reads, in each language. Target: grade 8 for client wording (F5.13); English keeps to 6. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WordingTableTest {
    private static final double ENGLISH = 6;
    @SuppressWarnings("unused")
    private static final List<String> LANGUAGES = Phrasebook.LANGUAGES;

    @ParameterizedTest
    @FieldSource("LANGUAGES")
    void the_words_of_every_family_read_at_grade_8_or_lower_and_hold_no_long_sentence(String language) {
        CatalogueTest.families().forEach(family -> {
            var text = words(language, family);
            var grade = Grade.of(language, List.of(text));
            assertFalse(grade.over(most(language)), () -> family.id() + " reads at " + grade);
            for (var sentence : text.split("(?<=[.!?])\\s+")) {
                assertTrue(sentence.split("\\s+").length <= Wording.MOST_WORDS, () -> family.id() + ": " + sentence);
            }
        });
    }

    /** Hardly a family has the sentences that McLaughlin asks for; together they have more than enough. */
    @ParameterizedTest
    @FieldSource("LANGUAGES")
    void all_families_together_have_text_enough_for_every_formula_and_read_at_grade_8_or_lower(String language) {
        var grade = Grade.of(language, List.of(all(language)));
        assertTrue(grade.by().keySet().stream().noneMatch(grade::rough), grade::toString);
        assertFalse(grade.over(most(language)), grade::toString);
    }

    /** A mismatch leaves {@code target/wording.received.md}; look at it, then copy it over {@code docs/wording.md}. */
    @Test
    void the_printed_grades_are_those_of_the_families() throws IOException {
        var printed = Path.of("docs/wording.md");
        var made = table();
        if (!Files.exists(printed) || !Files.readString(printed).equals(made)) {
            Files.writeString(Path.of("target/wording.received.md"), made);
        }
        assertEquals(Files.readString(printed), made, "if this is right, copy target/wording.received.md over " + printed);
    }

    private static String table() {
        var formulas = Arrays.stream(Formula.values()).toList();
        var table = new StringBuilder("""
                # How hard the cards read

                Written by `WordingTableTest` from the words of the family files; do not edit by hand. Counted: cues, what to feel, mistakes and fixes,
                easier, harder, cautions. School years (8 at most) by Flesch and Kincaid and by McLaughlin (SMOG; its sample is 30 sentences,
                so with fewer it is put in brackets, as rough) in English, by Crawford in Spanish (made for the first six school years), by the first Wiener
                Sachtextformel in German (4 is very easy on its scale). Ease from 0 to 100, higher is easier: Szigriszt-Pazos in Spanish, Amstad in German.
                The grades of whole handouts are in safety.md.

                """);
        table.append("| family |").append(formulas.stream().map(f -> " " + f.words() + " |").collect(Collectors.joining())).append('\n')
                .append("|---|").append("---|".repeat(formulas.size())).append('\n');
        CatalogueTest.families().forEach(family -> table.append(row(family.id(), language -> words(language, family))));
        return table.append(row("all together", WordingTableTest::all)).toString();
    }

    private static String row(String name, java.util.function.UnaryOperator<String> text) {
        Map<String, Grade> grades = Phrasebook.LANGUAGES.stream().collect(Collectors.toMap(l -> l, l -> Grade.of(l, List.of(text.apply(l)))));
        var row = new StringBuilder("| " + name + " |");
        for (var formula : Formula.values()) {
            var grade = Phrasebook.LANGUAGES.stream().map(grades::get).filter(g -> g.by().containsKey(formula)).findFirst().orElseThrow();
            var number = String.format(Locale.ROOT, "%.1f", grade.by().get(formula)).replaceAll("^-0\\.0$", "0.0");
            row.append(' ').append(grade.rough(formula) ? "(" + number + ")" : number).append(" |");
        }
        return row.append('\n').toString();
    }

    private static double most(String language) {
        return language.equals("en") ? ENGLISH : Wording.MOST_YEARS;
    }

    private static String all(String language) {
        return String.join(" ", CatalogueTest.families().map(family -> words(language, family)).toList());
    }

    private static String words(String language, Family family) {
        return CatalogueTest.clientWords(language, CatalogueTest.CATALOGUE.words(language, family.id()));
    }
}
