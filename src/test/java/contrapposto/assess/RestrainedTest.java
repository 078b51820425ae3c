package contrapposto.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Reason.Source;
import contrapposto.check.CheckedSpec.Restriction;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.check.Condition;
import contrapposto.check.Condition.Kind;
import contrapposto.check.Condition.Where;
import contrapposto.quantity.Angle;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Side;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What binds a plan, in order and in words: the coach's restrictions while they hold, then what conditions bring. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RestrainedTest {
    private static final Set<Side> BOTH = EnumSet.allOf(Side.class);

    private static List<Restrained> restrained(Specs specs) {
        return new Assessor().assess(specs.spec(), Rules.house()).restrained();
    }

    private static List<String> words(Restriction... restrictions) {
        return restrained(Specs.turned(Turned.RIGHT).restricted(restrictions)).stream().map(r -> r.why().because()).toList();
    }

    private static Restriction avoid(Optional<LocalDate> until) {
        return new Restriction.Avoid("kneeling", Set.of(Side.LEFT), until, "");
    }

    @ParameterizedTest
    @CsvSource({"-1, 0", "0, 1", "1, 1"})
    void a_restriction_holds_through_its_last_day(int daysAfterStart, int binding) {
        assertEquals(binding, words(avoid(Optional.of(Specs.START.plusDays(daysAfterStart)))).size());
    }

    @Test
    void one_without_a_last_day_holds_and_says_none() {
        assertEquals(List.of("restriction: avoid kneeling on the left side"), words(avoid(Optional.empty())));
    }

    @Test
    void the_coach_reads_what_side_until_when_and_why() {
        var until = Optional.of(Specs.START.plusDays(20));
        assertEquals(List.of("restriction: avoid kneeling on the right side until 29 March 2026 (a bruise)",
                "restriction: avoid split-squat",
                "restriction: limit the weight in a hand (a wrist)",
                "restriction: limit knee flexion on the left side until 29 March 2026"),
                words(new Restriction.Avoid("kneeling", Set.of(Side.RIGHT), until, "a bruise"),
                        new Restriction.Avoid("split-squat", BOTH, Optional.empty(), ""),
                        new Restriction.LimitLoad(Mass.ofKilograms(8), Optional.empty(), "a wrist"),
                        new Restriction.LimitRange("knee-flexion", Set.of(Side.LEFT), Angle.ofDegrees(70), until, "")));
    }

    @Test
    void a_restriction_is_the_coachs_own() {
        var own = restrained(Specs.turned(Turned.RIGHT).restricted(avoid(Optional.empty()))).getFirst().why();
        assertEquals(List.of("restriction", Source.COACH, ""), List.of(own.rule(), own.source(), own.reference()));
    }

    @Test
    void a_new_knee_brings_what_its_row_says_on_its_side_only() {
        var knee = new Condition(Kind.JOINT_REPLACEMENT, Optional.of(Specs.START.minusWeeks(40)), Optional.of(Where.KNEE), Set.of(Side.RIGHT));
        var all = restrained(Specs.turned(Turned.RIGHT).having(knee));
        assertEquals(List.of(new Restriction.Avoid("kneeling", Set.of(Side.RIGHT), Optional.empty(), ""),
                new Restriction.LimitRange("knee-flexion", Set.of(Side.RIGHT), Angle.ofDegrees(110), Optional.empty(), "")),
                all.stream().map(Restrained::restriction).toList());
        assertEquals(Set.of("condition-joint-replacement"), Set.copyOf(all.stream().map(r -> r.why().rule()).toList()));
    }

    @Test
    void a_row_without_a_reference_is_practice_and_one_with_it_published() {
        var bones = new Condition(Kind.OSTEOPOROSIS, Optional.empty(), Optional.empty(), BOTH);
        var knee = new Condition(Kind.JOINT_REPLACEMENT, Optional.of(Specs.START.minusWeeks(40)), Optional.of(Where.KNEE), Set.of(Side.RIGHT));
        assertEquals(Source.PUBLISHED, restrained(Specs.turned(Turned.RIGHT).having(bones)).getFirst().why().source());
        assertEquals(Source.PRACTICE, restrained(Specs.turned(Turned.RIGHT).having(knee)).getFirst().why().source());
    }

    @Test
    void the_coachs_restrictions_come_first() {
        var bones = new Condition(Kind.OSTEOPOROSIS, Optional.empty(), Optional.empty(), BOTH);
        var all = restrained(Specs.turned(Turned.RIGHT).restricted(avoid(Optional.empty())).having(bones));
        assertEquals("restriction", all.getFirst().why().rule());
        assertTrue(all.size() > 1 && all.stream().skip(1).allMatch(r -> r.why().rule().equals("condition-osteoporosis")), all::toString);
    }

    @Test
    void no_condition_and_no_restriction_bind_nothing() {
        assertTrue(restrained(Specs.turned(Turned.RIGHT)).isEmpty());
        assertFalse(restrained(Specs.turned(Turned.RIGHT).restricted(avoid(Optional.empty()))).isEmpty());
    }
}
