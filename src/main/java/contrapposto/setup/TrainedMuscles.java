package contrapposto.setup;

import contrapposto.catalogue.Family.MuscleUse;
import contrapposto.catalogue.Family.When;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Phase;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which muscles a set-up trains, once its phase is known. */
final class TrainedMuscles {
    private TrainedMuscles() { }

    /** Muscle → 1 where a set counts fully, 0.5 where it counts one half; in the order of {@link Muscle}. */
    static Map<Muscle, Double> of(List<MuscleUse> uses, Optional<Phase> phase) {
        var trained = new EnumMap<Muscle, Double>(Muscle.class);
        uses.stream().filter(use -> happens(use.when(), phase))
                .forEach(use -> trained.merge(use.muscle(), use.direct() ? 1.0 : 0.5, Math::max));
        return Collections.unmodifiableMap(trained);
    }

    private static boolean happens(When when, Optional<Phase> phase) {
        return switch (when) {
            case ALWAYS -> true;
            case EARLY_TO_MID -> phase.equals(Optional.of(Phase.EARLY_TO_MID));
            case MID_TO_LATE -> phase.equals(Optional.of(Phase.MID_TO_LATE));
        };
    }
}
