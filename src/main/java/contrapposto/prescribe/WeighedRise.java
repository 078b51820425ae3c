package contrapposto.prescribe;

import contrapposto.catalogue.HouseRules.Range;
import contrapposto.prescribe.Plan.Dose;
import contrapposto.prescribe.Plan.Week;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Doses in kilograms, by double progression: repeats for two weeks, then the next weight that exists, with the repeats back down.
 * The capacity is taken as it was tested, so every week keeps what the curve allows: repeats and reserve together never
 * pass the repeats that the share of capacity admits, and the share never passes the band. A weight goes up only by a step
 * inside the published rule, counted as the family counts its load; where no weight lies inside rule and band, a few more
 * repeats are done instead.
 */
final class WeighedRise {
    /** Repeats over the family's range where no heavier weight may be taken: house. */
    private static final int BRIDGE = 3;
    /** The first week asks this many repeats fewer than the curve allows: house. */
    private static final int HELD_BACK = 2;
    /** Weeks of a wave: house. */
    private static final int WAVE = 3;
    /** How many repeats go back when the weight goes up: house. */
    private static final int BACK = 2;
    /** An easy week's weight, as a share of the last one, at most: house. */
    private static final double EASY_SHARE = 0.9;
    /** Weeks with a weight, easy ones not counted, before it goes up, and for someone who goes slowly: house; published: two sessions (B1.1). */
    private static final int HELD = 2;
    private static final int HELD_SLOWLY = 4;

    private final Frame frame;
    private final Asking asking;
    private final Weights weights;
    private final Range band;

    WeighedRise(Frame frame, Asking asking, Weights weights, Range band) {
        this.frame = frame;
        this.asking = asking;
        this.weights = weights;
        this.band = band;
    }

    /**
     * @param held weeks with this weight before this one, easy ones not counted; in waves the weeks gone by
     * @param base with which the wave began
     */
    private record State(double load, int reps, int held, double base) { }

    static int weeksWithOneWeight(boolean slower) {
        return slower ? HELD_SLOWLY : HELD;
    }

    /** The share wanted first: the low end, or what the fewest repeats with the first week's reserve allow, if less. */
    double firstShare() {
        return Math.min(band.low(), frame.curve().share(frame.family().repsFrom() + Calendar.FIRST_WEEK_RESERVE));
    }

    /** @param load the first weight, which exists; 0 for body weight */
    List<Dose> doses(List<Week> weeks, double load) {
        var doses = new ArrayList<Dose>();
        var state = new State(load, 0, 0, load);
        double heaviest = load;
        for (var week : weeks) {
            boolean first = doses.isEmpty();
            int reserve = Frame.reserve(week, first);
            if (first) {
                state = new State(load, firstReps(load, reserve), 0, load);
            } else if (!week.easy() && !onlyEasyBefore(weeks, week)) {
                state = frame.waves() ? wave(state, reserve) : next(state, reserve);
            }
            double lifted = week.easy() ? easyLoad(state.load()) : state.load();
            int reps = week.easy() ? Math.min(state.reps(), firstReps(lifted, reserve)) : state.reps();
            doses.add(dose(week, lifted, reps, reserve, !week.easy() && state.load() > heaviest + 1e-9));
            heaviest = Math.max(heaviest, state.load());
        }
        return List.copyOf(doses);
    }

    private static boolean onlyEasyBefore(List<Week> weeks, Week week) {
        return weeks.stream().filter(other -> other.number() < week.number()).allMatch(Week::easy);
    }

    private int firstReps(double load, int reserve) {
        int allowed = allowed(load, reserve);
        int from = frame.family().repsFrom();
        return allowed < from ? Math.max(1, allowed) : Math.clamp(Math.min(allowed, frame.family().repsTo()) - HELD_BACK, from, allowed);
    }

