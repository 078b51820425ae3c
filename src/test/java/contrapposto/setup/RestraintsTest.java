package contrapposto.setup;

import static contrapposto.setup.PaperBody.family;
import static contrapposto.setup.PaperBody.question;
import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.assess.Assessed.Limit;
import contrapposto.assess.Restrained;
import contrapposto.assess.Specs;
import contrapposto.body.JointLimits;
import contrapposto.catalogue.Implement;
import contrapposto.check.CheckedSpec.Measure;
import contrapposto.check.CheckedSpec.Restriction;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Angle;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a restriction, a measure or the screening takes away, by records made by hand. Which side a demand falls on is common practice, no source. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RestraintsTest {
    private static final Specs RIGHT = Specs.turned(Turned.RIGHT);

    private static Restraints of(Restriction... restrictions) {
        return question("split-squat", Side.LEFT, RIGHT.restricted(restrictions)).restraints();
    }

    private static Restriction range(String what, Set<Side> sides, double degrees) {
        return new Restriction.LimitRange(what, sides, Angle.ofDegrees(degrees), Optional.empty(), "sore");
    }

    private static Restriction avoid(String what, Side... sides) {
        return new Restriction.Avoid(what, Set.of(sides), Optional.empty(), "sore");
    }

    private static Restriction atMost(double kg) {
        return new Restriction.LimitLoad(Mass.ofKilograms(kg), Optional.empty(), "sore");
    }

    /** The house asks 5° less of an ankle than was measured; of the other joints it takes what was measured. */
    @Test
    void a_joint_goes_as_far_as_was_measured_and_as_a_restriction_allows() {
        var measured = RIGHT.measured(new Measure("ankle dorsiflexion", 32, 3, "deg"), new Measure("hip-flexion", 110, 120, "deg"), new Measure("knee flexion", 1, 2, "cm"))
                .restricted(range("knee-flexion", Set.of(Side.LEFT), 90), range("hip-flexion", Set.of(Side.LEFT, Side.RIGHT), 115), atMost(5), avoid("grip", Side.LEFT));
        var limits = question("split-squat", Side.LEFT, measured).restraints().limits();
        var c = JointLimits.COMMON;
        assertEquals(new JointLimits(110, c.hipExtension(), 90, 27, c.anklePlantarflexion(), c.toeExtension(), c.shoulderFlexion(), c.elbowFlexion()), limits.on(Side.LEFT));
        assertEquals(new JointLimits(115, c.hipExtension(), c.kneeFlexion(), 0, c.anklePlantarflexion(), c.toeExtension(), c.shoulderFlexion(), c.elbowFlexion()),
                limits.on(Side.RIGHT), "3 less 5 is none");
        var free = of().limits();
        assertEquals(List.of(c, c), List.of(free.on(Side.LEFT), free.on(Side.RIGHT)));
    }

    @Test
    void the_lightest_limit_of_a_hand_counts() {
        assertEquals(4, of(atMost(9), range("knee-flexion", Set.of(Side.LEFT), 90), atMost(4), avoid("grip", Side.LEFT)).handLoad());
        assertEquals(Double.POSITIVE_INFINITY, of(avoid("grip", Side.LEFT), range("knee-flexion", Set.of(Side.LEFT), 90)).handLoad());
        assertEquals(Double.POSITIVE_INFINITY, of().handLoad());
    }

    @ParameterizedTest
    @CsvSource({"NO_SUPINE, floor-bridge, screening-limit/supine", "NO_IMPACT, split-squat, ''", "NO_BREATH_HOLD, half-kneeling-press, screening-limit/breath",
            "NO_SUPINE, split-squat, ''", "NO_BREATH_HOLD, split-squat, ''", "MODERATE_LOAD, floor-bridge, ''"})
    void a_limit_of_the_screening_takes_what_falls_under_it(Limit limit, String id, String key) {
        var restraints = new Restraints(List.of(), Set.of(limit), new Sided.Whole<>(JointLimits.COMMON));
        assertEquals(key, restraints.against(family(id), Arranged.flat().setUp(), Side.LEFT).map(r -> r.said().key()).orElse(""));
    }

    /** One side is restricted, the left; does a set-up of the working side, with the weight in that hand, fall under it? */
    @ParameterizedTest
    @CsvSource({"split-squat, split-squat, LEFT, RIGHT, true", "split-squat, split-squat, RIGHT, LEFT, false", "goblet-squat, goblet-squat, RIGHT, RIGHT, true",
            "single-leg, split-squat, LEFT, RIGHT, true", "single-leg, split-squat, RIGHT, LEFT, false", "single-leg, floor-bridge, LEFT, LEFT, false",
            "grip, split-squat, RIGHT, LEFT, true", "grip, split-squat, LEFT, RIGHT, false", "deep-knee, split-squat, RIGHT, RIGHT, true",
            "knee, split-squat, RIGHT, RIGHT, true", "knee, one-leg-squat, RIGHT, RIGHT, false", "knee, one-leg-squat, LEFT, RIGHT, true",
            "deep-hip, one-leg-hinge, RIGHT, RIGHT, false", "deep-hip, goblet-squat, RIGHT, RIGHT, true", "shoulder, suitcase-carry, RIGHT, RIGHT, false",
            "shoulder, suitcase-carry, RIGHT, LEFT, true", "elbow, supported-curl, RIGHT, RIGHT, true", "kneeling, half-kneeling-press, RIGHT, RIGHT, false",
            "twisting, supported-curl, RIGHT, RIGHT, true"})
    void a_restricted_left_side_takes_what_falls_on_it(String what, String id, Side working, Side hand, boolean taken) {
        assertEquals(taken, of(avoid(what, Side.LEFT)).against(family(id), Arranged.flat().in(hand).setUp(), working).isPresent());
    }

    /** With the left foot ahead the right knee kneels. */
    @Test
    void the_knee_behind_kneels() {
        var press = family("half-kneeling-press");
        for (var knee : Side.values()) {
            assertEquals(knee == Side.RIGHT, of(avoid("kneeling", knee)).against(press, Arranged.flat().ahead(Side.LEFT).setUp(), Side.LEFT).isPresent());
            assertEquals(knee == Side.LEFT, of(avoid("kneeling", knee)).against(press, Arranged.flat().ahead(Side.RIGHT).setUp(), Side.LEFT).isPresent());
        }
    }

    @Test
    void an_empty_hand_grips_nothing_and_a_weight_in_each_burdens_both() {
        var grip = of(avoid("grip", Side.LEFT));
        assertEquals(Optional.empty(), grip.against(family("split-squat"), Arranged.flat().with(Implement.BODY_WEIGHT).setUp(), Side.LEFT));
        assertEquals(Optional.empty(), grip.against(family("goblet-squat"), Arranged.flat().with(Implement.BODY_WEIGHT).setUp(), Side.LEFT));
        var one = Arranged.flat().setUp();
        for (boolean each : new boolean[] {true, false}) {
            var two = new SetUp(one.workingLeg(), one.workingArm(), one.frontFoot(), one.frontRaise(), one.rearRaise(), one.raise(), one.heelWedge(), one.wedgeFoot(),
                    one.stance(), one.stanceWidth(), Optional.of(Side.RIGHT), !each, each, false, SetUp.Support.NONE, one.pulley(), one.pulleyDistance(), one.implement(), 1);
            assertEquals(grip.active().stream().map(Restrained::why).toList(), grip.against(family("split-squat"), two, Side.RIGHT).stream().toList());
        }
        assertEquals(Optional.empty(), grip.against(family("split-squat"), one, Side.RIGHT), "the right hand holds it");
    }
}
