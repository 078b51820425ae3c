package contrapposto.body;

import contrapposto.quantity.Side;

/**
 * Finds the start and the working position of a set-up: contacts, segment lengths, joint limits and balance kept, the
 * objective least. Always solves with the LEFT as the working side and mirrors the answer, so that the two sides are
 * exact mirror images. The same problem gives the same bits.
 */
public final class PoseSolver {
    private PoseSolver() { }

    /** The two positions with their mechanics, or the constraint that cannot be met and by how much. */
    public static PoseOutcome solve(PoseProblem problem) {
        return problem.working() == Side.LEFT ? solveLeft(problem) : solveLeft(problem.mirrored()).mirrored();
    }

    private static PoseOutcome solveLeft(PoseProblem problem) {
        return switch (problem.base()) {
            case Base.Split base -> Upright.solve(problem);
            case Base.Staggered base -> Upright.solve(problem);
            case Base.Level base -> Upright.solve(problem);
            case Base.Step base -> Upright.solve(problem);
            case Base.OneLeg base -> Upright.solve(problem);
            case Base.HalfKneeling base -> new Kneeling(problem).half(base);
            case Base.TallKneeling base -> new Kneeling(problem).tall(base);
            case Base.KneelingAtSupport base -> new AtSupport(problem, base).solve();
            case Base.AllFours base -> new Prone(problem).allFours(base);
            case Base.Plank base -> new Prone(problem).plank(base);
            case Base.Supine base -> new Lying(problem).onBack(base);
            case Base.SideLying base -> new Lying(problem).onSide(base);
            case Base.Seated base -> new Sitting(problem, base).solve();
        };
    }
}
