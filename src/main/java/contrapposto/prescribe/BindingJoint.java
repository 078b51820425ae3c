package contrapposto.prescribe;

import contrapposto.body.SolvedPose.Mechanics;
import contrapposto.catalogue.CapacityGroup;
import java.util.List;
import java.util.Locale;

/** A joint whose moment can measure strength. */
enum BindingJoint {
    HIP, KNEE, SHOULDER, ELBOW;

    /** Size of the moment this joint bears, N·m. For hip and knee an extensor moment; one that flexes counts as nothing. */
    double moment(Mechanics mechanics) {
        return switch (this) {
            case HIP -> Math.max(0, mechanics.hipMoment());
            case KNEE -> Math.max(0, mechanics.kneeMoment());
            case SHOULDER -> Math.abs(mechanics.shoulderMoment());
            case ELBOW -> Math.abs(mechanics.elbowMoment());
        };
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The joints that may bind in a group; none where no moment is computed. */
    static List<BindingJoint> of(CapacityGroup group) {
        return switch (group) {
            case KNEE_BEND, HINGE -> List.of(HIP, KNEE);
            case PRESS, PULL -> List.of(SHOULDER);
            case CURL, EXTENSION -> List.of(ELBOW);
            case CALF, CARRY, NONE -> List.of();
        };
    }
}
