package contrapposto.prescribe;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Our curves held against two charts of repetitions and percent that are in wide use, and the charts against their own rule. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PublishedChartsTest {
    /**
     * The chart of effort and repetitions in circulation (not from a reviewed paper): rows for 0, 0.5 … 4 repetitions in
     * reserve, columns for 1 to 12 repetitions; 0 where it was not seen.
     */
    private static final double[][] EFFORT = {
        {100, 95.5, 92.2, 89.2, 86.3, 83.7, 81.1, 78.6, 76.2, 73.9, 70.7, 68.0},
        {97.8, 93.9, 90.7, 87.8, 85.0, 82.4, 79.9, 77.4, 75.1, 72.3, 69.4, 66.7},
        {95.5, 92.2, 89.2, 86.3, 83.7, 81.1, 78.6, 76.2, 73.9, 70.7, 68.0, 65.3},
        {93.9, 90.7, 87.8, 85.0, 82.4, 79.9, 77.4, 75.1, 72.3, 69.4, 66.7, 64.0},
        {92.2, 89.2, 86.3, 83.7, 81.1, 78.6, 76.2, 73.9, 70.7, 68.0, 65.3, 62.6},
        {90.7, 87.8, 85.0, 82.4, 79.9, 77.4, 75.1, 72.3, 69.4, 66.7, 64.0, 0},
        {89.2, 86.3, 83.7, 81.1, 78.6, 76.2, 73.9, 70.7, 68.0, 65.3, 62.6, 0},
        {87.8, 85.0, 82.4, 79.9, 77.4, 75.1, 72.3, 69.4, 66.7, 64.0, 0, 0},
        {86.3, 83.7, 81.1, 78.6, 76.2, 73.9, 70.7, 68.0, 65.3, 62.6, 0, 0}};

    /** value(reps, reserve) = value(reps + 1, reserve − 1): the rule that lets one curve serve tests and doses. */
    @Test
    void the_effort_chart_is_one_curve_over_reps_and_reserve() {
        for (int row = 2; row < EFFORT.length; row++) {
            for (int reps = 0; reps < 11; reps++) {
                if (EFFORT[row][reps] > 0) {
                    assertEquals(EFFORT[row - 2][reps + 1], EFFORT[row][reps], 1e-9, "reserve row " + row + ", reps " + (reps + 1));
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(RepFormula.class)
    void our_curves_keep_that_rule_on_all_cells(RepFormula formula) {
        var curve = new RepCurve(formula, 10, 5);
        for (int reps = 1; reps <= 9; reps++) {
            for (int reserve = 1; reserve <= Math.min(5, 10 - reps); reserve++) {
                assertEquals(curve.oneRepMax(100, reps + 1, reserve - 1), curve.oneRepMax(100, reps, reserve), 1e-12);
            }
        }
    }

    /** 5 reps with 2 in reserve: 81.1 % in the effort chart, 83 % in the association's chart; 81.08 and 83.32 by ours. */
    @Test
    void five_with_two_in_reserve_lies_where_the_charts_have_it() {
        assertEquals(EFFORT[4][4], 100 * new RepCurve(RepFormula.EPLEY, 10, 5).share(7), 0.1);
        assertEquals(83, 100 * new RepCurve(RepFormula.BRZYCKI, 10, 5).share(7), 0.5);
    }

    /** Percent of 1RM and repetitions allowed, the association's training load chart (NSCA), to 10 reps. */
    @ParameterizedTest
    @CsvSource({"1, 100", "2, 95", "3, 93", "4, 90", "5, 87", "6, 85", "7, 83", "8, 80", "9, 77", "10, 75"})
    void our_default_curve_stays_within_three_points_of_the_training_load_chart(int reps, double percent) {
        assertEquals(percent, 100 * new RepCurve(RepFormula.EPLEY, 10, 5).share(reps), 3);
        assertEquals(percent, 100 * new RepCurve(RepFormula.BRZYCKI, 10, 5).share(reps), 3);
    }
}
