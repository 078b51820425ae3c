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
}
