package contrapposto.body;

import contrapposto.body.Stance.Free;
import java.util.ArrayList;
import java.util.List;

/** Chooses the free variables of a {@link Stance} so that the objective is least. */
final class Standing {
    /** Good enough a balance while searching, m. */
    private static final double ROUGH = 1e-4;
    /** Balance of the result, m. */
    private static final double EXACT = 1e-12;

    private final PoseProblem problem;
    private final Arms arms;
    private final Loads loads;
    private final List<Contact> hands;
    private double lastShift;

    Standing(PoseProblem problem, Arms arms, Loads loads, List<Contact> hands) {
        this.problem = problem;
        this.arms = arms;
        this.loads = loads;
        this.hands = hands;
    }

    /** The best body in {@code position}, whether or not it breaks something. */
    StanceTrial best(Stance stance, Position position) {
        lastShift = 0;
        Free[] all = Free.values();
        var open = new ArrayList<Free>(all.length);
        for (Free free : all) {
            if (stance.high()[free.ordinal()] > stance.low()[free.ordinal()]) {
                open.add(free);
            }
        }
        double[] lowest = new double[0];
        double least = Double.POSITIVE_INFINITY;
        for (double[] guess : GUESSES) {
            double[] start = new double[open.size()];
            for (int i = 0; i < start.length; i++) {
                start[i] = guess[open.get(i).ordinal()];
            }
            double[] found = Minimiser.lowest(
                    point -> trial(stance, position, values(stance, open, point), ROUGH).cost(), start);
            double cost = trial(stance, position, values(stance, open, found), ROUGH).cost();
            if (cost < least) {
                least = cost;
                lowest = found;
            }
            if (open.isEmpty()) {
                break;
            }
        }
        return trial(stance, position, values(stance, open, lowest), EXACT);
    }

    /** Fixed starts, as shares of each variable's range, in the order of {@link Free}. */
    private static final double[][] GUESSES = {
            {0.45, 0.30, 0.75, 0.3},
            {0.70, 0.20, 0.60, 0.6},
    };

    private StanceTrial trial(Stance stance, Position position, double[] values, double tolerance) {
        var trial = new StanceTrial(problem, stance, position, arms, loads, hands, values, lastShift, tolerance);
        lastShift = trial.shifted();
        return trial;
    }

    private static double[] values(Stance stance, List<Free> open, double[] point) {
        double[] values = stance.low().clone();
        for (int i = 0; i < point.length; i++) {
            int at = open.get(i).ordinal();
            values[at] += point[i] * (stance.high()[at] - stance.low()[at]);
        }
        return values;
    }
}
