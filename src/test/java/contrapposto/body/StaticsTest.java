package contrapposto.body;

import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.body.Joint.Part;
import contrapposto.quantity.Sex;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StaticsTest {
    /** The examples are printed with 9.80 m/s²; the tool computes with standard gravity. */
    private static final double TO_PRINTED_GRAVITY = 9.80 / PointMass.GRAVITY;

    /**
     * Muscle force = moment of forearm and load about the elbow ÷ the muscle's lever. OpenStax College Physics, Example
     * 9.4 (H1.2, from memory, arithmetic verified); a published exercise solution (H1.3); a published practice problem (H1.4).
     */
    @ParameterizedTest
    @CsvSource({"2.50, 0.16, 4.00, 0.38, 0.04, 470.4", "2.0, 0.14, 4.8, 0.32, 0.06, 296.613", "1.00, 0.185, 0.6, 0.37, 0.035, 113.96"})
    void the_forearm_examples_come_out(double forearm, double at, double load, double loadAt, double lever, double newton) {
        assertEquals(newton, elbowMoment(forearm, at, load, loadAt) * TO_PRINTED_GRAVITY / lever, 0.05);
    }

    /** H1.2: 18.816 N·m at the elbow, which an outside rigid-body engine gives too; elbow force 406.7 N. */
    @Test
    void the_elbow_moment_and_force_of_the_book_example_come_out() {
        assertEquals(18.816, elbowMoment(2.5, 0.16, 4, 0.38) * TO_PRINTED_GRAVITY, 1e-3);
        assertEquals(406.7, 470.4 - 6.5 * 9.80, 0.05);
    }

    /** Giancoli, 7th ed., ch. 9 pr. 37: muscle at 105° to the forearm, about 1800 N (1836.4) with 25 kg, 1552.3 with 21 kg (H1.5). */
    @ParameterizedTest
    @CsvSource({"25, 1836.4", "21, 1552.3"})
    void a_slanting_muscle_needs_more(double load, double newton) {
        double lever = 0.05 * Degrees.sin(105);
        assertEquals(newton, elbowMoment(2.0, 0.15, load, 0.35) * TO_PRINTED_GRAVITY / lever, 1);
    }

    /** OpenStax University Physics 1, Example 12.4, in pounds and inches: 433.3 lb (H1.6, from memory). */
    @Test
    void the_moment_does_not_care_about_units() {
        var hand = new PointForce(new Vector3D(13, 0, 0), new Vector3D(0, 0, -50));
        assertEquals(433.3, hand.momentAbout(Vector3D.ZERO).getY() / 1.5, 0.05);
    }

    /** Split stance, mass centre at a share of the way: front = a·W (H1.8, derived); 0.75 and 0.8436 of D3.1. */
    @ParameterizedTest
    @CsvSource({"0.75, 0", "0.8436, 0", "0.5, 0", "0.75, 0.2"})
    void the_front_share_is_where_the_weight_falls(double share, double raise) {
        Vector3D front = new Vector3D(0.3, 0.1, raise);
        Vector3D rear = new Vector3D(-0.5, -0.1, 0);
        Vector3D centre = new Vector3D(share, front, 1 - share, rear).add(new Vector3D(0, 0, 0.7));
        PointForce weight = new PointMass(centre, 70).weight();
        GroundReaction reaction = GroundReaction.of(front, rear, weight.newton(), weight.momentAbout(rear));
        assertEquals(share, reaction.share(), 1e-12);
        assertEquals(0, reaction.slip(), 1e-12);
    }

    /** F·cos a·h − F·sin a·x about the floor contact (H1.10, derived); the two feet hold a slanting pull without a twist. */
    @Test
    void two_feet_hold_a_cable() {
        Vector3D front = new Vector3D(0.25, -0.1, 0);
        Vector3D rear = new Vector3D(-0.15, 0.1, 0);
        var pull = new PointForce(new Vector3D(0.3, -0.1, 1.3), new Vector3D(-40, 6, 12));
        PointForce weight = new PointMass(new Vector3D(0.1, -0.02, 0.95), 70).weight();
        var others = new ArrayList<>(List.of(pull, weight));
        GroundReaction reaction = GroundReaction.of(front, rear, PointForce.sum(others), PointForce.momentAbout(rear, others));
        others.add(new PointForce(front, reaction.first()));
        others.add(new PointForce(rear, reaction.second()));
        assertEquals(0, PointForce.sum(others).getNorm(), 1e-9);
        Vector3D left = PointForce.momentAbout(rear, others);
        Vector3D line = front.subtract(rear).normalize();
        double aboutLine = left.dotProduct(line);
        assertEquals(0, left.subtract(line.scalarMultiply(aboutLine)).getNorm(), 1e-9, "only about the line of the feet");
        assertEquals(Math.abs(reaction.slip()), Math.abs(aboutLine) / -PointForce.sum(List.of(pull, weight)).getZ(), 1e-9);
        double a = Degrees.atan2(12, 40);
        double size = StrictMath.sqrt(40 * 40 + 12 * 12);
        assertEquals(-(size * Degrees.cos(a) * 1.3 + size * Degrees.sin(a) * 0.3), pull.momentAbout(Vector3D.ZERO).getY(), 1e-9);
    }

    /** 10 kg at 0.30 m to one side: 29.4 N·m toward the loaded side with 9.80 m/s² (H1.9, derived). */
    @Test
    void a_one_sided_weight_bends_toward_itself_by_weight_times_distance() {
        Person person = Person.of(1.75, 75, Sex.MALE);
        var k = standing(person, 0);
        for (Part part : List.of(Part.WRIST, Part.HAND)) {
            k.set(Side.RIGHT, part, new Vector3D(0, -0.30, part == Part.WRIST ? 0.8 : 0.7));
        }
        var statics = new Statics(k, Loads.of(new Load.InHand(Side.RIGHT, 10), 0), List.of());
        assertEquals(29.4, statics.side() * TO_PRINTED_GRAVITY, 1e-9);
        assertEquals(0, statics.turn(), 1e-9, "an upright trunk is not turned by a free weight");
    }

    /** A free weight turns a leaned trunk away from the hand: weight × sideways distance × sin lean (vector algebra). */
    @Test
    void a_one_sided_weight_turns_a_leaned_trunk_away_from_itself() {
        var k = standing(Person.of(1.75, 75, Sex.MALE), 40);
        for (Part part : List.of(Part.WRIST, Part.HAND)) {
            k.set(Side.RIGHT, part, new Vector3D(0.2, -0.30, part == Part.WRIST ? 0.8 : 0.7));
        }
        double turn = new Statics(k, Loads.of(new Load.InHand(Side.RIGHT, 10), 0), List.of()).turn();
        assertEquals(10 * PointMass.GRAVITY * 0.30 * Degrees.sin(40), turn, 1e-9);
    }

    /** Winter's masses on Drillis' heights: 0.58281 of stature (H3.3, computed from C1 and C2); not the measured 0.55. */
    @Test
    void the_standing_mass_centre_is_where_the_tables_put_it() {
        Person person = Person.of(1.75, 75, Sex.UNSTATED);
        var k = standing(person, 0);
        var masses = new ArrayList<PointMass>();
        k.trunkWeights(masses);
        for (Side side : Side.values()) {
            k.legWeights(side, masses);
            k.armWeights(side, masses);
        }
        assertEquals(75, PointMass.centre(masses).mass(), 1e-9);
        assertEquals(0.58281, PointMass.centre(masses).at().getZ() / 1.75, 5e-6);
    }

    private static double elbowMoment(double forearm, double at, double load, double loadAt) {
        return new PointMass(new Vector3D(at, 0, 0), forearm).weight().momentAbout(Vector3D.ZERO)
                .add(new PointMass(new Vector3D(loadAt, 0, 0), load).weight().momentAbout(Vector3D.ZERO)).getY();
    }

    /** Bolt upright, arms straight down, soles flat. */
    private static Skeleton standing(Person person, double lean) {
        Segments s = person.segments();
        var k = new Skeleton(person);
        k.trunk(Torso.upright(new Vector3D(0, 0, s.ankleHeight() + s.shank() + s.thigh()), 0, lean, 0, 0), Vector3D.PLUS_K);
        Vector3D down = Vector3D.MINUS_K;
        for (Side side : Side.values()) {
            k.leg(side, down, down, Vector3D.PLUS_I, down);
            k.arm(side, down, down, down);
        }
        return k;
    }
}
