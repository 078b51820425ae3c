package contrapposto.body;

import contrapposto.quantity.Side;
import java.util.stream.Stream;

/**
 * Finds the start and the working position of a set-up: contacts, segment lengths, joint limits and balance kept, no limb
 * in the floor, in what stands around or in another, the objective least. Always solves with the LEFT as the working side and mirrors the answer, so that the two sides are
 * exact mirror images. The same problem gives the same bits.
 */
public final class PoseSolver {
    /** What may be left of a breach of the whole body: half of 2° or of 4 mm. */
    private static final double SLACK = 0.5;

    private PoseSolver() { }

    /** The two positions with their mechanics, or the constraint that cannot be met and by how much. */
    public static PoseOutcome solve(PoseProblem problem) {
        return problem.working() == Side.LEFT ? solveLeft(problem) : solveLeft(problem.mirrored()).mirrored();
    }

    private static PoseOutcome solveLeft(PoseProblem problem) {
        return switch (placed(problem)) {
            case PoseOutcome.Impossible impossible -> impossible;
            case PoseOutcome.Solved(var pose) -> Stream.of(Ranges.of(problem, pose), Clearance.of(problem, pose))
                    .filter(breaches -> breaches.beyond(SLACK)).findFirst().<PoseOutcome>map(Breaches::worst)
                    .orElse(new PoseOutcome.Solved(pose));
        };
    }

    /** As found, before limbs are held against each other and against things, whose sizes do not scale. The left side works. */
    static PoseOutcome placed(PoseProblem problem) {
        return switch (problem.base()) {
            case BaseOfSupport.Split base -> Upright.solve(problem);
            case BaseOfSupport.Staggered base -> Upright.solve(problem);
            case BaseOfSupport.Level base -> Upright.solve(problem);
            case BaseOfSupport.Step base -> Upright.solve(problem);
            case BaseOfSupport.OneLeg base -> Upright.solve(problem);
            case BaseOfSupport.HalfKneeling base -> new Kneeling(problem).half(base);
            case BaseOfSupport.TallKneeling base -> new Kneeling(problem).tall(base);
            case BaseOfSupport.KneelingAtSupport base -> new AtSupport(problem, base).solve();
            case BaseOfSupport.AllFours base -> new Prone(problem).allFours(base);
            case BaseOfSupport.Plank base -> new Prone(problem).plank(base);
            case BaseOfSupport.Supine base -> new Lying(problem).onBack(base);
            case BaseOfSupport.SideLying base -> new Lying(problem).onSide(base);
            case BaseOfSupport.Seated base -> new Sitting(problem, base).solve();
        };
    }
}
