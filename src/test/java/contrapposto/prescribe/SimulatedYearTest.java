package contrapposto.prescribe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.prescribe.SimulatedYear.Rule;
import contrapposto.prescribe.SimulatedYear.Score;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/** Invented clients through a year. The large run is asked for with {@code -Dsimulated.year=true} and leaves its table in target. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SimulatedYearTest {
    private static Map<Rule, Score> run(long first, int clients, int blocks) {
        var all = new TreeMap<Rule, Score>();
        for (int client = 0; client < clients; client++) {
            new SimulatedYear(first + client).run(blocks).forEach((rule, score) -> all.computeIfAbsent(rule, fresh -> new Score()).add(score));
        }
        return all;
    }

    /**
     * Loads are written from what can be lifted ten times, so that error is looked at. Eight groups of as many (seeds 5000 to
     * 5191) were 0.8 to 1.9 points nearer than the first test, with a median error of 6.5 to 8.1 %, a 90th percentile of 14.9 to 18.3 % and none over
     * the limit: half a point is asked of a ninth group, and errors at most half as large again as the worst. That a rule can miss them, the fixed rise shows.
     */
    @Test
    void two_dozen_clients_through_three_blocks_are_known_better_than_by_their_first_test_and_kept_safe() {
        var scores = run(6000, 24, 3);
        var next = scores.get(Rule.NEXT);
        assertTrue(next.errors.size() > 500, "" + next.errors.size());
        assertTrue(next.errorAtTen(0.5) < scores.get(Rule.LAST_LOAD).errorAtTen(0.5) - 0.005, table(scores));
        assertTrue(next.errorAtTen(0.5) < 0.12 && next.errorAtTen(0.9) < 0.27 && next.over < 0.005 * next.sessions, table(scores));
        var fixed = scores.get(Rule.FIVE_PERCENT_A_WEEK);
        assertFalse(fixed.errorAtTen(0.5) < 0.12 || fixed.over < 0.005 * fixed.sessions, table(scores));
    }

    @Test
    void the_same_seeds_give_the_same_year_and_neighbouring_clients_differ() {
        assertEquals(table(run(1000, 2, 2)), table(run(1000, 2, 2)));
        assertNotEquals(table(run(1000, 1, 2)), table(run(1001, 1, 2)));
    }

    @Test
    @EnabledIfSystemProperty(named = "simulated.year", matches = "true")
    void two_hundred_clients_through_six_blocks() throws IOException {
        var scores = run(Long.getLong("simulated.first.seed", 1000), 200, 6);
        Files.writeString(Path.of("target/simulated-year.md"), table(scores));
        assertTrue(scores.get(Rule.NEXT).error(0.9) < scores.get(Rule.FIVE_PERCENT_A_WEEK).error(0.9));
    }

    private static String table(Map<Rule, Score> scores) {
        var table = new StringBuilder("| rule | 1RM, median error | 90th percentile | ten repeats, median error | 90th percentile | "
                + "sessions over the true limit | under half of it |\n|---|---|---|---|---|---|---|\n");
        scores.forEach((rule, score) -> table.append(String.format(Locale.ROOT, "| %s | %.1f %% | %.1f %% | %.1f %% | %.1f %% | %.2f %% | %.2f %% |%n",
                rule.name().toLowerCase(Locale.ROOT).replace('_', ' '), 100 * score.error(0.5), 100 * score.error(0.9),
                100 * score.errorAtTen(0.5), 100 * score.errorAtTen(0.9), 100.0 * score.over / score.sessions,
                100.0 * score.underHalf / score.sessions)));
        table.append(String.format(Locale.ROOT, "%n%d estimates, %d sessions of one exercise and side.%n", scores.get(Rule.NEXT).errors.size(),
                scores.get(Rule.NEXT).sessions));
        return table.toString();
    }
}
