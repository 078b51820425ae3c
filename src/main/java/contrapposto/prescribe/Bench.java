package contrapposto.prescribe;

import contrapposto.body.PoseOutcome;
import contrapposto.body.PoseProblem;
import contrapposto.body.PoseSolver;
import contrapposto.catalogue.Family;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.quantity.Side;
import contrapposto.setup.SetUpChooser;
import contrapposto.setup.SetUps;
import contrapposto.setup.SolvedSetUp;
import java.util.Optional;

/** Where set-ups are tried under a load: the mechanics that prescription rests on. */
public interface Bench {
    /** The pose of a problem, or why there is none. */
    PoseOutcome solve(PoseProblem problem);

    /**
     * A test as it was done.
     *
     * @param side of the working limb; left for a set-up that is itself symmetric
     * @param wish what is known about the set-up; for the rest flat feet and the load in both hands
     * @param load kg per implement
     */
    PoseProblem asTested(SetUps setUps, Family family, Side side, SetUpWish wish, double load);

    /** A chosen set-up with another load, its phase, muscles and reasons brought up to date; empty where no pose holds it. */
    Optional<SolvedSetUp> resolve(SetUps setUps, SolvedSetUp chosen, double load);

    /** Solved poses and the set-ups of {@code setup}. */
    static Bench solved() {
        var chooser = new SetUpChooser();
        return new Bench() {
            @Override
            public PoseOutcome solve(PoseProblem problem) {
                return PoseSolver.solve(problem);
            }

            @Override
            public PoseProblem asTested(SetUps setUps, Family family, Side side, SetUpWish wish, double load) {
                return chooser.asTested(setUps, family, side, wish, load);
            }

            @Override
            public Optional<SolvedSetUp> resolve(SetUps setUps, SolvedSetUp chosen, double load) {
                return chooser.resolve(setUps, chosen, load);
            }
        };
    }
}
