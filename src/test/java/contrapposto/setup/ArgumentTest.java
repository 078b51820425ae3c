package contrapposto.setup;

import static contrapposto.setup.PaperBody.held;
import static contrapposto.setup.PaperBody.mechanics;
import static contrapposto.setup.PaperBody.question;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Reason;
import contrapposto.assess.Specs;
import contrapposto.catalogue.Implement;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Length;
import contrapposto.quantity.Side;
import contrapposto.wording.Said;
import contrapposto.wording.Term;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said for and against set-ups with numbers made by hand. The pelvis is turned right: left lands, right drives, the trunk is to turn left. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ArgumentTest {
    private static final Specs RIGHT = Specs.turned(Turned.RIGHT);

    private static Question squat(Side side) {
        return question("split-squat", side, RIGHT);
    }

    private static Tried tried(Question q, SetUp setUp, double shin, double leftShare, double turn) {
        var held = held(setUp, mechanics(shin - 12, shin, leftShare, turn, Double.NaN), 8);
        return new Tried(held, new Judge(q).judge(held, 0));
    }

    private static Argument argument(Question q) {
        return new Argument(q, new Judge(q));
    }

    private static double measure(Said said, String name) {
        return ((Term.Measure) said.terms().get(name)).value();
    }

    private static Said described(SetUp next) {
        var q = squat(Side.LEFT);
        return argument(q).runnerUp(tried(q, Arranged.flat().setUp(), 0, 0.6, 4), tried(q, next, 0, 0.6, 4)).summary();
    }

    private static boolean tells(SetUp next, String key) {
        return described(next).keys().contains(key);
    }

    private static SetUp with(Length raise, Length pulley, boolean eachHand) {
        var s = Arranged.flat().setUp();
        return new SetUp(s.workingLeg(), s.workingArm(), s.frontFoot(), s.frontRaise(), s.rearRaise(), raise, s.heelWedge(), s.wedgeFoot(), s.stance(), s.stanceWidth(),
                Optional.empty(), !eachHand, eachHand, false, s.handSupport(), pulley, 1, s.implement(), eachHand ? 2 : 1);
    }

    /** Each thing is named when it is there, and not when it is not. */
    @Test
    void a_set_up_is_told_by_what_is_there() {
        var flat = Set.of("set-up/parts", "set-up/flat", "set-up/one-hand");
        assertEquals(flat, Set.copyOf(described(Arranged.flat().setUp()).keys()));
        assertEquals(Set.of("set-up/parts", "set-up/rear-raise", "set-up/one-hand"), Set.copyOf(described(Arranged.flat().raised(0, 10).setUp()).keys()));
        assertEquals(Set.of("set-up/parts", "set-up/front-raise", "set-up/one-hand"), Set.copyOf(described(Arranged.flat().raised(10, 0).setUp()).keys()));
        assertEquals(Set.of("set-up/parts", "set-up/raise", "set-up/each-hand"), Set.copyOf(described(with(Length.ofCentimetres(20), Length.ZERO, true)).keys()));
        assertEquals(Set.of("set-up/parts", "set-up/flat", "set-up/both-hands", "set-up/pulley"),
                Set.copyOf(described(with(Length.ZERO, Length.ofCentimetres(120), false)).keys()));
        assertTrue(tells(Arranged.flat().wedged(3).setUp(), "set-up/wedge"));
        assertTrue(tells(Arranged.flat().with(Implement.BODY_WEIGHT).setUp(), "set-up/no-weight"));
        assertTrue(tells(Arranged.flat().held(SetUp.Support.CHAIR).setUp(), "set-up/support"));
    }

    /** 9.2° and 7.6° short of 10 count as 1 and 3 degrees; a tenth of a degree tells them apart. */
    @Test
    void a_runner_up_lost_by_the_shin_or_the_weight_with_both_numbers() {
        var q = squat(Side.RIGHT);
        var byShin = argument(q).runnerUp(tried(q, Arranged.flat().setUp(), 9.2, 0.4, 4), tried(q, Arranged.flat().setUp(), 7.6, 0.4, 4)).lostOn();
        assertEquals(List.of("lost-on/phase", 7.6, 9.2), List.of(byShin.key(), measure(byShin, "next"), measure(byShin, "best")));
        var byWeight = argument(q).runnerUp(tried(q, Arranged.flat().setUp(), 12, 0.2, 4), tried(q, Arranged.flat().setUp(), 12, 0.45, 4)).lostOn();
        assertEquals("lost-on/weight", byWeight.key());
        assertEquals(List.of(0.55, 0.8), List.of(measure(byWeight, "next"), measure(byWeight, "best")), "the right has what the left has not");
        assertEquals(List.of(0, 0), List.of(places(byWeight, "next"), places(byWeight, "best")));
        var close = argument(q).runnerUp(tried(q, Arranged.flat().setUp(), 12, 0.1996, 4), tried(q, Arranged.flat().setUp(), 12, 0.2004, 4)).lostOn();
        assertEquals(2, places(close, "next"), "80.04 % and 79.96 %: " + close);
    }

    private static int places(Said said, String name) {
        return ((Term.Measure) said.terms().get(name)).places();
    }

    /** Both hands hang a weight that turns nobody; 4 N·m to the right are the other way, as much to the left are not. */
    @ParameterizedTest
    @CsvSource({"4, -4, lost-on/turn-other-way", "4, 0, lost-on/turn"})
    void a_runner_up_that_turns_the_other_way_is_said_to(double best, double next, String key) {
        var q = squat(Side.LEFT);
        var lost = argument(q).runnerUp(tried(q, Arranged.flat().setUp(), 0, 0.6, best), tried(q, Arranged.flat().in(Side.LEFT).setUp(), 0, 0.6, next)).lostOn();
        assertEquals(key, lost.key());
    }

    private static Optional<Reason> said(Question q, SetUp setUp, double shin, double turn, String rule) {
        return argument(q).ofPose(tried(q, setUp, shin, 0.6, turn).held()).stream().filter(r -> r.rule().equals(rule)).findFirst();
    }

    @ParameterizedTest
    @CsvSource({"split-squat, LEFT, 4, load-hand/toward, left", "split-squat, LEFT, -4, load-hand/expected, right", "high-to-low-press, RIGHT, -4, load-hand/against, right"})
    void where_the_weight_turns_the_trunk_is_said(String id, Side side, double moment, String key, String turned) {
        var reason = said(question(id, side, RIGHT), Arranged.flat().setUp(), 0, moment, "load-hand").orElseThrow();
        assertEquals(List.of(key, new Term.Word(turned)), List.of(reason.said().key(), reason.said().terms().get("turn")));
        assertEquals(moment, measure(reason.said(), "moment"), 1e-9);
    }

    @Test
    void a_moment_too_small_to_turn_or_a_weight_in_no_one_hand_is_not_argued_with() {
        assertEquals(Optional.empty(), said(squat(Side.LEFT), Arranged.flat().setUp(), 0, Judge.TURNS / 2, "load-hand"));
        assertEquals(Optional.empty(), said(squat(Side.LEFT), with(Length.ZERO, Length.ZERO, true), 0, 4, "load-hand"));
        assertEquals(Optional.empty(), said(question("split-squat", Side.LEFT, Specs.turned(Turned.SQUARE)), Arranged.flat().setUp(), 0, 4, "load-hand"));
    }

    /** Upright to 5° either way; forward by at least twice that. */
    @Test
    void the_wanted_shin_is_said_with_the_degrees_of_the_rules() {
        var lands = told(said(squat(Side.LEFT), Arranged.flat().setUp(), 0, 4, "stance-phase").orElseThrow().said());
        assertEquals(List.of("shin/vertical", 5.0), List.of(lands.key(), measure(lands, "within")));
        var drives = told(said(squat(Side.RIGHT), Arranged.flat().setUp(), 12, 4, "stance-phase").orElseThrow().said());
        assertEquals(List.of("shin/forward", 10.0), List.of(drives.key(), measure(drives, "over")));
        var hinge = said(question("staggered-deadlift", Side.LEFT, RIGHT), Arranged.flat().setUp(), 30, 4, "stance-phase").orElseThrow().said();
        assertEquals("shin/hinge", told(hinge).key());
        assertEquals("stance-phase/wanted", hinge.key(), "a hinge is judged by its pressure: no shin is short");
    }

    private static Said told(Said phase) {
        return ((Term.Told) phase.terms().get("wanted")).said();
    }

    /** With the right foot ahead the pelvis turns to the left foot behind, which is wanted; the other stagger is no argument. */
    @Test
    void a_stagger_argues_only_for_the_way_it_turns() {
        var q = question("staggered-deadlift", Side.LEFT, RIGHT);
        for (var ahead : Side.values()) {
            var best = tried(q, Arranged.flat().ahead(ahead).setUp(), 0, 0.6, 4);
            assertEquals(ahead == Side.RIGHT, argument(q).ofChoice(best, List.of(best)).stream().anyMatch(r -> r.rule().equals("stagger")));
        }
        var best = tried(squat(Side.LEFT), Arranged.flat().ahead(Side.RIGHT).setUp(), 0, 0.6, 4);
        assertFalse(argument(squat(Side.LEFT)).ofChoice(best, List.of(best)).stream().anyMatch(r -> r.rule().equals("stagger")), "a split stance is none");
    }
}
