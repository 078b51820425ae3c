package contrapposto.prescribe;

import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.Family;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.check.CheckedSpec.Test;
import contrapposto.quantity.Side;
import contrapposto.setup.SetUps;
import contrapposto.setup.SolvedSetUp;
import contrapposto.wording.Said;
import contrapposto.wording.Term;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads each side's strength out of its tests. A leg's capacity is what hip and knee bear together at the estimated 1RM in
 * the set-up of the test, named by the joint that binds there; it transfers within its {@link CapacityGroup}, between set-ups of one leg or between set-ups of both, never from
 * one kind to the other: a test of both legs is not split. Arms count the outside load alone and each family its own tests.
 *
 * <p>Several tests of one family and side are combined by their median 1RM (of an even number, the middle two
 * averaged): it moves with every stronger test and does not follow a single outlier.
 */
final class Strengths {
    /** How far off a 1RM from submaximal sets may be: Hutchins and Gearhart 2010, 10.6 to 13.5 % of the mean (A1.12). */
    static final double ERROR = 0.135;
    /** Under this lever per kg, m, an arm's moment says nothing about its load: house. */
    private static final double LEAST_LEVER = 0.02;

    private final SetUps setUps;
    private final List<Test> tests;
    private final RepCurve curve;
    private final Bench bench;
    private final Map<Test, Optional<Reading>> read = new LinkedHashMap<>();

    Strengths(SetUps setUps, RepCurve curve, Bench bench) {
        this.setUps = setUps;
        this.tests = setUps.assessed().spec().assessment().tests();
        this.curve = curve;
        this.bench = bench;
    }

    /** The strength for this set-up; empty without a test that counts for it. {@code bothSides}: the set-up serves both at once. */
    Optional<Strength> of(SolvedSetUp solved, Demand demand, boolean bothSides) {
        return switch (solved.family().group()) {
            case KNEE_BEND, HINGE -> leg(solved, demand, bothSides);
            case PRESS, PULL -> arm(solved, bothSides, BindingJoint.SHOULDER);
            case CURL, EXTENSION -> arm(solved, bothSides, BindingJoint.ELBOW);
            case CALF, CARRY, NONE -> Optional.empty();
        };
    }

    /** Why a test says nothing, for each that does not, in file order. */
    List<Reason> refused() {
        return tests.stream().filter(test -> !curve.accepts(test.reps(), test.inReserve())).map(test -> new Reason(
                "test-not-used", Said.of("test-not-used").exercise("exercise", test.exercise()).side("side", test.side())
                .count("reps", test.reps()).count("reserve", test.inReserve()).count("most-reps", curve.mostReps())
                .count("most-reserve", curve.mostReserve()), Source.PUBLISHED,
                "A1.10: Reynolds et al. 2006; A7.3: Hackett et al. 2017")).toList();
    }

    private List<Test> of(String family, Side side, boolean bothSides) {
        return tests.stream().filter(test -> test.exercise().equals(family)
                && curve.accepts(test.reps(), test.inReserve())
                && (bothSides ? test.side().isEmpty() : test.side().equals(Optional.of(side)))).toList();
    }

    /** Whether one leg carries most: level feet share the work, whatever the hand holds. */
    private static boolean oneLegged(Family family) {
        return switch (family.base()) {
            case SPLIT, STAGGERED, STEP, ONE_LEG, HALF_KNEELING -> true;
            case LEVEL, TALL_KNEELING, KNEELING_AT_SUPPORT, ALL_FOURS, PLANK, SUPINE, SIDE_LYING, SEATED -> false;
        };
    }

    /**
     * One reading of a test: what the set-up would bear once.
     *
     * @param capacity support moment of hip and knee, N·m; 0 for an arm
     * @param error    how far off the 1RM may be, as a share
     */
    private record Reading(BindingJoint joint, double moment, double capacity, double oneRepMax, double error) { }

    private Optional<Strength> leg(SolvedSetUp solved, Demand demand, boolean bothSides) {
        return sourceOf(solved.family(), solved.side(), bothSides).flatMap(family -> {
            var used = of(family.id(), solved.side(), bothSides);
            var readings = used.stream().flatMap(test -> legReading(family, solved.side(), test).stream()).toList();
            double lifted = used.stream().mapToDouble(test -> test.load().kilograms()).max().orElse(0);
            return readings.isEmpty() ? Optional.<Strength>empty() : Optional.of(legStrength(solved, demand, family, readings, lifted, Optional.empty()));
        }).or(() -> bothSides ? Optional.empty() : split(solved, demand));
    }

    /**
     * One leg's strength out of tests of both at once, where the spec gives the bilateral index: both together bear
     * 1 + index ÷ 100 of what the legs bear one by one (Howard and Enoka 1991, B4.10), and the legs are taken as equal. To begin
     * with at most half the weight that both lifted.
     */
    private Optional<Strength> split(SolvedSetUp solved, Demand demand) {
        var index = setUps.assessed().spec().assessment().bilateralIndex();
        return index.isEmpty() || !oneLegged(solved.family()) ? Optional.empty() : setUps.catalogue().families().stream()
                .filter(other -> other.group() == solved.family().group() && !oneLegged(other) && !of(other.id(), solved.side(), true).isEmpty()).findFirst()
                .flatMap(family -> {
                    var used = of(family.id(), solved.side(), true);
                    double one = 1 / (1 + index.getAsDouble() / 100);
                    var readings = used.stream().flatMap(test -> legReading(family, solved.side(), test).stream())
                            .map(both -> new Reading(both.joint(), both.moment() * one, both.capacity() * one, both.oneRepMax(), both.error())).toList();
                    double lifted = used.stream().mapToDouble(test -> test.load().kilograms()).max().orElse(0) / 2;
                    var why = new Reason("bilateral-index", Said.of("bilateral-index").exercise("tested", family.id()).number("index", index.getAsDouble(), 0),
                            Source.COACH, "B4.10: Howard and Enoka 1991");
                    return readings.isEmpty() ? Optional.empty() : Optional.of(legStrength(solved, demand, family, readings, lifted, Optional.of(why)));
                });
    }

