package contrapposto.returns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.prescribe.RepCurve;
import contrapposto.prescribe.RepFormula;
import contrapposto.returns.StrengthFilter.State;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StrengthFilterTest {
    private static final StrengthFilter FILTER = new StrengthFilter(new RepCurve(RepFormula.EPLEY, 10, 5));

    private static State known(double error) {
        return State.of(100, error, 1);
    }

    /** The plain filter in closed form, from the textbook: k = P ÷ (P + R); one step from x = ln 100 toward ln 101. */
    @Test
    void a_set_near_what_was_expected_moves_it_as_the_plain_filter_does() {
        double p = 0.08 * 0.08 - 0.05 * 0.05;
        double r = 0.002;
        var after = FILTER.with(known(0.08), 101, r);
        assertEquals(100 * StrictMath.pow(1.01, p / (p + r)), after.capacity(), 1e-9);
        assertEquals(p * r / (p + r), after.variance(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 20, 50, 80, 125, 200, 1000, 1e6})
    void one_set_however_odd_moves_it_by_at_most_five_percent(double shown) {
        for (double error : new double[] {0.051, 0.08, 0.135, 0.5}) {
            var after = FILTER.with(known(error), shown, FILTER.variance(8, 2).orElseThrow());
            assertTrue(Math.abs(StrictMath.log(after.capacity() / 100)) <= StrengthFilter.MOST_STEP + 1e-12, error + ": " + after);
        }
    }

    /**
     * The bound of docs/way-back.md, by its two halves: a set moves x by at most 5 %, so two versions of one set part by at most 10 %, and by at
     * most k times the noise that was added; later sets never widen the gap, since the step is a map whose slope lies between 0 and 1.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.06, 0.2, 1, 5})
    void doubling_the_noise_of_one_set_moves_the_estimate_by_no_more_than_the_stated_bound(double spread) {
        for (int client = 0; client < 300; client++) {
            double moved = moved(client, spread, FILTER::with);
            assertTrue(moved <= bound(client, spread) + 1e-12, "client " + client + " by " + moved);
            assertTrue(moved <= 2 * StrengthFilter.MOST_STEP + 1e-12, "client " + client + " by " + moved);
        }
    }

    /** The same without clipping, as the textbook has it, breaks the bound: it says something. */
    @Test
    void a_filter_that_follows_every_outlier_breaks_the_bound() {
        assertTrue(IntStream.range(0, 300).anyMatch(client -> moved(client, 1, StrengthFilterTest::plain) > 2 * StrengthFilter.MOST_STEP));
    }

    private interface Step {
        State with(State before, double capacity, double variance);
    }

    private static State plain(State before, double capacity, double variance) {
        double gain = before.variance() / (before.variance() + variance);
        return new State(before.log() + gain * (StrictMath.log(capacity) - before.log()), (1 - gain) * before.variance(), before.sets() + 1);
    }

    /** Twelve sets, one of them told once with its noise and once with twice as much: how far apart the estimates end. */
    private static double moved(int client, double spread, Step step) {
        var chance = new Random(new SplittableRandom(client).nextLong());
        var once = known(0.135);
        var twice = once;
        int odd = chance.nextInt(12);
        for (int set = 0; set < 12; set++) {
            double noise = spread * chance.nextGaussian();
            double variance = FILTER.variance(6 + chance.nextInt(5), chance.nextInt(4)).orElseThrow();
            once = step.with(once.after(0.4), 104 * StrictMath.exp(noise), variance);
            twice = step.with(twice.after(0.4), 104 * StrictMath.exp(set == odd ? 2 * noise : noise), variance);
        }
        return Math.abs(once.log() - twice.log());
    }

    /** k times the added noise at the odd set: gains do not depend on what sets show. */
    private static double bound(int client, double spread) {
        var chance = new Random(new SplittableRandom(client).nextLong());
        var state = known(0.135);
        int odd = chance.nextInt(12);
        double bound = 0;
        for (int set = 0; set < 12; set++) {
            double noise = spread * chance.nextGaussian();
            double variance = FILTER.variance(6 + chance.nextInt(5), chance.nextInt(4)).orElseThrow();
            double before = state.after(0.4).variance();
            bound = set == odd ? before / (before + variance) * Math.abs(noise) : bound;
            state = FILTER.with(state.after(0.4), 100, variance);
        }
        return bound;
    }

    @Test
    void a_set_near_the_limit_counts_more_than_one_far_from_it_and_one_beyond_ten_least() {
        double atLimit = FILTER.variance(8, 0).orElseThrow();
        double far = FILTER.variance(6, 4).orElseThrow();
        double beyond = FILTER.variance(12, 3).orElseThrow();
        assertTrue(atLimit < far && far < beyond, atLimit + " " + far + " " + beyond);
    }

    /** Hackett et al. 2017 (A7.3): beyond five to spare nobody can judge; Mayhew, Chapman (A1.11): beyond about ten validity drops. */
    @Test
    void nothing_is_read_from_more_than_five_to_spare_or_fifteen_in_all() {
        assertTrue(FILTER.variance(3, 6).isEmpty());
        assertTrue(FILTER.variance(8, 5).isEmpty(), "five is what people write for many");
        assertTrue(FILTER.variance(13, 3).isEmpty());
        assertTrue(FILTER.variance(0, 3).isEmpty());
        assertTrue(FILTER.variance(12, 3).isPresent());
    }

    @Test
    void a_set_too_easy_to_judge_may_raise_the_estimate_but_never_lower_it() {
        assertEquals(known(0.1), FILTER.atLeast(known(0.1), 90));
        var raised = FILTER.atLeast(known(0.1), 110);
        assertTrue(raised.capacity() > 100 && raised.capacity() <= 100 * StrictMath.exp(StrengthFilter.MOST_STEP) + 1e-9);
        assertEquals(15, FILTER.atLeastPossible(12));
        assertEquals(11, FILTER.atLeastPossible(6));
    }

    @Test
    void an_old_estimate_is_less_sure_and_more_sets_make_it_surer_down_to_what_the_curve_leaves() {
        var state = known(0.135);
        double before = state.error();
        for (int set = 0; set < 200; set++) {
            state = FILTER.with(state, 100, FILTER.variance(8, 1).orElseThrow());
            assertTrue(state.error() <= before);
            before = state.error();
        }
        assertTrue(state.error() > StrengthFilter.CURVE_ERROR && state.error() < 0.053, "" + state.error());
        assertTrue(state.after(8).error() > state.error() && state.after(26).error() > state.after(8).error());
    }

    @Test
    void a_stronger_set_never_lowers_the_estimate_more_than_a_weaker_one() {
        double last = 0;
        for (double shown = 60; shown < 160; shown += 1) {
            double now = FILTER.with(known(0.1), shown, 0.003).capacity();
            assertTrue(now >= last, shown + " kg");
            last = now;
        }
    }
}
