package contrapposto.body;

import contrapposto.body.Stance.Free;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Chooses the free variables of a {@link Stance} so that the objective is least. */
final class Standing {
    /** Balance of the result, share of stature. */
    private static final double EXACT = 1e-12;
    /** Weights of a breach: a search whose result still breaks something goes on from there with the next. */
    private static final double[] STRICTNESS = {1, 2000};
    /** What may be left of a breach: a hundredth of 2° or of 4 mm. */
    static final double SLACK = 0.01;
    /** Two searches that end within this share of each other's breaches have shown that there is no better. */
    private static final double SAME = 0.01;
    /** Fixed starts, the cheapest of which the search sets out from, as shares of each variable's range, in the order of {@link Free}. */
    private static final double[][] GUESSES = {
            {0.45, 0.30, 0.75, 0.3, 0.5, 0.5},
            {0.60, 0.25, 0.75, 0.8, 0.5, 0.5},
            {0.75, 0.20, 0.60, 0.6, 0.5, 0.5},
            {0.30, 0.40, 0.60, 0.5, 0.5, 0.5},
    };

    private final PoseProblem problem;
    private final Arms arms;
    private final Loads loads;
    private final List<Contact> hands;
    private double[] found = new double[0];

    Standing(PoseProblem problem, Arms arms, Loads loads, List<Contact> hands) {
        this.problem = problem;
        this.arms = arms;
        this.loads = loads;
        this.hands = hands;
    }

    /**
     * The best body in {@code position}, whether or not it breaks something.
     *
     * @param near a point that the search of a neighbour ended at, to set out from; empty where there is none
     */
    StanceTrial best(Stance stance, Position position, double[] near) {
        List<Free> open = StanceModel.open(stance);
        var model = new StanceModel(problem, stance, position, arms, loads, hands, open);
        if (near.length == open.size() && near.length > 0) {
            StanceTrial warm = from(model, stance, position, near);
            if (!warm.breaches(0).beyond(SLACK)) {
                return warm;
            }
        }
        List<double[]> guesses = cheapestFirst(model, open);
        StanceTrial best = from(model, stance, position, guesses.getFirst());
        double[] end = found;
        for (int i = 1; i < guesses.size() && best.breaches(0).beyond(SLACK); i++) {
            StanceTrial next = from(model, stance, position, guesses.get(i));
            double gain = best.breaches(0).penalty() - next.breaches(0).penalty();
            if (gain > 0) {
                best = next;
                end = found;
            }
            if (Math.abs(gain) < SAME * best.breaches(0).penalty()) {
                break;
            }
        }
        found = end;
        return best;
    }

    /** Where the last search ended. */
    double[] found() {
        return found;
    }

    private StanceTrial from(StanceModel model, Stance stance, Position position, double[] guess) {
        double[] point = guess.clone();
        found = point;
        model.strictness(STRICTNESS[0]);
        LeastSquares.lowest(model, point);
        StanceTrial best = trial(model, stance, position, point);
        for (int i = 1; i < STRICTNESS.length && best.breaches(0).beyond(SLACK) && point.length > 0; i++) {
            model.strictness(STRICTNESS[i]);
            LeastSquares.lowest(model, point);
            best = trial(model, stance, position, point);
        }
        return best;
    }

    private static List<double[]> cheapestFirst(StanceModel model, List<Free> open) {
        if (open.size() < 2) {
            return List.of(start(open, GUESSES[0]));
        }
        record Priced(double[] guess, double cost) { }
        var priced = new ArrayList<Priced>(GUESSES.length);
        for (double[] guess : GUESSES) {
            double[] point = start(open, guess);
            priced.add(new Priced(point, model.at(point)));
        }
        priced.sort(Comparator.comparingDouble(Priced::cost));
        return priced.stream().map(Priced::guess).toList();
    }

    private static double[] start(List<Free> open, double[] guess) {
        return open.stream().mapToDouble(free -> guess[free.ordinal()]).toArray();
    }

    private StanceTrial trial(StanceModel model, Stance stance, Position position, double[] point) {
        model.at(point);
        return new StanceTrial(problem, stance, position, arms, loads, hands, model.values(point), model.shifted(), EXACT * problem.person().stature());
    }
}
