package contrapposto.returns;

import contrapposto.prescribe.RepCurve;
import java.util.OptionalDouble;

/**
 * Follows a side's capacity from set to set: a one-dimensional Kalman filter on its logarithm, whose innovations are clipped
 * (a Huber filter). Between sets the capacity may drift, so an old estimate is less sure than a new one; a set near the
 * limit says more than one far from it; one set alone, however odd, moves the estimate by at most {@link #MOST_STEP}.
 *
 * <p>With x = ln capacity and P its variance, w weeks after the last set: P ← P + q² w. A set that shows z with variance R:
 * k = P ÷ (P + R), x ← x + clip(k · clip(z − x, ±2 √(P + R)), ±0.05), P ← (1 − k) P. R = (s · e)² + d²: s is the slope of the
 * curve a repeat, e how far repeats to spare are misjudged, d the good and bad days. What is told as the error adds what
 * more sets cannot mend: the curve is not the person's own.
 *
 * <p>A set with more to spare than anyone can judge still shows that the capacity is at least so much: it may raise the
 * estimate, never lower it. Without that a weight once too light would stay too light for ever.
 */
final class StrengthFilter {
    /** q: how far capacity may drift in a week, as a share: house. */
    static final double DRIFT = 0.02;
    /** d: from one day to another, as a share: house. */
    static final double DAY = 0.04;
    /** e at the limit and for each repeat to spare; about 1 at 0 to 5 to spare (Hackett et al. 2017, A7.3), the slope is house. */
    private static final double MISJUDGED = 0.5;
    private static final double MISJUDGED_EACH = 0.25;
    /** More for each repeat beyond those a formula is good for (about 10: A1.10, A1.11): house. */
    private static final double BEYOND_EACH = 0.5;
    /** Repeats, those to spare included, from which nothing is read any more: house. */
    static final int MOST_POSSIBLE = 15;
    /** The most that one set moves the estimate, as a share. */
    static final double MOST_STEP = 0.05;
    private static final double CLIP = 2;
    /** What stays however many sets there are: house, about half of what is published for one set (A1.12). */
    static final double CURVE_ERROR = 0.05;
    /** Of a first estimate: the upper end of Hutchins and Gearhart 2010 (A1.12). */
    static final double FIRST_ERROR = 0.135;

    private final RepCurve curve;

    StrengthFilter(RepCurve curve) {
        this.curve = curve;
    }

    /** @param log of the capacity; {@code variance} of that; {@code sets} it rests on */
    record State(double log, double variance, int sets) {
        static State of(double capacity, double error, int sets) {
            return new State(StrictMath.log(capacity), Math.max(1e-4, error * error - CURVE_ERROR * CURVE_ERROR), sets);
        }

        double capacity() {
            return StrictMath.exp(log);
        }

        /** How far off it may be, as a share. */
        double error() {
            return Math.min(0.5, StrictMath.sqrt(variance + CURVE_ERROR * CURVE_ERROR));
        }

        /** The same, this much later. */
        State after(double weeks) {
            return new State(log, variance + DRIFT * DRIFT * Math.max(0, weeks), sets);
        }
    }

    /**
     * The variance of what a set shows; empty where it shows nothing exactly: too many repeats in all, or as many to spare as
     * can be told at the most, which is what people write for "many".
     */
    OptionalDouble variance(int reps, int spare) {
        int possible = reps + spare;
        if (reps < 1 || spare >= curve.mostReserve() || possible > MOST_POSSIBLE) {
            return OptionalDouble.empty();
        }
        double slope = StrictMath.log(curve.share(possible) / curve.share(possible + 1));
        double misjudged = MISJUDGED + MISJUDGED_EACH * spare + BEYOND_EACH * Math.max(0, possible - curve.mostReps());
        return OptionalDouble.of(slope * slope * misjudged * misjudged + DAY * DAY);
    }

    /** The state after a set that shows {@code capacity}. */
    State with(State before, double capacity, double variance) {
        double spread = StrictMath.sqrt(before.variance() + variance);
        double gain = before.variance() / (before.variance() + variance);
        double surprise = Math.clamp(StrictMath.log(capacity) - before.log(), -CLIP * spread, CLIP * spread);
        return new State(before.log() + Math.clamp(gain * surprise, -MOST_STEP, MOST_STEP), (1 - gain) * before.variance(),
                before.sets() + 1);
    }

    /**
     * The state after a set that was too far from its limit to be judged, which shows only that the capacity is at least
     * {@code capacity}: never lowers it, and raises it no faster than the least sure of sets.
     */
    State atLeast(State before, double capacity) {
        double variance = variance(MOST_POSSIBLE - curve.mostReserve() + 1, curve.mostReserve() - 1).orElseThrow();
        return StrictMath.log(capacity) <= before.log() ? before : with(before, capacity, variance);
    }

    /** As how many repeats a set that cannot be judged counts at least: those done and as many to spare as can be told. */
    int atLeastPossible(int reps) {
        return Math.min(MOST_POSSIBLE, reps + curve.mostReserve());
    }

    /** Where there was no estimate: the first set is one, and no surer than a single set can be. */
    State first(double capacity) {
        return State.of(capacity, FIRST_ERROR, 1);
    }
}
