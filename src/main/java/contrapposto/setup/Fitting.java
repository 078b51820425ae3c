package contrapposto.setup;

import contrapposto.body.Joint;
import contrapposto.body.PoseOutcome;
import contrapposto.body.PoseProblem;
import contrapposto.catalogue.Family.BaseKind;
import contrapposto.catalogue.Implement;
import contrapposto.quantity.Length;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * Finds the open distances of a candidate: of all stances on the whole-centimetre lattice of the family's range, the one
 * nearest to the usual length among those whose shin lies well within the wanted window; where none does, the end of the
 * range that comes nearest to it. A pulley likewise: the height nearest to the middle of its range whose line can have the wanted slope,
 * at the distance nearest to the usual one.
 */
final class Fitting {
    private static final double CENTIMETRE = 0.01;
    /** Step of the distance to a pulley, m, and how far it may be as shares of the usual one. */
    private static final double PULLEY_STEP = 0.05;
    private static final double PULLEY_NEAREST = 0.6;
    private static final double PULLEY_FARTHEST = 1.8;
    /** A foretold slope is worth a try when it is better by this much, degrees. */
    private static final double FORETOLD = 0.5;

    private final Question q;
    private final Judge judge;
    private final Function<PoseProblem, PoseOutcome> solver;

    Fitting(Question q, Judge judge, Function<PoseProblem, PoseOutcome> solver) {
        this.q = q;
        this.judge = judge;
        this.solver = solver;
    }

    Trial fit(SetUp open) {
        boolean line = open.implement() == Implement.CABLE || open.implement() == Implement.BAND;
        if (line && q.family().levers().pulleyTo() > 0) {
            return pulley(open.withStance(usualStance(q)));
        }
        if (q.family().base() != BaseKind.SPLIT && q.family().base() != BaseKind.STAGGERED) {
            return solve(open);
        }
        if (q.wish().stance().isPresent()) {
            return solve(open.withStance(q.wish().stance().get().metres()));
        }
        return q.standsOnALeg() ? stance(open) : solve(open.withStance(usualStance(q)));
    }

    /** Middle of the family's range, to a centimetre. */
    static double usualStance(Question q) {
        return switch (q.family().base()) {
            case SPLIT, STAGGERED -> StrictMath.rint((q.family().levers().stanceFrom() + q.family().levers().stanceTo())
                    / 2 * q.stature() / CENTIMETRE) * CENTIMETRE;
            case LEVEL, STEP, ONE_LEG, HALF_KNEELING, TALL_KNEELING, KNEELING_AT_SUPPORT, ALL_FOURS, PLANK, SUPINE,
                    SIDE_LYING, SEATED -> Double.NaN;
        };
    }

    Trial solve(SetUp setUp) {
        return solve(setUp, TrialLoad.of(q, setUp));
    }

    Trial solve(SetUp setUp, double kg) {
        var problem = Posing.problem(q, setUp, kg);
        return switch (solver.apply(problem)) {
            case PoseOutcome.Solved(var pose) -> new Trial.Held(setUp, problem, pose, kg);
            case PoseOutcome.Impossible(var constraint, var by, var unit) -> new Trial.Unheld(constraint, by, unit);
        };
    }

    /** Too far forward (+) or back (−) for the wanted window, degrees; NaN where no pose exists. */
    private double error(Trial trial) {
        return switch (trial) {
            case Trial.Held held -> judge.shinError(held.mechanics());
            case Trial.Unheld unheld -> Double.NaN;
        };
    }

    /**
     * The usual length if its shin will do. Else the bracket between the usual length and the end of the range toward which
     * the shin gets better is closed in on the nearest length that will do.
     */
    private Trial stance(SetUp open) {
        long usual = Math.round(usualStance(q) / CENTIMETRE);
        long low = (long) StrictMath.ceil(q.family().levers().stanceFrom() * q.stature() / CENTIMETRE - 1e-9);
        long high = (long) StrictMath.floor(q.family().levers().stanceTo() * q.stature() / CENTIMETRE + 1e-9);
        var first = at(open, usual);
        if (error(first) == 0) {
            return first;
        }
        return first instanceof Trial.Held ? closeIn(open, usual, first, toward(open, error(first), low, high))
                : elsewhere(open, first, usual, low, high);
    }

    /** A longer stance tilts the shin of the foot ahead back, and that of the foot behind forward. */
    private long toward(SetUp open, double error, long low, long high) {
        boolean behind = open.frontFoot().filter(front -> front != q.side()).isPresent();
        return error > 0 != behind ? high : low;
    }

