package contrapposto.body;

import contrapposto.quantity.Sex;

/**
 * Segment lengths in metres and the joint spacing of one person.
 *
 * @param thigh        hip to knee
 * @param shank        knee to ankle
 * @param ankleHeight  ankle above the sole
 * @param foot         heel to toe
 * @param heelToAnkle  ankle ahead of the heel, along the sole
 * @param heelToBall   ball of the foot ahead of the heel, along the sole
 * @param trunk        pelvis (midpoint of hips) to neck (midpoint of shoulders)
 * @param neckHead     neck to the top of the head
 * @param upperArm     shoulder to elbow
 * @param forearm      elbow to wrist
 * @param hand         wrist to fingertip
 * @param hipSpacing   between the hip joints
 * @param shoulderSpacing between the shoulder joints
 */
public record Segments(double thigh, double shank, double ankleHeight, double foot, double heelToAnkle,
                       double heelToBall, double trunk, double neckHead, double upperArm, double forearm, double hand,
                       double hipSpacing, double shoulderSpacing) {
    /** Neck (between the shoulders) to the top of the head, share of stature: 1 − 0.818 (Drillis and Contini). */
    static final double NECK_HEAD = 0.182;
    /** Joint centres above the support they rest on, shares of stature (drawing study of this project: house). */
    static final double KNEE_RADIUS = 0.031;
    static final double ELBOW_RADIUS = 0.0205;
    static final double PALM_HEIGHT = 0.018;
    static final double LACES_HEIGHT = 0.025;
    /** Grip centre ahead of the wrist, share of stature (drawing study: house). */
    static final double GRIP = 0.046;

    /** Distance between the hip joints per width between the front iliac spines: Bell 1989, 2 × 36 %. */
    private static final double HIPS_PER_SPINES = 0.72;
    /** Width between the spines (255.7 mm at 1741 mm, de Leva's men) per bicristal breadth (0.1569, ANSUR II men). */
    private static final double SPINES_PER_CRESTS = 255.7 / 1741 / 0.1569;
    /** The shoulder joint lies this far inward of the acromion, share of stature, a side: house. */
    private static final double ACROMION_TO_JOINT = 0.011;

    /**
     * Lengths from stature alone: Drillis and Contini 1966 through Winter 2009, Fig. 4.1; joint spacing from ANSUR II
     * (bicristal and biacromial breadth by sex, the mean of both where unstated). Along the sole: ball at 0.72 of the
     * foot, ankle 0.038 of stature ahead of the heel (house).
     *
     * @param stature m
     */
    public static Segments of(double stature, Sex sex) {
        double crests = switch (sex) {
            case MALE -> 0.1569;
            case FEMALE -> 0.1679;
            case UNSTATED -> (0.1569 + 0.1679) / 2;
        };
        double acromions = switch (sex) {
            case MALE -> 0.2368;
            case FEMALE -> 0.2244;
            case UNSTATED -> (0.2368 + 0.2244) / 2;
        };
        return new Segments(0.245 * stature, 0.246 * stature, 0.039 * stature, 0.152 * stature, 0.038 * stature,
                0.72 * 0.152 * stature, 0.288 * stature, NECK_HEAD * stature, 0.186 * stature, 0.146 * stature,
                0.108 * stature, crests * SPINES_PER_CRESTS * HIPS_PER_SPINES * stature,
                (acromions - 2 * ACROMION_TO_JOINT) * stature);
    }

    /** One of the lengths, m. */
    public double of(Segment segment) {
        return switch (segment) {
            case THIGH -> thigh;
            case SHANK -> shank;
            case ANKLE_HEIGHT -> ankleHeight;
            case FOOT -> foot;
            case TRUNK -> trunk;
            case NECK_AND_HEAD -> neckHead;
            case UPPER_ARM -> upperArm;
            case FOREARM -> forearm;
            case HAND -> hand;
            case HIP_SPACING -> hipSpacing;
            case SHOULDER_SPACING -> shoulderSpacing;
        };
    }

    /**
     * These with one length as it was measured; along the sole, ankle and ball keep their shares of the foot.
     *
     * @param metres above 0
     */
    public Segments with(Segment segment, double metres) {
        double[] all = new double[Segment.values().length];
        for (Segment each : Segment.values()) {
            all[each.ordinal()] = each == segment ? metres : of(each);
        }
        double stretch = all[Segment.FOOT.ordinal()] / foot;
        return new Segments(all[0], all[1], all[2], all[3], heelToAnkle * stretch, heelToBall * stretch, all[4], all[5],
                all[6], all[7], all[8], all[9], all[10]);
    }

    /** Ankle, shank, thigh, trunk, neck and head one above the other, m: the stature itself where all come from the table (C1.25). */
    public double standing() {
        return ankleHeight + shank + thigh + trunk + neckHead;
    }
}
