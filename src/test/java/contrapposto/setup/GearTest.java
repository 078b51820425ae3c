package contrapposto.setup;

import static contrapposto.setup.PaperBody.family;
import static contrapposto.setup.PaperBody.question;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Specs;
import contrapposto.catalogue.Family.LoadHand;
import contrapposto.catalogue.Implement;
import contrapposto.check.CheckedSpec.Cable;
import contrapposto.check.CheckedSpec.Equipment;
import contrapposto.check.CheckedSpec.Restriction;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Side;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a client of 171 cm can arrange with what is there: counted by hand. The numbers of the house (a front foot on at most 0.14 of the stature, 23.9 cm;
 * a rear foot on at most 0.28, 47.9 cm) have no source; which weight goes into which hand is common practice, no source.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class GearTest {
    private static final Specs RIGHT = Specs.turned(Turned.RIGHT);
    private static final Equipment NOTHING = new Equipment(List.of(), false, List.of(), List.of(), Optional.empty(), List.of(), Optional.empty(), List.of(), Set.of());

    private static Gear gear(Equipment equipment) {
        return Gear.of(question("split-squat", Side.LEFT, RIGHT.equipped(equipment)));
    }

    private static Equipment raises(Optional<Length> bench, double... boxes) {
        return new Equipment(Specs.masses(8, 8, 1), false, List.of(), List.of(), Optional.empty(),
                java.util.Arrays.stream(boxes).mapToObj(Length::ofCentimetres).toList(), bench, List.of(Length.ofCentimetres(3)), Set.of());
    }

    private static List<Double> centimetres(List<Length> lengths) {
        return lengths.stream().map(l -> Math.round(l.centimetres() * 10) / 10.0).toList();
    }

    @Test
    void heights_go_under_a_foot_up_to_their_share_of_the_stature() {
        var gear = gear(raises(Optional.of(Length.ofCentimetres(43)), 10, 23.9, 24, 43, 47.8, 48));
        assertEquals(List.of(10.0, 23.9), centimetres(gear.frontRaises()));
        assertEquals(List.of(10.0, 23.9, 24.0, 43.0, 47.8), centimetres(gear.rearRaises()), "box and bench of one height are one height");
        assertEquals(List.of(24.0, 43.0), centimetres(gear.raises(0.24, 0.43)), "both ends included");
    }

    @ParameterizedTest
    @CsvSource({"'', NONE", "mat, NONE", "wall, WALL", "chair wall, CHAIR", "chair rail wall, RAIL"})
    void the_steadiest_thing_to_hold_is_taken(String also, SetUp.Support support) {
        var e = new Equipment(List.of(), false, List.of(), List.of(), Optional.empty(), List.of(), Optional.empty(), List.of(), Set.of(also.split(" ")));
        assertEquals(support, gear(e).support());
    }

    /** A pair is needed for one in each hand; a bell or a bar fits no hand that it would not be held in. */
    @ParameterizedTest
    @CsvSource({"DUMBBELL, SAME, true", "DUMBBELL, BOTH, true", "DUMBBELL, EACH, true", "KETTLEBELL, SAME, true", "KETTLEBELL, OPPOSITE, true", "KETTLEBELL, EACH, false",
        "BARBELL, BOTH, true", "BARBELL, SAME, false", "BARBELL, EACH, false", "CABLE, SAME, true", "CABLE, OPPOSITE, true", "CABLE, BOTH, false", "CABLE, EACH, false",
        "BAND, SAME, false", "BODY_WEIGHT, SAME, false"})
    void each_weight_has_its_hands(Implement implement, LoadHand hand, boolean held) {
        assertEquals(held, gear(Specs.gym()).loads(implement, hand, Double.POSITIVE_INFINITY));
        assertFalse(gear(NOTHING).loads(implement, hand, Double.POSITIVE_INFINITY));
    }

    @Test
    void a_single_dumbbell_is_for_one_hand_or_both_and_a_band_for_one() {
        var single = new Equipment(Specs.masses(4, 8, 4), true, List.of(), List.of(), Optional.empty(), List.of(), Optional.empty(), List.of(), Set.of("band"));
        assertFalse(gear(single).loads(Implement.DUMBBELL, LoadHand.EACH, 99));
        assertTrue(gear(single).loads(Implement.DUMBBELL, LoadHand.SAME, 99));
        assertTrue(gear(single).loads(Implement.BAND, LoadHand.OPPOSITE, 99));
        assertFalse(gear(single).loads(Implement.BAND, LoadHand.BOTH, 99));
        assertTrue(gear(single).loads(Implement.DUMBBELL, LoadHand.SAME, 4));
        assertFalse(gear(single).loads(Implement.DUMBBELL, LoadHand.SAME, 3.9), "the lightest is too heavy for one hand");
        assertTrue(gear(single).loads(Implement.DUMBBELL, LoadHand.BOTH, 2), "and half of it is in each of two");
    }

    /** Suggested is what is wholly missing; a bench as high as the house allows, in steps of five. */
    @Test
    void what_would_help_is_what_is_not_there_at_all() {
        assertEquals(List.of("thing/step", "thing/bench", "thing/wedge", "thing/dumbbell"), gear(NOTHING).helpful().stream().map(t -> t.words().key()).toList());
        assertEquals(List.of(), gear(Specs.gym()).helpful());
        var things = gear(NOTHING).helpful();
        assertEquals(List.of(10.0, 15.0), centimetres(things.get(0).equipment().boxes()));
        assertEquals(Optional.of(Length.ofCentimetres(45)), things.get(1).equipment().bench());
        assertEquals(List.of(2.5), centimetres(things.get(2).equipment().wedges()));
        assertEquals(List.of(new Mass(8)), things.get(3).equipment().dumbbells());
        assertEquals(List.of("thing/step"), gear(raises(Optional.empty(), 30, 40)).helpful().stream().map(t -> t.words().key()).toList(), "40 cm serve as a bench");
        assertEquals(List.of("thing/bench"), gear(raises(Optional.empty(), 20)).helpful().stream().map(t -> t.words().key()).toList());
    }

    private static List<SetUp> all(String id, Side side, Specs specs) {
        return Candidates.of(question(id, side, specs));
    }

    /** Three holds (opposite hand, same hand, none) times flat, front on 10 and 15, rear on 10, 15, 30 and 43. */
    @Test
    void a_split_squat_has_every_hold_on_every_height() {
        var found = all("split-squat", Side.LEFT, RIGHT);
        assertEquals(3 * 7, found.size());
        assertEquals(found.size(), found.stream().distinct().count());
        assertTrue(found.stream().noneMatch(s -> s.frontRaise().metres() > 0 && s.rearRaise().metres() > 0), "never both feet raised");
        assertTrue(found.stream().allMatch(s -> s.hipShift() && s.workingLeg().equals(Optional.of(Side.LEFT)) && s.workingArm().isEmpty()));
        assertTrue(all("split-squat", Side.RIGHT, RIGHT).stream().noneMatch(SetUp::hipShift));
        assertEquals(List.of(Optional.of(Side.RIGHT), Optional.of(Side.LEFT), Optional.empty()), found.stream().map(SetUp::loadHand).distinct().toList());
        assertEquals(List.of(1, 0), found.stream().map(SetUp::count).distinct().toList());
    }

    /** A wedge only under a foot behind; foot ahead 3 holds, foot behind 3 holds with and without. */
    @Test
    void a_staggered_hinge_has_a_wedge_only_under_the_foot_behind() {
        var found = all("staggered-deadlift", Side.LEFT, RIGHT);
        assertEquals(9, found.size());
        assertTrue(found.stream().filter(s -> s.heelWedge().metres() > 0).allMatch(s -> s.frontFoot().equals(Optional.of(Side.RIGHT)) && s.wedgeFoot().equals(Optional.of(Side.LEFT))));
        assertEquals(3, found.stream().filter(s -> s.heelWedge().metres() > 0).count());
    }

    @Test
    void arms_hold_what_is_theirs_and_symmetric_work_has_no_side() {
        assertTrue(all("half-kneeling-press", Side.LEFT, RIGHT).stream().allMatch(s -> s.workingArm().equals(Optional.of(Side.LEFT)) && s.workingLeg().isEmpty()
                && s.loadHand().equals(Optional.of(Side.LEFT)) && s.frontFoot().equals(Optional.of(Side.RIGHT)) && s.count() == 1));
        var goblet = all("goblet-squat", Side.LEFT, RIGHT);
        assertEquals(List.of(true, false), goblet.stream().map(SetUp::bothHands).toList());
        assertTrue(goblet.stream().allMatch(s -> s.workingLeg().isEmpty() && s.loadHand().isEmpty()));
        var two = all("two-weight-squat", Side.LEFT, RIGHT);
        assertTrue(two.stream().allMatch(s -> s.eachHand() && s.count() == 2 && !s.bothHands()));
        assertEquals(Optional.empty(), all("suitcase-carry", Side.LEFT, RIGHT).getFirst().workingArm(), "a trunk works");
        assertEquals(List.of(10.0, 15.0, 30.0), all("step-up", Side.LEFT, RIGHT).stream().map(SetUp::raise).distinct().map(Length::centimetres).map(c -> (double) Math.round(c)).toList());
        assertEquals(List.of(0.0), all("floor-bridge", Side.LEFT, RIGHT).stream().map(SetUp::raise).distinct().map(Length::metres).toList());
    }

    private static SetUpWish wish(Optional<Length> front, Optional<Length> wedge, Optional<Side> hand, boolean both) {
        return new SetUpWish(front, Optional.empty(), wedge, Optional.empty(), hand, both, Optional.empty(), OptionalDouble.empty());
    }

    @Test
    void what_the_coach_fixed_is_in_every_candidate() {
        var one = Candidates.of(question(family("split-squat"), Side.LEFT, RIGHT, wish(Optional.of(Length.ofCentimetres(12)), Optional.empty(), Optional.of(Side.LEFT), false)));
        assertEquals(2, one.size());
        assertTrue(one.stream().allMatch(s -> Math.round(s.frontRaise().centimetres()) == 12));
        assertEquals(Optional.of(Side.LEFT), one.getFirst().loadHand());
        var both = Candidates.of(question(family("split-squat"), Side.LEFT, RIGHT, wish(Optional.empty(), Optional.empty(), Optional.empty(), true)));
        assertTrue(both.getFirst().bothHands());
        var wedge = Candidates.of(question(family("staggered-deadlift"), Side.LEFT, RIGHT, wish(Optional.empty(), Optional.of(Length.ofCentimetres(2)), Optional.of(Side.RIGHT), false)));
        assertTrue(wedge.stream().allMatch(s -> Math.round(s.heelWedge().centimetres()) == 2));
        assertEquals(Optional.of(Side.RIGHT), wedge.getFirst().loadHand());
    }

    private static Specs withChair(Specs specs) {
        var gym = Specs.gym();
        return specs.equipped(new Equipment(gym.dumbbells(), false, gym.kettlebells(), gym.bars(), gym.cable(), gym.boxes(), gym.bench(), gym.wedges(), Set.of("chair")));
    }

    @Test
    void something_to_hold_is_offered_to_those_who_need_it_while_a_hand_is_free() {
        var old = withChair(RIGHT.aged(OptionalInt.of(70)));
        assertEquals(2 * 3 * 7, all("split-squat", Side.LEFT, old).size());
        assertTrue(all("split-squat", Side.LEFT, withChair(RIGHT)).stream().allMatch(s -> s.handSupport() == SetUp.Support.NONE));
        assertTrue(all("goblet-squat", Side.LEFT, old).stream().allMatch(s -> s.handSupport() == SetUp.Support.NONE));
        assertTrue(all("half-kneeling-press", Side.LEFT, old).stream().allMatch(s -> s.handSupport() == SetUp.Support.NONE));
    }

    /** 65 and over: no rear foot raised and no unsteady stance without a hand on something (common practice, no source). */
    @Test
    void the_older_are_kept_from_what_is_unsteady_without_a_hand() {
        var old = question("split-squat", Side.LEFT, RIGHT.aged(OptionalInt.of(65)));
        assertEquals("hand-support/rear-raise", Caution.against(old, Arranged.flat().raised(0, 10).setUp()).orElseThrow().said().key());
        assertEquals(Optional.empty(), Caution.against(old, Arranged.flat().setUp()));
        assertEquals(Optional.empty(), Caution.against(old, Arranged.flat().raised(0, 10).held(SetUp.Support.RAIL).setUp()));
        assertEquals(Optional.empty(), Caution.against(question("split-squat", Side.LEFT, RIGHT), Arranged.flat().raised(0, 10).setUp()));
        assertEquals(Optional.empty(), Caution.against(question("split-squat", Side.LEFT, RIGHT.aged(OptionalInt.of(64))), Arranged.flat().raised(0, 10).setUp()));
        for (var id : List.of("one-leg-squat", "step-down")) {
            var unsteady = question(id, Side.LEFT, RIGHT.aged(OptionalInt.of(65)));
            assertEquals("hand-support/one-leg", Caution.against(unsteady, Arranged.flat().setUp()).orElseThrow().said().key());
            assertEquals(Optional.empty(), Caution.against(unsteady, Arranged.flat().held(SetUp.Support.CHAIR).setUp()));
            assertEquals(Optional.empty(), Caution.against(question(id, Side.LEFT, RIGHT), Arranged.flat().setUp()));
        }
        assertEquals(Optional.empty(), Caution.against(question("wall-one-leg-stand", Side.LEFT, RIGHT.aged(OptionalInt.of(65))), Arranged.flat().setUp()), "a hand is on the wall");
    }

    /** The column goes from 20 to 210 cm; the press wants 0.93 to 1.25 of 171 cm, 159 to 213.75; every 5 cm. */
    @Test
    void pulleys_stand_where_column_and_family_agree() {
        var q = question("high-to-low-press", Side.RIGHT, RIGHT);
        var heights = Posing.pulleys(q, Implement.CABLE);
        assertEquals(List.of(160.0, 210.0), List.of(heights.getFirst().centimetres(), heights.getLast().centimetres()));
        assertEquals(11, heights.size());
        assertEquals(210, Math.round(Posing.pulleys(q, Implement.BAND).getLast().centimetres()), "an anchor goes as high as the family: 213.75");
        var low = new Equipment(List.of(), false, List.of(), List.of(), Optional.of(new Cable(Specs.masses(5, 10, 5), 2, Length.ofCentimetres(165), Length.ofCentimetres(170))), List.of(),
                Optional.empty(), List.of(), Set.of());
        assertEquals(List.of(165.0, 170.0), centimetres(Posing.pulleys(question("high-to-low-press", Side.RIGHT, RIGHT.equipped(low)), Implement.CABLE)));
    }

    private static Restraints restrained(Restriction... restrictions) {
        return question("split-squat", Side.LEFT, RIGHT.restricted(restrictions)).restraints();
    }

    @Test
    void the_strictest_limit_of_a_hand_counts() {
        var five = new Restriction.LimitLoad(new Mass(5), Optional.empty(), "a");
        var three = new Restriction.LimitLoad(new Mass(3), Optional.empty(), "b");
        assertEquals(3, restrained(five, three).handLoad());
        assertEquals(5, restrained(five, new Restriction.Avoid("kneeling", Set.of(Side.LEFT), Optional.empty(), "c")).handLoad());
        assertEquals(Double.POSITIVE_INFINITY, restrained().handLoad());
    }

    /** Own measures take the place of the common limits, an ankle five degrees short of its own (house); a restriction binds the side it names. */
    @ParameterizedTest
    @CsvSource({"hip flexion, 90, 100, hip-flexion", "hip extension, 5, 10, hip-extension", "knee flexion, 100, 120, knee-flexion", "ankle plantarflexion, 30, 40, plantarflexion",
        "shoulder flexion, 120, 150, shoulder-flexion", "elbow flexion, 100, 130, elbow-flexion", "ankle dorsiflexion, 20, 30, dorsiflexion"})
    void own_ranges_and_limits_bind_their_side(String measure, double left, double right, String limit) {
        var own = question("split-squat", Side.LEFT, RIGHT.measured(new contrapposto.check.CheckedSpec.Measure(measure, left, right, "deg"))).restraints().limits();
        double less = limit.equals("dorsiflexion") ? 5 : 0;
        assertEquals(left - less, range(own.on(Side.LEFT), limit));
        assertEquals(right - less, range(own.on(Side.RIGHT), limit));
        var to = new Restriction.LimitRange(limit, Set.of(Side.RIGHT), contrapposto.quantity.Angle.ofDegrees(2), Optional.empty(), "d");
        var bound = question("split-squat", Side.LEFT, RIGHT.restricted(to)).restraints().limits();
        assertEquals(2, range(bound.on(Side.RIGHT), limit));
        assertTrue(range(bound.on(Side.LEFT), limit) > 10, "the other side keeps its own");
        var loose = new Restriction.LimitRange(limit, Set.of(Side.LEFT, Side.RIGHT), contrapposto.quantity.Angle.ofDegrees(179), Optional.empty(), "e");
        assertEquals(range(question("split-squat", Side.LEFT, RIGHT).restraints().limits().on(Side.LEFT), limit),
                range(question("split-squat", Side.LEFT, RIGHT.restricted(loose)).restraints().limits().on(Side.LEFT), limit), "a limit never gives more");
    }

    private static double range(contrapposto.body.JointLimits l, String what) {
        return switch (what) {
            case "hip-flexion" -> l.hipFlexion();
            case "hip-extension" -> l.hipExtension();
            case "knee-flexion" -> l.kneeFlexion();
            case "dorsiflexion" -> l.ankleDorsiflexion();
            case "plantarflexion" -> l.anklePlantarflexion();
            case "shoulder-flexion" -> l.shoulderFlexion();
            default -> l.elbowFlexion();
        };
    }

    /** Each needed word is asked for; a floor is always there. */
    @Test
    void what_a_family_needs_is_missed_by_name_only_where_it_is_missing() {
        for (var family : PaperBody.CATALOGUE.families()) {
            var needs = family.levers().needs();
            var bare = gear(NOTHING).missing(family);
            boolean raised = family.levers().raise().from() > 0 && family.levers().raise().to() > 0;
            boolean wants = raised || needs.stream().anyMatch(n -> !n.equals("floor"));
            assertEquals(wants, bare.isPresent(), family.id());
            var all = new Equipment(Specs.masses(4, 8, 4), false, List.of(), List.of(), Specs.gym().cable(), Stream.of(8, 12, 20, 28, 35, 45).map(c -> Length.ofCentimetres(c)).toList(),
                    Optional.of(Length.ofCentimetres(43)), List.of(), Set.of("mat", "wall", "band", "chair", "rail"));
            assertEquals(Optional.empty(), gear(all).missing(family), family.id());
        }
    }
}
