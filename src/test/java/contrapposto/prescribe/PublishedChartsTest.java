package contrapposto.prescribe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

    /**
     * Zourdos et al. 2016 (A7.1): 10, 9, 8, 7 on the effort scale are 0, 1, 2, 3 repeats in reserve. Read so, every cell of the chart up to
     * ten repeats in all lies within two points of our default; we print repeats to spare, never the scale.
     */
    @Test
    void our_default_curve_stays_within_two_points_of_every_cell_of_the_effort_chart() {
        int cells = 0;
        for (double effort = 10; effort >= 6; effort -= 0.5) {
            double reserve = 10 - effort;
            for (int reps = 1; reps <= 12 && reps + reserve <= 10; reps++) {
                double chart = EFFORT[(int) (2 * reserve)][reps - 1];
                assertEquals(chart, 100 * new RepCurve(RepFormula.EPLEY, 10, 5).share(reps + reserve), 2, reps + " at " + effort);
                cells++;
            }
        }
        assertEquals(70, cells);
    }

    /** A7.9: eight with three in reserve is 70.7 in the chart, 73.17 by Epley at eleven: beyond ten the gap widens, so a test stops at ten (A1.11). */
    @Test
    void beyond_ten_repeats_in_all_curves_part_and_nothing_is_estimated() {
        assertEquals(70.7, EFFORT[6][7], 0);
        assertEquals(73.17, 100 * new RepCurve(RepFormula.EPLEY, 10, 5).share(11), 0.005);
        assertFalse(new RepCurve(RepFormula.EPLEY, 10, 5).accepts(8, 3));
    }

    /** A7.8: charts in circulation give 80 to 83.3 % for five with two in reserve: our default lies between them, and rounds down. */
    @Test
    void five_with_two_in_reserve_lies_among_the_charts_in_circulation() {
        double ours = 100 * new RepCurve(RepFormula.EPLEY, 10, 5).share(7);
        assertTrue(ours >= 80 && ours <= 83.3, "" + ours);
    }

    /** 5 reps with 2 in reserve: 81.1 % in the effort chart, 83 % in the association's chart; 81.08 and 83.32 by ours. */
    @Test
    void five_with_two_in_reserve_lies_where_the_charts_have_it() {
        assertEquals(EFFORT[4][4], 100 * new RepCurve(RepFormula.EPLEY, 10, 5).share(7), 0.1);
        assertEquals(83, 100 * new RepCurve(RepFormula.BRZYCKI, 10, 5).share(7), 0.5);
    }

    /**
     * A4 beyond ten: copies of the chart print 12 repeats at 70 % or at 67 %, 15 at 65 % (from memory). They contradict each other; ours lies
     * within five points of each, and estimates nothing from such a set.
     */
    @ParameterizedTest
    @CsvSource({"11, 70", "11, 73", "12, 70", "12, 67", "15, 65"})
    void beyond_ten_our_curve_stays_within_five_points_of_every_copy_of_the_chart(int reps, double percent) {
        assertEquals(percent, 100 * new RepCurve(RepFormula.EPLEY, 10, 5).share(reps), 5);
        assertFalse(new RepCurve(RepFormula.EPLEY, 10, 5).accepts(reps, 0));
    }

    /** Percent of 1RM and repetitions allowed, the association's training load chart (NSCA), to 10 reps. */
    @ParameterizedTest
    @CsvSource({"1, 100", "2, 95", "3, 93", "4, 90", "5, 87", "6, 85", "7, 83", "8, 80", "9, 77", "10, 75"})
    void our_default_curve_stays_within_three_points_of_the_training_load_chart(int reps, double percent) {
        assertEquals(percent, 100 * new RepCurve(RepFormula.EPLEY, 10, 5).share(reps), 3);
        assertEquals(percent, 100 * new RepCurve(RepFormula.BRZYCKI, 10, 5).share(reps), 3);
    }
}
