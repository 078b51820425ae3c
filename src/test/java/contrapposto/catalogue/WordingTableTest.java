package contrapposto.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.audit.Grade;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** How hard the English card of each family reads. Target: grade 8 for client wording (F5.13). */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WordingTableTest {
    private static final double MOST = 8;
    /** The sample that McLaughlin 1969 asks for (F5.7). */
    private static final int ENOUGH = 30;

    @Test
    void the_words_of_every_family_read_at_grade_8_or_lower_and_hold_no_long_sentence() {
        CatalogueTest.families().forEach(family -> {
            var text = words(family);
            var grade = Grade.of(List.of(text));
            assertTrue(grade.kincaid() <= MOST, () -> family.id() + " reads at " + grade);
            assertTrue(sentences(text) < ENOUGH || grade.smog() <= MOST, () -> family.id() + " reads at " + grade);
            assertEquals(List.of(), grade.longest(), family.id());
        });
    }

    /** Hardly a family has the sentences that McLaughlin asks for; together they have more than enough. */
    @Test
    void all_families_together_read_at_grade_8_or_lower_by_both_formulas() {
        var all = all();
        assertTrue(sentences(all) > ENOUGH, all);
        var grade = Grade.of(List.of(all));
        assertTrue(grade.kincaid() <= MOST && grade.smog() <= MOST, grade::toString);
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
        var table = new StringBuilder("""
                # How hard the cards read

                Written by `WordingTableTest` from the English words of the family files; do not edit by hand. School years by Flesch and Kincaid
                and by McLaughlin (SMOG; its sample is 30 sentences, so with fewer it is put in brackets, as rough). Counted: cues, what to feel, mistakes and fixes,
                easier, harder, cautions. Target: 8 at most. The grades of whole handouts are in safety.md.

                | family | sentences | Flesch–Kincaid | SMOG |
                |---|---|---|---|
                """);
        CatalogueTest.families().forEach(family -> table.append(row(family.id(), words(family))));
        return table.append(row("all together", all())).toString();
    }

    private static String row(String name, String text) {
        var grade = Grade.of(List.of(text));
        int sentences = sentences(text);
        return String.format(Locale.ROOT, sentences < ENOUGH ? "| %s | %d | %.1f | (%.1f) |%n" : "| %s | %d | %.1f | %.1f |%n",
                name, sentences, grade.kincaid(), grade.smog()).replace(System.lineSeparator(), "\n").replace("-0.0", "0.0");
    }

    private static String all() {
        return String.join(" ", CatalogueTest.families().map(WordingTableTest::words).toList());
    }

    private static String words(Family family) {
        return CatalogueTest.clientWords(CatalogueTest.words(family));
    }

    private static int sentences(String text) {
        return text.split("(?<=[.!?])\\s+").length;
    }
}
