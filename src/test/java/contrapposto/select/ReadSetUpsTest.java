package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Specs;
import contrapposto.catalogue.Implement;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Phase;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.select.Item.Window;
import contrapposto.setup.SetUp;
import contrapposto.setup.SetUps;
import contrapposto.wording.Said;
import contrapposto.wording.Term;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Set-ups read as exercises to choose from, for a client turned right, who lands on the left; what the catalogue says of the families is common practice or has its source there. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ReadSetUpsTest {
    private static final Specs RIGHT = Specs.turned(Turned.RIGHT);

    private static SetUps only(CheckedSpec spec, String... ids) {
        return Arranged.only(spec, List.of(ids));
    }

    private static Item item(SetUps setUps) {
        return new Items(setUps, Stages.of(setUps.assessed().spec().schedule())).all().getFirst();
    }

    private static Item item(String id) {
        return item(only(RIGHT.spec(), id));
    }

    private static CheckedSpec asking(CheckedSpec spec, String... ids) {
        return spec.choosing(new CheckedSpec.Choices(List.of(ids), List.of(), Map.of(), Map.of()));
    }

    @Test
    void items_come_in_catalogue_order_with_their_places() {
        var items = new Items(only(RIGHT.spec(), "split-squat", "floor-bridge", "suitcase-carry"), Stages.of(RIGHT.spec().schedule())).all();
        assertEquals(List.of("floor-bridge", "split-squat", "suitcase-carry"), items.stream().map(Item::id).toList());
        assertEquals(List.of(0, 1, 2), items.stream().map(Item::place).toList());
    }

    /** B1.5: newcomers 1 to 3 sets; the house's band gives a newcomer two, and three from the second band on; a family's own dose may ask for fewer. */
    @Test
    void sets_are_those_of_the_band_or_of_the_family_if_fewer() {
        assertEquals(List.of(2, 2), List.of(item("split-squat").least(), item("split-squat").most()));
        var trained = RIGHT.trained(2).spec();
        assertEquals(List.of(2, 3), List.of(item(only(trained, "split-squat")).least(), item(only(trained, "split-squat")).most()));
        assertEquals(2, item(only(trained, "supported-curl")).most());
        assertEquals(90, item("split-squat").fetchSeconds(), "1.5 min");
        assertEquals(2 * 10 * 5 + 15 + 90, item("split-squat").setSeconds(), "one side after the other, ten repeats of 3-1-1");
        assertEquals(10 * 5 + 90, item("goblet-squat").setSeconds());
        assertEquals(1, Items.rounds(only(RIGHT.spec(), "goblet-squat").usable().get("goblet-squat")));
    }

    @Test
    void what_is_loaded_light_or_two_sided() {
        assertTrue(item("split-squat").loaded() && !item("split-squat").light() && !item("split-squat").twoSided());
        assertTrue(item("goblet-squat").loaded() && item("goblet-squat").twoSided());
        var bridge = item("floor-bridge");
        assertTrue(bridge.light() && !bridge.loaded() && !bridge.twoSided(), "leg work without a weight, below standing");
        assertFalse(item("slow-march").light(), "on the feet");
        assertFalse(item("raised-hand-push-up").light(), "an arm");
        var bare = Arranged.family("goblet-squat");
        var u = Arranged.setUp(bare, 0);
        var bodyOnly = new SetUp(u.workingLeg(), u.workingArm(), u.frontFoot(), u.frontRaise(), u.rearRaise(), u.raise(), u.heelWedge(), u.wedgeFoot(), u.stance(), u.stanceWidth(),
                u.loadHand(), u.bothHands(), u.eachHand(), u.hipShift(), u.handSupport(), u.pulley(), u.pulleyDistance(), Implement.BODY_WEIGHT, 0);
        var item = item(Arranged.with(only(RIGHT.spec(), "goblet-squat"), "goblet-squat", new Sided.Whole<>(Arranged.solved(bare, Side.LEFT, Phase.MID_TO_LATE, bodyOnly))));
        assertTrue(!item.loaded() && item.twoSided() && item.hard().isEmpty(), "a squat of both legs is rationed with or without a weight");
    }

    /** Hard is direct work of a muscle under a weight on the feet. */
    @Test
    void hard_work_is_direct_loaded_and_on_the_feet() {
        assertEquals(EnumSet.of(Muscle.QUADRICEPS, Muscle.GLUTEUS_MAXIMUS), item("goblet-squat").hard(), "not the half sets of adductors and trunk");
        assertEquals(Set.of(), item("supported-curl").hard(), "kneeling");
        assertEquals(Set.of(), item("slow-march").hard(), "no weight");
    }

    @Test
    void both_sides_muscles_are_its_own_and_what_the_other_side_s_work_adds() {
        var push = item("raised-hand-push-up");
        for (var side : Side.values()) {
            assertEquals(Map.of(Muscle.OBLIQUES_TRANSVERSUS, 2, Muscle.CHEST, 2, Muscle.TRICEPS_LONG_HEAD, 2, Muscle.SERRATUS_ANTERIOR, 2), push.on(side));
        }
        var one = new Sided.Only<>(Side.LEFT, only(RIGHT.spec(), "raised-hand-push-up").usable().get("raised-hand-push-up").on(Side.LEFT));
        var left = item(Arranged.with(only(RIGHT.spec(), "raised-hand-push-up"), "raised-hand-push-up", one));
        assertEquals(Map.of(Muscle.OBLIQUES_TRANSVERSUS, 2, Muscle.CHEST, 1, Muscle.TRICEPS_LONG_HEAD, 1), left.on(Side.LEFT));
        assertEquals(Map.of(Muscle.SERRATUS_ANTERIOR, 2, Muscle.CHEST, 1, Muscle.TRICEPS_LONG_HEAD, 1), left.on(Side.RIGHT));
    }

    @Test
    void a_side_is_phased_only_where_its_own_set_up_trains_what_it_is_to_train() {
        assertEquals(EnumSet.allOf(Side.class), item("split-squat").phased());
        assertEquals(Set.of(), item("goblet-squat").phased(), "the same for both");
        assertEquals(Set.of(), item("supported-curl").phased(), "no leg");
        var family = Arranged.family("split-squat");
        var assessed = only(RIGHT.spec(), "split-squat").assessed();
        var wanted = assessed.target(Side.LEFT).phases();
        var unwanted = List.of(Phase.values()).stream().filter(phase -> !wanted.contains(phase)).findFirst().orElseThrow();
        var mixed = new Sided.Each<>(Arranged.solved(family, Side.LEFT, unwanted, Arranged.setUp(family, 0)),
                Arranged.solved(family, Side.RIGHT, assessed.target(Side.RIGHT).phases().getFirst(), Arranged.setUp(family, 0)));
        assertEquals(Set.of(Side.RIGHT), item(Arranged.with(only(RIGHT.spec(), "split-squat"), "split-squat", mixed)).phased());
    }

    @Test
    void ribs_open_on_the_side_that_wants_it_and_turning_needs_a_turned_pelvis() {
        var assessed = only(RIGHT.spec(), "supported-curl").assessed();
        var back = item("supported-curl").ribs();
        var front = item("triceps-extension").ribs();
        assertEquals(1, back.size());
        assertEquals(1, front.size());
        assertFalse(back.equals(front), "one side opens behind, the other in front");
        assertEquals(Arranged.family("supported-curl").ribs(), assessed.target(back.iterator().next()).ribs());
        assertEquals(Set.of(), item("split-squat").ribs());
        assertTrue(item("supported-curl").turning());
        assertFalse(item("suitcase-carry").turning());
        assertFalse(item(only(Specs.turned(Turned.SQUARE).spec(), "supported-curl")).turning());
    }

    @Test
    void what_has_to_be_fetched_is_named_once() {
        assertEquals(Set.of("dumbbell"), item("split-squat").things());
        assertEquals(Set.of(), item("floor-bridge").things());
        var family = Arranged.family("split-squat");
        var u = Arranged.setUp(family, 0.1);
        var full = new SetUp(u.workingLeg(), u.workingArm(), u.frontFoot(), u.frontRaise(), Length.ofMetres(0.3), u.raise(), Length.ofMetres(0.03), Optional.of(Side.LEFT), u.stance(),
                u.stanceWidth(), u.loadHand(), u.bothHands(), u.eachHand(), u.hipShift(), SetUp.Support.RAIL, u.pulley(), u.pulleyDistance(), u.implement(), 1);
        for (var setUp : List.of(u, full)) {
            var sides = new Sided.Each<>(Arranged.solved(family, Side.LEFT, Phase.MID_TO_LATE, setUp), Arranged.solved(family, Side.RIGHT, Phase.MID_TO_LATE, setUp));
            assertEquals(setUp == u ? Set.of("dumbbell", "box or bench") : Set.of("dumbbell", "box or bench", "wedge", "support"),
                    item(Arranged.with(only(RIGHT.spec(), "split-squat"), "split-squat", sides)).things());
        }
    }

    private static CheckedSpec fromTheFloor(CheckedSpec spec) {
        var s = spec.schedule();
        return spec.scheduled(new CheckedSpec.Schedule(s.start(), s.weeks(), s.days(), s.minutes(), contrapposto.catalogue.Stage.FLOOR, s.gate()));
    }

    @Test
    void what_is_tested_or_asked_for_is_pinned_and_done_from_first_to_last() {
        assertFalse(item("split-squat").pinned());
        var plain = fromTheFloor(RIGHT.spec());
        assertEquals(new Window(5, 8), item(only(plain, "split-squat")).window(), "standing work comes in after half");
        assertEquals(new Window(1, 4), item(only(plain, "floor-bridge")).window(), "and light work goes");
        var test = new CheckedSpec.Test("split-squat", Optional.of(Side.LEFT), Mass.ofKilograms(8), 8, 2, SetUpWish.NONE, Specs.START);
        for (var spec : List.of(fromTheFloor(RIGHT.tested(List.of(test)).spec()), asking(plain, "split-squat"))) {
            assertTrue(item(only(spec, "split-squat")).pinned());
            assertEquals(new Window(1, 8), item(only(spec, "split-squat")).window());
            assertFalse(item(only(spec, "goblet-squat")).pinned());
        }
    }

    /** Common practice: from 65 on balance comes first; the steadiest on one leg without a weight is put in, unless the coach has asked for some. */
    @Test
    void balance_is_put_in_where_it_comes_first() {
        var old = RIGHT.aged(OptionalInt.of(70)).spec();
        assertEquals(Optional.of("wall-one-leg-stand"), Balance.wanted(only(old, "slow-march", "wall-one-leg-stand", "split-squat")));
        assertEquals(Optional.of("slow-march"), Balance.wanted(only(old, "slow-march", "split-squat")));
        assertTrue(item(only(old, "wall-one-leg-stand")).pinned());
        assertEquals(Optional.empty(), Balance.wanted(only(old, "one-leg-hinge", "split-squat")), "a hinge is no balance work of its own");
        assertEquals(Optional.empty(), Balance.wanted(only(RIGHT.spec(), "wall-one-leg-stand")), "not at 34");
        assertEquals(Optional.empty(), Balance.wanted(only(asking(old, "slow-march"), "slow-march", "wall-one-leg-stand")));
        assertEquals(Optional.of("wall-one-leg-stand"), Balance.wanted(only(asking(old, "slow-march", "split-squat"), "wall-one-leg-stand", "split-squat")), "what cannot be set up does not count");
        var excluded = old.choosing(new CheckedSpec.Choices(List.of(), List.of("wall-one-leg-stand"), Map.of(), Map.of()));
        assertEquals(Optional.of("slow-march"), Balance.wanted(only(excluded, "slow-march", "wall-one-leg-stand")));
    }

    private static List<String> why(CheckedSpec spec, String id) {
        var setUps = only(spec, id);
        return new WhyThis(setUps, Stages.of(spec.schedule())).of(item(setUps)).stream().map(reason -> reason.said().key()).toList();
    }

    @Test
    void why_an_exercise_is_in_the_plan_is_said_in_order() {
        assertEquals(List.of("covers", "covers", "turns"), why(RIGHT.spec(), "split-squat"));
        assertEquals(List.of("included", "covers", "covers", "turns"), why(asking(RIGHT.spec(), "split-squat"), "split-squat"));
        assertTrue(why(RIGHT.spec(), "goblet-squat").contains("two-sided"));
        assertEquals("stage/comes-in", why(fromTheFloor(RIGHT.spec()), "split-squat").getLast());
        assertEquals("stage/ends", why(fromTheFloor(RIGHT.spec()), "floor-bridge").getLast());
        assertEquals("balance-first", why(RIGHT.aged(OptionalInt.of(70)).spec(), "wall-one-leg-stand").getFirst(), "put in by the house, not asked for");
        assertFalse(why(RIGHT.spec(), "wall-one-leg-stand").contains("balance-first"));
        assertFalse(why(Specs.turned(Turned.SQUARE).spec(), "supported-curl").contains("turns"));
    }

    @Test
    void muscles_are_named_as_their_side_wants_them_direct_or_not() {
        var setUps = only(RIGHT.spec(), "goblet-squat");
        var reasons = new WhyThis(setUps, Stages.of(RIGHT.spec().schedule())).of(item(setUps)).stream().filter(reason -> reason.rule().equals("covers")).toList();
        for (var reason : reasons) {
            var side = ((Term.Word) reason.said().terms().get("side")).word().equals("left") ? Side.LEFT : Side.RIGHT;
            var told = ((Term.Listed) reason.said().terms().get("muscles")).inside().toList();
            var covered = setUps.assessed().target(side).muscles().stream().filter(item(setUps).on(side)::containsKey).toList();
            assertEquals(covered.stream().map(Muscle::word).toList(), told.stream().map(said -> ((Term.Word) said.terms().get("muscle")).word()).toList());
            assertEquals(covered.stream().map(muscle -> item(setUps).hard().contains(muscle) ? "covers/directly" : "covers/indirectly").toList(), told.stream().map(Said::key).toList());
        }
        assertFalse(reasons.isEmpty());
    }
}
