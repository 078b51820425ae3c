package contrapposto.body;

import java.util.Arrays;
import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/** Finds the lowest point of a function of a few variables, each between 0 and 1; the same for the same input. */
final class Minimiser {
    private static final int EVALUATIONS = 3000;
    private static final double FIRST_STEP = 0.15;
    private static final double LAST_STEP = 1e-4;

    private Minimiser() { }

    /** The lowest point found from {@code guess}. */
    static double[] lowest(MultivariateFunction cost, double[] guess) {
        return switch (guess.length) {
            case 0 -> guess;
            case 1 -> new double[] {new BrentOptimizer(1e-9, LAST_STEP).optimize(new MaxEval(EVALUATIONS),
                    GoalType.MINIMIZE, new UnivariateObjectiveFunction(x -> cost.value(new double[] {x})),
                    new SearchInterval(0, 1, Math.clamp(guess[0], 0.01, 0.99))).getPoint()};
            default -> several(cost, guess);
        };
    }

    private static double[] several(MultivariateFunction cost, double[] guess) {
        int n = guess.length;
        double[] high = new double[n];
        Arrays.fill(high, 1);
        try {
            return new BOBYQAOptimizer(2 * n + 1, FIRST_STEP, LAST_STEP).optimize(new MaxEval(EVALUATIONS),
                    new ObjectiveFunction(cost), GoalType.MINIMIZE, new InitialGuess(inside(guess)),
                    new SimpleBounds(new double[n], high)).getPoint();
        } catch (MathIllegalStateException stalled) {
            double[] found = new SimplexOptimizer(1e-9, 1e-9).optimize(new MaxEval(EVALUATIONS),
                    new ObjectiveFunction(point -> cost.value(inside(point)) + 100 * outside(point)), GoalType.MINIMIZE,
                    new InitialGuess(guess), new NelderMeadSimplex(n, FIRST_STEP)).getPoint();
            return inside(found);
        }
    }

    private static double[] inside(double[] point) {
        double[] clamped = point.clone();
        for (int i = 0; i < clamped.length; i++) {
            clamped[i] = Math.clamp(clamped[i], 0.0, 1.0);
        }
        return clamped;
    }

    private static double outside(double[] point) {
        double sum = 0;
        for (double x : point) {
            double by = x - Math.clamp(x, 0.0, 1.0);
            sum += by * by;
        }
        return sum;
    }
}
