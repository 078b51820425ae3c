package contrapposto.assess;

import static contrapposto.catalogue.Muscle.GLUTEUS_MAXIMUS;
import static contrapposto.catalogue.Muscle.GLUTEUS_MEDIUS_BACK;
import static contrapposto.catalogue.Muscle.GLUTEUS_MEDIUS_FRONT;
import static contrapposto.catalogue.Muscle.HAMSTRINGS;
import static contrapposto.catalogue.Muscle.LOWER_TRAPEZIUS;
import static contrapposto.catalogue.Muscle.OBLIQUES_TRANSVERSUS;
import static contrapposto.catalogue.Muscle.QUADRICEPS;
import static contrapposto.catalogue.Muscle.SERRATUS_ANTERIOR;
import static contrapposto.catalogue.Muscle.TRICEPS_LONG_HEAD;
import static contrapposto.catalogue.Muscle.UPPER_ADDUCTORS;

import contrapposto.assess.Assessed.Target;
import contrapposto.body.PoseProblem.Zone;
import contrapposto.catalogue.Family.Ribs;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Phase;
import contrapposto.quantity.Side;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What each role has to train: common practice, no published source. */
final class Targets {
    private static final List<Muscle> LANDING = List.of(HAMSTRINGS, UPPER_ADDUCTORS, GLUTEUS_MEDIUS_FRONT,
            OBLIQUES_TRANSVERSUS, SERRATUS_ANTERIOR);
    private static final List<Muscle> DRIVE = List.of(GLUTEUS_MAXIMUS, GLUTEUS_MEDIUS_BACK, QUADRICEPS,
            SERRATUS_ANTERIOR, LOWER_TRAPEZIUS, TRICEPS_LONG_HEAD);

    private Targets() { }

    /** The task of a side whose role is {@code role}; {@code landing} is empty exactly when the pelvis is square. */
    static Target of(Role role, Optional<Side> landing) {
        return switch (role) {
            case LANDING -> new Target(role, List.of(Phase.EARLY_TO_MID), Zone.HEEL, LANDING, Ribs.OPENS_BACK, landing);
            case DRIVE -> new Target(role, List.of(Phase.MID_TO_LATE), Zone.BALL, DRIVE, Ribs.OPENS_FRONT, landing);
            case BOTH -> new Target(role, List.of(Phase.EARLY_TO_MID, Phase.MID_TO_LATE), Zone.WHOLE_SOLE,
                    Stream.concat(LANDING.stream(), DRIVE.stream()).distinct().toList(), Ribs.NEITHER, Optional.empty());
        };
    }
}
