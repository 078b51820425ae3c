package contrapposto.body;

import contrapposto.body.Stance.Free;
import java.util.ArrayList;
import java.util.List;

/** Chooses the free variables of a {@link Stance} so that the objective is least. */
record Standing(PoseProblem problem, Arms arms, Loads loads, List<Contact> hands) {
    /** Good enough a balance while searching, m. */
    private static final double ROUGH = 2e-5;
    /** Balance of the result, m. */
    private static final double EXACT = 1e-12;

    /** The best body in {@code position}, whether or not it breaks something. */
    StanceTrial best(Stance stance, Position position) {
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
            {0.45, 0.45, 0.55, 0.5, 0.3, 0.3},
            {0.75, 0.30, 0.75, 0.4, 0.5, 0.6},
    };

    private StanceTrial trial(Stance stance, Position position, double[] values, double tolerance) {
        return new StanceTrial(problem, stance, position, arms, loads, hands, values, tolerance);
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
