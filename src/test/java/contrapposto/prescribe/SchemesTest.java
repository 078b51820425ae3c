package contrapposto.prescribe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Reason.Source;
import contrapposto.assess.Specs;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Band;
import contrapposto.check.CheckedSpec.Pull;
import contrapposto.check.CheckedSpec.Scheme;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.prescribe.Plan.Dose;
import contrapposto.prescribe.Plan.SidePlan;
import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Side;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a coach may choose: waves, easy weeks, bands with names, tests of both legs split by the bilateral index. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SchemesTest {
    private static Specs tested() {
        return Specs.turned(Turned.RIGHT).tested(Programs.squatTests(14, 18)).lasting(9, 90)
                .equipped(new CheckedSpec.Equipment(Specs.masses(1, 40, 1), false, List.of(), List.of(), Optional.empty(), List.of(), Optional.empty(), List.of(), Set.of()));
    }

    static CheckedSpec scheduled(CheckedSpec spec, Scheme scheme, OptionalInt easyEvery) {
        var s = spec.schedule();
        return new CheckedSpec(spec.fileName(), spec.sha256(), spec.title(), spec.client(), spec.practice(), spec.assessment(), spec.screening(),
                spec.clearance(), spec.restrictions(), spec.equipment(), new CheckedSpec.Schedule(s.start(), s.weeks(), s.days(), s.minutes(), s.startStage(),
                s.gate(), scheme, easyEvery), spec.aims(), spec.choices(), spec.handout());
    }

    private static CheckedSpec split(CheckedSpec spec, OptionalDouble index) {
        var a = spec.assessment();
        return new CheckedSpec(spec.fileName(), spec.sha256(), spec.title(), spec.client(), spec.practice(), new CheckedSpec.Assessment(a.date(), a.turned(),
                a.degree(), a.weightHabit(), a.lowShoulder(), a.measures(), a.tests(), index), spec.screening(), spec.clearance(), spec.restrictions(),
                spec.equipment(), spec.schedule(), spec.aims(), spec.choices(), spec.handout());
    }

    private static Plan plan(CheckedSpec spec, String... ids) {
        return Programs.PRESCRIBER.prescribe(Programs.selection(spec, List.of(ids)));
    }

    private static SidePlan squat(Plan plan, Side side) {
        return plan.exercises().getFirst().sides().on(side);
    }

    @Test
    void a_wave_goes_up_in_weight_and_down_in_repeats_and_the_next_begins_a_step_higher() {
        var doses = squat(plan(scheduled(tested().spec(), Scheme.WAVE, OptionalInt.of(0)), "split-squat"), Side.RIGHT).doses();
        for (int wave = 0; wave < 2; wave++) {
            var first = doses.get(3 * wave);
            var second = doses.get(3 * wave + 1);
            var third = doses.get(3 * wave + 2);
            assertTrue(first.load().orElse(0) < second.load().orElse(0) && second.load().orElse(0) < third.load().orElse(0), doses.toString());
            assertTrue(first.reps() >= second.reps() && second.reps() > third.reps(), doses.toString());
        }
        assertEquals(doses.get(1).load(), doses.get(3).load(), "the second wave begins where the first had its second week");
    }

    @Test
    void the_reason_calls_waves_a_means_and_the_coachs_choice_and_whoever_goes_slowly_has_none() {
        var reason = squat(plan(scheduled(tested().spec(), Scheme.WAVE, OptionalInt.empty()), "split-squat"), Side.LEFT).reasons().stream()
                .filter(r -> r.rule().equals("progression")).findFirst().orElseThrow();
        assertEquals(Source.COACH, reason.source());
        assertTrue(reason.because().endsWith("A means, not a proven driver") && reason.reference().contains("B2.5"), reason.because());
        var older = tested().aged(OptionalInt.of(70)).spec();
        assertEquals(squat(plan(older, "split-squat"), Side.LEFT).doses(),
                squat(plan(scheduled(older, Scheme.WAVE, OptionalInt.empty()), "split-squat"), Side.LEFT).doses());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 3, 5, 12})
    void easy_weeks_come_as_often_as_the_coach_says(int every) {
        var plan = plan(scheduled(tested().spec(), Scheme.DOUBLE, OptionalInt.of(every)), "split-squat");
        assertEquals(IntStream.rangeClosed(1, 9).filter(week -> every > 0 && week % every == 0).boxed().toList(),
                plan.weeks().stream().filter(Plan.Week::easy).map(Plan.Week::number).toList());
        assertEquals(every > 0 && every <= 9, plan.reasons().stream().anyMatch(r -> r.rule().equals("easy-weeks") && r.source() == Source.COACH));
    }

    /** G1.20: no kilograms, whatever a scale showed; the names stand in the order of the spec. */
    @Test
    void bands_are_told_by_name_and_never_counted_in_kilograms() {
        var e = tested().equipment();
        var specs = tested().equipped(new CheckedSpec.Equipment(e.dumbbells(), false, List.of(), List.of(), Optional.empty(), List.of(), Optional.empty(),
                List.of(), Set.of("band"), List.of(new Band("yellow", Optional.of(new Pull(Mass.ofKilograms(4), Length.ofCentimetres(120)))), new Band("red", Optional.empty()))));
        var family = Programs.CATALOGUE.families().stream().filter(f -> f.levers().implement().contains(contrapposto.catalogue.Implement.BAND)).findFirst().orElseThrow();
        var side = plan(specs.spec(), family.id()).exercises().getFirst().sides().values().getFirst();
        assertTrue(side.doses().stream().allMatch(dose -> dose.load().isEmpty() && dose.byEffort()));
        var said = side.reasons().stream().filter(r -> r.rule().equals("bands")).findFirst().orElseThrow().because();
        assertTrue(said.contains("yellow (4 kg on a scale at 120 cm)") && said.indexOf("yellow") < said.indexOf("red"), said);
    }

    /** The lightest weight is too heavy: that is said, nothing is held, and the catalogue's easier step is named. */
    @Test
    void where_the_lightest_weight_is_too_heavy_the_body_is_the_load_and_an_easier_way_is_named() {
        var heavy = tested().equipped(new CheckedSpec.Equipment(List.of(Mass.ofKilograms(40)), false, List.of(), List.of(), Optional.empty(), List.of(),
                Optional.empty(), List.of(), Set.of()));
        var plan = plan(heavy.spec(), "split-squat");
        var left = squat(plan, Side.LEFT);
        assertTrue(left.doses().stream().allMatch(dose -> dose.load().isEmpty() && !dose.byEffort()));
        assertEquals(List.of("lightest-too-heavy", "easier-way"), left.reasons().stream().map(r -> r.rule()).filter(r -> r.equals("lightest-too-heavy") || r.equals("easier-way")).toList());
        assertTrue(plan.warnings().stream().anyMatch(w -> w.key().equals("warning/exercise")));
    }

    /**
     * B4.10 (Howard and Enoka 1991): both together bear 90 % of the sum at an index of −10, so one leg bears 1 ÷ 0.9 of its half; the pose has
     * half of both already. Without the index a test of both legs says nothing about one.
     */
    @Test
    void a_test_of_both_legs_is_split_only_when_told_to() {
        var spec = tested().tested(List.of(Programs.test("goblet-squat", Optional.empty(), 20, 8, 2))).spec();
        assertTrue(squat(plan(spec, "split-squat"), Side.LEFT).capacity().isEmpty());
        var even = squat(plan(split(spec, OptionalDouble.of(0)), "split-squat"), Side.LEFT).capacity().orElseThrow();
        var deficit = squat(plan(split(spec, OptionalDouble.of(-10)), "split-squat"), Side.LEFT);
        assertEquals(even.together() / 0.9, deficit.capacity().orElseThrow().together(), 1e-9);
        assertTrue(deficit.reasons().stream().anyMatch(r -> r.rule().equals("bilateral-index") && r.source() == Source.COACH));
        assertTrue(deficit.doses().getFirst().load().orElse(0) <= 10, "no more than half of what both lifted");
        var own = split(tested().tested(Programs.squatTests(14, 18)).spec(), OptionalDouble.of(-10));
        assertEquals(squat(plan(tested().spec(), "split-squat"), Side.LEFT).doses().stream().map(Dose::load).toList(),
                squat(plan(own, "split-squat"), Side.LEFT).doses().stream().map(Dose::load).toList(), "a test of the leg itself comes first");
    }
}
