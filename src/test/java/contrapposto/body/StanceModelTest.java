package contrapposto.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.quantity.Sex;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * The fast search against the slow one it took the place of: the same objective, worked out from whole skeletons and
 * searched without slopes by Hipparchus (Brent's method, one variable inside the other, or Powell's BOBYQA).
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StanceModelTest {
    private static final double[][] GUESSES = {{0.45, 0.30, 0.75, 0.3, 0.5, 0.5}, {0.60, 0.25, 0.75, 0.8, 0.5, 0.5},
        {0.75, 0.20, 0.60, 0.6, 0.5, 0.5}};

    /** One position of a problem on its feet, ready to search. */
    private record Case(String name, PoseProblem problem, Stance stance, Position position, Loads loads, List<Contact> hands) {
        StanceModel model() {
            return new StanceModel(problem, stance, position, Arms.free(problem), loads, hands, StanceModel.open(stance));
        }

        StanceTrial trial(double[] values, double shifted, double tolerance) {
            return new StanceTrial(problem, stance, position, Arms.free(problem), loads, hands, values, shifted, tolerance);
        }
    }

    private static List<Case> cases(double... statures) {
        var cases = new ArrayList<Case>();
        for (double stature : statures) {
            Person person = Person.of(stature, 24 * stature * stature, Sex.FEMALE);
            for (Problems.Named named : Problems.all(person, Side.LEFT)) {
                PoseProblem problem = Support.given(named.problem());
                if (onFeet(problem.base())) {
                    for (Position position : Position.values()) {
                        cases.add(new Case(named.name() + " " + position + " " + stature, problem, Stances.of(problem, position,
                                problem.action() instanceof Action.HipFold ? 25 : 70, true, false),
                                position, Loads.of(problem.load(), 0), Support.forces(problem)));
                    }
                }
            }
        }
        return cases;
    }

    private static boolean onFeet(BaseOfSupport base) {
        return base instanceof BaseOfSupport.Split || base instanceof BaseOfSupport.Staggered || base instanceof BaseOfSupport.Level || base instanceof BaseOfSupport.Step
                || base instanceof BaseOfSupport.OneLeg;
    }

    @Test
    void the_numbers_agree_with_the_whole_skeleton() {
        int compared = 0;
        for (Case c : cases(1.52, 1.93)) {
            StanceModel model = c.model();
            int open = StanceModel.open(c.stance()).size();
            for (double[] guess : GUESSES) {
                double[] point = java.util.Arrays.copyOf(guess, open);
                double sum = model.linearised(point);
                StanceTrial trial = c.trial(model.values(point), model.shifted(), 1e-12);
                assertEquals(trial.cost(1), sum, 2e-4 * Math.max(1, sum), c.name() + " " + model);
                compared++;
            }
        }
        assertTrue(compared > 100, compared + " compared");
    }

    @Test
    void the_fast_search_ends_no_higher_than_the_slow_one() {
        int lower = 0;
        int equal = 0;
        double worst = 0;
        for (Case c : cases(1.70)) {
            StanceModel model = c.model();
            int open = StanceModel.open(c.stance()).size();
            if (open == 0) {
                continue;
            }
            var standing = new Standing(c.problem(), Arms.free(c.problem()), c.loads(), c.hands());
            StanceTrial fast = standing.best(c.stance(), c.position(), new double[0]);
            double[] last = {0};
            double[] point = Minimiser.lowest(at -> {
                StanceTrial trial = c.trial(model.values(at), last[0], 1e-5);
                last[0] = trial.shifted();
                return trial.cost(1);
            }, java.util.Arrays.copyOf(GUESSES[1], open));
            StanceTrial slow = c.trial(model.values(point), 0, 1e-10);
            if (slow.breaches(0).beyond(Standing.SLACK)) {
                continue;
            }
            assertFalse(fast.breaches(0).beyond(Standing.SLACK), c.name());
            double above = fast.cost(1) - slow.cost(1);
            worst = Math.max(worst, above);
            lower += above < -1e-4 ? 1 : 0;
            equal += above < -1e-4 ? 0 : 1;
            assertTrue(above < 2e-4, c.name() + ": " + fast.cost(1) + ", slow " + slow.cost(1));
        }
        System.out.printf(Locale.ROOT, "body: fast search against slow: %d equal, %d lower, at worst %.1e higher%n", equal, lower, worst);
        assertTrue(equal + lower > 20, "compared");
    }
}
