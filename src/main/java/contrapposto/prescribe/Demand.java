package contrapposto.prescribe;

import contrapposto.body.Load;
import contrapposto.body.PoseOutcome;
import contrapposto.body.PoseProblem;
import contrapposto.body.SolvedPose;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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

    private final PoseProblem problem;
    private final Function<PoseProblem, PoseOutcome> solver;
    private final Map<Long, Optional<SolvedPose>> solved = new HashMap<>();

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

    /** The moment of {@code joint} under {@code load}, N·m. */
    OptionalDouble moment(BindingJoint joint, double load) {
        return pose(load).map(pose -> OptionalDouble.of(joint.moment(pose.mechanics()))).orElse(OptionalDouble.empty());
    }

    /**
     * The load under which {@code joint} bears {@code moment}, to 0.05 kg; never beyond it, so that what rests on the answer
     * asks at most {@code moment}. Zero when the body alone asks as much; empty when no load up to 400 kg asks it or a pose
     * is missing on the way. By false position on a bracket, whose end that is too light is the answer.
     */
    OptionalDouble loadFor(BindingJoint joint, double moment) {
        var atNothing = moment(joint, 0);
        if (atNothing.isEmpty() || atNothing.getAsDouble() >= moment) {
            return atNothing.isEmpty() ? atNothing : OptionalDouble.of(0);
        }
        double low = 0;
        double below = atNothing.getAsDouble() - moment;
        double high = 10;
        var reached = moment(joint, high);
        while (reached.isPresent() && reached.getAsDouble() < moment && high < MOST) {
            low = high;
            below = reached.getAsDouble() - moment;
            high *= 2;
            reached = moment(joint, high);
        }
        return reached.isEmpty() || reached.getAsDouble() < moment ? OptionalDouble.empty()
                : OptionalDouble.of(between(joint, moment, low, below, high, reached.getAsDouble() - moment));
    }

    /** Illinois variant of false position: an end that stays put twice counts half. */
    private double between(BindingJoint joint, double moment, double from, double below, double to, double above) {
        double low = from;
        double high = to;
        double lowMiss = below;
        double highMiss = above;
        for (int step = 0; step < STEPS && high - low > EXACT; step++) {
            double guess = Math.clamp(low - lowMiss * (high - low) / (highMiss - lowMiss), low + EXACT / 3, high - EXACT / 3);
            var here = moment(joint, guess);
            if (here.isEmpty()) {
                return low;
            }
            double miss = here.getAsDouble() - moment;
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

    /** {@code load} with another mass per implement. */
    static Load loaded(Load load, double mass) {
        return switch (load) {
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