    /** The family itself when it was tested, else the first tested one of its group in catalogue order. */
    private Optional<Family> sourceOf(Family family, Side side, boolean bothSides) {
        var group = new ArrayList<>(List.of(family));
        setUps.catalogue().families().stream().filter(other -> other.group() == family.group()
                && oneLegged(other) == oneLegged(family)).forEach(group::add);
        return group.stream().filter(other -> !of(other.id(), side, bothSides).isEmpty()).findFirst();
    }

    /** Remembered, since one test serves several set-ups. */
    private Optional<Reading> legReading(Family family, Side side, Test test) {
        return read.computeIfAbsent(test, key -> freshReading(family, side, key));
    }

    private Optional<Reading> freshReading(Family family, Side side, Test test) {
        double tested = test.load().kilograms();
        var demand = new Demand(bench.asTested(setUps, family, side, test.setup(), tested), bench::solve);
        var support = demand.support(tested);
        if (support.isEmpty() || support.getAsDouble() <= 0) {
            return Optional.empty();
        }
        double capacity = support.getAsDouble() / curve.share(test.reps() + test.inReserve());
        double oneRepMax = demand.loadFor(capacity).orElse(curve.oneRepMax(tested, test.reps(), test.inReserve()));
        var joint = demand.binding(oneRepMax).or(() -> demand.binding(tested)).orElse(BindingJoint.HIP);
        return Optional.of(new Reading(joint, demand.moment(joint, oneRepMax), capacity, oneRepMax, test.error().orElse(ERROR)));
    }

    private Strength legStrength(SolvedSetUp solved, Demand demand, Family tested, List<Reading> readings,
                                 double lifted, Optional<Reason> split) {
        var median = median(readings);
        var reasons = new ArrayList<Reason>();
        reasons.add(estimate(tested, median, readings.size(), median.moment()));
        split.ifPresent(reasons::add);
        if (split.isEmpty() && !tested.id().equals(solved.family().id())) {
            reasons.add(new Reason("capacity-transfer", Said.of("capacity-transfer").exercise("exercise", solved.family().id())
                    .exercise("tested", tested.id()), Source.HOUSE, "house-rules: capacity groups"));
        }
        return new Strength(new Asking.BodyAndLoad(demand, median.capacity(), median.joint(), median.moment()), median.joint(), median.moment(),
                median.capacity(), median.oneRepMax(), median.error(), readings.size(), lifted, List.copyOf(reasons));
    }

    private Optional<Strength> arm(SolvedSetUp solved, boolean bothSides, BindingJoint joint) {
        var readings = of(solved.family().id(), solved.side(), bothSides).stream().map(test -> new Reading(joint, 0, 0,
                curve.oneRepMax(test.load().kilograms(), test.reps(), test.inReserve()) * lever(solved, test, joint), test.error().orElse(ERROR))).toList();
        if (readings.isEmpty()) {
            return Optional.empty();
        }
        var median = median(readings);
        double posed = Demand.mass(solved.problem().load());
        double moment = posed > 0 ? joint.moment(solved.pose().mechanics()) * median.oneRepMax() / posed : 0;
        return Optional.of(new Strength(new Asking.LoadOnly(median.oneRepMax()), joint, moment, moment, median.oneRepMax(),
                median.error(), readings.size(), Double.POSITIVE_INFINITY, List.of(estimate(solved.family(), median, readings.size(), moment))));
    }

    /**
     * How much more than the tested load this set-up lets the same joint bear: the test's lever over this one's. 1 where the
     * test names no set-up of its own, which means it was done in this one.
     */
    private double lever(SolvedSetUp solved, Test test, BindingJoint joint) {
        double posed = Demand.mass(solved.problem().load());
        if (test.setup().equals(SetUpWish.NONE) || posed <= 0) {
            return 1;
        }
        double load = test.load().kilograms();
        var there = new Demand(bench.asTested(setUps, solved.family(), solved.side(), test.setup(), load), bench::solve).pose(load)
                .map(pose -> joint.moment(pose.mechanics()) / (load * 9.81)).orElse(0.0);
        double here = joint.moment(solved.pose().mechanics()) / (posed * 9.81);
        return Math.min(there, here) < LEAST_LEVER ? 1 : there / here;
    }

    private static Reading median(List<Reading> readings) {
        var sorted = readings.stream().sorted(Comparator.comparingDouble(Reading::oneRepMax)).toList();
        var lower = sorted.get((sorted.size() - 1) / 2);
        var upper = sorted.get(sorted.size() / 2);
        return new Reading(lower.joint(), lower.joint() == upper.joint() ? (lower.moment() + upper.moment()) / 2 : lower.moment(),
                (lower.capacity() + upper.capacity()) / 2,
                (lower.oneRepMax() + upper.oneRepMax()) / 2, (lower.error() + upper.error()) / 2);
    }

    private Reason estimate(Family tested, Reading median, int count, double moment) {
        return new Reason("one-rep-max", Said.of("one-rep-max").exercise("exercise", tested.id()).mass("load", median.oneRepMax())
                .percent("error", median.error(), 1).count("tests", count).text("formula", curve.formula().words()).word("joint", median.joint().word())
                .with("moment", new Term.Measure(Term.Kind.MOMENT, moment, 0)), Source.PUBLISHED,
                "A1: " + curve.formula().author() + "; error A1.12: Hutchins and Gearhart 2010");
    }
}
