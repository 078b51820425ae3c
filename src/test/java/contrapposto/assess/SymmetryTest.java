package contrapposto.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SymmetryTest {
    /** 100 × involved ÷ uninvolved: the limb symmetry index of knee rehabilitation guidelines. */
    @Test
    void limb_symmetry_index_of_80_and_100_is_80() {
        assertEquals(80, Symmetry.LIMB_SYMMETRY_INDEX.of(80, 100), 1e-9);
        assertEquals(80, Symmetry.LIMB_SYMMETRY_INDEX.of(100, 80), 1e-9);
    }

    /** Bishop et al. 2018, Strength Cond J 40(4):1-6 (formula from memory). */
    @Test
    void percent_difference_of_80_and_100_is_20() {
        assertEquals(20, Symmetry.PERCENT_DIFFERENCE.of(80, 100), 1e-9);
    }

    /** Zifchock et al. 2008, Gait Posture 27:622-627 (formula from memory): 45° − atan(0.8) = 6.3402°. */
    @Test
    void symmetry_angle_of_80_and_100_is_7_0447() {
        assertEquals(7.0447, Symmetry.SYMMETRY_ANGLE.of(80, 100), 5e-5);
        assertEquals(-7.0447, Symmetry.SYMMETRY_ANGLE.of(100, 80), 5e-5);
    }

    /** Howard and Enoka 1991, J Appl Physiol 70:306-316 (the minus-100 form from memory). */
    @Test
    void bilateral_index_of_180_against_95_and_105_is_a_deficit_of_10() {
        assertEquals(-10, Symmetry.bilateralIndex(180, 95, 105), 1e-9);
    }

    @Test
    void equal_sides_are_symmetric_by_every_equation() {
        assertEquals(100, Symmetry.LIMB_SYMMETRY_INDEX.of(30, 30), 1e-9);
        assertEquals(0, Symmetry.PERCENT_DIFFERENCE.of(30, 30), 1e-9);
        assertEquals(0, Symmetry.SYMMETRY_ANGLE.of(30, 30), 1e-9);
        assertEquals(100, Symmetry.LIMB_SYMMETRY_INDEX.of(0, 0), 1e-9);
    }
}
