package contrapposto.assess;

import static contrapposto.assess.Assessed.Limit.HAND_SUPPORT_FOR_REAR_RAISE;
import static contrapposto.assess.Assessed.Limit.MODERATE_LOAD;
import static contrapposto.assess.Assessed.Limit.NO_BREATH_HOLD;
import static contrapposto.assess.Assessed.Limit.NO_IMPACT;
import static contrapposto.assess.Assessed.Limit.NO_SUPINE;
import static contrapposto.assess.Assessed.Limit.SLOWER_PROGRESSION;
import static contrapposto.assess.ScreeningTable.Weight.CLEARANCE;
import static contrapposto.assess.ScreeningTable.Weight.LIMITS;
import static contrapposto.assess.ScreeningTable.Weight.STOP;

import contrapposto.assess.Assessed.Limit;
import contrapposto.wording.Said;
import java.util.List;

/**
 * The screening logic as data: what each answer means, and on whose word. No questionnaire is reproduced here; the
 * rows are the project's own words for published signs. A value whose source was not seen says "from memory".
 */
final class ScreeningTable {
    private static final String RIEBE = "Riebe et al. 2015, Med Sci Sports Exerc 47:2473 (from memory)";
    private static final String RED_FLAGS = "E2.13: red flags in teaching pages and the context of NICE NG59; one alone is weak evidence";
    private static final String WILLIAMS = "Williams et al. 2007, Circulation 116:572";

    /** How much an answer weighs. */
    enum Weight {
        /** Go on, within limits. */
        LIMITS,
        /** Not before a clinician has agreed. */
        CLEARANCE,
        /** Help first; no clearance on file lifts it. */
        STOP
    }

    /**
     * One line of the table.
     *
     * @param question as the spec writes it
     * @param answer   the answer that this line is about
     * @param limits   that hold when the program may go on: at once, or once cleared
     */
    record Row(String question, boolean answer, Weight weight, List<Limit> limits, String reference) {
        /** What the line says. */
        Said because() {
            return Said.of("because/" + question);
        }
    }

    /**
     * A resting blood pressure at which a line begins to hold: either number strictly over its limit.
     *
     * @param olderOnly whether the line holds only for the cautious group (65 and over, age unknown)
     */
    record PressureRow(int systolic, int diastolic, boolean olderOnly, Weight weight, List<Limit> limits, String reference) {
        /** What the line says. */
        Said because() {
            return Said.of("because/pressure-" + systolic);
        }

        boolean over(int measuredSystolic, int measuredDiastolic) {
            return measuredSystolic > systolic || measuredDiastolic > diastolic;
        }
    }

    /** The word of the blood pressure line among the unanswered questions. */
    static final String PRESSURE = "resting-blood-pressure";
    /** The word of the activity question. */
    static final String ACTIVE = "active-now";
    /** The word of the question about a pregnancy. */
    static final String PREGNANT = "pregnant";

    static final List<Row> ROWS = List.of(
            new Row("chest-pain", true, STOP, List.of(),
                    "E1.5, E1.8: " + RIEBE),
            new Row("breathless-at-rest", true, STOP, List.of(), "E1.5, E1.8: " + RIEBE),
            new Row("faint-or-dizzy", true, CLEARANCE, List.of(MODERATE_LOAD, NO_BREATH_HOLD, SLOWER_PROGRESSION),
                    "E1.5, E1.8: " + RIEBE),
            new Row("palpitations", true, CLEARANCE, List.of(MODERATE_LOAD, NO_BREATH_HOLD, SLOWER_PROGRESSION),
                    "E1.5, E1.8: " + RIEBE),
            new Row("ankle-swelling", true, CLEARANCE, List.of(MODERATE_LOAD, NO_BREATH_HOLD, SLOWER_PROGRESSION),
                    "E1.5, E1.8: " + RIEBE),
            new Row("calf-pain", true, CLEARANCE, List.of(MODERATE_LOAD, NO_BREATH_HOLD, SLOWER_PROGRESSION),
                    "E1.5, E1.8: " + RIEBE),
            new Row("heart-metabolic-or-kidney-disease", true, CLEARANCE, List.of(MODERATE_LOAD, NO_BREATH_HOLD), "E1.4, E1.6: " + RIEBE),
            new Row("told-not-to-exercise", true, CLEARANCE, List.of(MODERATE_LOAD, NO_BREATH_HOLD, SLOWER_PROGRESSION), ""),
            new Row("unexplained-night-pain", true, CLEARANCE, List.of(SLOWER_PROGRESSION), RED_FLAGS),
            new Row("fever-or-weight-loss", true, CLEARANCE, List.of(SLOWER_PROGRESSION), RED_FLAGS),
            new Row("cancer-history", true, LIMITS, List.of(MODERATE_LOAD, SLOWER_PROGRESSION), RED_FLAGS),
            new Row("recent-trauma", true, CLEARANCE, List.of(SLOWER_PROGRESSION), RED_FLAGS),
            new Row("spreading-weakness", true, STOP, List.of(), RED_FLAGS),
            new Row("numb-saddle-or-bladder-change", true, STOP, List.of(), RED_FLAGS),
            new Row("recent-surgery", true, CLEARANCE, List.of(MODERATE_LOAD, NO_BREATH_HOLD, SLOWER_PROGRESSION), "E2.14-E2.17: general texts (from memory)"),
            new Row(PREGNANT, true, LIMITS,
                    List.of(NO_BREATH_HOLD, MODERATE_LOAD, NO_SUPINE, NO_IMPACT, HAND_SUPPORT_FOR_REAR_RAISE,
                            SLOWER_PROGRESSION),
                    "E2.11: ACOG Committee Opinion 804 (2020)"),
            new Row(ACTIVE, false, LIMITS, List.of(SLOWER_PROGRESSION), "E1.2, E1.3: " + RIEBE));

    /** Strictest first: the first line that holds decides. */
    static final List<PressureRow> PRESSURE_ROWS = List.of(
            new PressureRow(180, 110, false, STOP, List.of(), "E2.1: " + WILLIAMS),
            new PressureRow(170, 110, true, STOP, List.of(),
                    "E2.5: list for older adults in a Diabetes Care table"),
            new PressureRow(160, 100, false, CLEARANCE, List.of(MODERATE_LOAD, NO_BREATH_HOLD, SLOWER_PROGRESSION), "E2.2: " + WILLIAMS));

    /** Every question a complete screening answers, in the order of the spec. */
    static final List<String> QUESTIONS = java.util.stream.Stream.concat(
            ROWS.stream().map(Row::question), java.util.stream.Stream.of(PRESSURE)).toList();

    private ScreeningTable() { }
}
