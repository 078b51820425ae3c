package contrapposto.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Assessed.Verdict;
import contrapposto.assess.Reason.Source;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Measure;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.check.Condition;
import contrapposto.check.Condition.Kind;
import contrapposto.check.Condition.Where;
import contrapposto.quantity.Side;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What the coach reads of an assessment: each sentence, its source, and what the verdict withholds. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CoachWordsTest {
    private static List<String> said(Specs specs, String rule) {
        var assessed = new Assessor().assess(specs.spec(), Rules.house());
        return Reason.all(assessed.reasons(), assessed.verdict().reasons()).stream().filter(r -> r.rule().equals(rule)).map(Reason::because).toList();
    }

    private static List<Reason> signs(Optional<Side> landing, Optional<Side> habit, Optional<Side> shoulder) {
        return new Agreements(landing, Rules.house()).signs(new CheckedSpec.Assessment(Specs.START, Turned.RIGHT, CheckedSpec.Degree.CLEAR,
                habit, shoulder, List.of(), List.of()));
    }

    /** Common practice, no source: a pelvis turned right goes with the weight on the right leg and a low right shoulder. */
    @Test
    void a_habit_or_shoulder_on_the_drive_side_agrees() {
        assertEquals(List.of("weight habit right: agrees with the finding", "low shoulder left: does not agree with the finding, which stands"),
                signs(Optional.of(Side.LEFT), Optional.of(Side.RIGHT), Optional.of(Side.LEFT)).stream().map(Reason::because).toList());
    }

    @Test
    void with_a_square_pelvis_they_are_only_told() {
        var told = signs(Optional.empty(), Optional.of(Side.LEFT), Optional.empty());
        assertEquals(List.of("weight habit left: the pelvis is square all the same"), told.stream().map(Reason::because).toList());
        assertEquals(Source.PRACTICE, told.getFirst().source());
        assertEquals(List.of(), signs(Optional.empty(), Optional.empty(), Optional.empty()));
    }

    @Test
    void each_measure_is_told_with_its_sum_and_its_error() {
        assertEquals(List.of(
                "hip internal rotation: left 24, right 41 degrees, difference 17 (measurement error 5): less on the left side, agrees with the finding",
                "hip external rotation: left 30, right 52 degrees, difference 22 (measurement error 5): less on the left side, does not agree with the finding, which stands",
                "seated trunk turn: left 52, right 55 degrees, difference 3 (measurement error 5): too small to count",
                "ankle dorsiflexion: left 20, right 38 degrees, difference 18 (measurement error 5): not part of the finding; used as a limit of the joint where it is one"),
                said(Specs.turned(Turned.RIGHT).measured(new Measure("hip internal rotation", 24, 41, "deg"), new Measure("hip external rotation", 30, 52, "deg"),
                        new Measure("seated trunk turn", 52, 55, "deg"), new Measure("ankle dorsiflexion", 20, 38, "deg")), "measure-agrees"));
    }

    @Test
    void equal_measures_of_a_square_pelvis_are_told_as_expected() {
        assertEquals(List.of("hip internal rotation: left 35, right 35 degrees, difference 0 (measurement error 5): no difference that counts, as a square pelvis lets expect"),
                said(Specs.turned(Turned.SQUARE).measured(new Measure("hip internal rotation", 35, 35, "deg")), "measure-agrees"));
    }

    @Test
    void what_is_only_a_limit_is_the_houses_and_what_agrees_is_practice() {
        var reasons = new Assessor().assess(Specs.turned(Turned.RIGHT).measured(new Measure("ankle dorsiflexion", 20, 38, "deg"),
                new Measure("hip internal rotation", 24, 41, "deg")).spec(), Rules.house()).reasons().stream().filter(r -> r.rule().equals("measure-agrees")).toList();
        assertEquals(List.of(Source.HOUSE, Source.PRACTICE), reasons.stream().map(Reason::source).toList());
    }

    @Test
    void a_condition_is_told_with_its_place_and_day() {
        var knee = new Condition(Kind.SURGERY, Optional.of(Specs.START.minusWeeks(20)), Optional.of(Where.KNEE), Set.of(Side.RIGHT));
        var bones = new Condition(Kind.OSTEOPOROSIS, Optional.empty(), Optional.empty(), EnumSet.allOf(Side.class));
        var specs = Specs.turned(Turned.RIGHT).having(knee, bones);
        assertTrue(said(specs, "screening-surgery").getFirst().startsWith("surgery of the knee, 20 October 2025; "), said(specs, "screening-surgery")::toString);
        assertTrue(said(specs, "screening-osteoporosis").getFirst().startsWith("osteoporosis; "), said(specs, "screening-osteoporosis")::toString);
    }

    @Test
    void an_old_clearance_is_told_with_its_day_and_none_as_needed() {
        var pain = Specs.turned(Turned.RIGHT).answering("told-not-to-exercise", true);
        assertTrue(said(pain, "screening-told-not-to-exercise").getFirst().endsWith("needs clearance"));
        var old = said(pain.cleared(Specs.START.minusMonths(12).minusDays(1), "none"), "screening-told-not-to-exercise").getFirst();
        assertTrue(old.endsWith("the clearance of 8 March 2025 is older than 12 months at the start, 9 March 2026"), old);
        var fresh = said(pain.cleared(Specs.START.minusMonths(12), "none"), "screening-told-not-to-exercise").getFirst();
        assertTrue(fresh.endsWith("cleared by Dr A. Example on 9 March 2025, with limits"), fresh);
    }

    @Test
    void limits_that_only_repeat_none_add_nothing() {
        var pain = Specs.turned(Turned.RIGHT).answering("told-not-to-exercise", true);
        assertEquals(List.of(), said(pain.cleared(Specs.START, " None "), "clearance-limits"));
        assertEquals(List.of(), said(pain.cleared(Specs.START, " "), "clearance-limits"));
        assertEquals(1, said(pain.cleared(Specs.START, "no jumping"), "clearance-limits").size());
    }

    @Test
    void a_blood_pressure_of_one_number_only_or_none_is_unanswered() {
        assertFalse(Screener.unanswered(Specs.turned(Turned.RIGHT).spec()).contains(ScreeningTable.PRESSURE));
        assertTrue(Screener.unanswered(Specs.turned(Turned.RIGHT).withoutPressure().spec()).contains(ScreeningTable.PRESSURE));
    }

    @Test
    void stops_and_missing_clearances_withhold_and_nothing_else_does() {
        assertFalse(new Verdict.Clear(List.of()).withheld());
        assertFalse(new Verdict.WithLimits(Set.of(), List.of()).withheld());
        assertTrue(new Verdict.NeedsClearance(List.of(), List.of()).withheld());
        assertTrue(new Verdict.Stop(List.of(), List.of()).withheld());
    }

    @Test
    void the_reason_for_the_roles_names_both_sides() {
        assertEquals(List.of("the pelvis is turned right: the left side learns to land, the right side to drive"),
                new Assessor().assess(Specs.turned(Turned.RIGHT).spec(), Rules.house()).reasons().stream().map(Reason::because).filter(s -> s.startsWith("the pelvis")).toList());
    }

    @Test
    void words_of_roles_indices_and_lists_of_reasons() {
        assertEquals(List.of("landing", "drive", "both"), List.of(Role.values()).stream().map(Role::word).toList());
        assertTrue(Symmetry.LIMB_SYMMETRY_INDEX.words().contains("100 × smaller ÷ larger"));
        var one = Reason.of("one", contrapposto.wording.Said.of("sign/agrees"), Source.HOUSE);
        var two = Reason.of("two", contrapposto.wording.Said.of("sign/agrees"), Source.HOUSE);
        assertEquals(List.of(one, two), Reason.all(List.of(one), List.of(two)));
    }
}
