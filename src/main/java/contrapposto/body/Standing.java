package contrapposto.body;

import contrapposto.body.Stance.Free;
import java.util.ArrayList;
import java.util.List;

/** Chooses the free variables of a {@link Stance} so that the objective is least. */
final class Standing {
    /** Good enough a balance while searching, m. */
    private static final double ROUGH = 1e-5;
    /** Balance of the result, m. */
    private static final double EXACT = 1e-12;
    /** Weights of a breach: a search whose result still breaks something goes on from there with the next. */
    private static final double[] STRICTNESS = {1, 40, 2000};
    /** What may be left of a breach: a hundredth of 2° or of 4 mm. */
    static final double SLACK = 0.01;
    /** Fixed starts, the cheapest of which the search sets out from, as shares of each variable's range, in the order of {@link Free}. */
    private static final double[][] GUESSES = {
            {0.45, 0.30, 0.75, 0.3},
            {0.60, 0.25, 0.75, 0.8},
            {0.75, 0.20, 0.60, 0.6},
            {0.30, 0.40, 0.60, 0.5},
    };

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

    /** One stance in one position with the variables it leaves open. */
    private record Search(Stance stance, Position position, List<Free> open) {
        static Search of(Stance stance, Position position) {
            var open = new ArrayList<Free>(4);
            for (Free free : Free.values()) {
                if (stance.high()[free.ordinal()] > stance.low()[free.ordinal()]) {
                    open.add(free);
                }
            }
            return new Search(stance, position, open);
        }

        double[] start(double[] guess) {
            double[] start = new double[open.size()];
            for (int i = 0; i < start.length; i++) {
                start[i] = guess[open.get(i).ordinal()];
            }
            return start;
        }

        double[] values(double[] point) {
            double[] values = stance.low().clone();
            for (int i = 0; i < point.length; i++) {
                int at = open.get(i).ordinal();
                values[at] += point[i] * (stance.high()[at] - stance.low()[at]);
            }
            return values;
        }
    }

    /** The best body in {@code position}, whether or not it breaks something. */
    StanceTrial best(Stance stance, Position position) {
        lastShift = 0;
        Search search = Search.of(stance, position);
        double[] point = fromGuesses(search);
        StanceTrial best = trial(search, point, EXACT);
        for (int i = 1; i < STRICTNESS.length && best.breaches(0).beyond(SLACK) && point.length > 0; i++) {
            double strictness = STRICTNESS[i];
            point = Minimiser.lowest(at -> trial(search, at, ROUGH).cost(strictness), point);
            best = trial(search, point, EXACT);
        }
        return best;
    }

    private double[] fromGuesses(Search search) {
        double[] lowest = search.start(GUESSES[0]);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < GUESSES.length && search.open().size() > 1; i++) {
            double[] guess = search.start(GUESSES[i]);
            double cost = trial(search, guess, ROUGH).cost(STRICTNESS[0]);
            if (cost < least) {
                least = cost;
                lowest = guess;
            }
        }
        return Minimiser.lowest(at -> trial(search, at, ROUGH).cost(STRICTNESS[0]), lowest);
    }

    private StanceTrial trial(Search search, double[] point, double tolerance) {
        var trial = new StanceTrial(problem, search.stance(), search.position(), arms, loads, hands, search.values(point),
                lastShift, tolerance);
        lastShift = trial.shifted();
        return trial;
    }
}
