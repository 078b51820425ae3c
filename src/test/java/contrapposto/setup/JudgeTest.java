package contrapposto.setup;

import static contrapposto.setup.PaperBody.family;
import static contrapposto.setup.PaperBody.held;
import static contrapposto.setup.PaperBody.mechanics;
import static contrapposto.setup.PaperBody.question;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Specs;
import contrapposto.catalogue.Implement;
import contrapposto.catalogue.Phase;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a set-up is marked on, with numbers made by hand. The windows are the trade's, common practice, no source: early to mid stance, a shin that
 * starts tilted back and is upright to 5° either way at depth; mid to late, tilted forward, here by 10° or more; a weight turns away
 * from its hand; the other numbers are house rules, no source. The pelvis is turned right: left lands, right drives.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class JudgeTest {
    private static final Specs RIGHT = Specs.turned(Turned.RIGHT);

    private static double mark(Question q, Criterion on, SetUp setUp, double shinStart, double shin, double leftShare, double turn, double line) {
        return 0.0 + new Judge(q).judge(held(setUp, mechanics(shinStart, shin, leftShare, turn, line), 8), 3).on(on);
    }

    private static double phase(String id, Side side, double start, double shin) {
        return mark(question(id, side, RIGHT), Criterion.PHASE, Arranged.flat().setUp(), start, shin, 0.6, 4, Double.NaN);
    }

    @ParameterizedTest
    @CsvSource({"-8, 0, 0", "-8, 5, 0", "-8, -5, 0", "-8, 6, 1", "-8, -6, 1", "-8, 5.4, 1", "0, 5, 0", "1, 5, 1", "3, 12, 10", "-20, -15, 10"})
    void landing_misses_by_the_degrees_outside_upright_and_those_of_a_start_tilted_forward(double start, double shin, double miss) {
        assertEquals(miss, phase("split-squat", Side.LEFT, start, shin));
    }

    @ParameterizedTest
    @CsvSource({"10, 0", "25, 0", "9, 1", "9.5, 1", "0, 10", "-5, 15"})
    void driving_misses_by_the_degrees_short_of_forward(double shin, double miss) {
        assertEquals(miss, phase("split-squat", Side.RIGHT, 0, shin));
    }

    @Test
    void a_square_pelvis_may_take_either_phase_and_what_stands_on_no_leg_has_none() {
        var square = question("split-squat", Side.LEFT, Specs.turned(Turned.SQUARE));
        assertEquals(0, mark(square, Criterion.PHASE, Arranged.flat().setUp(), 20, 40, 0.6, 0, Double.NaN));
        assertEquals(0, mark(square, Criterion.WEIGHT, Arranged.flat().setUp(), 20, 40, 0.6, 0, Double.NaN));
        assertEquals(Optional.empty(), new Judge(question("half-kneeling-press", Side.LEFT, RIGHT)).phase(mechanics(0, 30, 0.5, 0, 0)));
        assertEquals(Optional.empty(), new Judge(question("split-squat", Side.LEFT, RIGHT)).phase(mechanics(0, Double.NaN, 0.5, 0, 0)));
        assertEquals(0, phase("half-kneeling-press", Side.LEFT, 20, 40));
    }

    @ParameterizedTest
    @CsvSource({"LEFT, 5, EARLY_TO_MID", "LEFT, 5.1, MID_TO_LATE", "RIGHT, -20, EARLY_TO_MID", "RIGHT, 30, MID_TO_LATE"})
    void the_shin_tells_the_phase(Side side, double shin, Phase phase) {
        assertEquals(Optional.of(phase), new Judge(question("split-squat", side, RIGHT)).phase(mechanics(0, shin, 0.5, 0, 0)));
    }

    /** Its shin hardly moves, so heel or ball tells: the landing side's family zone is the heel, the driving side's the ball. */
    @ParameterizedTest
    @CsvSource({"LEFT, 20, EARLY_TO_MID", "RIGHT, -20, MID_TO_LATE"})
    void in_a_hinge_the_pressure_tells_the_phase(Side side, double shin, Phase phase) {
        var judge = new Judge(question("staggered-deadlift", side, RIGHT));
        assertEquals(Optional.of(phase), judge.phase(mechanics(0, shin, 0.5, 0, 0)));
        assertEquals(0, judge.phaseMiss(mechanics(0, shin, 0.5, 0, 0)));
    }

    /** Late stance is single support: the more the better; early stance shares. In fiftieths, so that a share of a per cent decides nothing. */
    @ParameterizedTest
    @CsvSource({"LEFT, 0.60, 30", "LEFT, 0.61, 31", "LEFT, 0.5, 25", "RIGHT, 0.60, 30", "RIGHT, 0.5, 25", "RIGHT, 0.40, 20", "RIGHT, 0.1, 5"})
    void landing_wants_less_weight_on_its_leg_and_driving_more(Side side, double leftShare, double mark) {
        assertEquals(mark, mark(question("split-squat", side, RIGHT), Criterion.WEIGHT, Arranged.flat().setUp(), -9, side == Side.LEFT ? 0 : 20, leftShare, 4, Double.NaN));
        assertEquals(0, mark(question("split-squat", side, RIGHT), Criterion.WEIGHT, Arranged.flat().setUp(), -9, 0, Double.NaN, 4, Double.NaN));
    }

    /** + turns left, the way a pelvis that is turned right is to go. Under half a newton metre nobody turns. */
    @ParameterizedTest
    @CsvSource({"4, 0", "0.6, 0", "0.5, 1", "0, 1", "-0.5, 1", "-0.6, 2", "-4, 2", "NaN, 1"})
    void the_load_turns_toward_the_landing_side_or_not_or_against(double moment, double mark) {
        for (var side : Side.values()) {
            var setUp = side == Side.LEFT ? Arranged.flat().shifted().setUp() : Arranged.flat().setUp();
            assertEquals(mark, mark(question("split-squat", side, RIGHT), Criterion.TURN, setUp, 0, 0, 0.5, moment, Double.NaN));
        }
        assertEquals(moment < -0.5, new Judge(question("split-squat", Side.LEFT, RIGHT)).turnsWrongWay(held(Arranged.flat().setUp(), mechanics(0, 0, 0.5, moment, 0), 8)));
    }

    /** A press from a cable is resisted: muscles turn against the pull, so the pull must go the other way. */
    @ParameterizedTest
    @CsvSource({"-4, 0", "0, 1", "4, 2"})
    void a_turn_that_muscles_make_wants_the_load_against_it(double moment, double mark) {
        var q = question("high-to-low-press", Side.RIGHT, RIGHT);
        assertEquals(mark, mark(q, Criterion.TURN, Arranged.flat().ahead(Side.RIGHT).setUp(), 0, 0, 0.5, moment, 15));
        assertEquals(mark + 2, mark(q, Criterion.TURN, Arranged.flat().ahead(Side.LEFT).setUp(), 0, 0, 0.5, moment, 15), "the foot ahead carries its half of the pelvis forward");
    }

    @Test
    void square_wants_no_turn_from_a_hand_and_what_does_not_turn_gets_no_mark() {
        var square = question("split-squat", Side.LEFT, Specs.turned(Turned.SQUARE));
        assertEquals(1, mark(square, Criterion.TURN, Arranged.flat().setUp(), 0, 0, 0.5, 0.5, Double.NaN));
        assertEquals(1, mark(square, Criterion.TURN, Arranged.flat().setUp(), 0, 0, 0.5, -3, Double.NaN));
        assertEquals(0, mark(square, Criterion.TURN, Arranged.flat().setUp(), 0, 0, 0.5, 0.4, Double.NaN));
        assertEquals(1, mark(square, Criterion.TURN, Arranged.flat().shifted().setUp(), 0, 0, 0.5, 0, Double.NaN), "nor a shifted hip");
        var press = question("half-kneeling-press", Side.LEFT, RIGHT);
        assertEquals(0, mark(press, Criterion.TURN, Arranged.flat().ahead(Side.RIGHT).setUp(), 0, 0, 0.5, -9, Double.NaN));
        assertFalse(new Judge(press).turnsWrongWay(held(Arranged.flat().setUp(), mechanics(0, 0, 0.5, -9, 0), 8)));
    }

    @Test
    void landing_wants_its_hip_shifted_and_driving_does_not() {
        for (var side : Side.values()) {
            double shifted = mark(question("split-squat", side, RIGHT), Criterion.TURN, Arranged.flat().shifted().setUp(), 0, 0, 0.5, 4, Double.NaN);
            double not = mark(question("split-squat", side, RIGHT), Criterion.TURN, Arranged.flat().setUp(), 0, 0, 0.5, 4, Double.NaN);
            assertEquals(side == Side.LEFT ? -1 : 1, shifted - not);
        }
    }

    @Test
    void a_hinge_that_works_a_leg_never_stands_with_the_landing_foot_ahead() {
        var judge = new Judge(question("staggered-deadlift", Side.LEFT, RIGHT));
        assertTrue(judge.staggersWrongWay(Arranged.flat().ahead(Side.LEFT).setUp()));
        assertFalse(judge.staggersWrongWay(Arranged.flat().ahead(Side.RIGHT).setUp()));
        assertFalse(new Judge(question("split-squat", Side.LEFT, RIGHT)).staggersWrongWay(Arranged.flat().ahead(Side.LEFT).setUp()));
        assertFalse(new Judge(question("high-to-low-press", Side.LEFT, RIGHT)).staggersWrongWay(Arranged.flat().ahead(Side.LEFT).setUp()));
    }

    /** Wanted is a slope of 10 to 20 degrees down. */
    @ParameterizedTest
    @CsvSource({"10, 0", "20, 0", "15, 0", "9, 1", "8.5, 2", "22, 2", "-5, 15", "NaN, 0"})
    void a_line_misses_by_the_degrees_outside_its_range(double slope, double miss) {
        assertEquals(miss, mark(question("high-to-low-press", Side.RIGHT, RIGHT), Criterion.LINE, Arranged.flat().setUp(), 0, 0, 0.5, 0, slope));
    }

    @Test
    void a_line_is_sought_two_degrees_inside_and_a_family_without_a_line_misses_none() {
        var judge = new Judge(question("high-to-low-press", Side.RIGHT, RIGHT));
        assertEquals(0, judge.lineError(12));
        assertEquals(0, judge.lineError(18));
        assertEquals(1, judge.lineError(11), 1e-12);
        assertEquals(2, judge.lineError(20), 1e-12);
        assertEquals(0, new Judge(question("split-squat", Side.RIGHT, RIGHT)).lineMiss(mechanics(0, 0, 0.5, 0, 30)));
    }

    /** Two degrees well inside: upright to 3°, forward from 12° on; + is too far forward. */
    @ParameterizedTest
    @CsvSource({"LEFT, -9, 3, 0", "LEFT, -9, -3, 0", "LEFT, -9, 5, 2", "LEFT, -9, -7, -4", "LEFT, 1, 0, 1", "LEFT, 1, 8, 5", "RIGHT, 0, 12, 0", "RIGHT, 0, 40, 0", "RIGHT, 0, 10, -2"})
    void a_stance_is_sought_with_its_shin_well_inside(Side side, double start, double shin, double error) {
        assertEquals(error, new Judge(question("split-squat", side, RIGHT)).shinError(mechanics(start, shin, 0.5, 0, 0)), 1e-12);
        assertEquals(0, new Judge(question("split-squat", side, Specs.turned(Turned.SQUARE))).shinError(mechanics(start, shin, 0.5, 0, 0)));
    }

    /** A heel that is to press has a wedge under it, where the family knows one; the driving side has none. */
    @Test
    void a_wedge_is_wanted_under_a_landing_heel_alone() {
        var wedged = Arranged.flat().wedged(3).setUp();
        var flat = Arranged.flat().setUp();
        var lands = question("staggered-deadlift", Side.LEFT, RIGHT);
        var drives = question("staggered-deadlift", Side.RIGHT, RIGHT);
        assertEquals(List.of(0.0, 1.0, 1.0, 0.0), List.of(pressure(lands, wedged), pressure(lands, flat), pressure(drives, wedged), pressure(drives, flat)));
        assertEquals(0, pressure(question("split-squat", Side.LEFT, RIGHT), flat), "no wedge among its levers");
        assertEquals(0, pressure(question("staggered-deadlift", Side.LEFT, Specs.turned(Turned.SQUARE)), wedged));
    }

    private static double pressure(Question q, SetUp setUp) {
        return mark(q, Criterion.PRESSURE, setUp, 0, 0, 0.5, 4, Double.NaN);
    }

    /** The first of n wanted muscles weighs n, the last 1; a set that counts one half trains one half. */
    @ParameterizedTest
    @CsvSource({"LEFT, split-squat", "RIGHT, split-squat", "LEFT, staggered-deadlift", "RIGHT, staggered-deadlift", "RIGHT, triceps-extension", "LEFT, supported-curl"})
    void missing_muscles_count_by_their_place(Side side, String id) {
        var q = question(id, side, RIGHT);
        var m = mechanics(-9, side == Side.LEFT ? 0 : 20, 0.5, 4, Double.NaN);
        var wanted = q.target().muscles();
        var phase = new Judge(q).phase(m);
        double expected = 0;
        for (var muscle : wanted) {
            double best = 0;
            for (var use : family(id).muscles()) {
                boolean now = switch (use.when()) {
                    case ALWAYS -> true;
                    case EARLY_TO_MID -> phase.equals(Optional.of(Phase.EARLY_TO_MID));
                    case MID_TO_LATE -> phase.equals(Optional.of(Phase.MID_TO_LATE));
                };
                best = use.muscle() == muscle && now ? Math.max(best, use.direct() ? 1 : 0.5) : best;
            }
            expected += (wanted.size() - wanted.indexOf(muscle)) * (1 - best);
        }
        assertEquals(expected, new Judge(q).judge(held(Arranged.flat().setUp(), m, 8), 0).on(Criterion.MUSCLES), 1e-12);
        assertTrue(expected < wanted.size() * (wanted.size() + 1) / 2.0, "some are trained");
    }

    @Test
    void the_weight_the_family_likes_best_comes_first() {
        var q = question("split-squat", Side.LEFT, RIGHT);
        for (int i = 0; i < 3; i++) {
            var implement = List.of(Implement.DUMBBELL, Implement.KETTLEBELL, Implement.BODY_WEIGHT).get(i);
            assertEquals(i, mark(q, Criterion.LOAD, Arranged.flat().with(implement).setUp(), 0, 0, 0.5, 0, Double.NaN));
        }
        assertEquals(0, mark(q, Criterion.LOAD, Arranged.flat().with(Implement.BARBELL).setUp(), 0, 0, 0.5, 0, Double.NaN));
    }

    /** Stature 171 cm, a range of 0.40 to 0.60 of it: usual are 86 cm (85.5, rounded to the even centimetre). */
    @Test
    void steady_is_near_the_usual_stance_and_in_the_first_year_with_a_low_rear_foot() {
        var novice = question("split-squat", Side.RIGHT, RIGHT);
        var trained = question("split-squat", Side.RIGHT, RIGHT.trained(1));
        assertEquals(0.86, Fitting.usualStance(novice), 1e-12);
        assertEquals(4, steadiness(novice, Arranged.flat().apart(90).setUp()));
        assertEquals(6, steadiness(novice, Arranged.flat().apart(80).setUp()));
        assertEquals(34, steadiness(novice, Arranged.flat().apart(90).raised(0, 30).setUp()));
        assertEquals(4, steadiness(trained, Arranged.flat().apart(90).raised(0, 30).setUp()));
        assertEquals(0, steadiness(question("goblet-squat", Side.LEFT, RIGHT), Arranged.flat().setUp()));
    }

    private static double steadiness(Question q, SetUp setUp) {
        return mark(q, Criterion.STEADINESS, setUp, 0, 0, 0.5, 0, Double.NaN);
    }

    @Test
    void things_to_fetch_are_what_is_raised_wedged_held_and_held_on_to() {
        var q = question("split-squat", Side.LEFT, RIGHT);
        assertEquals(1, mark(q, Criterion.THINGS, Arranged.flat().setUp(), 0, 0, 0.5, 0, Double.NaN));
        assertEquals(5, mark(q, Criterion.THINGS, Arranged.flat().raised(10, 30).wedged(3).held(SetUp.Support.CHAIR).setUp(), 0, 0, 0.5, 0, Double.NaN));
        assertEquals(0, Arranged.flat().with(Implement.BODY_WEIGHT).setUp().things());
        assertEquals(3, mark(q, Criterion.ORDER, Arranged.flat().setUp(), 0, 0, 0.5, 0, Double.NaN));
    }

    @Test
    void who_needs_a_hand_on_something_and_has_none_is_marked_first() {
        var old = question("split-squat", Side.LEFT, RIGHT.aged(OptionalInt.of(70)));
        assertEquals(1, mark(old, Criterion.SAFETY, Arranged.flat().setUp(), 0, 0, 0.5, 0, Double.NaN));
        assertEquals(0, mark(old, Criterion.SAFETY, Arranged.flat().held(SetUp.Support.WALL).setUp(), 0, 0, 0.5, 0, Double.NaN));
        assertEquals(0, mark(question("split-squat", Side.LEFT, RIGHT), Criterion.SAFETY, Arranged.flat().setUp(), 0, 0, 0.5, 0, Double.NaN));
        assertEquals(0, mark(question("goblet-squat", Side.LEFT, RIGHT.aged(OptionalInt.of(70))), Criterion.SAFETY, Arranged.flat().setUp(), 0, 0, 0.5, 0, Double.NaN));
    }

    /** What a hand promises: the opposite of the way to turn is best, none is next, the same is worst; square wants none in one hand. */
    @Test
    void a_set_up_promises_by_its_hand_before_anything_is_solved() {
        var judge = new Judge(question("split-squat", Side.RIGHT, RIGHT));
        var away = judge.promise(Arranged.flat().in(Side.RIGHT).setUp());
        var toward = judge.promise(Arranged.flat().in(Side.LEFT).setUp());
        assertEquals(List.of(0.0, 2.0), List.of(away.turn(), toward.turn()));
        assertEquals(1, judge.promise(Arranged.flat().with(Implement.BODY_WEIGHT).setUp()).turn());
        assertTrue(away.compareTo(toward) < 0 && toward.compareTo(judge.promise(Arranged.flat().with(Implement.BODY_WEIGHT).setUp())) < 0, "weight comes before turn");
        var square = new Judge(question("split-squat", Side.RIGHT, Specs.turned(Turned.SQUARE)));
        assertEquals(1, square.promise(Arranged.flat().setUp()).turn());
        assertEquals(0, square.promise(Arranged.flat().with(Implement.BODY_WEIGHT).setUp()).turn());
        assertEquals(0, new Judge(question("half-kneeling-press", Side.RIGHT, RIGHT)).promise(Arranged.flat().ahead(Side.RIGHT).in(Side.LEFT).setUp()).turn());
        assertEquals(0, new Judge(question("half-kneeling-press", Side.RIGHT, Specs.turned(Turned.SQUARE))).promise(Arranged.flat().setUp()).turn());
    }

    private static Judgement judgement(int criterion, double mark) {
        var marks = new ArrayList<>(Collections.nCopies(Criterion.values().length, 1.0));
        marks.set(criterion, mark);
        return new Judgement(marks);
    }

    /** Lexicographic: whatever is worse on a weightier point loses, however much better it is on all that follow. */
    @Test
    void the_first_difference_decides() {
        for (int i = 0; i < Criterion.values().length; i++) {
            assertEquals(Criterion.values()[i], judgement(i, 0).decidedBy(judgement(i, 2)));
            assertTrue(judgement(i, 0).compareTo(judgement(i, 2)) < 0 && judgement(i, 2).compareTo(judgement(i, 0)) > 0);
            if (i > 0) {
                assertTrue(judgement(i - 1, 1.5).compareTo(judgement(i, 99)) > 0);
            }
        }
        assertEquals(0, judgement(0, 1).compareTo(judgement(3, 1)));
        assertEquals(Criterion.ORDER, judgement(0, 1).decidedBy(judgement(3, 1)));
        assertThrows(IllegalArgumentException.class, () -> judgement(0, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Judgement(List.of(1.0)));
    }
}
