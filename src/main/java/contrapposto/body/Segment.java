package contrapposto.body;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** A length of the body that a coach can measure in place of the table's share of stature. */
public enum Segment {
    /** Hip joint (greater trochanter) to knee joint. */
    THIGH,
    /** Knee joint to ankle: not the knee's height above the floor, which is longer by the ankle's. */
    SHANK,
    /** Ankle above the sole. */
    ANKLE_HEIGHT,
    /** Heel to toe. */
    FOOT,
    /** Midpoint of the hips to midpoint of the shoulders. */
    TRUNK,
    /** Midpoint of the shoulders to the top of the head. */
    NECK_AND_HEAD,
    /** Shoulder joint to elbow. */
    UPPER_ARM,
    /** Elbow to wrist. */
    FOREARM,
    /** Wrist to fingertip. */
    HAND,
    /** Between the hip joints. */
    HIP_SPACING,
    /** Between the shoulder joints. */
    SHOULDER_SPACING;

    /** As a spec writes it, {@code ankle-height}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** All words, in order. */
    public static List<String> words() {
        return Arrays.stream(values()).map(Segment::word).toList();
    }
}
