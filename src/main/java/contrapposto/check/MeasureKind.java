package contrapposto.check;

import contrapposto.spec.Dimension;
import contrapposto.spec.Unit;
import contrapposto.spec.Value.Range;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The left-and-right measures a spec may name, each with its unit and the values that a body can have. The ranges are
 * wide on purpose, to catch slips of the pen only (common practice, no source).
 */
public enum MeasureKind {
    HIP_INTERNAL_ROTATION(Unit.DEG, 90), HIP_EXTERNAL_ROTATION(Unit.DEG, 90), HIP_FLEXION(Unit.DEG, 150),
    HIP_ADDUCTION(Unit.DEG, 60), HIP_ABDUCTION(Unit.DEG, 90), STRAIGHT_LEG_RAISE(Unit.DEG, 150),
    KNEE_FLEXION(Unit.DEG, 165), ANKLE_DORSIFLEXION(Unit.DEG, 60), SEATED_TRUNK_TURN(Unit.DEG, 100),
    SHOULDER_FLEXION(Unit.DEG, 190), SHOULDER_INTERNAL_ROTATION(Unit.DEG, 120), SHOULDER_EXTERNAL_ROTATION(Unit.DEG, 130),
    SINGLE_LEG_STANCE(Unit.S, 300), KNEE_TO_WALL_DISTANCE(Unit.CM, 30);

    private final Unit unit;
    private final double most;

    MeasureKind(Unit unit, double most) {
        this.unit = unit;
        this.most = most;
    }

    /** {@code hip internal rotation}; {@code single-leg stance} and {@code straight-leg raise} keep their hyphens. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ').replace("single leg", "single-leg")
                .replace("straight leg", "straight-leg").replace("knee to wall", "knee-to-wall");
    }

    /** The unit in which values are kept. */
    public Unit unit() {
        return unit;
    }

    public Dimension dimension() {
        return unit.dimension();
    }

    /** In {@link #unit}. */
    Range range() {
        return new Range(0, most, "check the number; measure again");
    }

    /** @throws IllegalArgumentException if the table of keys let through another word (a bug) */
    static MeasureKind of(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No measure (" + word + ")."));
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(MeasureKind::word).toList();
    }
}
