package contrapposto.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Assessed.Limit;
import contrapposto.assess.Assessed.Verdict;
import contrapposto.check.CheckedSpec.Restriction;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.check.Condition;
import contrapposto.check.Condition.Kind;
import contrapposto.check.Condition.Where;
import contrapposto.quantity.Side;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The second half of the decision table: what each condition leads to in time, alone and in pairs. Trimesters end with the
 * weeks 13 and 27 (ACOG); weeks after operations are those of E2.14 to E2.17 (general texts, from memory), and where these
 * leave a choice the stricter was taken: house.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ConditionsTest {
    private enum Outcome { CLEAR, LIMITS, CLEARANCE, STOP }

    private static Assessed assessed(Specs specs) {
        return new Assessor().assess(specs.spec(), Rules.house());
    }

    private static Outcome outcome(Verdict verdict) {
        return switch (verdict) {
            case Verdict.Clear clear -> Outcome.CLEAR;
            case Verdict.WithLimits limits -> Outcome.LIMITS;
            case Verdict.NeedsClearance needs -> Outcome.CLEARANCE;
            case Verdict.Stop stop -> Outcome.STOP;
        };
    }

    private static Specs having(Condition... conditions) {
        return Specs.turned(Turned.RIGHT).having(conditions);
    }

    private static Condition weeksAgo(Kind kind, Optional<Where> where, long weeks) {
        return new Condition(kind, Optional.of(Specs.START.minusWeeks(weeks)), where, Set.of(Side.LEFT));
    }

    @ParameterizedTest
    @CsvSource({"BIRTH,,5,CLEARANCE", "BIRTH,,6,LIMITS", "BIRTH,,12,CLEAR", "CAESAREAN_BIRTH,,5,CLEARANCE",
        "CAESAREAN_BIRTH,,15,LIMITS", "CAESAREAN_BIRTH,,16,CLEAR", "SURGERY,ABDOMEN,5,CLEARANCE", "SURGERY,ABDOMEN,6,LIMITS",
        "SURGERY,ABDOMEN,12,CLEAR", "SURGERY,BACK,11,CLEARANCE", "SURGERY,NECK,12,LIMITS", "SURGERY,BACK,26,CLEAR",
        "SURGERY,KNEE,11,CLEARANCE", "SURGERY,HIP,25,LIMITS", "SURGERY,ANKLE,26,CLEAR", "SURGERY,SHOULDER,5,CLEARANCE",
        "SURGERY,SHOULDER,15,LIMITS", "SURGERY,SHOULDER,16,CLEAR", "SURGERY,WRIST,5,CLEARANCE", "SURGERY,ELBOW,11,LIMITS",
        "SURGERY,WRIST,12,CLEAR", "SURGERY,EYE,11,CLEARANCE", "SURGERY,EYE,12,CLEAR", "SURGERY,OTHER,5,CLEARANCE",
        "SURGERY,OTHER,6,CLEAR", "JOINT_REPLACEMENT,HIP,11,CLEARANCE", "JOINT_REPLACEMENT,HIP,12,LIMITS",
        "JOINT_REPLACEMENT,KNEE,11,CLEARANCE", "JOINT_REPLACEMENT,KNEE,500,LIMITS", "JOINT_REPLACEMENT,ANKLE,11,CLEARANCE",
        "JOINT_REPLACEMENT,ANKLE,500,LIMITS", "JOINT_REPLACEMENT,SHOULDER,11,CLEARANCE", "JOINT_REPLACEMENT,ELBOW,500,LIMITS"})
    void time_since_an_operation_or_a_birth_decides(Kind kind, Where where, long weeks, Outcome outcome) {
        var verdict = assessed(having(weeksAgo(kind, Optional.ofNullable(where), weeks))).verdict();
        assertEquals(outcome, outcome(verdict));
        assertEquals(outcome == Outcome.CLEAR, verdict.reasons().isEmpty());
    }

    /** The program of eight weeks ends on 4 May 2026; the day due is 40 weeks after the first that counts. */
    @ParameterizedTest
    @CsvSource({"2026-11-03,13,false,false", "2026-11-02,14,true,false", "2026-07-28,27,true,false", "2026-07-27,28,true,true"})
    void a_pregnancy_is_read_by_the_trimester_in_which_the_program_ends(LocalDate due, long week, boolean noSupine, boolean notProne) {
        var condition = new Condition(Kind.PREGNANCY, Optional.of(due), Optional.empty(), EnumSet.allOf(Side.class));
        var found = assessed(having(condition).answering("pregnant", true));
        assertEquals(week, Conditions.week(having(condition).spec(), condition));
        assertEquals(noSupine, found.verdict().limits().contains(Limit.NO_SUPINE));
        assertTrue(found.verdict().limits().containsAll(List.of(Limit.NO_BREATH_HOLD, Limit.HAND_SUPPORT_FOR_REAR_RAISE)));
        assertEquals(notProne, avoided(found).contains("prone"));
    }

    @Test
    void a_pregnancy_whose_day_is_not_known_is_read_as_the_last_trimester() {
        var found = assessed(having(new Condition(Kind.PREGNANCY, Optional.empty(), Optional.empty(), EnumSet.allOf(Side.class))));
        assertTrue(avoided(found).contains("prone"));
        assertTrue(found.verdict().limits().contains(Limit.NO_SUPINE));
    }

    @Test
    void osteoporosis_spares_the_spine_without_a_blanket_ban() {
        var found = assessed(having(new Condition(Kind.OSTEOPOROSIS, Optional.empty(), Optional.empty(), EnumSet.allOf(Side.class))));
        assertEquals(Outcome.LIMITS, outcome(found.verdict()));
        assertEquals(List.of("spine-flexion", "loaded-spine-flexion", "loaded-twisting"), avoided(found));
        assertFalse(found.verdict().limits().contains(Limit.MODERATE_LOAD));
    }

    /** Reference E2.7, E2.8: moderate loads, no held breath; head below heart by common practice. */
    @Test
    void high_blood_pressure_as_such_keeps_loads_moderate_and_the_breath_free() {
        var found = assessed(having(new Condition(Kind.HIGH_BLOOD_PRESSURE, Optional.empty(), Optional.empty(), EnumSet.allOf(Side.class))));
        assertEquals(Outcome.LIMITS, outcome(found.verdict()));
        assertTrue(found.verdict().limits().containsAll(List.of(Limit.NO_BREATH_HOLD, Limit.MODERATE_LOAD)));
        assertEquals(List.of("head-below-heart"), avoided(found));
    }

    @Test
    void what_a_new_hip_must_not_do_concerns_its_own_side_and_is_kept_once_cleared() {
        var hip = weeksAgo(Kind.JOINT_REPLACEMENT, Optional.of(Where.HIP), 8);
        var found = assessed(having(hip).cleared(Specs.START.minusDays(3), "none"));
        assertEquals(Outcome.LIMITS, outcome(found.verdict()));
        assertTrue(found.restrained().stream().map(Restrained::restriction).anyMatch(r ->
                r instanceof Restriction.LimitRange(var what, var sides, var to, var until, var because)
                        && what.equals("hip-flexion") && sides.equals(Set.of(Side.LEFT)) && to.degrees() == 90));
    }

    static Stream<Arguments> pairs() {
        var all = Arrays.stream(Kind.values()).map(kind -> weeksAgo(kind, kind == Kind.SURGERY || kind == Kind.JOINT_REPLACEMENT
                ? Optional.of(Where.KNEE) : Optional.empty(), 2)).toList();
        return all.stream().flatMap(a -> all.stream().filter(b -> b != a).map(b -> Arguments.of(a, b)));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void of_two_conditions_the_heavier_decides_and_all_limits_add_up(Condition one, Condition other) {
        var first = assessed(having(one)).verdict();
        var second = assessed(having(other)).verdict();
        var both = assessed(having(one, other)).verdict();
        assertEquals(Math.max(outcome(first).ordinal(), outcome(second).ordinal()), outcome(both).ordinal());
        var cleared = assessed(having(one, other).cleared(Specs.START, "none")).verdict().limits();
        assertTrue(cleared.containsAll(assessed(having(one).cleared(Specs.START, "none")).verdict().limits()));
        assertTrue(cleared.containsAll(assessed(having(other).cleared(Specs.START, "none")).verdict().limits()));
    }

    @Test
    void an_emergency_stays_one_beside_any_condition() {
        for (var kind : Kind.values()) {
            var specs = having(weeksAgo(kind, Optional.of(Where.KNEE), 2)).answering("chest-pain", true);
            assertEquals(Outcome.STOP, outcome(assessed(specs.cleared(Specs.START, "none")).verdict()), kind.word());
        }
    }

    @Test
    void every_row_of_the_table_can_hold_and_says_on_whose_word() {
        for (var row : ConditionTable.ROWS) {
            var first = ConditionTable.ROWS.stream().filter(r -> r.kind() == row.kind() && r.where().equals(row.where())
                    && r.before() >= row.before()).findFirst().orElseThrow();
            assertEquals(row, first, "hidden by another: " + row.because().key());
            assertEquals(row.where().isEmpty(), row.kind().equals(Kind.PREGNANCY) || row.kind() == Kind.BIRTH
                    || row.kind() == Kind.CAESAREAN_BIRTH || row.kind() == Kind.OSTEOPOROSIS || row.kind() == Kind.HIGH_BLOOD_PRESSURE);
        }
    }

    private static List<String> avoided(Assessed found) {
        return found.restrained().stream().map(Restrained::restriction).filter(Restriction.Avoid.class::isInstance)
                .map(r -> ((Restriction.Avoid) r).what()).toList();
    }
}
