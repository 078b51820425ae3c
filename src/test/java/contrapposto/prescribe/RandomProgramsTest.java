package contrapposto.prescribe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Specs;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Aim;
import contrapposto.check.CheckedSpec.Scheme;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.prescribe.Plan.Dose;
import contrapposto.prescribe.Plan.Exercise;
import contrapposto.prescribe.Plan.SidePlan;
import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** {@link ProgramLaws} on 240 invented clients ({@code -Drandom.programs} for more) with random tests, equipment, age and training; seeds are fixed. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RandomProgramsTest {
    private static final int CLIENTS = Integer.getInteger("random.programs", 240);
    private static final Map<Integer, Plan> PLANS = new TreeMap<>();

    static IntStream clients() {
        return IntStream.range(0, CLIENTS);
    }

    private static Specs client(int number) {
        var chance = new Random(new SplittableRandom(7_000 + number).nextLong());
        var tests = new ArrayList<CheckedSpec.Test>();
        for (var side : Side.values()) {
            for (var id : List.of("split-squat", "staggered-deadlift", "high-to-low-press", "supported-curl")) {
                for (int set = chance.nextInt(4); set > 0; set--) {
                    tests.add(Programs.test(id, Optional.of(side), 2 + 2 * chance.nextInt(18), 2 + chance.nextInt(6), chance.nextInt(4)));
                }
            }
        }
        double step = List.of(0.5, 1.0, 2.0, 2.5, 4.0).get(chance.nextInt(5));
        var weights = Specs.masses(step, step + step * (2 + chance.nextInt(20)), step);
        var stack = Specs.masses(2.5 + 2.5 * chance.nextInt(2), 80, 2.5 + 2.5 * chance.nextInt(2));
        var equipment = new CheckedSpec.Equipment(weights, false, weights, List.of(), Optional.of(new CheckedSpec.Cable(stack,
                1 + chance.nextInt(2), Length.ofCentimetres(20), Length.ofCentimetres(210))), List.of(), Optional.empty(),
                List.of(), Set.of());
        return Specs.turned(chance.nextBoolean() ? Turned.RIGHT : Turned.LEFT).tested(tests).equipped(equipment)
                .trained(List.of(0.0, 0.5, 2.0, 8.0).get(chance.nextInt(4)))
                .aged(chance.nextInt(5) == 0 ? OptionalInt.empty() : OptionalInt.of(15 + chance.nextInt(70)))
                .aiming(Aim.values()[chance.nextInt(2)])
                .answering("pregnant", chance.nextInt(6) == 0).lasting(1 + chance.nextInt(12), 30 + chance.nextInt(60));
    }

    private static Plan plan(int number) {
        return PLANS.computeIfAbsent(number, key -> Programs.plan(client(key)));
    }

    private static List<SidePlan> sides(Plan plan) {
        return plan.exercises().stream().flatMap(e -> e.sides().values().stream()).toList();
    }

    @ParameterizedTest
    @MethodSource("clients")
    void every_load_exists_none_is_rounded_up_and_none_passes_the_band(int number) {
        assertEquals(List.of(), ProgramLaws.loadsExist(plan(number)));
        assertEquals(List.of(), ProgramLaws.roundingGoesDown(plan(number)));
        assertEquals(List.of(), ProgramLaws.sharesStayInTheBand(plan(number)));
    }

    @ParameterizedTest
    @MethodSource("clients")
    void every_rise_is_inside_the_published_rule(int number) {
        assertEquals(List.of(), ProgramLaws.risesKeepTheRule(plan(number)));
    }

    /** Everything else equal: every test of one side of one exercise was done with more weight, or every one of all. */
    @ParameterizedTest
    @MethodSource("clients")
    void a_stronger_test_never_gives_a_lighter_load_in_any_week(int number) {
        var specs = client(number);
        var chance = new Random(new SplittableRandom(9_000 + number).nextLong());
        var tests = specs.tests();
        if (tests.isEmpty()) {
            return;
        }
        double more = 1 + 0.4 * chance.nextDouble();
        var one = tests.get(chance.nextInt(tests.size()));
        assertEquals(List.of(), ProgramLaws.nothingGotLighter(plan(number), Programs.plan(specs.tested(tests.stream().map(test ->
                test.exercise().equals(one.exercise()) && test.side().equals(one.side()) ? heavier(test, more) : test).toList()))));
        assertEquals(List.of(), ProgramLaws.nothingGotLighter(plan(number), Programs.plan(specs.tested(tests.stream().map(test -> heavier(test, more)).toList()))));
    }

    private static CheckedSpec.Test heavier(CheckedSpec.Test test, double more) {
        return new CheckedSpec.Test(test.exercise(), test.side(), Mass.ofKilograms(test.load().kilograms() * more), test.reps(), test.inReserve(), test.setup(), test.date());
    }

    /** The laws of every plan, and the one about stronger tests, hold for waves too. */
    @ParameterizedTest
    @MethodSource("someClients")
    void waves_keep_the_laws_of_every_plan(int number) {
        var specs = client(number);
        var plan = waved(specs);
        assertEquals(List.of(), ProgramLaws.loadsExist(plan));
        assertEquals(List.of(), ProgramLaws.sharesStayInTheBand(plan));
        assertEquals(List.of(), ProgramLaws.risesKeepTheRule(plan));
        assertEquals(List.of(), ProgramLaws.nothingGotLighter(plan, waved(specs.tested(specs.tests().stream().map(test -> heavier(test, 1.2)).toList()))));
    }

    static IntStream someClients() {
        return IntStream.range(0, 60);
    }

    private static Plan waved(Specs specs) {
        return Programs.PRESCRIBER.prescribe(Programs.selection(SchemesTest.scheduled(specs.spec(), Scheme.WAVE, OptionalInt.empty()),
                List.of("split-squat", "staggered-deadlift", "high-to-low-press", "supported-curl")));
    }

    @ParameterizedTest
    @MethodSource("clients")
    void the_mirrored_spec_gets_the_mirrored_weeks(int number) {
        var specs = client(number);
        var turned = specs.spec().assessment().turned() == Turned.RIGHT ? Turned.LEFT : Turned.RIGHT;
        var mirror = new Specs(turned, specs.age(), specs.trainingYears(), specs.answers(), specs.systolic(), specs.diastolic(), specs.clearance(),
                specs.measures(), specs.tests().stream().map(test -> new CheckedSpec.Test(test.exercise(), test.side().map(Side::other), test.load(), test.reps(),
                test.inReserve(), test.setup(), test.date())).toList(), specs.restrictions(), specs.equipment(), specs.aims(), specs.weeks(), specs.minutes(),
                specs.startStage(), specs.conditions());
        assertEquals(List.of(), ProgramLaws.mirrored(plan(number), Programs.plan(mirror)));
    }

    /** Repeats and those to spare never pass what the same curve allows at that share. */
    @ParameterizedTest
    @MethodSource("clients")
    void repeats_and_reserve_agree_with_the_curve(int number) {
        var curve = new RepCurve(RepFormula.EPLEY, 10, 5);
        for (var side : sides(plan(number))) {
            for (var dose : side.doses()) {
                if (dose.share().isPresent() && dose.share().getAsDouble() > 0) {
                    double possible = curve.reps(dose.share().getAsDouble());
                    assertTrue(dose.reps() + dose.inReserve() <= Math.max(1, possible) + 1e-6, dose + " of " + possible);
                    assertTrue(possible - dose.reps() - dose.inReserve() < 1 || dose.inReserve() == 5, dose + " leaves more than it says: " + possible);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("clients")
    void the_same_client_gets_the_same_plan_and_every_session_fits_or_says_so(int number) {
        var specs = client(number);
        var plan = plan(number);
        assertEquals(plan.exercises().stream().map(e -> e.sides().map(SidePlan::doses)).toList(),
                Programs.plan(specs).exercises().stream().map(e -> e.sides().map(SidePlan::doses)).toList());
        boolean fits = plan.days().stream().flatMap(day -> day.minutes().stream()).allMatch(m -> m <= specs.minutes());
        assertTrue(fits || plan.warnings().stream().anyMatch(w -> w.key().equals("minutes/too-long")));
        for (var dose : sides(plan).stream().flatMap(s -> s.doses().stream()).toList()) {
            assertTrue(dose.sets() >= 1 && (dose.reps() >= 1 || dose.seconds() > 0), dose.toString());
        }
    }

    /** The clients are no easy ones: loads, rises, rounding and shares near the top of the band all occur. */
    @Test
    void the_clients_reach_what_the_laws_are_about() {
        var doses = clients().mapToObj(RandomProgramsTest::plan).flatMap(p -> sides(p).stream()).flatMap(s -> s.doses().stream()).toList();
        assertTrue(doses.stream().filter(d -> d.load().isPresent()).count() > 1_000);
        assertTrue(doses.stream().filter(Dose::heavier).count() > 100);
        assertTrue(clients().mapToObj(RandomProgramsTest::plan).flatMap(p -> sides(p).stream()).filter(s -> s.capacity().isPresent()
                && s.doses().getFirst().load().isPresent() && s.capacity().get().exactLoad() - s.doses().getFirst().load().getAsDouble() > 0.1).count() > 100);
    }

    /** Each law can fail: a plan with one dose, or one capacity, made wrong breaks just that. */
    @Test
    void a_plan_that_breaks_a_law_is_found_out() {
        var plan = Programs.plan(Specs.turned(Turned.RIGHT).tested(Programs.squatTests(14, 18)).lasting(8, 90));
        assertEquals(List.of(), ProgramLaws.loadsExist(plan));
        assertFalse(ProgramLaws.loadsExist(with(plan, 2, d -> dose(d, d.load().orElse(0) + 0.3, d.share().orElse(0), d.heavier()))).isEmpty());
        assertFalse(ProgramLaws.sharesStayInTheBand(with(plan, 2, d -> dose(d, d.load().orElse(0), 0.77, d.heavier()))).isEmpty());
        assertFalse(ProgramLaws.roundingGoesDown(with(plan, 0, d -> dose(d, d.load().orElse(0) + 8, d.share().orElse(0), d.heavier()))).isEmpty());
        assertFalse(ProgramLaws.risesKeepTheRule(with(plan, 1, d -> dose(d, d.load().orElse(0), 1.15 * d.share().orElse(0), true))).isEmpty());
        assertFalse(ProgramLaws.risesKeepTheRule(with(plan, 1, d -> dose(d, d.load().orElse(0), 1.05 * d.share().orElse(0), false))).isEmpty());
        assertFalse(ProgramLaws.nothingGotLighter(plan, with(plan, 5, d -> dose(d, d.load().orElse(0) - 2, d.share().orElse(0), d.heavier()))).isEmpty());
        assertFalse(ProgramLaws.mirrored(plan, plan).isEmpty(), "unequal sides are not their own mirror");
    }

    private static Plan with(Plan plan, int week, UnaryOperator<Dose> change) {
        var exercises = plan.exercises().stream().map(exercise -> !exercise.id().equals("split-squat") ? exercise : new Exercise(exercise.number(), exercise.id(),
                exercise.sides().map(side -> new SidePlan(side.solved(), side.loadUsed(), side.capacity(), IntStream.range(0, side.doses().size())
                .mapToObj(i -> i == week ? change.apply(side.doses().get(i)) : side.doses().get(i)).toList(), side.reasons())), exercise.instead(), exercise.reasons())).toList();
        return new Plan(plan.assessed(), plan.catalogue(), plan.firstSide(), plan.expires(), plan.weeks(), exercises, plan.days(), plan.volume(), plan.leftOut(),
                plan.reasons(), plan.warnings());
    }

    private static Dose dose(Dose d, double load, double share, boolean heavier) {
        return new Dose(d.week(), d.sets(), d.reps(), d.seconds(), OptionalDouble.of(load), d.byEffort(), d.inReserve(), d.tempo(), d.rest(), heavier,
                OptionalDouble.of(share));
    }
}
