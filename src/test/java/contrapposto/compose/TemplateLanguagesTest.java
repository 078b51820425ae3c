package contrapposto.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.check.CheckedSpec.Edition;
import contrapposto.check.CheckedSpec.Paper;
import contrapposto.check.CheckedSpec.Print;
import contrapposto.prescribe.Plan;
import contrapposto.wording.Phrasebook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every language has every template, and its templates write the same elements with the same attributes in the same order
 * and for the same cases as the English ones: a line, a label or a case that one language lacks or has too many is a failure.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TemplateLanguagesTest {
    private static final Path FOLDER = Path.of("templates");
    private static final Pattern COMMENT = Pattern.compile("<#--.*?-->", Pattern.DOTALL);
    private static final Pattern ELEMENT = Pattern.compile("<(/?[a-z][a-z-]*)((?:\\s+[a-z-]+=\"(?:\\$\\{(?:[^{}\"]|\"[^\"]*\")*}|[^\"$])*\")*)\\s*/?>");
    private static final Pattern ATTRIBUTE = Pattern.compile("\\s([a-z-]+)=\"");
    private static final Pattern KEPT = Pattern.compile("\\s(?:key|kind|field|drawing|role|level|weight|align|about|width|height|split|share)=\"[^\"]*\"");
    private static final Pattern NAME = Pattern.compile("[a-z0-9-]+(/[a-z0-9-]+)*");
    private static final Pattern ENGLISH = Pattern.compile("(?U)\\b(the|your|and|with|left|right|side|to)\\b");
    private static final Pattern POINT = Pattern.compile("\\d\\.\\d+[\\s\u00a0](kg|cm|%)");
    private static final Pattern CASE = Pattern.compile("<#on ([^>]*)>");
    /** Comments, placeholders and tags, a directive with comparisons and quoted words included. */
    private static final Pattern CODE = Pattern.compile("<#--.*?-->|\\$\\{(?:[^{}\"]|\"[^\"]*\")*}|</?[#@a-z](?:[^<>\"]|\"[^\"]*\")*>", Pattern.DOTALL);
    /** Papers keep their language. */
    private static final Pattern CITED = Pattern.compile("\\bet al\\b|\\bJ Sports\\b|Silbernagel");
    /** Cases that only other languages need: where English makes a word from the key. */
    private static final TreeSet<String> MADE_IN_ENGLISH = new TreeSet<>(List.of("\"hip\"", "\"knee\"", "\"shoulder\"", "\"band\"", "\"mat\"", "\"chair\"",
            "\"rail\"", "\"floor\"", "\"published\"", "\"practice\"", "\"house\"", "\"solved\"", "\"expected\""));

    static Stream<String> others() {
        return Phrasebook.LANGUAGES.stream().filter(language -> !language.equals("en"));
    }

    @ParameterizedTest
    @MethodSource("others")
    void every_language_has_every_template(String language) throws IOException {
        assertEquals(names("en"), names(language));
    }

    @ParameterizedTest
    @MethodSource("others")
    void its_templates_write_what_the_English_ones_write(String language) throws IOException {
        for (String name : names("en").stream().filter(n -> n.endsWith(".ftlx")).toList()) {
            String english = COMMENT.matcher(Files.readString(FOLDER.resolve("en").resolve(name))).replaceAll("");
            String other = COMMENT.matcher(Files.readString(FOLDER.resolve(language).resolve(name))).replaceAll("");
            assertEquals(elements(english), elements(other), language + "/" + name);
            assertEquals(cases(english), cases(other), language + "/" + name);
        }
    }

    @ParameterizedTest
    @MethodSource("others")
    void it_composes_every_edition_of_every_hand_made_plan_without_a_slip(String language) {
        for (Plan plan : List.of(Plans.turnedRight(), Plans.withheld())) {
            for (Edition edition : Edition.values()) {
                var order = new Composer.Order(edition, Paper.A4, Print.PLAIN, true, Optional.of(language));
                var document = ComposerTest.composed(plan, order);
                assertEquals(language, document.language());
                var lines = DocumentText.of(document.parts()).stream().filter(line -> !NAME.matcher(line).matches())
                        .map(line -> line.replace(plan.spec().title(), "")).toList();
                assertEquals(List.of(), lines.stream().filter(line -> ENGLISH.matcher(line).find()).toList());
                assertEquals(List.of(), lines.stream().filter(line -> POINT.matcher(line).find()).toList(), "a decimal point beside a unit");
            }
        }
    }

    /** Cases that no hand-made plan reaches are seen here: three English words in a row stand in no other language's template. */
    @ParameterizedTest
    @MethodSource("others")
    void no_template_keeps_English_words(String language) throws IOException {
        for (String name : names("en").stream().filter(n -> n.endsWith(".ftlx")).toList()) {
            var kept = threes(Files.readString(FOLDER.resolve(language).resolve(name)));
            kept.retainAll(threes(Files.readString(FOLDER.resolve("en").resolve(name))));
            kept.removeIf(words -> CITED.matcher(words).find());
            assertEquals(new TreeSet<>(), kept, language + "/" + name);
        }
    }

    /** Words of the template's own text, three in a row, not across marks. */
    private static TreeSet<String> threes(String template) {
        var threes = new TreeSet<String>();
        String text = CODE.matcher(template).replaceAll("\n");
        for (String line : text.split("[^\\p{L} ]")) {
            var words = line.strip().split(" +");
            for (int i = 0; i + 2 < words.length; i++) {
                threes.add(words[i] + " " + words[i + 1] + " " + words[i + 2]);
            }
        }
        return threes;
    }

    private static List<String> elements(String template) {
        var elements = new ArrayList<String>();
        ELEMENT.matcher(template).results().forEach(e -> elements.add(e.group(1)
                + ATTRIBUTE.matcher(e.group(2)).results().map(a -> " " + a.group(1)).reduce("", String::concat)
                + KEPT.matcher(e.group(2)).results().map(k -> k.group()).reduce("", String::concat)));
        return elements;
    }

    private static List<String> cases(String template) {
        return CASE.matcher(template).results().map(c -> c.group(1)).filter(c -> !MADE_IN_ENGLISH.contains(c)).toList();
    }

    private static List<String> names(String language) throws IOException {
        try (var files = Files.list(FOLDER.resolve(language))) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    /** B4.3 (Wellsandt et al. 2017), B4.9 (nine equations), B4.12 (Baroni et al. 2016): what stands under left against right. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "es", "de"})
    void the_page_on_what_changed_says_what_an_index_hides(String language) throws IOException {
        var text = Files.readString(FOLDER.resolve(language).resolve("changes.ftlx"));
        for (var source : List.of("Wellsandt et al. 2017", "Baroni et al. 2016", "<@equation word=changes.equation/>")) {
            assertTrue(text.contains(source), language + " " + source);
        }
    }
}
