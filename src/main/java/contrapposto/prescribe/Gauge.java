package contrapposto.prescribe;

import contrapposto.catalogue.CapacityGroup;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.check.CheckedSpec.Test;
import contrapposto.body.PoseProblem;
import contrapposto.prescribe.Plan.SidePlan;
import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Side;
import contrapposto.setup.SetUp;
import contrapposto.setup.SetUps;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads sets that were done as strength: the mechanics and the curve that wrote a plan's loads, the other way round. A side's
 * strength is one number, {@code capacity}: for a leg what hip and knee bear together at the 1RM, N·m, so that sets done in
 * different set-ups are told in the same measure; for an arm the 1RM itself, kg of outside load in the set-up of the plan.
 */
public final class Gauge {
    /** Repeats and reserve of the test a capacity is written down as; the first that asks for a weight at all. */
    private static final List<int[]> AS_TESTS = List.of(new int[] {8, 2}, new int[] {5, 2}, new int[] {3, 1}, new int[] {1, 0});

    private final Plan plan;
    private final Bench bench;
    private final RepCurve curve;
    private final SetUps setUps;
    private final Map<PoseProblem, Demand> demands = new LinkedHashMap<>();

    /** For a plan with solved poses. */
    public Gauge(Plan plan) {
        this(plan, Bench.solved());
    }

    Gauge(Plan plan, Bench bench) {
        this.plan = plan;
        this.bench = bench;
        var rules = plan.catalogue().rules();
        curve = new RepCurve(RepFormula.named(rules.oneRepMaxFormula()).orElse(RepFormula.EPLEY), rules.repsForFormula(),
                rules.inReserveForEstimate());
        setUps = new SetUps(plan.assessed(), plan.catalogue(), Map.of(), Map.of(), Map.of());
    }

    /** The curve that the plan's loads were written with. */
    public RepCurve curve() {
        return curve;
    }

    /** Whether loads of this exercise are measured against a capacity at all. */
    public boolean measures(SidePlan side) {
        return switch (side.solved().family().group()) {
            case KNEE_BEND, HINGE, PRESS, PULL, CURL, EXTENSION -> true;
            case CALF, CARRY, NONE -> false;
        };
    }

    /** Whether the body counts as load, so that sets without a weight say something too. */
    public boolean countsBody(SidePlan side) {
        return leg(side);
    }

    /** The capacity the plan was written for; empty where there was no test. */
    public OptionalDouble capacity(SidePlan side) {
        return side.capacity().map(known -> OptionalDouble.of(leg(side) ? known.together() : known.oneRepMax()))
                .orElseGet(OptionalDouble::empty);
    }

    /**
     * The capacity that a set shows.
     *
     * @param load     kg per implement
     * @param possible repeats done and those to spare, at least 1
     * @return empty where no pose holds that load, and where nothing was lifted
     */
    public OptionalDouble shown(SidePlan side, double load, double possible) {
        var asked = leg(side) ? demand(side.solved().problem()).support(load) : OptionalDouble.of(load);
        return asked.isPresent() && asked.getAsDouble() > 0 ? OptionalDouble.of(asked.getAsDouble() / curve.share(possible))
                : OptionalDouble.empty();
    }

    /**
     * A capacity as a set in a spec, rounded down to a tenth of a kilogram or pound: in the set-up in which the side was
     * tested, else in the one of the plan. Empty where the body alone asks more than that capacity.
     *
     * @param error how far off it may be, as a share
     */
    public Optional<Test> asTest(String exercise, Optional<Side> side, SidePlan plan, double capacity, double error, LocalDate date) {
        var wish = wish(exercise, side, plan);
        for (int[] set : AS_TESTS) {
            double exact = leg(plan) ? loadFor(plan, wish, capacity * curve.share(set[0] + set[1])) : capacity * curve.share(set[0] + set[1]);
            double load = roundedDown(exact);
            if (load > 0) {
                return Optional.of(new Test(exercise, side, Mass.ofKilograms(load), set[0], set[1], wish, date, OptionalDouble.of(error)));
            }
        }
        return Optional.empty();
    }

    private double loadFor(SidePlan side, SetUpWish wish, double wanted) {
        var solved = side.solved();
        double guess = Math.max(1, Demand.mass(solved.problem().load()));
        return demand(bench.asTested(setUps, solved.family(), solved.side(), wish, guess)).loadFor(wanted).orElse(0);
    }

    private double roundedDown(double kilograms) {
        return switch (plan.spec().client().units()) {
            case METRIC -> StrictMath.floor(kilograms * 10 + 1e-6) / 10;
            case US -> Mass.ofPounds(StrictMath.floor(Mass.ofKilograms(kilograms).pounds() * 10 + 1e-6) / 10).kilograms();
        };
    }

    /** How the side was tested before, or how the plan has it. An arm without a test is read in the plan's own set-up. */
    private SetUpWish wish(String exercise, Optional<Side> side, SidePlan plan) {
        return this.plan.spec().assessment().tests().stream()
                .filter(test -> test.exercise().equals(exercise) && test.side().equals(side)).map(Test::setup).findFirst()
                .orElseGet(() -> leg(plan) && side.isPresent() ? asDone(plan.solved().setUp()) : SetUpWish.NONE);
    }

    /** What of a set-up a spec can say, to the centimetre. */
    private static SetUpWish asDone(SetUp s) {
        return new SetUpWish(raised(s.frontRaise()), raised(s.rearRaise()), raised(s.heelWedge()),
                Double.isNaN(s.stance()) || s.stance() < 0 ? Optional.empty() : Optional.of(centimetres(s.stance())), s.loadHand(),
                s.bothHands() || s.loadHand().isEmpty(), Optional.empty(), OptionalDouble.empty());
    }

    private static Optional<Length> raised(Length length) {
        return length.metres() > 0 ? Optional.of(centimetres(length.metres())) : Optional.empty();
    }

    private static Length centimetres(double metres) {
        return Length.ofMetres(StrictMath.rint(metres * 100) / 100);
    }

    private Demand demand(PoseProblem problem) {
        return demands.computeIfAbsent(problem, key -> new Demand(key, bench::solve));
    }

    private static boolean leg(SidePlan side) {
        var group = side.solved().family().group();
        return group == CapacityGroup.KNEE_BEND || group == CapacityGroup.HINGE;
    }
}
