package contrapposto.select;

import contrapposto.catalogue.Muscle;
import contrapposto.check.CheckedSpec.Aim;
import contrapposto.quantity.Side;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;

/**
 * What a week and a session hold. Sessions take turns: the first, third … training day does session A, the others B.
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

    /** Days on which session A (0) or B (1) is done. */
    int daysOf(int session) {
        return session == 0 ? (days.size() + 1) / 2 : days.size() / 2;
    }

    int sessions() {
        return days.size() > 1 ? 2 : 1;
    }

    /** Whether an A and a B session ever fall on neighbouring days, over the weekend too. */
    boolean sessionsTouch() {
        for (int i = 0; i < days.size(); i++) {
            int j = (i + 1) % days.size();
            boolean different = i % 2 != j % 2;
            if (different && days.get(i).plus(1) == days.get(j)) {
                return true;
            }
        }
        return false;
    }
}
