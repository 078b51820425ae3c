package contrapposto.body;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Segment masses as fractions of body mass, and where along a segment its mass centre lies, as a fraction of the
 * distance from the first to the second endpoint in the names below.
 */
public enum SegmentTable {
    /**
     * Winter DA 2009, Biomechanics and Motor Control of Human Movement, 4th ed., Table 4.1 (Dempster, adapted). Trunk,
     * head and neck are one segment there, measured from hip to shoulder, so the head has no mass of its own.
     */
    WINTER(0.578, 0.66, 0, 0.5, 0.028, 0.436, 0.016, 0.43, 0.006, 0.506, 0.1, 0.433, 0.0465, 0.433, 0.0145, 0.5, false),
    /** de Leva P 1996, J Biomech 29(9):1223-1230, Table 4, men. Head on the neck→vertex line from Head 2. */
    DE_LEVA_MALE(0.4346, 1 - 0.4310, 0.0694, 1 - 0.5002 * 242.9 / 1741 / Segments.NECK_HEAD, 0.0271, 0.5772,
            0.0162, 0.4574, 0.0061, 0.3624, 0.1416, 0.4095, 0.0433, 0.4395, 0.0137, 0.4415, true),
    /** de Leva 1996, Table 4, women. Masses add up to 0.9999. */
    DE_LEVA_FEMALE(0.4257, 1 - 0.3782, 0.0668, 1 - 0.4841 * 243.7 / 1735 / Segments.NECK_HEAD, 0.0255, 0.5754,
            0.0138, 0.4559, 0.0056, 0.3427, 0.1478, 0.3612, 0.0481, 0.4352, 0.0129, 0.4014, true);

    /** One segment: {@code mass} of the body, {@code centre} along it from its first endpoint. */
    public record Part(double mass, double centre) { }

    /** Pelvis → neck. */
    public final Part trunk;
    /** Neck → head-top. */
    public final Part head;
    /** Shoulder → elbow. */
    public final Part upperArm;
    /** Elbow → wrist. */
    public final Part forearm;
    /** Wrist → fingertip. */
    public final Part hand;
    /** Hip → knee. */
    public final Part thigh;
    /** Knee → ankle. */
    public final Part shank;
    /** Ankle → ball, or heel → toe where {@link #footFromHeel}. */
    public final Part foot;
    public final boolean footFromHeel;

    SegmentTable(double trunk, double trunkAt, double head, double headAt, double upperArm, double upperArmAt,
                 double forearm, double forearmAt, double hand, double handAt, double thigh, double thighAt,
                 double shank, double shankAt, double foot, double footAt, boolean footFromHeel) {
        this.trunk = new Part(trunk, trunkAt);
        this.head = new Part(head, headAt);
        this.upperArm = new Part(upperArm, upperArmAt);
        this.forearm = new Part(forearm, forearmAt);
        this.hand = new Part(hand, handAt);
        this.thigh = new Part(thigh, thighAt);
        this.shank = new Part(shank, shankAt);
        this.foot = new Part(foot, footAt);
        this.footFromHeel = footFromHeel;
    }

    /** As a spec writes it, {@code de-leva-female}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** All words, the default first. */
    public static List<String> words() {
        return Arrays.stream(values()).map(SegmentTable::word).toList();
    }

    /** Of the whole body; 1 but for the rounding of the printed table. */
    public double sum() {
        return trunk.mass + head.mass
                + 2 * (upperArm.mass + forearm.mass + hand.mass + thigh.mass + shank.mass + foot.mass);
    }
}
