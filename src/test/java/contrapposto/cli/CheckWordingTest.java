package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.Yaml;

/** {@code check --wording}: what it measures and lists, and that a template too hard to read is warned of. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CheckWordingTest {
    private static final String REFERRED = """
            format: 1
            client: {code: HS-0707, age: 44, height: 168 cm, mass: 63 kg}
            assessment: {date: 2026-03-02, pelvis: {turned: right}}
            screening: {chest-pain: yes}
            schedule: {start: 2026-03-09, weeks: 2, days: [mon], minutes: 20, start-stage: standing}
            """;
    private static final String EVERYTHING = """
            chest-pain: yes, breathless-at-rest: yes, faint-or-dizzy: yes, palpitations: yes, ankle-swelling: yes, calf-pain: yes,
              heart-metabolic-or-kidney-disease: yes, told-not-to-exercise: yes, unexplained-night-pain: yes, fever-or-weight-loss: yes, recent-trauma: yes,
              spreading-weakness: yes, numb-saddle-or-bladder-change: yes, recent-surgery: yes, resting-blood-pressure: 185/112, conditions: [
              {what: birth, date: 2026-02-20}, {what: caesarean-birth, date: 2026-02-20}, {what: surgery, where: abdomen, date: 2026-02-20},
              {what: joint-replacement, where: hip, side: left, date: 2026-02-20}]""";
    private static final String HARD = "thoracic discomfort, respiratory insufficiency, neurological deterioration";
    /** 23 words. */
    private static final String LONG = HARD + " or cardiovascular abnormalities materialising during or immediately following participation in any of these prescribed activities at home";

    @TempDir
    private Path folder;

    /** Targets: grade 8, safety panel 6 (reference F5.13), by each formula that has text enough. */
    @ParameterizedTest
    @CsvSource({"veteran-left, es", "square-steady, de"})
    void a_demo_keeps_to_the_grades_and_its_long_sentences_and_rare_words_have_a_place(String demo, String language) {
        Map<String, Object> read = new Yaml().load(said(Console.DONE, "check", "--wording", "--json", "--quiet", "--language", language, "programs/" + demo + ".yaml"));
        assertEquals(List.of(), read.get("problems"));
        var wording = map(((List<?>) read.get("wording")).getFirst());
        assertEquals("programs/" + demo + ".yaml", wording.get("spec"));
        assertEquals(language, wording.get("language"));
        var parts = ((List<?>) wording.get("parts")).stream().map(CheckWordingTest::map).toList();
        assertEquals(5, parts.size());
        assertTrue(parts.stream().noneMatch(part -> (boolean) part.get("too-hard")), parts::toString);
        assertEquals(6, ((Number) parts.getLast().get("at-most")).intValue());
        for (var sentence : (List<?>) wording.get("long-sentences")) {
            assertTrue(((Number) map(sentence).get("words")).intValue() > 20);
            assertFalse(map(sentence).get("place").toString().isBlank());
        }
        assertTrue(((List<?>) wording.get("rare-words")).stream().map(CheckWordingTest::map).anyMatch(word -> (boolean) word.get("trade")
                && word.get("place").toString().contains(" > ")));
    }

    /** The panel at its longest: age unknown, pregnant, nothing answered, a bar; German words are the longest. */
    @ParameterizedTest
    @ValueSource(strings = {"es", "de"})
    void the_longest_safety_panel_stays_at_grade_6_in_every_language(String language) throws IOException {
        var spec = Files.writeString(folder.resolve("long.yaml"), REFERRED.replace("age: 44, ", "").replace("{chest-pain: yes}", "{pregnant: yes}")
                + "equipment: {barbell: {bar: 20 kg, plates: {5 kg: 2}}}\n").toString();
        assertFalse(said(Console.DONE, "check", "--wording", "--language", language, spec).contains("TOO HARD"));
    }

    /** With the words for every answer and condition that can hold a program back. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "es", "de"})
    void a_withheld_program_has_its_referral_page_measured(String language) throws IOException {
        var text = said(Console.DONE, "check", "--wording", "--language", language, Files.writeString(folder.resolve("held.yaml"), REFERRED.replace("chest-pain: yes", EVERYTHING)).toString());
        assertTrue(text.lines().filter(line -> line.contains("at most 6")).count() == 1, text);
        assertTrue(text.lines().filter(line -> line.contains("at most 8")).count() == 1, text);
        assertFalse(text.contains("TOO HARD"), text);
    }

    @Test
    void a_template_that_is_too_hard_is_warned_of_by_check_and_by_build_and_the_sentence_is_named() throws IOException {
        var own = Files.createDirectories(folder.resolve("own/en"));
        var safety = Files.readString(Path.of("templates/en/safety.ftlx")).replace("pain or pressure in your chest, neck, jaw or arm", LONG)
                .replace("fainting, or sudden loss of breath", HARD).replace("sudden weakness", HARD);
        Files.writeString(own.resolve("safety.ftlx"), safety);
        var spec = Files.writeString(folder.resolve("one.yaml"), REFERRED.replace("chest-pain: yes", "chest-pain: no")).toString();
        var checked = said(Console.DONE, "check", "--wording", "--templates", own.getParent().toString(), spec);
        assertTrue(checked.contains("warning[hard-words]: `Read this first` reads at grade "), checked);
        assertTrue(checked.contains("but at most 6 is wanted"), checked);
        assertTrue(checked.contains("templates/en/client.ftlx"), checked);
        assertTrue(checked.contains("[Your plan > Read this first > Stop and call for help] 23 words: " + LONG), checked);
        Files.writeString(own.resolve("safety.ftlx"), safety.replace(LONG, HARD));
        var built = said(Console.DONE, "build", "--templates", own.getParent().toString(), "-o", folder.resolve("out").toString(), "--edition", "client", spec);
        assertTrue(built.contains("warning[hard-words]"), built);
    }

    private static Map<String, Object> map(Object tree) {
        @SuppressWarnings("unchecked")
        var map = (Map<String, Object>) tree;
        return map;
    }

    private static String said(int code, String... arguments) {
        var said = new ByteArrayOutputStream();
        var out = new PrintStream(said, true, StandardCharsets.UTF_8);
        assertEquals(code, new Console(new Streams(new BufferedReader(new StringReader("")), out, out, Path.of(""), false)).run(arguments), said::toString);
        return said.toString(StandardCharsets.UTF_8);
    }
}
