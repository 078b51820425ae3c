package contrapposto.prescribe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.assess.Specs;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.wording.Phrasebook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Traps in the literature: rules printed in several versions, superseded stands, and what is repeated without a source. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PublishedTrapsTest {
    private static List<Reason> reasons() {
        var plan = Programs.plan(Specs.turned(Turned.RIGHT).tested(Programs.squatTests(14, 18)).lasting(8, 90));
        return Stream.concat(plan.reasons().stream(), plan.exercises().stream().flatMap(e -> e.sides().values().stream())
                .flatMap(s -> s.reasons().stream())).toList();
    }

    private static List<Reason> of(String rule) {
        var found = reasons().stream().filter(r -> r.rule().equals(rule)).toList();
        assertFalse(found.isEmpty(), rule);
        return found;
    }

    /** J3: the 2–10 % rule is printed with and without "two sessions in a row", and "2 for 2" is a third variant: ours is named. */
    @Test
    void the_version_of_the_progression_rule_is_named() {
        assertTrue(of("progression").stream().allMatch(r -> r.reference().contains("ACSM 2009, wording of the evidence table, two sessions in a row")));
    }

    /** J4, B2.5: since 2026 tempo and the model of periods count as no driver: said in every language, and nothing claims it as published. */
    @Test
    void tempo_and_easy_weeks_are_means_and_no_proven_drivers() throws IOException {
        for (var reason : of("tempo")) {
            assertEquals(Source.PRACTICE, reason.source());
            assertEquals("B2.5: ACSM 2026", reason.reference());
        }
        assertTrue(of("easy-weeks").stream().allMatch(r -> r.source() == Source.HOUSE));
        var notProven = Map.of("en", "not a proven driver", "es", "no una causa probada", "de", "keine bewiesene Ursache");
        for (var language : Phrasebook.LANGUAGES) {
            for (var key : List.of("tempo", "easy-weeks")) {
                assertTrue(sentence(language, key).contains(notProven.get(language)), language + " " + key);
            }
        }
    }

    /** Every published reason that names the college says which year: the stand of 2026 replaced the one of 2009. */
    @Test
    void a_stand_is_never_named_without_its_year() {
        var bare = Pattern.compile("ACSM(?! 20(09|26))");
        reasons().forEach(r -> assertFalse(bare.matcher(r.reference()).find(), r.reference()));
    }

    /** J12: in a split squat the hand that holds the weight made no clear difference in muscle activity: "expected", never "proved". */
    @Test
    void the_effect_of_the_hand_with_the_weight_is_called_expected() throws IOException {
        var expected = Map.of("en", "expected", "es", "se espera", "de", "voraussichtlich");
        for (var language : Phrasebook.LANGUAGES) {
            for (var key : List.of("load-hand/expected", "load-hand/toward")) {
                assertTrue(sentence(language, key).contains(expected.get(language)), language + " " + key);
            }
        }
    }

    /** J13, B4.11: shares of a kickstand, the best angle of a cable and "weaker side first" have no measured source, so none is claimed. */
    @Test
    void what_has_no_measured_source_claims_none() throws IOException {
        assertTrue(of("first-side").stream().allMatch(r -> r.source() == Source.HOUSE));
        var words = Pattern.compile("70\\s*/\\s*30|90\\s*/\\s*10|tripod|best angle|weaker side first");
        try (var files = Stream.concat(Files.walk(Path.of("src/main/resources/contrapposto/catalogue")), Files.walk(Path.of("templates")))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                assertFalse(words.matcher(Files.readString(file).toLowerCase(Locale.ROOT)).find(), file.toString());
            }
        }
    }

    /** A5, A7.10, B2.1, B3.20: what was only seen as a title or a count is quoted nowhere as a number. */
    @Test
    void papers_of_which_only_an_abstract_was_seen_lend_no_numbers() throws IOException {
        try (var files = Files.walk(Path.of("templates"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                var text = Files.readString(file);
                assertFalse(Stream.of("Nuzzo", "Helms", "Paluch", "17 % lower").anyMatch(text::contains), file.toString());
            }
        }
    }

    private static String sentence(String language, String key) throws IOException {
        return Files.readAllLines(Path.of("templates/" + language + "/reasons.yaml")).stream().filter(l -> l.startsWith("  " + key + ":"))
                .findFirst().orElseThrow();
    }
}
