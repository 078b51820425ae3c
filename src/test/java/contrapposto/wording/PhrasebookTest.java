package contrapposto.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.catalogue.Implement;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.RestrictionTag;
import contrapposto.check.MeasureKind;
import contrapposto.check.ScreeningQuestion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the phrasebooks against the code and against each other. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PhrasebookTest {
    /** Keys whose last part is made of a question, a pressure or a criterion. */
    private static final Pattern MADE = Pattern.compile("(because|lost-on|lack|pose)/.*");
    private static final Pattern KEY = Pattern.compile("\"([a-z0-9/-]+)\"");
    private static final Pattern SAID = Pattern.compile("Said\\.of\\(([^;]*?)\\)");

    static List<String> languages() {
        return Phrasebook.LANGUAGES;
    }

    @ParameterizedTest
    @MethodSource("languages")
    void every_language_says_the_same_statements_with_the_same_values(String language) {
        var english = Phrasebook.of("en");
        var own = Phrasebook.of(language);
        assertEquals(new TreeSet<>(english.keys()), new TreeSet<>(own.keys()));
        assertEquals(new TreeSet<>(english.words()), new TreeSet<>(own.words()));
        assertEquals(places(english), places(own));
    }

    private static TreeMap<String, String> places(Phrasebook book) {
        var places = new TreeMap<String, String>();
        book.keys().forEach(key -> places.put(key, book.places(key).toString()));
        return places;
    }

    @Test
    void every_statement_of_the_code_is_in_the_phrasebook() throws IOException {
        var missing = new TreeSet<String>();
        for (String source : sources()) {
            SAID.matcher(source).results().flatMap(said -> KEY.matcher(said.group(1)).results()).map(key -> key.group(1))
                    .filter(key -> !key.matches(".*[/-]") && !Phrasebook.of("en").keys().contains(key)).forEach(missing::add);
        }
        assertEquals(new TreeSet<String>(), missing);
    }

    @Test
    void every_sentence_of_the_phrasebook_is_said_somewhere() throws IOException {
        var idle = new TreeSet<>(Phrasebook.of("en").keys());
        idle.removeIf(key -> MADE.matcher(key).matches());
        for (String source : sources()) {
            KEY.matcher(source).results().forEach(key -> idle.remove(key.group(1)));
        }
        assertEquals(new TreeSet<String>(), idle);
    }

    @Test
    void every_word_that_a_spec_or_the_catalogue_may_name_is_in_the_phrasebook() {
        var named = new TreeSet<String>();
        Arrays.stream(Muscle.values()).map(Muscle::word).forEach(named::add);
        Arrays.stream(Implement.values()).map(Implement::word).forEach(named::add);
        named.addAll(RestrictionTag.words());
        MeasureKind.words().stream().map(word -> word.replace(' ', '-')).forEach(named::add);
        ScreeningQuestion.inOrder().stream().map(ScreeningQuestion::word).forEach(named::add);
        named.removeAll(Phrasebook.of("en").words());
        assertEquals(new TreeSet<String>(), named);
    }

    @Test
    void english_words_are_those_of_the_files_where_nothing_better_is_said() {
        assertEquals("hip internal rotation", Phrasebook.of("en").word("hip-internal-rotation"));
        assertTrue(Teller.PLAIN.plain(Said.of("sets").count("sets", 1)).startsWith("1 set a side"));
    }

    private static List<String> sources() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            return files.filter(f -> f.toString().endsWith(".java")).map(PhrasebookTest::text).toList();
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
