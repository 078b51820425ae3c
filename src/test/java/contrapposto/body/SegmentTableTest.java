package contrapposto.body;

import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.quantity.Sex;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SegmentTableTest {
    /** Invariant of Winter 2009, Table 4.1 (reference C3.1). */
    @Test
    void winter_masses_add_up_to_the_body() {
        assertEquals(1, SegmentTable.WINTER.sum(), 1e-12);
    }

    /** de Leva 1996: men 1.0000, women 0.9999 as printed (reference C5.1, C5.2). */
    @Test
    void de_leva_masses_add_up_as_printed() {
        assertEquals(1.0000, SegmentTable.DE_LEVA_MALE.sum(), 5e-5);
        assertEquals(0.9999, SegmentTable.DE_LEVA_FEMALE.sum(), 5e-5);
    }

    /** The same shank centre from two endpoints, 193.5 mm: proves which length belongs to it (reference C5.4). */
    @Test
    void de_leva_shank_centre_belongs_to_the_joint_to_joint_length() {
        assertEquals(0.4459 * 434.0, SegmentTable.DE_LEVA_MALE.shank.centre() * 440.3, 0.05);
        assertEquals(0.4416 * 432.3, SegmentTable.DE_LEVA_FEMALE.shank.centre() * 438.6, 0.05);
    }

    /** The head's centre is 121.5 mm under the vertex for the 1741 mm man, 118.0 mm for the 1735 mm woman (C4, C5: Head 2). */
    @Test
    void de_leva_head_centre_keeps_its_distance_from_the_vertex() {
        assertEquals(121.5, (1 - SegmentTable.DE_LEVA_MALE.head.centre()) * Segments.NECK_HEAD * 1741, 0.05);
        assertEquals(118.0, (1 - SegmentTable.DE_LEVA_FEMALE.head.centre()) * Segments.NECK_HEAD * 1735, 0.05);
    }

    /** Drillis and Contini through Winter, Fig. 4.1: ankle + shank + thigh + trunk + neck and head = stature (C1.25). */
    @ParameterizedTest
    @EnumSource(Sex.class)
    void lengths_close_to_the_stature(Sex sex) {
        Segments s = Segments.of(1.75, sex);
        assertEquals(1.75, s.ankleHeight() + s.shank() + s.thigh() + s.trunk() + s.neckHead(), 1e-12);
        assertEquals(0.4305, s.shank(), 5e-5, "C1.4: the shank, not the knee height 0.4988");
        assertEquals(0.266, s.foot(), 5e-4, "C1.1");
    }

    /** ANSUR II (C6.8, C6.9) and Bell 1989 (C5.7): shoulders inside the acromions, hips 0.105 of a man's stature apart. */
    @Test
    void joint_spacing_is_inside_the_measured_breadths() {
        Segments man = Segments.of(1, Sex.MALE);
        Segments woman = Segments.of(1, Sex.FEMALE);
        assertEquals(0.72 * 255.7 / 1741, man.hipSpacing(), 1e-9);
        assertEquals(man.hipSpacing() * 0.1679 / 0.1569, woman.hipSpacing(), 1e-9);
        assertEquals(0.2368 - 0.022, man.shoulderSpacing(), 1e-9);
        assertEquals(0.2244 - 0.022, woman.shoulderSpacing(), 1e-9);
    }

    /** Joint to joint, men (reference C5.6, from C4): what de Leva measured, beside the shares of stature that are used here. */
    @Test
    void de_leva_lengths_over_stature_are_the_printed_shares() {
        assertEquals(0.1618, 281.7 / 1741, 5e-5);
        assertEquals(0.2425, 422.2 / 1741, 5e-5);
        assertEquals(0.2529, 440.3 / 1741, 5e-5);
        Segments man = Segments.of(1, Sex.MALE);
        assertEquals(0.2425, man.thigh(), 0.005, "thigh of Drillis and Contini, 0.245");
        assertEquals(0.2529, man.shank(), 0.008, "shank of Drillis and Contini, 0.246: from the condyle, not the joint centre");
    }

    /**
     * Trunk masses: upper, middle and lower add up to the trunk (C5.3, de Leva 1996, Table 4), and the trunk here is that sum.
     */
    @Test
    void de_leva_trunk_is_the_sum_of_its_three_parts() {
        assertEquals(0.1596 + 0.1633 + 0.1117, SegmentTable.DE_LEVA_MALE.trunk.mass(), 1e-9);
        assertEquals(0.1545 + 0.1465 + 0.1247, SegmentTable.DE_LEVA_FEMALE.trunk.mass(), 1e-9);
    }

    /**
     * Every row of de Leva's Table 4 that is used, men then women (C4, C5): mass and centre as printed, from the proximal end.
     * Trunk 3 runs from the middle of the shoulders to the middle of the hips, so its centre is turned round here.
     */
    @Test
    void de_leva_rows_are_as_printed() {
        assertRows(SegmentTable.DE_LEVA_MALE, new double[][] {{0.4346, 1 - 0.4310}, {0.0271, 0.5772}, {0.0162, 0.4574}, {0.0061, 0.3624},
            {0.1416, 0.4095}, {0.0433, 0.4395}, {0.0137, 0.4415}});
        assertRows(SegmentTable.DE_LEVA_FEMALE, new double[][] {{0.4257, 1 - 0.3782}, {0.0255, 0.5754}, {0.0138, 0.4559}, {0.0056, 0.3427},
            {0.1478, 0.3612}, {0.0481, 0.4352}, {0.0129, 0.4014}});
    }

    private static void assertRows(SegmentTable table, double[][] rows) {
        var parts = java.util.List.of(table.trunk, table.upperArm, table.forearm, table.hand, table.thigh, table.shank, table.foot);
        for (int i = 0; i < rows.length; i++) {
            assertEquals(rows[i][0], parts.get(i).mass(), 1e-9);
            assertEquals(rows[i][1], parts.get(i).centre(), 1e-9);
        }
    }

    /** The knee's height is 0.285 H, the shank 0.246 H; shoulders are narrower than Drillis' 0.259 H (J5, C1.4, C1.5, C1.15, C6.8). */
    @ParameterizedTest
    @EnumSource(Sex.class)
    void knee_height_is_no_shank_and_shoulders_are_not_drillis_breadth(Sex sex) {
        Segments s = Segments.of(1, sex);
        assertEquals(0.285, s.shank() + s.ankleHeight(), 1e-12);
        assertEquals(0.530, s.shank() + s.ankleHeight() + s.thigh(), 1e-12);
        assertEquals(true, s.shoulderSpacing() < 0.2368 && s.shoulderSpacing() < 0.259);
    }

    @ParameterizedTest
    @EnumSource(Segment.class)
    void a_measured_length_replaces_its_own_and_no_other(Segment measured) {
        Segments table = Segments.of(1.71, Sex.FEMALE);
        Segments own = table.with(measured, 1.1 * table.of(measured));
        for (Segment each : Segment.values()) {
            assertEquals(table.of(each) * (each == measured ? 1.1 : 1), own.of(each), 1e-12, each::word);
        }
        double stretch = measured == Segment.FOOT ? 1.1 : 1;
        assertEquals(table.heelToBall() * stretch, own.heelToBall(), 1e-12);
        assertEquals(table.heelToAnkle() * stretch, own.heelToAnkle(), 1e-12);
    }
}
