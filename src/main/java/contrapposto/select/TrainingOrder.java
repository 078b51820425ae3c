package contrapposto.select;

import contrapposto.catalogue.Family;
import contrapposto.catalogue.Family.Ribs;
import contrapposto.catalogue.Stage;
import java.util.Comparator;

/**
 * What comes first in a session (common practice): floor work; balance work where {@link Balance} is to come first; what opens the ribs; then the large lifts of the legs,
 * pushes and pulls, arms, calves, and carries last. Equals in catalogue order.
 */
final class TrainingOrder {
    private TrainingOrder() { }

    static Comparator<Family> families(boolean balanceFirst) {
        return Comparator.comparingInt(family -> rank(family, balanceFirst));
    }

    private static int rank(Family family, boolean balanceFirst) {
        if (family.stage() == Stage.FLOOR) {
            return -1;
        }
        if (balanceFirst && Balance.trainedBy(family)) {
            return 0;
        }
        if (family.ribs() == Ribs.OPENS_BACK) {
            return 1;
        }
        return switch (family.group()) {
            case KNEE_BEND -> 2;
            case HINGE -> 3;
            case PRESS -> 4;
            case PULL -> 5;
            case CURL, EXTENSION -> 6;
            case NONE -> 7;
            case CALF -> 8;
            case CARRY -> 9;
        };
    }
}
