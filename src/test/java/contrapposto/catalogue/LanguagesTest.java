package contrapposto.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.wording.Phrasebook;
import contrapposto.yaml.YamlReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every family says the same in every language: same keys, same number of cues, same placeholders; only the words differ. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LanguagesTest {
    private static final Path FOLDER = Path.of("src/main/resources/contrapposto/catalogue");
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\w+)}");
    private static final Catalogue CATALOGUE = CatalogueReader.house(HouseRulesReader.house());

    static List<String> others() {
        return Phrasebook.LANGUAGES.stream().filter(language -> !language.equals("en")).toList();
    }

    @Test
    void the_index_names_the_languages_that_the_program_speaks() {
        assertEquals(Phrasebook.LANGUAGES, List.copyOf(CATALOGUE.words().keySet()));
    }

    @ParameterizedTest
    @MethodSource("others")
    void there_is_a_file_for_each_family_and_no_other(String language) throws IOException {
        assertEquals(files("en"), files(language));
    }

    @ParameterizedTest
    @MethodSource("others")
    void every_file_reads_without_a_notice(String language) throws IOException {
        for (var family : CATALOGUE.families()) {
            var file = FOLDER.resolve(language + "/" + family.id() + ".yaml");
            var reading = YamlReader.readOn(file.toString(), Files.readAllBytes(file));
            var notices = new ArrayList<>(reading.notices());
            new WordsReader(family, language, notices).read(reading.root().orElseThrow());
            assertEquals(List.of(), notices);
        }
    }

    /** Mistakes, cautions, easier and harder forms are printed once for both sides of a card. */
    @Test
    void what_is_printed_for_both_sides_names_neither() {
        for (var language : Phrasebook.LANGUAGES) {
            for (var family : CATALOGUE.families()) {
                var words = CATALOGUE.words(language, family.id());
                var shared = new ArrayList<>(words.cautions());
                words.mistakes().forEach(mistake -> shared.add(mistake.what() + " " + mistake.fix()));
                shared.addAll(words.easier().values());
                shared.addAll(words.harder().values());
                shared.forEach(text -> assertEquals(false, PLACEHOLDER.matcher(text).find(), language + " " + family.id() + ": " + text));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("others")
    void every_family_says_as_much_as_in_English(String language) {
        for (var family : CATALOGUE.families()) {
            assertEquals(shape(CATALOGUE.words("en", family.id())), shape(CATALOGUE.words(language, family.id())), family.id());
        }
    }

    @ParameterizedTest
    @MethodSource("others")
    void no_name_is_given_twice_and_no_English_is_left(String language) {
        var names = CATALOGUE.families().stream().map(f -> CATALOGUE.words(language, f.id()).name()).toList();
        assertEquals(names.size(), new TreeSet<>(names).size(), names.toString());
        for (var family : CATALOGUE.families()) {
            String words = CATALOGUE.words(language, family.id()).toString();
            assertTrue(!Pattern.compile("\\b(the|your|and|with)\\b").matcher(words).find(), family.id());
        }
    }

    /** Keys, counts and placeholders; a placeholder's place in the sentence and its case are the language's affair. */
    private static String shape(FamilyWords words) {
        return "heading " + words.heading().keySet() + words.heading().values().stream().map(LanguagesTest::placeholders).toList()
                + " cues " + Stream.of(words.cues().landing(), words.cues().drive(), words.cues().both())
                .map(cues -> cues.stream().map(LanguagesTest::placeholders).toList()).toList()
                + " feel " + words.feel().keySet() + " arrow " + words.arrow().values().stream().map(LanguagesTest::placeholders).toList()
                + " mistakes " + words.mistakes().size() + " easier " + words.easier().keySet() + " harder " + words.harder().keySet()
                + " cautions " + words.cautions().size() + " feels " + words.feel().values().stream().map(LanguagesTest::placeholders).toList();
    }

    private static String placeholders(String text) {
        return PLACEHOLDER.matcher(text).results().map(m -> m.group(1).toLowerCase(java.util.Locale.ROOT)).distinct().sorted()
                .collect(Collectors.joining(","));
    }

    private static List<String> files(String language) throws IOException {
        try (var files = Files.list(FOLDER.resolve(language))) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }
}
