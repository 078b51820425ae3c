package contrapposto.prescribe;

import contrapposto.body.PoseProblem.Effort;
import contrapposto.body.SolvedPose.Mechanics;
import java.util.Locale;

/** A joint whose moment can measure strength. */
enum BindingJoint {
    HIP, KNEE, SHOULDER, ELBOW;

    /** Moment this joint bears, N·m. Of hip and knee the extensor moment; one that flexes counts as nothing. */
    double moment(Mechanics mechanics) {
        return switch (this) {
            case HIP -> Math.max(0, mechanics.hipMoment());
            case KNEE -> Math.max(0, mechanics.kneeMoment());
            case SHOULDER -> Math.abs(mechanics.shoulderMoment());
            case ELBOW -> Math.abs(mechanics.elbowMoment());
        };
    }

    /** c of this leg joint, N·m per kg of body mass, with which joints are compared. */
    double scale(Effort effort) {
        return switch (this) {
            case HIP -> effort.hip();
            case KNEE -> effort.knee();
            case SHOULDER, ELBOW -> throw new IllegalArgumentException("Only leg joints are compared, not the " + word() + ".");
        };
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
