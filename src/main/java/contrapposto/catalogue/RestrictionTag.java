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
    // joints that work against a load or carry body weight while they bend
    NECK, SHOULDER, ELBOW, WRIST, LOWER_BACK, HIP, KNEE, ANKLE;

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
