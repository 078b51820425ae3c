package contrapposto.setup;

import static contrapposto.setup.PaperBody.question;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Specs;
import contrapposto.body.BaseOfSupport;
import contrapposto.body.Load;
import contrapposto.body.PoseOutcome;
import contrapposto.body.PoseProblem;
import contrapposto.body.SolvedPose;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Length;
import contrapposto.quantity.Side;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The open distances of a set-up, found on a body whose shin tilts a degree for a centimetre ({@link PaperBody}), so that the right answer is
 * told by head: the stance nearest to the usual one (86 cm of a range of 69 to 102, stature 171 cm) whose shin lies two degrees inside its window.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FittingTest {
    private static final Specs RIGHT = Specs.turned(Turned.RIGHT);

    private static Trial fit(Question q, SetUp open, Function<PoseProblem, PoseOutcome> body) {
        return new Fitting(q, new Judge(q), body).fit(open);
    }

    private static long stance(Side side, double shinAtUsual) {
        var ahead = Arranged.flat().ahead(side).setUp();
        var trial = assertInstanceOf(Trial.Held.class, fit(question("split-squat", side, RIGHT), ahead, PaperBody.of(0.86, shinAtUsual)));
        return Math.round(100 * trial.setUp().stance());
    }

    /** Wanted at most 3° forward (a start 12° farther back is never in the way), at least −3°. */
    @ParameterizedTest
    @CsvSource({"0, 86", "3, 86", "-3, 86", "4, 87", "7, 90", "15, 98", "-4.5, 84", "-12.5, 76", "18.5, 102", "30, 102", "-20, 69", "-40, 69"})
    void landing_takes_the_stance_nearest_to_the_usual_that_will_do(double shinAtUsual, long centimetres) {
        assertEquals(centimetres, stance(Side.LEFT, shinAtUsual));
    }

    /** Wanted at least 12° forward, which a shorter stance gives; where none does, the end of the range comes nearest. */
    @ParameterizedTest
    @CsvSource({"12, 86", "30, 86", "11.5, 85", "5.5, 79", "-5, 69", "-6, 69"})
    void driving_takes_a_shorter_stance_until_the_shin_is_forward(double shinAtUsual, long centimetres) {
        assertEquals(centimetres, stance(Side.RIGHT, shinAtUsual));
    }

    /** It holds for every tilt, not only for those above. */
    @Test
    void no_stance_nearer_to_the_usual_would_have_done() {
        for (int tenths = -303; tenths <= 400; tenths += 7) {
            double shin = tenths / 10.0 + 0.05;
            long found = stance(Side.LEFT, shin);
            long right = 86 + (shin > 3 ? (long) Math.ceil(shin - 3 - 1e-9) : shin < -3 ? -(long) Math.ceil(-3 - shin - 1e-9) : 0);
            assertEquals(Math.clamp(right, 69, 102), found, "tilted by " + shin);
        }
    }

    /** The foot that works behind is the other way round: a longer stance tilts it forward. 7.5° less five centimetres lie inside 3°, four do not. */
    @Test
    void behind_a_longer_stance_tilts_the_shin_forward() {
        var q = question("staggered-deadlift", Side.LEFT, RIGHT);
        var trial = (Trial.Held) fit(q, Arranged.flat().ahead(Side.RIGHT).setUp(), PaperBody.of(Fitting.usualStance(q), 7.5));
        assertEquals(Fitting.usualStance(q) - 0.05, trial.setUp().stance(), 1e-9);
        assertEquals(2.5, trial.mechanics().shinWorking(), 1e-9);
    }

    @Test
    void square_stands_as_usual_whatever_the_shin() {
        var q = question("split-squat", Side.LEFT, Specs.turned(Turned.SQUARE));
        assertEquals(0.86, ((Trial.Held) fit(q, Arranged.flat().setUp(), PaperBody.of(0.86, 40))).setUp().stance(), 1e-12);
    }

    /** A stance that the coach wants is not varied, and one that has no pose is said to have none. */
    @Test
    void what_the_coach_fixed_is_not_varied() {
        var wish = new SetUpWish(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(Length.ofCentimetres(73)), Optional.empty(), false,
                Optional.empty(), OptionalDouble.empty());
        var q = question(PaperBody.family("split-squat"), Side.LEFT, RIGHT, wish);
        assertEquals(0.73, ((Trial.Held) fit(q, Arranged.flat().setUp(), PaperBody.of(0.86, 40))).setUp().stance(), 1e-12);
        assertInstanceOf(Trial.Unheld.class, fit(q, Arranged.flat().setUp(), new PaperBody(0.86, 40, 0.74)));
    }

    @Test
    void where_the_usual_stance_has_no_pose_another_is_found_if_there_is_one() {
        var q = question("split-squat", Side.LEFT, RIGHT);
        var trial = assertInstanceOf(Trial.Held.class, fit(q, Arranged.flat().setUp(), new PaperBody(0.95, 0, 0.93)));
        assertTrue(trial.setUp().stance() >= 0.93 && Math.abs(trial.mechanics().shinWorking()) <= 3.001, () -> trial.setUp() + " " + trial.mechanics());
        var back = assertInstanceOf(Trial.Held.class, fit(q, Arranged.flat().setUp(), new PaperBody(0.99, 6, 0.90)));
        assertEquals(1.02, back.setUp().stance(), 1e-12, "a degree a centimetre from 6 to 3");
        assertInstanceOf(Trial.Held.class, fit(q, Arranged.flat().setUp(), new PaperBody(1.0, 0, 1.02)), "only the end of the range");
        assertInstanceOf(Trial.Unheld.class, fit(q, Arranged.flat().setUp(), new PaperBody(1.0, 0, 1.03)));
    }

    /** Toward the short end poses stop at 80 cm: the nearest one that holds is kept. */
    @Test
    void a_range_whose_end_has_no_pose_is_searched_up_to_where_one_is() {
        var q = question("split-squat", Side.RIGHT, RIGHT);
        var trial = assertInstanceOf(Trial.Held.class, fit(q, Arranged.flat().ahead(Side.RIGHT).setUp(), new PaperBody(0.86, 8, 0.80)));
        assertEquals(0.82, trial.setUp().stance(), 1e-12, "12 degrees forward");
        var none = assertInstanceOf(Trial.Held.class, fit(q, Arranged.flat().ahead(Side.RIGHT).setUp(), new PaperBody(0.86, 2, 0.86)));
        assertEquals(0.86, none.setUp().stance(), 1e-12, "no shorter one holds");
    }

    @Test
    void it_is_frugal_with_poses() {
        var q = question("split-squat", Side.LEFT, RIGHT);
        for (double shin = -30; shin <= 40; shin += 3) {
            var asked = new ArrayList<PoseProblem>();
            var body = PaperBody.of(0.86, shin);
            fit(q, Arranged.flat().setUp(), p -> {
                asked.add(p);
                return body.apply(p);
            });
            assertTrue(asked.size() <= 8, shin + " took " + asked.size());
        }
    }

    private static Trial press(SetUpWish wish, CheckedSpec.Equipment equipment) {
        var q = question(PaperBody.family("high-to-low-press"), Side.RIGHT, RIGHT.equipped(equipment), wish);
        return fit(q, Candidates.of(q).getFirst(), PaperBody.of(0.86, 0));
    }

    /** The column goes to 210 cm, the family to 1.25 of the stature; two degrees inside 10 to 20. */
    @Test
    void a_pulley_is_set_so_that_its_line_slopes_as_wanted() {
        var trial = assertInstanceOf(Trial.Held.class, press(SetUpWish.NONE, Specs.gym()));
        double slope = trial.mechanics().lineOfPull();
        assertTrue(slope >= 12 - 1e-9 && slope <= 18 + 1e-9, () -> "slopes " + slope);
        double height = trial.setUp().pulley().metres() * 20;
        assertEquals(Math.rint(height), height, 1e-9, "every 5 cm");
        assertTrue(trial.setUp().pulley().metres() >= 0.93 * 1.71 && trial.setUp().pulley().metres() <= 2.10);
    }

    @Test
    void a_pulley_that_the_coach_fixed_stays_and_the_distance_does_the_work() {
        var wish = new SetUpWish(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), false,
                Optional.of(Length.ofCentimetres(205)), OptionalDouble.empty());
        var trial = assertInstanceOf(Trial.Held.class, press(wish, Specs.gym()));
        assertEquals(2.05, trial.setUp().pulley().metres(), 1e-12);
        var both = new SetUpWish(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), false,
                Optional.of(Length.ofCentimetres(205)), OptionalDouble.of(0.8));
        assertEquals(0.8, assertInstanceOf(Trial.Held.class, press(both, Specs.gym())).setUp().pulleyDistance(), 1e-12);
    }

    /** Halfway to the halves, the halves, the ends: shorter before longer, 69 to 102 about 86, to whole centimetres. */
    @Test
    void where_nothing_holds_the_near_is_tried_before_the_far() {
        var asked = new ArrayList<Long>();
        var q = question("split-squat", Side.LEFT, RIGHT);
        assertInstanceOf(Trial.Unheld.class, fit(q, Arranged.flat().setUp(), p -> {
            asked.add(Math.round(100 * ((BaseOfSupport.Split) p.base()).stance()));
            return new PoseOutcome.Impossible(Said.of("pose/pulley"), 1, "m");
        }));
        assertEquals(List.of(86L, 81L, 90L, 77L, 94L, 69L, 102L), asked);
    }

    /** The hand is {@code ahead} metres before the pelvis: no nearer line slopes by 12° to 18°, looked for here one by one. Half a degree off is let be. */
    @ParameterizedTest
    @CsvSource({"0.5", "0.8", "1", "1.5", "2", "2.5"})
    void no_line_nearer_to_the_middle_and_the_usual_distance_would_have_done(double ahead) {
        var q = question(PaperBody.family("high-to-low-press"), Side.RIGHT, RIGHT, SetUpWish.NONE);
        var found = assertInstanceOf(Trial.Held.class, fit(q, Candidates.of(q).getFirst(), p -> {
            var cable = (Load.Cable) p.load();
            double slope = StrictMath.toDegrees(StrictMath.atan2(cable.pulleyHeight() - PaperBody.wrist(p), cable.distance() + ahead));
            return new PoseOutcome.Solved(new SolvedPose(PaperBody.still().start(), PaperBody.still().working(), PaperBody.mechanics(0, 0, 0.5, 4, slope), List.of()));
        }));
        double wrist = PaperBody.wrist(found.problem());
        long best = Long.MAX_VALUE;
        for (int height = 160; height <= 210; height += 5) {
            for (int away = 65; away <= 190; away += 5) {
                double slope = StrictMath.toDegrees(StrictMath.atan2(height / 100.0 - wrist, away / 100.0 + ahead));
                if (slope >= 12 && slope <= 18) {
                    best = Math.min(best, rank(height, away));
                }
            }
        }
        long height = Math.round(100 * found.setUp().pulley().metres());
        long away = Math.round(100 * found.setUp().pulleyDistance());
        assertTrue(best < Long.MAX_VALUE, "some line will do");
        double slope = found.mechanics().lineOfPull();
        assertTrue(rank(height, away) <= best, "found " + height + " at " + away + " with the wrist at " + wrist);
        assertTrue(slope >= 11.5 && slope <= 18.5, "slopes " + slope);
        assertTrue(slope < 12 || slope > 18 || rank(height, away) == best, "inside, it is the nearest");
    }

    /** Centimetres from the middle of 160 to 210 and from 105; of two as far the higher, then the nearer. */
    private static long rank(long height, long away) {
        return 1_000_000 * (Math.abs(height - 185) + Math.abs(away - 105)) + 1000 * (300 - height) + away;
    }

    @Test
    void a_column_too_low_for_the_family_gives_no_line() {
        var gym = Specs.gym();
        var low = new CheckedSpec.Equipment(gym.dumbbells(), false, gym.kettlebells(), gym.bars(), Optional.of(new CheckedSpec.Cable(
                Specs.masses(2.5, 60, 2.5), 1, Length.ofCentimetres(20), Length.ofCentimetres(150))), gym.boxes(), gym.bench(), gym.wedges(), gym.also());
        assertInstanceOf(Trial.Unheld.class, press(SetUpWish.NONE, low));
    }

    /** House rules, no source: shares of a body mass of 64 kg, halved for one in each hand, within the weights there are. */
    @ParameterizedTest
    @CsvSource({"split-squat, 8", "suitcase-carry, 12.8", "half-kneeling-press, 5.12", "supported-curl, 3.2", "two-weight-squat, 4", "goblet-squat, 8", "floor-bridge, 0"})
    void set_ups_are_compared_with_a_light_weight(String id, double kg) {
        var q = question(id, Side.LEFT, RIGHT);
        assertEquals(kg, TrialLoad.of(q, Candidates.of(q).getFirst()), 1e-9);
    }

    @Test
    void never_with_more_than_a_hand_may_hold_or_less_than_the_lightest() {
        var limit = new CheckedSpec.Restriction.LimitLoad(contrapposto.quantity.Mass.ofKilograms(3), Optional.empty(), "sore wrist");
        var one = question("split-squat", Side.LEFT, RIGHT.restricted(limit));
        assertEquals(3, TrialLoad.of(one, Candidates.of(one).getFirst()), 1e-9);
        var both = question("goblet-squat", Side.LEFT, RIGHT.restricted(limit).equipped(new CheckedSpec.Equipment(Specs.masses(4, 20, 2), false, List.of(), List.of(),
                Optional.empty(), List.of(), Optional.empty(), List.of(), java.util.Set.of())));
        assertEquals(6, TrialLoad.of(both, Candidates.of(both).getFirst()), 1e-9, "three in each");
    }
}
