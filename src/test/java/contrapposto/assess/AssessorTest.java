package contrapposto.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Assessed.Agrees;
import contrapposto.body.PoseProblem.Zone;
import contrapposto.catalogue.Family.Ribs;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Phase;
import contrapposto.check.CheckedSpec.Measure;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Side;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The roles and targets are common practice, no published source. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class AssessorTest {
    private static Assessed assess(Specs specs) {
        return new Assessor().assess(specs.spec(), Rules.house());
    }

    @Test
    void a_pelvis_turned_right_lands_left_and_drives_right() {
        var assessed = assess(Specs.turned(Turned.RIGHT));
        assertEquals(Optional.of(Side.LEFT), assessed.landing());
        assertEquals(Role.LANDING, assessed.role(Side.LEFT));
        assertEquals(Role.DRIVE, assessed.role(Side.RIGHT));
    }

    @Test
    void the_landing_side_accepts_weight_on_the_heel_and_opens_the_back_ribs() {
        var left = assess(Specs.turned(Turned.RIGHT)).left();
        assertEquals(List.of(Phase.EARLY_TO_MID), left.phases());
        assertEquals(Zone.HEEL, left.pressure());
        assertEquals(Ribs.OPENS_BACK, left.ribs());
        assertEquals(Optional.of(Side.LEFT), left.turnTo());
        assertEquals(List.of(Muscle.HAMSTRINGS, Muscle.UPPER_ADDUCTORS, Muscle.GLUTEUS_MEDIUS_FRONT,
                Muscle.OBLIQUES_TRANSVERSUS, Muscle.SERRATUS_ANTERIOR), left.muscles());
    }

    @Test
    void the_drive_side_pushes_off_the_ball_and_opens_the_front_ribs() {
        var right = assess(Specs.turned(Turned.RIGHT)).right();
        assertEquals(List.of(Phase.MID_TO_LATE), right.phases());
        assertEquals(Zone.BALL, right.pressure());
        assertEquals(Ribs.OPENS_FRONT, right.ribs());
        assertEquals(Optional.of(Side.LEFT), right.turnTo());
        assertEquals(List.of(Muscle.GLUTEUS_MAXIMUS, Muscle.GLUTEUS_MEDIUS_BACK, Muscle.QUADRICEPS,
                Muscle.SERRATUS_ANTERIOR, Muscle.LOWER_TRAPEZIUS, Muscle.TRICEPS_LONG_HEAD), right.muscles());
    }

    @Test
    void a_pelvis_turned_left_is_the_mirror_of_one_turned_right() {
        var turnedRight = assess(Specs.turned(Turned.RIGHT));
        var turnedLeft = assess(Specs.turned(Turned.LEFT));
        assertEquals(Optional.of(Side.RIGHT), turnedLeft.landing());
        for (var side : Side.values()) {
            var here = turnedLeft.target(side);
            var there = turnedRight.target(side.other());
            assertEquals(there.muscles(), here.muscles());
            assertEquals(there.phases(), here.phases());
            assertEquals(there.role(), here.role());
            assertEquals(there.turnTo().map(Side::other), here.turnTo());
        }
    }

    @Test
    void a_square_pelvis_gives_both_sides_the_same_task() {
        var assessed = assess(Specs.turned(Turned.SQUARE));
        assertEquals(Optional.empty(), assessed.landing());
        assertEquals(assessed.left(), assessed.right());
        assertEquals(Role.BOTH, assessed.left().role());
        assertEquals(2, assessed.left().phases().size());
    }

    @Test
    void measures_agree_disagree_or_do_not_count() {
        var assessed = assess(Specs.turned(Turned.RIGHT).measured(
                new Measure("hip internal rotation", 24, 41, "deg"), new Measure("hip external rotation", 30, 52, "deg"),
                new Measure("seated trunk turn", 52, 55, "deg"), new Measure("ankle dorsiflexion", 20, 38, "deg")));
        assertEquals(List.of(Agrees.YES, Agrees.NO, Agrees.WITHIN_ERROR, Agrees.NOT_RELATED),
                assessed.agreements().stream().map(Assessed.Agreement::agrees).toList());
        assertEquals(100.0 * 24 / 41, assessed.agreements().getFirst().symmetryPercent().getAsDouble(), 1e-9);
        assertTrue(assessed.reasons().stream().anyMatch(r -> r.because().contains("does not agree with the finding, which stands")));
    }

    @Test
    void a_difference_of_exactly_the_error_does_not_count_and_one_degree_more_does() {
        var within = assess(Specs.turned(Turned.RIGHT).measured(new Measure("hip internal rotation", 35, 40, "deg")));
        var beyond = assess(Specs.turned(Turned.RIGHT).measured(new Measure("hip internal rotation", 34, 40, "deg")));
        assertEquals(Agrees.WITHIN_ERROR, within.agreements().getFirst().agrees());
        assertEquals(Agrees.YES, beyond.agreements().getFirst().agrees());
    }

    @Test
    void where_the_pelvis_is_square_a_difference_that_counts_disagrees() {
        var assessed = assess(Specs.turned(Turned.SQUARE).measured(
                new Measure("hip internal rotation", 24, 41, "deg"), new Measure("seated trunk turn", 52, 55, "deg")));
        assertEquals(List.of(Agrees.NO, Agrees.YES),
                assessed.agreements().stream().map(Assessed.Agreement::agrees).toList());
    }
}
