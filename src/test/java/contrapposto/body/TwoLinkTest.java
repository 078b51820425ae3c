package contrapposto.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reference H2; formula: Lynch and Park, Modern Robotics, ch. 6. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TwoLinkTest {
    @ParameterizedTest
    @CsvSource({"1, 1, 1, 1, 0, 90", "4, 3, 5, 0, -36.8699, 90", "0.5, 0.4, 0.5, 0.5, 11.55196, 76.99712",
        "0.42875, 0.4305, 0.3, -0.7, -94.44705, 55.16935", "1, 1, 2, 0, 0, 0"})
    void angles_match_the_worked_table(double l1, double l2, double x, double y, double first, double second) {
        TwoLink.Angles angles = TwoLink.angles(l1, l2, x, y).orElseThrow();
        assertEquals(first, angles.first(), 1e-4);
        assertEquals(second, angles.second(), 1e-4);
    }

    /** H2.6. */
    @Test
    void a_point_out_of_reach_has_no_angles() {
        assertTrue(TwoLink.angles(1, 1, 2.01, 0).isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"4, 3, 5, 90", "1, 1, 2, 0", "0.42875, 0.4305, 0.761577, 55.16935"})
    void bend_and_span_are_two_words_for_one_thing(double l1, double l2, double span, double flexion) {
        assertEquals(span, TwoLink.span(l1, l2, flexion), 1e-5);
        assertEquals(flexion, TwoLink.flexion(l1, l2, span), 1e-3);
    }

    /** The 3-4-5 triangle, laid out in space. */
    @Test
    void the_middle_joint_keeps_both_lengths_and_bends_toward_the_pole() {
        Vector3D middle = TwoLink.middle(Vector3D.ZERO, new Vector3D(0, 0, -5), 4, 3, new Vector3D(1, 0, 7));
        assertEquals(4, middle.getNorm(), 1e-12);
        assertEquals(3, middle.distance(new Vector3D(0, 0, -5)), 1e-12);
        assertTrue(middle.getX() > 0);
        assertEquals(0, middle.getY(), 1e-12);
    }
}