    private Trial closeIn(SetUp open, long from, Trial first, long end) {
        long bad = from;
        double badError = error(first);
        long good = end;
        var best = at(open, end);
        double goodError = error(best);
        while (Double.isNaN(goodError) && good != bad) {
            good = bad + (good - bad) / 2;
            best = good == bad ? first : at(open, good);
            goodError = error(best);
        }
        if (goodError * badError > 0) {
            return Math.abs(goodError) < Math.abs(badError) ? best : first;
        }
        while (Math.abs(good - bad) > 1) {
            double part = Math.clamp(Math.abs(badError) / (Math.abs(badError) + Math.max(1, Math.abs(goodError))), 0.1, 0.9);
            long middle = bad + Math.clamp(Math.round((good - bad) * part), Math.min(good - bad + 1, -1L),
                    Math.max(good - bad - 1, 1L));
            var trial = at(open, middle == bad ? middle + Long.signum(good - bad) : middle);
            double error = error(trial);
            if (Double.isNaN(error) || error * badError > 0) {
                bad = middle;
                badError = Double.isNaN(error) ? badError : error;
            } else {
                good = middle;
                goodError = error;
                best = trial;
            }
        }
        return best;
    }

    /** No pose at the usual length: the nearest of a few others that has one. */
    private Trial elsewhere(SetUp open, Trial none, long usual, long low, long high) {
        for (long stance : List.of((3 * usual + low) / 4, (3 * usual + high) / 4, (usual + low) / 2, (usual + high) / 2, low, high)) {
            var trial = at(open, stance);
            if (trial instanceof Trial.Held) {
                return error(trial) == 0 ? trial : closeIn(open, stance, trial, toward(open, error(trial), low, high));
            }
        }
        return none;
    }

    private Trial at(SetUp open, long centimetres) {
        return solve(open.withStance(centimetres / 100.0));
    }

    /**
     * Solves once at the middle height and the usual distance. The hand hardly moves with the pulley, so the slope of every
     * other line is foretold from there; the best of them is solved and judged like any other.
     */
    private Trial pulley(SetUp open) {
        var heights = q.wish().pulley().map(List::of).orElseGet(() -> Posing.pulleys(q, open.implement()));
        if (heights.isEmpty()) {
            return new Trial.Unheld(Said.of("pose/pulley"), 0, "m");
        }
        double usual = q.wish().pulleyDistance().orElse(
                StrictMath.rint(q.family().levers().pulleyDistance() * q.stature() * 20) / 20);
        var middle = heights.get(heights.size() / 2);
        var first = solve(open.withPulley(middle, usual));
        if (!(first instanceof Trial.Held held) || judge.lineError(held.mechanics().lineOfPull()) == 0) {
            return first;
        }
        double hand = held.pose().working().at(Joint.of(q.side(), Joint.Part.WRIST)).getZ();
        double rise = middle.metres() - hand;
        double away = rise / StrictMath.tan(StrictMath.toRadians(held.mechanics().lineOfPull()));
        var best = held;
        double bestMiss = judge.lineError(held.mechanics().lineOfPull());
        for (var line : lines(heights, middle, usual)) {
            double slope = StrictMath.toDegrees(StrictMath.atan2(line.height().metres() - hand, away + line.distance() - usual));
            if (judge.lineError(slope) + FORETOLD < bestMiss
                    && solve(open.withPulley(line.height(), line.distance())) instanceof Trial.Held other
                    && judge.lineError(other.mechanics().lineOfPull()) < bestMiss) {
                best = other;
                bestMiss = judge.lineError(other.mechanics().lineOfPull());
            }
        }
        return best;
    }

    private record Line(Length height, double distance) { }

    /** All lines that can be set, those nearest to the middle height and the usual distance first. */
    private List<Line> lines(List<Length> heights, Length middle, double usual) {
        var lines = new ArrayList<Line>();
        boolean fixed = q.wish().pulleyDistance().isPresent();
        long near = fixed ? 0 : Math.round(usual * (PULLEY_NEAREST - 1) / PULLEY_STEP);
        long far = fixed ? 0 : Math.round(usual * (PULLEY_FARTHEST - 1) / PULLEY_STEP);
        for (var height : heights) {
            for (long step = near; step <= far; step++) {
                lines.add(new Line(height, StrictMath.rint((usual + step * PULLEY_STEP) * 100) / 100));
            }
        }
        lines.sort(Comparator.comparingDouble((Line l) -> Math.round(100 * (Math.abs(l.height().metres() - middle.metres())
                + Math.abs(l.distance() - usual)))).thenComparingDouble(l -> -l.height().metres())
                .thenComparingDouble(Line::distance));
        return lines;
    }
}
