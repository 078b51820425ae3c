package contrapposto.setup;

import contrapposto.quantity.Mass;
import java.util.List;

/**
 * The weight that set-ups are compared with, before anyone has prescribed one: a light share of body mass (house
 * defaults), which does not change when a dumbbell comes or goes. Prescription solves the winner again with its own load.
 */
final class TrialLoad {
    private TrialLoad() { }

    /** kg on each implement: never above what a hand may hold, and within the weights that exist. */
    static double of(Question q, SetUp setUp) {
        double share = switch (q.family().group()) {
            case KNEE_BEND, HINGE, CALF -> 0.125;
            case CARRY -> 0.20;
            case PRESS -> 0.08;
            case PULL -> 0.12;
            case CURL, EXTENSION -> 0.05;
            case NONE -> 0;
        };
        if (setUp.count() == 0) {
            return 0;
        }
        double wanted = share * q.person().mass() / (setUp.eachHand() ? 2 : 1);
        double hands = setUp.bothHands() ? 2 : 1;
        return within(Math.min(wanted, hands * q.restraints().handLoad()), q.equipment().weights(setUp.implement()));
    }

    private static double within(double wanted, List<Mass> weights) {
        return weights.isEmpty() ? wanted
                : Math.clamp(wanted, weights.getFirst().kilograms(), weights.getLast().kilograms());
    }
}
