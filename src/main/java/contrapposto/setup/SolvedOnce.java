package contrapposto.setup;

import contrapposto.body.PoseOutcome;
import contrapposto.body.PoseProblem;
import contrapposto.quantity.Side;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Solves every pose problem of one run once: what was tried before, for the other side or with less equipment, is read
 * again. The right side's problem is the mirror image of the left's, and so is its pose. Threads of one run may share it:
 * which of them solves a problem changes nothing.
 */
final class SolvedOnce implements Function<PoseProblem, PoseOutcome> {
    private final Function<PoseProblem, PoseOutcome> solver;
    private final Map<PoseProblem, PoseOutcome> known = new ConcurrentHashMap<>();

    SolvedOnce(Function<PoseProblem, PoseOutcome> solver) {
        this.solver = solver;
    }

    @Override
    public PoseOutcome apply(PoseProblem problem) {
        return problem.working() == Side.LEFT ? known.computeIfAbsent(problem, solver)
                : known.computeIfAbsent(problem.mirrored(), solver).mirrored();
    }
}
