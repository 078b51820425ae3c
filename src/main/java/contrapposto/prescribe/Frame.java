package contrapposto.prescribe;

import contrapposto.catalogue.Family;
import contrapposto.catalogue.HouseRules.Range;
import contrapposto.check.CheckedSpec.Scheme;
import contrapposto.prescribe.Plan.Dose;
import contrapposto.prescribe.Plan.Week;
import java.util.OptionalDouble;
import java.util.function.ToIntFunction;

/**
 * What every dose of an exercise has in common, whatever loads it.
 *
 * @param family what the catalogue says about its dose
 * @param sets   per side and session in a week, if it is not easy
 * @param rest   seconds
 * @param rise   least and greatest rise of the load counted in one step
 * @param slower whether the weight waits longer
 * @param scheme how weights rise; whoever goes slowly has no waves
 */
record Frame(Family.Dose family, ToIntFunction<Week> sets, int rest, RepCurve curve, Range rise, boolean slower, Scheme scheme) {
    /** With double progression. */
    Frame(Family.Dose family, ToIntFunction<Week> sets, int rest, RepCurve curve, Range rise, boolean slower) {
        this(family, sets, rest, curve, rise, slower, Scheme.DOUBLE);
    }

    /** Repeats to spare beyond which nobody can judge; more than this is not printed. */
    static final int MOST_RESERVE = 5;

    boolean waves() {
        return scheme == Scheme.WAVE && !slower;
    }

    int sets(Week week) {
        int full = sets.applyAsInt(week);
        return week.easy() ? Math.max(1, full - 1) : full;
    }

    /** Repeats to spare: as the week has it, in the first week of an exercise at least three. */
    static int reserve(Week week, boolean first) {
        return first ? Math.max(Calendar.FIRST_WEEK_RESERVE, week.inReserve()) : week.inReserve();
    }

    Dose unweighed(Week week, int reps, int seconds, boolean byEffort, int reserve) {
        return new Dose(week.number(), sets(week), reps, seconds, OptionalDouble.empty(), byEffort, reserve, family.tempo(),
                rest, false, OptionalDouble.empty());
    }
}
