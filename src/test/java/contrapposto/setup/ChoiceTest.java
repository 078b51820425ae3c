package contrapposto.setup;

import static contrapposto.setup.PaperBody.chosen;
import static contrapposto.setup.PaperBody.question;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.assess.Specs;
import contrapposto.body.PoseOutcome;
import contrapposto.catalogue.Implement;
import contrapposto.catalogue.Phase;
import contrapposto.check.CheckedSpec.Equipment;
import contrapposto.check.CheckedSpec.Restriction;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Side;
import contrapposto.wording.Said;
import contrapposto.wording.Term;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is chosen and argued on a body of straight lines ({@link PaperBody}), whose numbers are told by head: a degree of shin for a centimetre of
 * stance or front height, half of that for rear height, half a newton metre of turn for a kilogram. The rules are the trade's (common practice, no
 * source); the pelvis is turned right, so the left lands and the right drives, and the trunk is to turn left.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ChoiceTest {
    private static final Specs RIGHT = Specs.turned(Turned.RIGHT);
    /** Its shin is 21.5° forward on flat feet in the usual stance. */
    private static final PaperBody BODY = PaperBody.of(0.86, 21.5);

    private static SolvedSetUp squat(Specs specs, Side side) {
        return chosen(BODY, specs, "split-squat").usable().get("split-squat").on(side);
    }

    private static Reason reason(SolvedSetUp setUp, String rule) {
        return setUp.reasons().stream().filter(r -> r.rule().equals(rule)).findFirst().orElseThrow(() -> new AssertionError(setUp.reasons().toString()));
    }

    private static boolean has(SolvedSetUp setUp, String rule) {
        return setUp.reasons().stream().anyMatch(r -> r.rule().equals(rule));
    }

    private static double measure(Said said, String name) {
        return ((Term.Measure) said.terms().get(name)).value();
    }

    private static Equipment having(List<Length> boxes, Optional<Length> bench, Set<String> also) {
        var gym = Specs.gym();
        return new Equipment(gym.dumbbells(), false, List.of(), List.of(), Optional.empty(), boxes, bench, List.of(), also);
    }

    /** 21.5° less 15 for the box leave 6.5: four centimetres more of stance bring it well inside; less box needs a longer one. */
    @Test
    void landing_gets_the_box_that_lets_it_stand_most_as_usual() {
        var lands = squat(RIGHT, Side.LEFT);
        assertEquals(Length.ofCentimetres(15), lands.setUp().frontRaise());
        assertEquals(0.90, lands.setUp().stance(), 1e-9);
        assertEquals(2.5, lands.pose().mechanics().shinWorking(), 1e-9);
        assertEquals(Optional.of(Phase.EARLY_TO_MID), lands.phase());
        assertEquals(Optional.of(Side.RIGHT), lands.setUp().loadHand());
        var raised = reason(lands, "front-raise");
        assertEquals("raise/effect", raised.said().key());
        assertEquals(List.of(5.5, 2.5, 0.6, 0.6, 0.15), List.of(r(measure(raised.said(), "shin-flat")), r(measure(raised.said(), "shin")),
                r(measure(raised.said(), "share-flat")), r(measure(raised.said(), "share")), r(measure(raised.said(), "height"))), "flat, the longest stance leaves 5.5");
        assertEquals(8, measure(raised.said(), "load"), 1e-9);
        assertEquals(Said.of("hip-shift").side("side", Side.LEFT), reason(lands, "hip-shift").said());
    }

    private static double r(double value) {
        return Math.round(value * 1000) / 1000.0;
    }

    /** Flat feet do for a driving side whose shin is forward anyway; nothing is fetched for nothing. */
    @Test
    void driving_fetches_nothing_that_changes_nothing() {
        var drives = squat(RIGHT, Side.RIGHT);
        assertEquals(0, drives.setUp().rearRaise().metres() + drives.setUp().frontRaise().metres());
        assertEquals(0.86, drives.setUp().stance(), 1e-9);
        assertEquals(Optional.of(Phase.MID_TO_LATE), drives.phase());
        assertFalse(has(drives, "hip-shift") || has(drives, "front-raise") || has(drives, "rear-raise") || has(drives, "heel-wedge"));
        assertEquals(1, drives.setUp().count());
    }

    /** Flat, the shortest stance leaves 7°. A bench lets it stand as usual; in the first year the lowest box that will do is steadier. */
    @Test
    void a_shin_that_is_never_forward_on_flat_feet_gets_its_rear_foot_raised() {
        var novice = chosen(PaperBody.of(0.86, -10), RIGHT, "split-squat").usable().get("split-squat").on(Side.RIGHT);
        assertEquals(Length.ofCentimetres(10), novice.setUp().rearRaise());
        var drives = chosen(PaperBody.of(0.86, -10), RIGHT.trained(3), "split-squat").usable().get("split-squat").on(Side.RIGHT);
        assertEquals(Length.ofCentimetres(43), drives.setUp().rearRaise());
        assertEquals("D3.1", reason(drives, "rear-raise").reference());
        assertEquals(new Term.Word("rear"), reason(drives, "rear-raise").said().terms().get("foot"));
    }

    /** 8 kg turn by 4 N·m: the right hand's weight to the left. */
    @Test
    void the_reasons_of_the_pose_carry_its_numbers() {
        var lands = squat(RIGHT, Side.LEFT);
        var hand = reason(lands, "load-hand");
        assertEquals(List.of("load-hand/toward", "D3.12"), List.of(hand.said().key(), hand.reference()));
        assertEquals(Source.EXPECTED, hand.source());
        assertEquals(4, measure(hand.said(), "moment"), 1e-9);
        assertEquals(new Term.Word("left"), hand.said().terms().get("turn"));
        var phase = reason(lands, "stance-phase").said();
        assertEquals("stance-phase/wanted", phase.key(), "inside its window, nothing is short");
        assertTrue(phase.keys().containsAll(List.of("shin/vertical", "stance-phase/found-and-share")), phase::toString);
        assertFalse(has(lands, "same-side-weight"));
        var drives = squat(RIGHT, Side.RIGHT);
        assertTrue(reason(drives, "stance-phase").said().keys().contains("shin/forward"));
        assertEquals(0.6, measure(((Term.Told) reason(drives, "stance-phase").said().terms().get("found")).said(), "share"), 1e-9);
        double half = question("split-squat", Side.RIGHT, RIGHT).person().segments().shoulderSpacing() / 2;
        assertEquals(8 * 9.81 * half, measure(reason(drives, "same-side-weight").said(), "moment"), 1e-9, "weight times half the distance of the shoulders");
    }

    @ParameterizedTest
    @CsvSource({"LEFT, 60, 38, 5", "RIGHT, -40, -5.5, 15.5"})
    void what_stays_short_of_the_window_is_said_with_the_degrees(Side side, double shin, double found, double off) {
        var bare = having(List.of(), Optional.empty(), Set.of());
        var solved = chosen(PaperBody.of(0.86, side == Side.LEFT ? 26 : -22.5), RIGHT.equipped(bare), "split-squat").usable().get("split-squat").on(side);
        var said = reason(solved, "stance-phase").said();
        assertEquals("stance-phase/short", said.key());
        assertEquals(side == Side.LEFT ? 5 : 15.5, measure(said, "off"), 1e-9, "26 − 16 cm − 5, and 10 − (17 − 22.5)");
    }

    @Test
    void square_is_said_to_be_square_and_a_symmetric_set_up_symmetric() {
        var square = squat(Specs.turned(Turned.SQUARE), Side.LEFT);
        assertTrue(has(square, "square"));
        assertEquals("stance-phase/square", reason(square, "stance-phase").said().key());
        assertFalse(has(square, "load-hand"));
        var both = chosen(BODY, RIGHT, "goblet-squat").usable().get("goblet-squat").on(Side.LEFT);
        assertTrue(has(both, "symmetric"));
        assertFalse(has(both, "square") || has(both, "muscles"));
    }

    /** Wanted are those of the target that this set-up trains, in the target's order. */
    @Test
    void the_muscles_named_are_wanted_and_trained() {
        var lands = squat(RIGHT, Side.LEFT);
        var named = ((Term.Listed) reason(lands, "muscles").said().terms().get("muscles")).terms().stream().map(t -> ((Term.Word) t).word()).toList();
        var wanted = question("split-squat", Side.LEFT, RIGHT).target().muscles().stream().filter(lands.muscles()::containsKey).map(m -> m.word()).toList();
        assertEquals(wanted, named);
        assertFalse(named.isEmpty());
    }

    @Test
    void the_runner_up_lost_on_the_first_point_it_is_worse_on() {
        var lands = squat(RIGHT, Side.LEFT);
        var next = lands.runnerUp().orElseThrow();
        assertEquals("lost-on/steadiness-stance", next.lostOn().key(), "the lower box asks for a longer stance");
        assertEquals(List.of(0.95, 0.90), List.of(r(measure(next.lostOn(), "next")), r(measure(next.lostOn(), "best"))));
        assertTrue(next.summary().keys().containsAll(List.of("set-up/front-raise", "set-up/one-hand")), next.summary()::toString);
        assertEquals(Length.ofCentimetres(10), next.setUp().frontRaise());
    }

    /** A box is missing: with one of 15 cm the shin would be 2.5° where it is 5.5 now. */
    @Test
    void what_is_missing_is_named_with_what_it_would_do() {
        var bare = RIGHT.equipped(having(List.of(), Optional.empty(), Set.of()));
        var lack = squat(bare, Side.LEFT).lacks().orElseThrow();
        assertEquals("lack/phase", lack.key());
        assertTrue(lack.keys().contains("thing/step"), lack::toString);
        assertEquals(List.of(5.5, 2.5), List.of(r(measure(lack, "from")), r(measure(lack, "to"))));
        assertEquals(Optional.empty(), squat(bare, Side.RIGHT).lacks(), "forward enough on flat feet");
        assertEquals(Optional.empty(), squat(RIGHT, Side.LEFT).lacks());
    }


    @Test
    void what_the_coach_fixed_is_kept_and_said_and_where_no_pose_holds_it_another_is_offered() {
        var wish = new SetUpWish(Optional.of(Length.ofCentimetres(20)), Optional.empty(), Optional.empty(), Optional.of(Length.ofCentimetres(75)),
                Optional.of(Side.LEFT), false, Optional.empty(), OptionalDouble.empty());
        var q = question(PaperBody.family("split-squat"), Side.LEFT, RIGHT, wish);
        var kept = new Choice(q, BODY).answer().solved().orElseThrow();
        assertEquals(List.of(0.20, 0.75), List.of(kept.setUp().frontRaise().metres(), kept.setUp().stance()));
        assertEquals(Optional.of(Side.LEFT), kept.setUp().loadHand(), "though it turns the wrong way");
        assertTrue(kept.byCoach() && kept.lacks().isEmpty());
        assertEquals(Source.COACH, reason(kept, "coach-set-up").source());
        assertEquals("load-hand/expected", reason(kept, "load-hand").said().key());

        var answer = new Choice(q, new PaperBody(0.86, 22, 0.80)).answer();
        var offered = answer.solved().orElseThrow();
        assertFalse(offered.byCoach());
        assertEquals("coach-set-up/not-possible", reason(offered, "coach-set-up").said().key());
        assertEquals(Optional.of(Side.RIGHT), offered.setUp().loadHand());

        var none = new Choice(q, problem -> new PoseOutcome.Impossible(Said.of("pose/pulley"), 1, "m")).answer();
        assertTrue(none.solved().isEmpty());
        assertEquals(List.of("coach-set-up", "pose"), none.refusals().stream().map(Reason::rule).toList());
    }

    /** Families that open ribs or turn the trunk serve only the side that is to do so; each refusal says why. */
    @ParameterizedTest
    @CsvSource({"high-to-low-press, LEFT, turn, turn/working-side", "raised-hand-push-up, RIGHT, ribs, ribs", "supported-curl, RIGHT, ribs, ribs", "triceps-extension, LEFT, ribs, ribs"})
    void a_side_that_a_family_does_not_serve_is_refused(String id, Side side, String rule, String key) {
        var answer = new Choice(question(id, side, RIGHT), BODY).answer();
        assertTrue(answer.solved().isEmpty());
        assertEquals(List.of(rule), answer.refusals().stream().map(Reason::rule).toList());
        assertEquals(key, answer.refusals().getFirst().said().key());
        assertTrue(new Choice(question(id, side.other(), RIGHT), BODY).answer().solved().isPresent());
    }

    @Test
    void what_cannot_be_had_is_refused_by_name() {
        var bare = RIGHT.equipped(new Equipment(List.of(), false, List.of(), List.of(), Optional.empty(), List.of(), Optional.empty(), List.of(), Set.of()));
        var out = chosen(BODY, bare, "suitcase-deadlift", "step-up", "box-bridge", "one-arm-row").leftOut();
        assertEquals("equipment/no-load", out.get("suitcase-deadlift").getFirst().said().key());
        assertEquals("equipment/raise", out.get("step-up").getFirst().said().key());
        assertEquals(List.of(0.10, 0.35), List.of(measure(out.get("step-up").getFirst().said(), "from"), measure(out.get("step-up").getFirst().said(), "to")));
        assertTrue(out.get("one-arm-row").getFirst().said().key().startsWith("equipment/"));
    }

    @Test
    void no_pose_says_what_is_in_the_way_once() {
        var setUps = chosen(problem -> new PoseOutcome.Impossible(Said.of("pose/pulley"), 1, "m"), RIGHT, "split-squat");
        assertEquals(List.of("pose"), setUps.leftOut().get("split-squat").stream().map(Reason::rule).toList());
        assertTrue(setUps.usable().isEmpty());
    }

    @Test
    void a_restriction_that_takes_a_part_of_the_choice_is_said_with_what_is_left() {
        var grip = new Restriction.Avoid("grip", Set.of(Side.RIGHT), Optional.empty(), "sore hand");
        var lands = squat(RIGHT.restricted(grip), Side.LEFT);
        assertEquals(Optional.empty(), lands.setUp().loadHand().filter(h -> h == Side.RIGHT));
        assertTrue(lands.reasons().stream().anyMatch(r -> r.said().key().equals("set-up-limited")), lands.reasons()::toString);
    }

    @Test
    void the_older_get_a_hand_on_what_is_there_and_it_is_said() {
        var old = RIGHT.aged(OptionalInt.of(70)).equipped(having(List.of(), Optional.empty(), Set.of("chair", "wall")));
        var held = squat(old, Side.RIGHT);
        assertEquals(SetUp.Support.CHAIR, held.setUp().handSupport());
        assertEquals("hand-support/first", reason(held, "hand-support").said().key());
        assertEquals(SetUp.Support.NONE, squat(RIGHT.equipped(having(List.of(), Optional.empty(), Set.of("chair"))), Side.RIGHT).setUp().handSupport());
    }

    /** Solved again with 12 kg: the numbers of the pose follow, the choice and what argued for it stay. */
    @Test
    void solved_with_another_load_the_numbers_follow_and_the_choice_stays() {
        var setUps = chosen(BODY, RIGHT, "split-squat");
        var lands = setUps.usable().get("split-squat").on(Side.LEFT);
        var chooser = new SetUpChooser(BODY);
        var heavier = chooser.resolve(setUps, lands, 12).orElseThrow();
        assertEquals(lands.setUp(), heavier.setUp());
        assertEquals(6, measure(reason(heavier, "load-hand").said(), "moment"), 1e-9);
        assertEquals(lands.reasons().stream().map(Reason::rule).sorted().toList(), heavier.reasons().stream().map(Reason::rule).sorted().toList());
        assertEquals(List.of(lands.muscles(), lands.otherSideMuscles(), lands.runnerUp(), lands.lacks(), lands.phase()),
                List.of(heavier.muscles(), heavier.otherSideMuscles(), heavier.runnerUp(), heavier.lacks(), heavier.phase()));
        assertEquals(Optional.empty(), new SetUpChooser(p -> new PoseOutcome.Impossible(Said.of("pose/pulley"), 1, "m")).resolve(setUps, lands, 12));
    }

    @Test
    void a_line_of_pull_is_said_with_its_slope_and_where_the_pulley_is() {
        var press = chosen(BODY, RIGHT, "high-to-low-press").usable().get("high-to-low-press").on(Side.RIGHT);
        var said = reason(press, "line-of-pull").said();
        assertEquals(press.pose().mechanics().lineOfPull(), measure(said, "slope"), 1e-9);
        assertEquals(List.of(10.0, 20.0), List.of(measure(said, "from"), measure(said, "to")));
        assertEquals(press.setUp().pulley().metres(), measure(said, "pulley"), 1e-9);
        assertEquals(Implement.CABLE, press.setUp().implement());
        assertFalse(has(squat(RIGHT, Side.LEFT), "line-of-pull"));
    }

    /** The same finding the other way round, on a body that knows no side: the mirror image, reasons and all. */
    @ParameterizedTest
    @CsvSource({"split-squat", "staggered-deadlift", "suitcase-deadlift", "half-kneeling-press"})
    void turned_the_other_way_it_is_the_mirror_image(String id) {
        var one = chosen(BODY, RIGHT, id).usable().get(id);
        var other = chosen(BODY, Specs.turned(Turned.LEFT), id).usable().get(id);
        for (var side : one.sides()) {
            assertEquals(one.on(side).setUp().mirrored(), other.on(side.other()).setUp());
            assertEquals(one.on(side).runnerUp().map(r -> r.setUp().mirrored()), other.on(side.other()).runnerUp().map(SolvedSetUp.RunnerUp::setUp));
            assertEquals(one.on(side).reasons().stream().map(Reason::rule).toList(), other.on(side.other()).reasons().stream().map(Reason::rule).toList());
        }
    }

    @Test
    void several_families_at_once_give_the_same_as_one_after_the_other() {
        var assessed = new contrapposto.assess.Assessor().assess(RIGHT.spec(), PaperBody.RULES);
        var one = new SetUpChooser(BODY).choose(assessed, PaperBody.CATALOGUE);
        var other = new SetUpChooser(BODY).inParallel().choose(assessed, PaperBody.CATALOGUE);
        assertEquals(one.usable().keySet().stream().toList(), other.usable().keySet().stream().toList());
        one.usable().forEach((id, sides) -> sides.sides().forEach(side -> assertEquals(sides.on(side).setUp(), other.usable().get(id).on(side).setUp())));
        assertEquals(one.leftOut(), other.leftOut());
        assertEquals(one.refused(), other.refused());
        assertTrue(one.usable().size() > 40, "" + one.usable().size());
    }

    /** A stagger that turns the wrong way is no restriction: what it took is not said to be limited. */
    @Test
    void only_what_a_restriction_took_is_said_to_be_limited() {
        for (var side : Side.values()) {
            var hinge = chosen(BODY, RIGHT, "staggered-deadlift").usable().get("staggered-deadlift").on(side);
            assertTrue(hinge.reasons().stream().noneMatch(r -> r.said().key().equals("set-up-limited")), hinge.reasons()::toString);
        }
    }

    @Test
    void on_one_leg_the_older_are_asked_for_nothing_without_a_hand_on_something() {
        var bare = RIGHT.aged(OptionalInt.of(70)).equipped(having(List.of(), Optional.empty(), Set.of()));
        assertEquals("hand-support/one-leg", chosen(BODY, bare, "one-leg-squat").leftOut().get("one-leg-squat").getFirst().said().key());
    }

    /** Nothing to hold is said with what could be held. */
    @Test
    void where_no_weight_is_there_what_would_do_is_named() {
        var bare = RIGHT.equipped(new Equipment(List.of(), false, List.of(), List.of(), Optional.empty(), List.of(), Optional.empty(), List.of(), Set.of()));
        var said = chosen(BODY, bare, "suitcase-deadlift").leftOut().get("suitcase-deadlift").getFirst().said();
        var named = ((Term.Listed) said.terms().get("implements")).terms().stream().map(t -> ((Term.Word) t).word()).toList();
        assertEquals(PaperBody.family("suitcase-deadlift").levers().implement().stream().map(Implement::word).toList(), named);
    }

    private static final Mass EIGHT = Mass.ofKilograms(8);

    @Test
    void one_dumbbell_alone_is_named_as_what_would_help_where_no_weight_is_there() {
        var none = RIGHT.equipped(new Equipment(List.of(), false, List.of(), List.of(), Optional.empty(), Specs.gym().boxes(), Specs.gym().bench(), List.of(), Set.of()));
        var lack = squat(none, Side.LEFT).lacks().orElseThrow();
        assertTrue(lack.keys().contains("thing/dumbbell"), lack::toString);
        assertEquals("lack/load", lack.key());
        var one = RIGHT.equipped(new Equipment(List.of(EIGHT), true, List.of(), List.of(), Optional.empty(), Specs.gym().boxes(), Specs.gym().bench(), List.of(), Set.of()));
        assertEquals(Optional.empty(), squat(one, Side.LEFT).lacks());
    }
}
