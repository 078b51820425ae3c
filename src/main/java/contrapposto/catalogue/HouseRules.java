package contrapposto.catalogue;

import contrapposto.body.PoseProblem.Effort;
import java.util.List;
import java.util.Map;

/**
 * Defaults of the house, from {@code programs/house-rules.yaml} or the copy on the class path. Shares are 0–1.
 *
 * @param bands          wanted share of capacity, by training age then by kind
 * @param sideSpecific   share of lower-body sets that are set up per side, by stage
 * @param legEffort      weights of the pose objective of leg work, with their source in the file
 * @param hingeEffort    the same of hinges
 * @param measurementError degrees or seconds under which a difference between sides does not count, by measure word
 * @param rampSets       easy sets before the first loaded standing exercise
 * @param expiryWeeks    after the last week, until a re-check is due
 * @param progression    least and greatest rise of load a step, as a share (published: 0.02–0.10)
 * @param oneRepMaxFormula the default of the seven, by name
 * @param deloadEvery    weeks between easy weeks; 0 for none
 * @param shinVertical   half width of "about vertical", degrees
 * @param weeklySets     sets a week for one muscle of one side outside which the coach is told
 * @param repsForFormula most repeats, those to spare included, from which a 1RM may be estimated
 * @param inReserveForEstimate most repeats to spare from which a 1RM may be estimated
 * @param placing        where feet and hands may be put
 * @param sources        what each rule rests on, by its key in the file
 */
public record HouseRules(List<Band> bands, Map<Stage, Double> sideSpecific, Effort legEffort, Effort hingeEffort,
                         Map<String, Double> measurementError, int rampSets, int expiryWeeks, Range progression,
                         String oneRepMaxFormula, int deloadEvery, double shinVertical, Range weeklySets,
                         int repsForFormula, int inReserveForEstimate, Placing placing, Map<String, String> sources) {
    /**
     * One line of the training-age table.
     *
     * @param underYears upper end of the training age, years; infinity in the last line
     * @param sets       sets an exercise and side to begin with; a family's own dose may ask for fewer
     * @param inReserve  repeats to spare to begin with
     */
    public record Band(double underYears, Range legsMovement, Range legsStrength, Range armsMovement,
                       Range armsStrength, int sets, int inReserve) { }

    /**
     * Where feet and hands may be put, and for whom steadiness counts.
     *
     * @param frontRaise   most height under a front foot, share of stature
     * @param rearRaise    most height under a rear foot, share of stature
     * @param lacesFrom    from this height on a rear foot lies on its laces, m
     * @param railHeight   of a hand on a rail or chair, share of stature
     * @param wallHeight   of a hand on a wall, share of stature
     * @param supportAhead from the pelvis to what a hand holds on to, m
     * @param noviceYears  training years under which a low rear foot counts as steadier
     * @param ankleReserve an ankle is asked for this much less than was measured, degrees
     */
    public record Placing(double frontRaise, double rearRaise, double lacesFrom, double railHeight, double wallHeight,
                          double supportAhead, double noviceYears, double ankleReserve) { }

    /** From {@code low} to {@code high}, both included. */
    public record Range(double low, double high) {
        public Range {
            if (!(low <= high)) {
                throw new IllegalArgumentException("A range runs upward, but was (" + low + " to " + high + ").");
            }
        }

        public boolean holds(double value) {
            return value >= low && value <= high;
        }
    }

    public Band band(double trainingYears) {
        return bands.stream().filter(b -> trainingYears < b.underYears()).findFirst().orElse(bands.getLast());
    }
}
