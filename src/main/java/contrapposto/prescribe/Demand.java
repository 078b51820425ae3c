package contrapposto.prescribe;

import contrapposto.body.Load;
import contrapposto.body.PoseOutcome;
import contrapposto.body.PoseProblem;
import contrapposto.body.SolvedPose;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What one set-up asks of the joints at every load: the pose is solved anew for each, since a body leans differently under
 * another weight. Remembers what it has solved.
 */
final class Demand {
    /** Loads are told apart down to this, kg. */
    private static final double GRAIN = 1e-3;
    /** The most weight that is looked at when none is said to be too heavy, kg. */
    private static final double MOST = 400;
    /** Loads are solved to this, kg. */
    private static final double EXACT = 0.05;
    private static final int STEPS = 60;
    /** How far beyond the straight line a guess reaches, so that the answer lies below it. */
    private static final double OVERSHOOT = 1.02;
    /** Where the search for a load begins, kg. */
    private static final double FIRST_GUESS = 10;

    private final PoseProblem problem;
    private final Function<PoseProblem, PoseOutcome> solver;
    private final Map<Long, Optional<SolvedPose>> solved = new TreeMap<>();

    Demand(PoseProblem problem, Function<PoseProblem, PoseOutcome> solver) {
        this.problem = problem;
        this.solver = solver;
    }

    /** The problem with {@code load} kg per implement. */
    PoseProblem problem(double load) {
        return new PoseProblem(problem.person(), problem.working(), problem.limits(), problem.base(), problem.action(),
                problem.left(), problem.right(), loaded(problem.load(), load), problem.hipShift(), problem.handSupport(),
                problem.pressure(), problem.effort());
    }

    /** The poses under {@code load} kg per implement; empty where no pose keeps every constraint. */
    Optional<SolvedPose> pose(double load) {
        return solved.computeIfAbsent(StrictMath.round(load / GRAIN), key -> switch (solver.apply(problem(load))) {
            case PoseOutcome.Solved(var pose) -> Optional.of(pose);
            case PoseOutcome.Impossible impossible -> Optional.empty();
        });
    }

    /** The leg joint with the largest |M| ÷ c under {@code load}: the one that binds. */
    Optional<BindingJoint> binding(double load) {
        return pose(load).map(pose -> scaled(BindingJoint.HIP, pose) >= scaled(BindingJoint.KNEE, pose)
                ? BindingJoint.HIP : BindingJoint.KNEE);
    }

    /** The moment of {@code joint} under {@code load}, N·m; zero without a pose. */
    double moment(BindingJoint joint, double load) {
        return pose(load).map(pose -> joint.moment(pose.mechanics())).orElse(0.0);
    }

    /**
     * The support moment of the working leg under {@code load}: the extensor moments of hip and knee added up, N·m (after
     * Winter 1980, from memory; the ankle left out). It counts body mass and load. Both joints count because another set-up,
     * or the pressure a hand's breadth farther forward, shifts work from one to the other and leaves their sum nearly as it
     * was: what one of them bore in the test would read a raised foot as far too easy or too hard.
     */
    OptionalDouble support(double load) {
        return pose(load).map(pose -> OptionalDouble.of(BindingJoint.HIP.moment(pose.mechanics())
                + BindingJoint.KNEE.moment(pose.mechanics()))).orElse(OptionalDouble.empty());
    }

    private double scaled(BindingJoint joint, SolvedPose pose) {
        return joint.moment(pose.mechanics()) / joint.scale(problem.effort());
    }

    /**
     * The load that asks {@code wanted} N·m of support, to 0.05 kg; never beyond it, so that what rests on the answer asks at most that.
     * Zero when the body alone asks as much; empty when no load up to 400 kg asks it or a pose is missing on the way.
     */
    OptionalDouble loadFor(double wanted) {
        var atNothing = support(0);
        if (atNothing.isEmpty() || atNothing.getAsDouble() >= wanted) {
            return atNothing.isEmpty() ? atNothing : OptionalDouble.of(0);
        }
        double low = 0;
        double below = atNothing.getAsDouble() - wanted;
        double high = FIRST_GUESS;
        var reached = support(high);
        while (reached.isPresent() && reached.getAsDouble() < wanted && high < MOST) {
            double slope = (reached.getAsDouble() - wanted - below) / (high - low);
            low = high;
            below = reached.getAsDouble() - wanted;
            double ahead = slope > 0 ? low - below / slope * OVERSHOOT + EXACT / 2 : 2 * low;
            high = Math.min(Math.clamp(ahead, low + EXACT, 4 * low), MOST);
            reached = support(high);
        }
        return reached.isEmpty() || reached.getAsDouble() < wanted ? OptionalDouble.empty()
                : OptionalDouble.of(between(wanted, low, below, high, reached.getAsDouble() - wanted));
    }

    /** False position on a bracket, Illinois variant: an end that stays put counts half. The light end is the answer. */
    private double between(double wanted, double from, double below, double to, double above) {
        double low = from;
        double high = to;
        double lowMiss = below;
        double highMiss = above;
        for (int step = 0; step < STEPS && high - low > EXACT; step++) {
            double guess = Math.clamp(low - lowMiss * (high - low) / (highMiss - lowMiss), low + EXACT / 3, high - EXACT / 3);
            var here = support(guess);
            if (here.isEmpty()) {
                return low;
            }
            double miss = here.getAsDouble() - wanted;
            if (miss > 0) {
                high = guess;
                highMiss = miss;
                lowMiss /= 2;
            } else {
                low = guess;
                lowMiss = miss;
                highMiss /= 2;
            }
        }
        return low;
    }

    /** {@code load} with another mass per implement; nothing held when that is zero. */
    static Load loaded(Load load, double mass) {
        return mass <= 0 ? new Load.None() : switch (load) {
            case Load.None none -> none;
            case Load.InHand inHand -> new Load.InHand(inHand.hand(), mass);
            case Load.InEachHand each -> new Load.InEachHand(mass);
            case Load.InBothHands both -> new Load.InBothHands(mass);
            case Load.OnHips onHips -> new Load.OnHips(mass);
            case Load.Cable cable -> new Load.Cable(cable.hand(), mass, cable.ratio(), cable.pulleyHeight(), cable.distance(),
                    cable.ahead(), cable.across());
            case Load.Band band -> band;
        };
    }

    /** The mass per implement, kg; zero where none is known. */
    static double mass(Load load) {
        return switch (load) {
            case Load.None none -> 0;
            case Load.InHand inHand -> inHand.mass();
            case Load.InEachHand each -> each.mass();
            case Load.InBothHands both -> both.mass();
            case Load.OnHips onHips -> onHips.mass();
            case Load.Cable cable -> cable.mass();
            case Load.Band band -> 0;
        };
    }
}
