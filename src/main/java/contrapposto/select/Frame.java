package contrapposto.select;

import contrapposto.catalogue.Muscle;
import contrapposto.check.CheckedSpec.Aim;
import contrapposto.quantity.Side;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What a week and a session hold. Sessions A and B take turns from training day to training day, see {@link #turns}.
 *
 * @param blocks   runs of weeks, each led by one stage
 * @param days     of the week, in order
 * @param seconds  of a session, warm-up sets already taken off
 * @param perSession most exercises of a session
 * @param filled   exercises with which a session counts as full
 * @param inAll    most exercises of the plan
 * @param twoSided most two-sided lifts under load of the plan
 * @param aims     in order of weight
 * @param wanted   by side, weights of the wanted muscles
 */
record Frame(List<Selection.StageWeeks> blocks, List<DayOfWeek> days, double seconds, int perSession, int filled,
             int inAll, int twoSided, List<Aim> aims, Map<Side, Map<Muscle, Integer>> wanted) {
    /** The same week with this many exercises in it, to be spread over sessions that take turns. */
    Frame roomFor(int exercises) {
        return new Frame(blocks, days, seconds * exercises / perSession, exercises, Math.min(exercises, inAll), inAll, twoSided,
                aims, wanted);
    }

    /**
     * The session of each day, 0 (A) or 1 (B): they take turns, beginning on a day that follows a day of rest, so that
     * neighbouring days do different sessions, over the week's end too. Only a week without any day of rest, of seven days,
     * holds two neighbours that do the same: the last and the first.
     */
    List<Integer> turns() {
        int n = days.size();
        int first = IntStream.range(0, n).filter(i -> n == 1 || !touches(i, (i + 1) % n)).map(i -> (i + 1) % n).min().orElse(0);
        return IntStream.range(0, n).mapToObj(i -> (i - first + n) % n % 2).toList();
    }

    /** Whether training day {@code next} is the day after training day {@code one}, over the week's end too. */
    private boolean touches(int one, int next) {
        return days.get(one).plus(1) == days.get(next);
    }

    /** Days on which session A (0) or B (1) is done. */
    int daysOf(int session) {
        return (int) turns().stream().filter(s -> s == session).count();
    }

    int sessions() {
        return days.size() > 1 ? 2 : 1;
    }

    /** Whether an A and a B session ever fall on neighbouring days, over the week's end too. */
    boolean sessionsTouch() {
        return neighbours().anyMatch(pair -> !pair.getFirst().equals(pair.getLast()));
    }

    /** Whether a session falls on two days running: it may then hold no hard work. */
    boolean touchesItself(int session) {
        return neighbours().anyMatch(List.of(session, session)::equals);
    }

    /** The sessions of each two training days that are neighbours. */
    private Stream<List<Integer>> neighbours() {
        int n = days.size();
        var turns = turns();
        return IntStream.range(0, n).filter(i -> n > 1 && touches(i, (i + 1) % n))
                .mapToObj(i -> List.of(turns.get(i), turns.get((i + 1) % n)));
    }
}
