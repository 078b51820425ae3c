package contrapposto.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Assessed.Limit;
import contrapposto.assess.Assessed.Verdict;
import contrapposto.check.CheckedSpec.Turned;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The decision table, written out a second time here by outcome: every answer alone and in pairs. Logic: Riebe et al.
 * 2015, MSSE 47:2473 (activity, known disease, signs); Williams et al. 2007, Circulation 116:572 (blood pressure); red
 * flags of back pain in the context of NICE NG59; ACOG Committee Opinion 804. Where these leave a choice the stricter
 * was taken: house.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ScreenerTest {
    private enum Kind { CLEAR, LIMITS, CLEARANCE, STOP }

    /** The answer that counts against going on, and what it alone leads to. */
    private static final Map<String, Kind> EXPECTED = new LinkedHashMap<>();

    static {
        for (var sign : List.of("chest-pain", "breathless-at-rest", "spreading-weakness", "numb-saddle-or-bladder-change")) {
            EXPECTED.put(sign, Kind.STOP);
        }
        for (var sign : List.of("faint-or-dizzy", "palpitations", "ankle-swelling", "calf-pain",
                "heart-metabolic-or-kidney-disease", "told-not-to-exercise", "unexplained-night-pain",
                "fever-or-weight-loss", "recent-trauma", "recent-surgery")) {
            EXPECTED.put(sign, Kind.CLEARANCE);
        }
        for (var condition : List.of("cancer-history", "pregnant", "active-now")) {
            EXPECTED.put(condition, Kind.LIMITS);
        }
    }

    private static Verdict verdict(Specs specs) {
        return new Assessor().assess(specs.spec(), Rules.house()).verdict();
    }

    private static Kind kind(Verdict verdict) {
        return switch (verdict) {
            case Verdict.Clear clear -> Kind.CLEAR;
            case Verdict.WithLimits limits -> Kind.LIMITS;
            case Verdict.NeedsClearance needs -> Kind.CLEARANCE;
            case Verdict.Stop stop -> Kind.STOP;
        };
    }

    private static Specs well() {
        return Specs.turned(Turned.RIGHT);
    }

    private static Specs with(String question) {
        return well().answering(question, !question.equals("active-now"));
    }

    @Test
    void the_table_has_every_question_of_the_spec_once() {
        var asked = new ArrayList<>(EXPECTED.keySet());
        asked.add("resting-blood-pressure");
        assertEquals(asked.stream().sorted().toList(), ScreeningTable.QUESTIONS.stream().sorted().toList());
    }

    @Test
    void well_answered_is_clear() {
        assertEquals(Kind.CLEAR, kind(verdict(well())));
    }

    static Stream<String> answers() {
        return EXPECTED.keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("answers")
    void every_answer_alone_leads_where_its_source_says(String question) {
        var verdict = verdict(with(question));
        assertEquals(EXPECTED.get(question), kind(verdict));
        var reason = verdict.reasons().stream().filter(r -> r.rule().equals("screening-" + question)).findFirst().orElseThrow();
        assertTrue(!reason.reference().isEmpty() || reason.source() == Reason.Source.PRACTICE, "a row without a source");
    }

    static Stream<Arguments> pairs() {
        var questions = List.copyOf(EXPECTED.keySet());
        return questions.stream().flatMap(a -> questions.stream().filter(b -> questions.indexOf(b) > questions.indexOf(a))
                .map(b -> Arguments.of(a, b)));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void of_two_answers_the_heavier_decides_and_both_are_named(String first, String second) {
        var specs = with(first).answering(second, !second.equals("active-now"));
        var verdict = verdict(specs);
        var heavier = Kind.values()[Math.max(EXPECTED.get(first).ordinal(), EXPECTED.get(second).ordinal())];
        assertEquals(heavier, kind(verdict));
        for (var question : List.of(first, second)) {
            assertTrue(verdict.reasons().stream().anyMatch(r -> r.rule().equals("screening-" + question)));
        }
    }

    @ParameterizedTest
    @MethodSource("answers")
    void a_fresh_clearance_lifts_what_a_clinician_may_lift_and_never_an_emergency(String question) {
        var verdict = verdict(with(question).cleared(Specs.START.minusDays(8), "none"));
        assertEquals(EXPECTED.get(question) == Kind.STOP ? Kind.STOP : Kind.LIMITS, kind(verdict));
    }

    @ParameterizedTest
    @MethodSource("answers")
    void a_clearance_of_more_than_a_year_ago_lifts_nothing(String question) {
        var verdict = verdict(with(question).cleared(Specs.START.minusMonths(12).minusDays(1), "none"));
        assertEquals(EXPECTED.get(question), kind(verdict));
    }

    @ParameterizedTest
    @CsvSource({"118,74,CLEAR", "160,100,CLEAR", "161,74,CLEARANCE", "118,101,CLEARANCE", "180,110,CLEARANCE",
        "181,74,STOP", "118,111,STOP"})
    void blood_pressure_has_a_relative_limit_at_160_over_100_and_an_absolute_one_at_180_over_110(int over, int under, Kind kind) {
        assertEquals(kind, kind(verdict(well().withPressure(over, under))));
    }

    @ParameterizedTest
    @CsvSource({"170,80,CLEARANCE", "171,80,STOP"})
    void from_65_on_the_stricter_of_two_published_absolute_limits_holds(int over, int under, Kind kind) {
        assertEquals(kind, kind(verdict(well().aged(OptionalInt.of(70)).withPressure(over, under))));
    }

    @Test
    void raised_pressure_that_a_clinician_cleared_keeps_loads_moderate_and_the_breath_free() {
        var verdict = verdict(well().withPressure(165, 95).cleared(Specs.START, "none"));
        assertTrue(verdict.limits().containsAll(List.of(Limit.MODERATE_LOAD, Limit.NO_BREATH_HOLD)));
    }

    @Test
    void an_active_person_with_a_known_disease_goes_on_with_a_clearance_of_this_year() {
        var active = with("heart-metabolic-or-kidney-disease").cleared(Specs.START.minusMonths(11), "none");
        assertFalse(verdict(active).limits().contains(Limit.SLOWER_PROGRESSION));
        assertTrue(verdict(active.answering("active-now", false)).limits().contains(Limit.SLOWER_PROGRESSION));
    }

    @Test
    void pregnancy_rules_out_long_spells_on_the_back_and_held_breath() {
        assertTrue(verdict(with("pregnant")).limits().containsAll(List.of(Limit.NO_SUPINE, Limit.NO_BREATH_HOLD)));
    }

    @ParameterizedTest
    @CsvSource({"17,true", "18,false", "64,false", "65,true", "-1,true"})
    void the_young_the_older_and_those_of_unknown_age_get_the_cautions(int age, boolean cautious) {
        var specs = well().aged(age < 0 ? OptionalInt.empty() : OptionalInt.of(age));
        var assessed = new Assessor().assess(specs.spec(), Rules.house());
        assertEquals(cautious, assessed.cautious());
        assertEquals(cautious, assessed.verdict().limits().containsAll(List.of(Limit.SUPERVISION, Limit.SLOWER_PROGRESSION,
                Limit.HAND_SUPPORT_FOR_REAR_RAISE)));
    }

    @Test
    void what_was_not_answered_is_listed_and_counts_neither_way() {
        var assessed = new Assessor().assess(well().withAnswers(Map.of("chest-pain", false)).withoutPressure().spec(), Rules.house());
        assertInstanceOf(Verdict.Clear.class, assessed.verdict());
        assertEquals(ScreeningTable.QUESTIONS.size() - 1, assessed.unanswered().size());
        assertFalse(assessed.unanswered().contains("chest-pain"));
    }

    @Test
    void limits_that_a_clinician_wrote_keep_the_loads_low_and_are_quoted() {
        var verdict = verdict(with("recent-surgery").cleared(Specs.START, "nothing over the head"));
        assertTrue(verdict.limits().contains(Limit.MODERATE_LOAD));
        assertTrue(verdict.reasons().stream().anyMatch(r -> r.because().contains("nothing over the head")));
    }
}