    /**
     * The weight goes up after the same number of weeks whoever lifts it, and repeats rise meanwhile. If it were when the repeats are as
     * many as the curve allows this person, someone weaker would be done sooner with their fewer repeats, and would lift more than someone
     * stronger for a while.
     */
    private State next(State now, int reserve) {
        int allowed = Math.max(1, allowed(now.load(), reserve));
        int held = now.held() + 1;
        var heavier = heavier(now.load(), reserve);
        if (heavier.isPresent() && held >= weeksWithOneWeight(frame.slower())) {
            return new State(heavier.getAsDouble(), lowered(now.reps(), heavier.getAsDouble(), reserve), 0, heavier.getAsDouble());
        }
        int most = frame.family().repsTo() + (heavier.isPresent() ? 0 : BRIDGE);
        return new State(now.load(), Math.min(now.reps() + 1, Math.min(allowed, most)), held, now.base());
    }

    /**
     * Waves of three weeks: the lighter weight with the most repeats, then one and two steps up with fewer; each wave begins a step
     * higher. The steps are those of {@link #heavier}, so no week is more than one step over the heaviest before it.
     */
    private State wave(State now, int reserve) {
        int week = now.held() + 1;
        int place = week % WAVE;
        double base = place == 0 ? heavier(now.base(), reserve).orElse(now.base()) : now.base();
        double load = base;
        for (int step = 0; step < place; step++) {
            load = heavier(load, reserve).orElse(load);
        }
        int from = frame.family().repsFrom();
        int wanted = frame.family().repsTo() - place * (frame.family().repsTo() - from) / (WAVE - 1);
        return new State(load, Math.max(1, Math.min(wanted, allowed(load, reserve))), week, base);
    }

    private int lowered(int reps, double load, int reserve) {
        int wanted = Math.max(frame.family().repsFrom(), reps - BACK);
        return Math.min(wanted, allowed(load, reserve));
    }

    /**
     * The lightest weight whose step is inside the rule, whose share is inside the band and whose repeats are in range. Where such a step
     * would leave them, or the weights end before it, the heaviest short of it, if it is so much heavier by itself, body left out: so that
     * nobody stays under a weight that someone weaker, with other steps behind them, is given.
     */
    private OptionalDouble heavier(double load, int reserve) {
        double shorter = load;
        for (double weight : weights.above(load)) {
            double rise = rise(load, weight);
            if (overBand(weight) || rise > frame.rise().high() + 1e-9 || allowed(weight, reserve) < frame.family().repsFrom()) {
                break;
            }
            if (rise >= frame.rise().low()) {
                return OptionalDouble.of(weight);
            }
            shorter = weight;
        }
        return load > 0 && shorter >= load * (1 + frame.rise().low()) ? OptionalDouble.of(shorter) : OptionalDouble.empty();
    }

    private boolean overBand(double weight) {
        return Math.max(asking.share(weight).orElse(Double.POSITIVE_INFINITY), asking.bindingShare(weight).orElse(Double.POSITIVE_INFINITY))
                > band.high() + 1e-9;
    }

    /** How much more of the capacity is asked, as a share of what was asked before. */
    private double rise(double load, double weight) {
        double before = asking.share(load).orElse(0);
        return before <= 0 ? Double.POSITIVE_INFINITY
                : asking.share(weight).orElse(Double.POSITIVE_INFINITY) / before - 1;
    }

    /** The most repeats that leave {@code reserve}, by the curve; unbounded counts as very many. */
    private int allowed(double load, int reserve) {
        double share = asking.share(load).orElse(Double.POSITIVE_INFINITY);
        double possible = share <= 0 ? Double.POSITIVE_INFINITY : frame.curve().reps(share);
        return (int) StrictMath.floor(Math.min(possible, 1000) - reserve + 1e-9);
    }

    private double easyLoad(double load) {
        double lighter = weights.roundedDown(load * EASY_SHARE);
        return lighter > 0 || asking.share(0).orElse(0) > 0 ? lighter : load;
    }

    private Dose dose(Week week, double load, int reps, int reserve, boolean heavier) {
        int left = allowed(load, 0) - reps;
        int printed = Math.clamp(left, Math.min(reserve, Math.max(0, left)), Frame.MOST_RESERVE);
        return new Dose(week.number(), frame.sets(week), reps, 0,
                load > 0 ? OptionalDouble.of(load) : OptionalDouble.empty(), false, printed, frame.family().tempo(),
                frame.rest(), heavier, asking.share(load));
    }
}
