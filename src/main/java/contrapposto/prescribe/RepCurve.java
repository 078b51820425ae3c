package contrapposto.prescribe;

/**
 * One formula read as a curve between repetitions and the share of a 1RM, used for tests and for doses alike, so that a
 * prescribed set and the set it was estimated from mean the same. Repetitions left in reserve are counted as done
 * ({@code reps + reserve}), which is the structure of the published effort charts. One repetition is the whole 1RM by
 * definition, though most formulas do not give that: it is a case of its own, and between one and two the curve is straight.
 *
 * @param mostReps    repetitions, those in reserve included, beyond which nothing is estimated (published: about 10)
 * @param mostReserve in reserve beyond which nothing is estimated (published: judging it fails beyond 5)
 */
public record RepCurve(RepFormula formula, int mostReps, int mostReserve) {

    /** Whether a set may serve as a test. */
    public boolean accepts(int reps, int inReserve) {
        return reps >= 1 && inReserve >= 0 && inReserve <= mostReserve && reps + inReserve <= mostReps;
    }

    /**
     * The 1RM in the unit of {@code load}.
     *
     * @throws IllegalArgumentException if the set is not one that {@link #accepts}
     */
    public double oneRepMax(double load, int reps, int inReserve) {
        if (!accepts(reps, inReserve)) {
            throw new IllegalArgumentException("No 1RM from a set of (" + reps + ") with (" + inReserve
                    + ") in reserve: at most " + mostReps + " in all and " + mostReserve + " in reserve.");
        }
        return load / share(reps + inReserve);
    }

    /** The share of a 1RM that can be lifted this often, at least 1 rep; falls with every rep. */
    public double share(double reps) {
        if (reps < 1) {
            throw new IllegalArgumentException("A set has at least one rep, but was (" + reps + ").");
        }
        double atTwo = 1 / formula.factor(2);
        return reps >= 2 ? 1 / formula.factor(reps) : 1 + (reps - 1) * (atTwo - 1);
    }

    /** How often this share of a 1RM can be lifted; less than 1 for shares over 1, unbounded where the formula flattens out. */
    public double reps(double share) {
        double atTwo = 1 / formula.factor(2);
        return share <= atTwo ? formula.repsAt(1 / share) : 1 + (share - 1) / (atTwo - 1);
    }
}
