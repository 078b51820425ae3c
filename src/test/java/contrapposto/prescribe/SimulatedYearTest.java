package contrapposto.prescribe;

import static org.junit.jupiter.api.Assertions.assertEquals;
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

    @Test
    void a_few_clients_get_through_two_blocks_and_the_log_tells_more_than_the_first_test() {
        var scores = run(1000, 6, 2);
        assertTrue(scores.get(Rule.NEXT).errors.size() > 60, "" + scores.get(Rule.NEXT).errors.size());
        assertTrue(scores.get(Rule.NEXT).errorAtTen(0.5) < scores.get(Rule.LAST_LOAD).errorAtTen(0.5));
        assertTrue(scores.get(Rule.NEXT).errorAtTen(0.5) < scores.get(Rule.FIVE_PERCENT_A_WEEK).error(0.5));
        assertEquals(table(scores), table(run(1000, 6, 2)), "the same seeds, the same year");
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
