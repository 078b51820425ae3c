package contrapposto.catalogue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a restriction may keep a person away from: positions, demands and joints under load. A family carries every tag
 * that doing it in any set-up brings; {@code avoid: TAG} in a spec removes it. The words are those a spec may use.
 */
public enum RestrictionTag {
    // positions
    KNEELING, PRONE, SUPINE, SIDE_LYING, FLOOR, OVERHEAD, HEAD_BELOW_HEART, SINGLE_LEG,
    // demands
    WRIST_LOAD, GRIP, SPINE_FLEXION, BREATH_HOLD, IMPACT, DEEP_KNEE, DEEP_HIP, TWISTING,
    // the same with a weight, a cable or a band: no family carries these, the set-up decides
    LOADED_SPINE_FLEXION, LOADED_TWISTING,
    // joints that work against a load or carry body weight while they bend
    NECK, SHOULDER, ELBOW, WRIST, LOWER_BACK, HIP, KNEE, ANKLE;

    /** What a family must carry for this to concern it: for the loaded ones, the movement itself. */
    public RestrictionTag movement() {
        return switch (this) {
            case LOADED_SPINE_FLEXION -> SPINE_FLEXION;
            case LOADED_TWISTING -> TWISTING;
            case KNEELING, PRONE, SUPINE, SIDE_LYING, FLOOR, OVERHEAD, HEAD_BELOW_HEART, SINGLE_LEG, WRIST_LOAD, GRIP,
                    SPINE_FLEXION, BREATH_HOLD, IMPACT, DEEP_KNEE, DEEP_HIP, TWISTING, NECK, SHOULDER, ELBOW, WRIST,
                    LOWER_BACK, HIP, KNEE, ANKLE -> this;
        };
    }

    /** {@code head-below-heart}, {@code knee}, … */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<RestrictionTag> of(String word) {
        return Arrays.stream(values()).filter(t -> t.word().equals(word)).findFirst();
    }

    /** Every word, in order. */
    public static List<String> words() {
        return Arrays.stream(values()).map(RestrictionTag::word).toList();
    }
}
