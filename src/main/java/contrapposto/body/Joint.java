package contrapposto.body;

import contrapposto.quantity.Side;

/** The points a pose is made of. Words (kebab-case) are part of the plan's file format. */
public enum Joint {
    LEFT_HIP, LEFT_KNEE, LEFT_ANKLE, LEFT_HEEL, LEFT_BALL, LEFT_TOE,
    LEFT_SHOULDER, LEFT_ELBOW, LEFT_WRIST, LEFT_HAND,
    RIGHT_HIP, RIGHT_KNEE, RIGHT_ANKLE, RIGHT_HEEL, RIGHT_BALL, RIGHT_TOE,
    RIGHT_SHOULDER, RIGHT_ELBOW, RIGHT_WRIST, RIGHT_HAND,
    /** Midpoint of the hips. */
    PELVIS,
    /** Midpoint of the shoulders. */
    NECK,
    HEAD_TOP;

    private static final Joint[] ALL = values();
    private static final int PARTS = Part.values().length;

    /** The kinds of joint that each side has. */
    public enum Part { HIP, KNEE, ANKLE, HEEL, BALL, TOE, SHOULDER, ELBOW, WRIST, HAND }

    /** The joint of {@code part} on {@code side}. */
    public static Joint of(Side side, Part part) {
        return ALL[part.ordinal() + (side == Side.LEFT ? 0 : PARTS)];
    }

    /** The joint that takes this one's place in the mirror; a midline joint is its own. */
    public Joint mirrored() {
        return ordinal() >= 2 * PARTS ? this : ALL[(ordinal() + PARTS) % (2 * PARTS)];
    }

    /** {@code left-hip}, {@code head-top}, … */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
