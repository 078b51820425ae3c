package contrapposto.prescribe;

import contrapposto.body.PoseProblem;
import contrapposto.catalogue.Family;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.quantity.Side;

/** How a test was arranged, as a problem that can be solved. */
@FunctionalInterface
public interface TestPoses {
    /**
     * @param side of the working limb; left for a set-up that is itself symmetric
     * @param wish what is known about the set-up; for the rest flat feet and the load in both hands
     * @param load kg per implement
     */
    PoseProblem asTested(Family family, Side side, SetUpWish wish, double load);
}
