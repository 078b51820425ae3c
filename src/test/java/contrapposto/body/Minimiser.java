package contrapposto.body;

import java.util.Arrays;
import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.analysis.UnivariateFunction;
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
import org.hipparchus.optim.univariate.UnivariatePointValuePair;

/**
 * Finds the lowest point of a function of a few variables, each between 0 and 1; the same for the same input. Limits
 * are steep walls that the best pose often leans on, and a wall that runs askew to the variables stalls a search by
 * quadratic models: two variables are therefore searched one inside the other.
 */
final class Minimiser {
    private static final int EVALUATIONS = 3000;
    private static final double FIRST_STEP = 0.15;
    private static final double LAST_STEP = 2e-4;
    /** The inner variable is sought this near to where the last inner search ended, before the whole range. */
    private static final double NEAR = 0.06;
    private static final double OUTER_STEP = 5e-4;

    private Minimiser() { }

    /** The lowest point found from {@code guess}. */
    static double[] lowest(MultivariateFunction cost, double[] guess) {
        return switch (guess.length) {
            case 0 -> guess;
            case 1 -> new double[] {along(x -> cost.value(new double[] {x}), 0, 1, guess[0], LAST_STEP).getPoint()};
            case 2 -> nested(cost, guess);
            default -> several(cost, guess);
        };
    }

    /** The second variable outside, the first inside. */
    private static double[] nested(MultivariateFunction cost, double[] guess) {
        double[] inner = {guess[0], Double.NaN};
        double outer = along(y -> inner(cost, y, inner), 0, 1, guess[1], OUTER_STEP).getPoint();
        inner(cost, outer, inner);
        return new double[] {inner[0], outer};
    }

    /** The least cost at {@code y}; {@code best} holds where, before (a guess) and after. */
    private static double inner(MultivariateFunction cost, double y, double[] best) {
        UnivariateFunction slice = x -> cost.value(new double[] {x, y});
        double low = 0;
        double high = 1;
        if (!Double.isNaN(best[1])) {
            low = Math.max(0, best[0] - NEAR);
            high = Math.min(1, best[0] + NEAR);
        }
        UnivariatePointValuePair found = along(slice, low, high, best[0], LAST_STEP);
        boolean cut = found.getPoint() < low + 2 * LAST_STEP && low > 0 || found.getPoint() > high - 2 * LAST_STEP && high < 1;
        if (cut) {
            found = along(slice, 0, 1, found.getPoint(), LAST_STEP);
        }
        best[0] = found.getPoint();
        best[1] = y;
        return found.getValue();
    }

    private static UnivariatePointValuePair along(UnivariateFunction f, double low, double high, double guess, double step) {
        double edge = 0.01 * (high - low);
        return new BrentOptimizer(1e-12, step).optimize(new MaxEval(EVALUATIONS), GoalType.MINIMIZE,
                new UnivariateObjectiveFunction(f), new SearchInterval(low, high, Math.clamp(guess, low + edge, high - edge)));
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
