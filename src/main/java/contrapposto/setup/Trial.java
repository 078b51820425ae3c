package contrapposto.setup;

import contrapposto.body.PoseProblem;
import contrapposto.body.SolvedPose;
import contrapposto.wording.Said;

/** What came of solving one set-up with its distances found. */
sealed interface Trial {
    /**
     * A pose exists.
     *
     * @param load kg it was solved with, on each implement
     */
    record Held(SetUp setUp, PoseProblem problem, SolvedPose pose, double load) implements Trial {
        SolvedPose.Mechanics mechanics() {
            return pose.mechanics();
        }
    }

    /** No pose exists at any distance tried; {@code constraint} is the one that came nearest to being met. */
    record Unheld(Said constraint, double by, String unit) implements Trial { }
}
