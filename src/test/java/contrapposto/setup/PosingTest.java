package contrapposto.setup;

import static contrapposto.setup.PaperBody.family;
import static contrapposto.setup.PaperBody.question;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Specs;
import contrapposto.body.Action;
import contrapposto.body.ArmTask;
import contrapposto.body.BaseOfSupport;
import contrapposto.body.Load;
import contrapposto.body.PoseProblem;
import contrapposto.body.PoseProblem.Zone;
import contrapposto.catalogue.Implement;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Length;
import contrapposto.quantity.Side;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A set-up in the words of mechanics. What goes where is the definition of the set-up's own fields; the rest is the mirror. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PosingTest {
    private static final Specs RIGHT = Specs.turned(Turned.RIGHT);

    private static PoseProblem problem(String id, Side side, SetUp setUp, double kg) {
        return Posing.problem(question(id, side, RIGHT), setUp, kg);
    }

    static List<String> families() {
        return PaperBody.CATALOGUE.families().stream().map(f -> f.id()).toList();
    }

    /** Left and right change places when the finding does: for every family, side and way to set it up. */
    @ParameterizedTest
    @MethodSource("families")
    void turned_the_other_way_every_problem_is_the_mirror_image(String id) {
        for (var side : Side.values()) {
            var one = question(id, side, RIGHT);
            var other = question(id, side.other(), Specs.turned(Turned.LEFT));
            var ways = Candidates.of(one);
            assertEquals(ways.stream().map(SetUp::mirrored).toList(), Candidates.of(other));
            if (one.symmetric()) {
                continue;
            }
            for (var way : List.of(ways.getFirst(), ways.getLast())) {
                var open = way.withStance(0.3).withPulley(Length.ofMetres(1.5), 1);
                assertEquals(Posing.problem(one, open, 8).mirrored(), Posing.problem(other, open.mirrored(), 8));
            }
        }
    }

    @Test
    void a_split_stance_stands_as_arranged_and_a_high_rear_foot_lies_on_its_laces() {
        var split = assertInstanceOf(BaseOfSupport.Split.class, problem("split-squat", Side.LEFT, Arranged.flat().raised(10, 0).setUp(), 8).base());
        assertEquals(new BaseOfSupport.Split(Side.LEFT, 0.8, 0.19, 0.10, 0, false), split);
        for (double height : List.of(27.9, 28.0)) {
            var raised = (BaseOfSupport.Split) problem("split-squat", Side.LEFT, Arranged.flat().raised(0, height).setUp(), 8).base();
            assertEquals(height >= 28, raised.rearOnLaces(), "house rule: laces-from 0.28 m");
        }
        var deeper = (Action.KneeBend) problem("split-squat", Side.LEFT, Arranged.flat().raised(0, 30).setUp(), 8).action();
        var flat = (Action.KneeBend) problem("split-squat", Side.LEFT, Arranged.flat().setUp(), 8).action();
        assertEquals(List.of(95.0, 90.0), List.of(deeper.kneeFlexion(), flat.kneeFlexion()));
    }

    @Test
    void a_stagger_has_its_wedge_and_its_kickstand_behind() {
        var wedged = (BaseOfSupport.Staggered) problem("staggered-deadlift", Side.LEFT, Arranged.flat().ahead(Side.RIGHT).wedged(3).setUp(), 8).base();
        assertEquals(new BaseOfSupport.Staggered(Side.RIGHT, 0.8, 0.19, Side.LEFT, 0.03, false), wedged);
        assertTrue(((BaseOfSupport.Staggered) problem("staggered-deadlift", Side.LEFT, Arranged.flat().setUp(), 8).base()).rearHeelUp(), "the other foot stands on its ball");
    }

    /** Heel for early to mid, ball for mid to late, as the family has it; the other foot as the family's other zone. */
    @Test
    void the_zone_of_the_wanted_phase_is_under_the_working_foot() {
        var lands = problem("split-squat", Side.LEFT, Arranged.flat().setUp(), 8).pressure();
        assertEquals(List.of(Zone.HEEL, family("split-squat").otherPressure()), List.of(lands.on(Side.LEFT), lands.on(Side.RIGHT)));
        var drives = problem("high-to-low-press", Side.RIGHT, Arranged.flat().setUp(), 8).pressure();
        assertEquals(List.of(Zone.HEEL, Zone.BALL), List.of(drives.on(Side.LEFT), drives.on(Side.RIGHT)), "front foot on the ball, back foot on the heel: common practice");
        assertEquals(Zone.WHOLE_SOLE, Posing.zone(question("split-squat", Side.LEFT, Specs.turned(Turned.SQUARE))));
    }

    /** A weight is where it is held; on the back it lies on the hips; nothing weighs nothing. */
    @Test
    void a_weight_is_where_the_set_up_has_it() {
        var q = question("split-squat", Side.LEFT, RIGHT);
        assertEquals(new Load.InHand(Side.RIGHT, 8), Posing.load(q, Arranged.flat().setUp(), 8));
        assertEquals(new Load.None(), Posing.load(q, Arranged.flat().setUp(), 0));
        assertEquals(new Load.None(), Posing.load(q, Arranged.flat().with(Implement.BODY_WEIGHT).setUp(), 8));
        assertEquals(new Load.InBothHands(8), Posing.load(q, Arranged.flat().with(Implement.BARBELL).setUp(), 8));
        var two = question("two-weight-squat", Side.LEFT, RIGHT);
        assertEquals(new Load.InEachHand(4), Posing.load(two, Candidates.of(two).getFirst(), 4));
        var goblet = question("goblet-squat", Side.LEFT, RIGHT);
        assertEquals(new Load.InBothHands(8), Posing.load(goblet, Candidates.of(goblet).getFirst(), 8));
        var bridge = question("floor-bridge", Side.LEFT, RIGHT);
        assertEquals(new Load.OnHips(30), Posing.load(bridge, Arranged.flat().with(Implement.BARBELL).setUp(), 30));
        assertEquals(new Load.OnHips(8), Posing.load(bridge, Candidates.of(goblet).getFirst(), 8));
        assertEquals(new Load.InHand(Side.RIGHT, 8), Posing.load(bridge, Arranged.flat().setUp(), 8));
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void a_cable_comes_past_the_shoulder_of_its_hand(Side side) {
        var q = question("high-to-low-press", side, RIGHT);
        var cable = (Load.Cable) Posing.load(q, Arranged.flat().in(side).with(Implement.CABLE).setUp().withPulley(Length.ofMetres(1.8), 1.1), 15);
        assertEquals(List.of(side, 15.0, 1.0, 1.8, 1.1, false), List.of(cable.hand(), cable.mass(), cable.ratio(), cable.pulleyHeight(), cable.distance(), cable.ahead()));
        assertEquals(new Load.Band(side, 1.8, 1.1, false), Posing.load(q, Arranged.flat().in(side).with(Implement.BAND).setUp().withPulley(Length.ofMetres(1.8), 1.1), 15));
        assertTrue(cable.equals(new Load.Cable(side, 15, 1, 1.8, 1.1, false, side.sign() * q.person().segments().shoulderSpacing() / 2)));
    }

    /** A hand on a wall is higher than one on a rail or chair (house); it is the hand without the weight. */
    @Test
    void the_hand_without_the_weight_holds_on() {
        var wall = problem("split-squat", Side.LEFT, Arranged.flat().held(SetUp.Support.WALL).setUp(), 8);
        var rail = problem("split-squat", Side.LEFT, Arranged.flat().held(SetUp.Support.RAIL).setUp(), 8);
        assertEquals(new ArmTask.OnSupport(0.72 * 1.71, 0.40), wall.arm(Side.LEFT));
        assertEquals(new ArmTask.OnSupport(0.55 * 1.71, 0.40), rail.arm(Side.LEFT));
        assertNotEquals(rail.arm(Side.LEFT), rail.arm(Side.RIGHT));
        assertTrue(wall.handSupport() && !problem("split-squat", Side.LEFT, Arranged.flat().setUp(), 8).handSupport());
        assertInstanceOf(ArmTask.OnSupport.class, problem("split-squat", Side.LEFT, Arranged.flat().with(Implement.BODY_WEIGHT).held(SetUp.Support.WALL).setUp(), 0).arm(Side.RIGHT));
    }

    /** Arms work as the family says on their side; a leg's weight is in the arm that holds it. */
    @Test
    void the_working_arm_works_and_the_other_does_the_others_task() {
        for (var id : List.of("half-kneeling-press", "high-to-low-press", "raised-hand-push-up", "suitcase-carry")) {
            var f = family(id);
            var left = problem(id, Side.LEFT, Arranged.flat().in(Side.LEFT).setUp(), 4);
            assertEquals(f.workingArm().on(Side.LEFT, 1.71), left.arm(Side.LEFT), id);
            assertEquals(f.otherArm().on(Side.RIGHT, 1.71), left.arm(Side.RIGHT), id);
        }
        var step = family("step-up-press");
        var held = problem("step-up-press", Side.LEFT, Arranged.flat().in(Side.RIGHT).setUp(), 4);
        assertEquals(step.works() == contrapposto.catalogue.Family.Works.LEG ? step.workingArm().on(Side.RIGHT, 1.71) : step.otherArm().on(Side.RIGHT, 1.71), held.arm(Side.RIGHT));
        var both = question("goblet-squat", Side.LEFT, RIGHT);
        var goblet = Posing.problem(both, Candidates.of(both).getFirst(), 8);
        assertEquals(family("goblet-squat").workingArm().on(Side.RIGHT, 1.71), goblet.arm(Side.RIGHT));
        var crawl = problem("all-fours-crawl", Side.LEFT, Arranged.flat().with(Implement.BODY_WEIGHT).setUp(), 0);
        assertEquals(family("all-fours-crawl").workingArm().on(Side.LEFT, 1.71), crawl.arm(Side.LEFT));
    }

    /** Under the working leg is the box of a step up; above lies the leg that works on the side. */
    @Test
    void bases_are_those_of_the_family() {
        var step = question("step-up", Side.LEFT, RIGHT);
        var stepped = (BaseOfSupport.Step) Posing.problem(step, Candidates.of(step).getFirst(), 0).base();
        assertEquals(List.of(Side.LEFT, 0.10), List.of(stepped.up(), stepped.box()));
        var lying = question("side-lying-squeeze", Side.LEFT, RIGHT);
        assertEquals(new BaseOfSupport.SideLying(Side.RIGHT), Posing.problem(lying, Candidates.of(lying).getFirst(), 0).base());
        var kneel = question("half-kneeling-press", Side.LEFT, RIGHT);
        assertEquals(Side.LEFT, ((BaseOfSupport.HalfKneeling) Posing.problem(kneel, Candidates.of(kneel).getFirst(), 4).base()).down());
        for (var side : Side.values()) {
            var push = question("raised-hand-push-up", side, RIGHT);
            var plank = (BaseOfSupport.Plank) Posing.problem(push, Candidates.of(push).getFirst(), 0).base();
            assertEquals(0.10, side == Side.LEFT ? plank.leftHandRaise() : plank.rightHandRaise(), 1e-12);
            assertEquals(0, side == Side.LEFT ? plank.rightHandRaise() : plank.leftHandRaise());
        }
        assertEquals(new BaseOfSupport.OneLeg(Side.RIGHT), problem("one-leg-squat", Side.RIGHT, Arranged.flat().setUp(), 8).base());
        assertEquals(PaperBody.RULES.hingeEffort(), problem("staggered-deadlift", Side.LEFT, Arranged.flat().setUp(), 8).effort());
        assertEquals(PaperBody.RULES.legEffort(), problem("split-squat", Side.LEFT, Arranged.flat().setUp(), 8).effort());
    }

    private static PoseProblem tested(String id, Side side, SetUpWish wish, double kg) {
        return Tested.problem(question(id, side, RIGHT), wish, kg);
    }

    private static SetUpWish said(Optional<Length> front, Optional<Length> stance, Optional<Side> hand) {
        return new SetUpWish(front, Optional.empty(), Optional.empty(), stance, hand, false, Optional.empty(), OptionalDouble.empty());
    }

    /** The contract of a test: flat feet, the usual stance, the weight in both hands (before the chest in a knee bend), pressure anywhere. */
    @Test
    void a_test_is_done_on_flat_feet_with_the_weight_in_both_hands() {
        for (var side : Side.values()) {
            var p = tested("split-squat", side, SetUpWish.NONE, 16);
            assertEquals(new BaseOfSupport.Split(side, 0.86, 0.11 * 1.71, 0, 0, false), p.base());
            assertEquals(new Load.InBothHands(16), p.load());
            assertInstanceOf(ArmTask.AtChest.class, p.arm(Side.LEFT));
            assertInstanceOf(ArmTask.AtChest.class, p.arm(Side.RIGHT));
            assertEquals(List.of(Zone.WHOLE_SOLE, Zone.WHOLE_SOLE), List.of(p.pressure().on(Side.LEFT), p.pressure().on(Side.RIGHT)));
            assertTrue(!p.hipShift() && !p.handSupport());
        }
        assertInstanceOf(ArmTask.Hang.class, tested("staggered-deadlift", Side.LEFT, SetUpWish.NONE, 16).arm(Side.LEFT));
    }

    @Test
    void what_was_said_about_a_test_holds() {
        var p = tested("split-squat", Side.LEFT, said(Optional.of(Length.ofCentimetres(10)), Optional.of(Length.ofCentimetres(75)), Optional.of(Side.LEFT)), 16);
        assertEquals(new BaseOfSupport.Split(Side.LEFT, 0.75, 0.11 * 1.71, 0.10, 0, false), p.base());
        assertEquals(new Load.InHand(Side.LEFT, 16), p.load());
        assertInstanceOf(ArmTask.Hang.class, p.arm(Side.LEFT));
        assertEquals(new Load.InHand(Side.RIGHT, 6), tested("half-kneeling-press", Side.RIGHT, SetUpWish.NONE, 6).load(), "an arm is tested with its own hand");
        var cable = (Load.Cable) tested("high-to-low-press", Side.RIGHT, SetUpWish.NONE, 10).load();
        assertEquals(1.85, cable.pulleyHeight(), 1e-9, "the middle of 160 to 210");
        assertEquals(0.60 * 1.71, cable.distance(), 1e-9);
        assertEquals(0.10, ((BaseOfSupport.Step) tested("step-up", Side.LEFT, SetUpWish.NONE, 8).base()).box(), 1e-9, "the lowest box that will do");
    }

    /** The foot that works is ahead where the family lets it; a row is done with the other ahead, and with its own hand. */
    @Test
    void a_test_has_the_foot_ahead_that_the_family_has() {
        for (var side : Side.values()) {
            assertEquals(side, ((BaseOfSupport.Staggered) tested("staggered-deadlift", side, SetUpWish.NONE, 8).base()).ahead());
            assertEquals(side.other(), ((BaseOfSupport.Staggered) tested("standing-row", side, SetUpWish.NONE, 8).base()).ahead());
            assertEquals(new Load.InHand(side, 6), tested("supported-curl", side, SetUpWish.NONE, 6).load());
            assertEquals(side, tested("standing-row", side, SetUpWish.NONE, 8).working());
        }
        assertEquals(new Load.InHand(Side.RIGHT, 12), tested("goblet-squat", Side.LEFT, said(Optional.empty(), Optional.empty(), Optional.of(Side.RIGHT)), 12).load());
    }

    /** 0.45 of 171 cm: the lowest that the family asks for, where the column ends below it. */
    @Test
    void a_test_on_a_column_too_low_for_the_family_is_read_at_the_lowest_pulley() {
        var gym = Specs.gym();
        var low = RIGHT.equipped(new contrapposto.check.CheckedSpec.Equipment(gym.dumbbells(), false, gym.kettlebells(), gym.bars(), Optional.of(new contrapposto.check.CheckedSpec.Cable(
                Specs.masses(2.5, 60, 2.5), 1, Length.ofCentimetres(20), Length.ofCentimetres(60))), gym.boxes(),
                gym.bench(), gym.wedges(), gym.also()));
        var cable = (Load.Cable) Tested.problem(question("standing-row", Side.LEFT, low), SetUpWish.NONE, 10).load();
        assertEquals(0.45 * 1.71, cable.pulleyHeight(), 1e-9);
        var wish = new SetUpWish(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), false, Optional.of(Length.ofCentimetres(90)),
                OptionalDouble.of(0.8));
        var said = (Load.Cable) tested("standing-row", Side.LEFT, wish, 10).load();
        assertEquals(List.of(0.9, 0.8), List.of(said.pulleyHeight(), said.distance()));
    }
}
