package contrapposto.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec.Restriction;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Sex;
import contrapposto.quantity.Side;
import contrapposto.quantity.UnitSystem;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ChecksTest {
    private static final String LEAST = """
            format: 1
            client: {name: Ada Quill, height: 171 cm, mass: 64 kg%s}
            assessment: {pelvis: {turned: right}%s}
            schedule: {start: 2026-03-09, weeks: 8, days: [wed, mon], minutes: 50}
            """;

    private static CheckedSpec quietly(String text) {
        return Quietly.value(Checks.check("specs/ada.block.yaml", text.getBytes(StandardCharsets.UTF_8), DemoSpecsTest.EXERCISES));
    }

    private static CheckedSpec with(String more) {
        return quietly(String.format(java.util.Locale.ROOT, LEAST, "", "") + more);
    }

    private static CheckedSpec client(String more, String assessment) {
        return quietly(String.format(java.util.Locale.ROOT, LEAST, more, assessment));
    }

    @Test
    void the_required_keys_alone_make_a_spec_with_the_stated_defaults() {
        var spec = with("");
        assertEquals("ada.block", spec.fileName());
        assertEquals(LocalDate.of(2026, 3, 9), spec.assessment().date(), "no date of assessment: the start");
        assertEquals(OptionalInt.empty(), spec.client().age());
        assertEquals(Sex.UNSTATED, spec.client().sex());
        assertEquals(UnitSystem.METRIC, spec.client().units());
        assertEquals(0, spec.client().trainingYears());
        assertEquals(Set.of("wall"), spec.equipment().also());
        assertEquals(List.of(CheckedSpec.Edition.CLIENT, CheckedSpec.Edition.COACH), spec.handout().editions());
        assertEquals(CheckedSpec.Paper.A4, spec.handout().paper());
        assertEquals(Stage.FLOOR, spec.schedule().startStage());
        assertEquals(List.of(DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY), spec.schedule().days(), "in week order");
        assertTrue(spec.screening().answers().isEmpty() && spec.screening().systolic().isEmpty());
    }

    @Test
    void the_hash_is_that_of_the_bytes() {
        // FIPS 180-2, appendix B.1: SHA-256 of "abc".
        assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
                Checks.sha256("abc".getBytes(StandardCharsets.US_ASCII)));
    }

    @ParameterizedTest
    @CsvSource({"1991-03-02, 35", "1991-03-03, 34", "1992-02-29, 34", "1961-03-02, 65"})
    void age_comes_from_the_date_of_birth_on_the_day_of_the_assessment(String born, int age) {
        assertEquals(age, client(", born: " + born, ", date: 2026-03-02").client().age().orElseThrow());
    }

    @Test
    void a_test_takes_the_day_of_the_assessment_and_an_unfixed_set_up() {
        var test = client("", ", date: 2026-03-02, tests: [{exercise: split-squat, side: left, load: 35 lb, reps: 8, in-reserve: 2}]")
                .assessment().tests().getFirst();
        assertEquals(LocalDate.of(2026, 3, 2), test.date());
        assertEquals(SetUpWish.NONE, test.setup());
        assertEquals(15.87573295, test.load().kilograms(), 1e-12);
    }

    @Test
    void restrictions_take_three_forms() {
        var restrictions = with("""
                restrictions:
                  - {avoid: kneeling, side: right, until: 2026-05-01, because: bruised kneecap}
                  - {avoid: split-squat}
                  - {limit: hand-load, to: 20 kg}
                  - {limit: knee-flexion, to: 70 deg, side: left}
                """).restrictions();
        var first = assertInstanceOf(Restriction.Avoid.class, restrictions.getFirst());
        assertEquals(Set.of(Side.RIGHT), first.sides());
        assertEquals(Optional.of(LocalDate.of(2026, 5, 1)), first.until());
        assertEquals(Set.of(Side.LEFT, Side.RIGHT), assertInstanceOf(Restriction.Avoid.class, restrictions.get(1)).sides());
        assertEquals(Mass.ofKilograms(20), assertInstanceOf(Restriction.LimitLoad.class, restrictions.get(2)).perHand());
        assertEquals(70, assertInstanceOf(Restriction.LimitRange.class, restrictions.get(3)).to().degrees());
    }

    @Test
    void steps_count_in_their_own_unit_without_drift() {
        var equipment = with("equipment: {dumbbells: {from: 2.5 lb, to: 100 lb, step: 2.5 lb, single: yes}, "
                + "kettlebells: {from: 0.1 kg, to: 1.2 kg, step: 0.1 kg}, cable: {step: 5 lb, to: 20 lb}}").equipment();
        assertEquals(40, equipment.dumbbells().size());
        assertTrue(equipment.singleDumbbells());
        assertEquals(Mass.ofPounds(45), equipment.dumbbells().get(17));
        assertEquals(Mass.ofKilograms(0.3), equipment.kettlebells().get(2));
        assertEquals(List.of(Mass.ofPounds(5), Mass.ofPounds(10), Mass.ofPounds(15), Mass.ofPounds(20)),
                equipment.cable().orElseThrow().stack());
    }

    @Test
    void a_bar_makes_every_load_of_whole_pairs() {
        var bars = with("equipment: {barbell: {bar: 20 kg, plates: {10 kg: 2, 1.25 kg: 4}}}").equipment().bars();
        assertEquals(List.of(20.0, 22.5, 25.0, 40.0, 42.5, 45.0), bars.stream().map(Mass::kilograms).toList());
    }

    @Test
    void the_coach_may_fix_a_set_up_and_add_words() {
        var choices = with("choose: {setup: {split-squat: {left: {front-raise: 4 in, load-hand: both}}}, "
                + "own-words: {split-squat: Think of the floor.}}").choices();
        var wish = choices.setup().get("split-squat").get(Side.LEFT);
        assertEquals(0.1016, wish.frontRaise().orElseThrow().metres(), 1e-12);
        assertTrue(wish.bothHands());
        assertEquals("Think of the floor.", choices.ownWords().get("split-squat"));
    }

    @Test
    void a_gate_and_measures_keep_the_unit_of_their_kind() {
        var spec = quietly(String.format(java.util.Locale.ROOT, LEAST, "", ", measures: [{what: knee-to-wall distance, left: 4 in, right: 11 cm}]")
                .replace("minutes: 50", "minutes: 50, gate: {what: hip internal rotation, difference-under: 10 deg}"));
        assertEquals(new CheckedSpec.Measure("knee-to-wall distance", 10.16, 11, "cm"), spec.assessment().measures().getFirst());
        assertEquals(new CheckedSpec.Gate("hip internal rotation", 10, "deg"), spec.schedule().gate().orElseThrow());
    }

    @Test
    void the_screening_keeps_answers_in_the_order_of_the_questions() {
        var screening = with("screening: {active-now: yes, chest-pain: no, resting-blood-pressure: 118/74}").screening();
        assertEquals("{chest-pain=false, active-now=true}", screening.answers().toString());
        assertEquals(118, screening.systolic().orElseThrow());
        assertEquals(74, screening.diastolic().orElseThrow());
    }

    @Test
    void what_a_coach_may_choose_about_weeks_bands_and_two_legged_tests_is_read() {
        var spec = with("""
                equipment: {bands: [{name: yellow, measured: {pull: 4 kg, at: 120 cm}}, {name: red}]}
                """);
        assertEquals(List.of("yellow", "red"), spec.equipment().bands().stream().map(CheckedSpec.Band::name).toList());
        assertEquals(4, spec.equipment().bands().getFirst().measured().orElseThrow().pull().kilograms());
        assertEquals(Set.of("band", "wall"), spec.equipment().also(), "a named band is a band");
        assertEquals(CheckedSpec.Scheme.DOUBLE, spec.schedule().scheme());
        assertEquals(OptionalInt.empty(), spec.schedule().easyEvery());
        var chosen = quietly("""
                format: 1
                client: {name: Ada Quill, height: 171 cm, mass: 64 kg}
                assessment: {pelvis: {turned: right}, bilateral-index: -10}
                schedule: {start: 2026-03-09, weeks: 8, days: [wed, mon], minutes: 50, progression: wave, easy-week-every: 0}
                """);
        assertEquals(CheckedSpec.Scheme.WAVE, chosen.schedule().scheme());
        assertEquals(OptionalInt.of(0), chosen.schedule().easyEvery());
        assertEquals(-10, chosen.assessment().bilateralIndex().orElseThrow());
    }
}
