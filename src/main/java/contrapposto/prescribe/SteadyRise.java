package contrapposto.prescribe;

import contrapposto.prescribe.Plan.Dose;
import contrapposto.prescribe.Plan.Week;
import java.util.ArrayList;
import java.util.List;

/**
 * Doses without a weight in kilograms: the client finds it by effort, or the body is the load. Repeats (or seconds) rise
 * by one step a week through the family's range; an easy week goes back to where it began.
 */
final class SteadyRise {
    /** How much longer a hold or walk gets in a week, and at most: house. */
    private static final int SECONDS_STEP = 5;
    private static final double MOST_SECONDS = 1.5;

    private final Frame frame;

    SteadyRise(Frame frame) {
        this.frame = frame;
    }

    /** @param byEffort whether the client finds a weight that leaves the repeats to spare */
    List<Dose> doses(List<Week> weeks, boolean byEffort) {
        int from = frame.family().repsFrom();
        int to = frame.family().repsTo();
        int begin = byEffort ? (from + to) / 2 : from;
        var doses = new ArrayList<Dose>();
        int steps = 0;
        for (var week : weeks) {
            int rise = week.easy() ? 0 : steps++;
            int reserve = Frame.reserve(week, doses.isEmpty());
            doses.add(frame.family().seconds() > 0
                    ? frame.unweighed(week, 0, seconds(rise), byEffort, reserve)
                    : frame.unweighed(week, Math.min(begin + rise, to), 0, byEffort, reserve));
        }
        return List.copyOf(doses);
    }

    private int seconds(int rise) {
        int begin = frame.family().seconds();
        return Math.min(begin + rise * SECONDS_STEP, (int) StrictMath.floor(begin * MOST_SECONDS));
    }
}
