package contrapposto.select;

import contrapposto.catalogue.Muscle;
import contrapposto.quantity.Side;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Spreads the chosen exercises over the training days. Where days are apart, every session does them all. Where an A and a
 * B session fall on neighbouring days, no muscle has hard work in both, and a session that falls on two days running has none
 * at all: of all ways to spread the exercises, the one that
 * covers the wanted muscles best over the week, then has most sessions, then sessions of most equal length; the first of
 * equals in training order.
 */
final class Days {
    private final Frame frame;
    private final List<Item> items;
    private final Duty[] now;
    private final int[] daysOf;
    private final boolean[] resting;
    private Duty[] best;
    private long bestScore = Long.MIN_VALUE;

    private Days(Frame frame, List<Item> items) {
        this.frame = frame;
        this.items = items;
        this.now = new Duty[items.size()];
        this.best = new Duty[items.size()];
        this.daysOf = new int[] {frame.daysOf(0), frame.daysOf(1)};
        this.resting = new boolean[] {frame.touchesItself(0), frame.touchesItself(1)};
    }

    /**
     * The duty of each exercise; empty where no way to spread them keeps every session within its number and time.
     *
     * @param items in training order
     */
    static Optional<Map<Item, Duty>> spread(Frame frame, List<Item> items) {
        var days = new Days(frame, items);
        if (frame.sessionsTouch()) {
            days.decide(0, EnumSet.noneOf(Muscle.class), EnumSet.noneOf(Muscle.class));
        } else {
            Arrays.fill(days.now, Duty.BOTH);
            if (days.fits()) {
                days.best = days.now;
                days.bestScore = 0;
            }
        }
        var duties = new LinkedHashMap<Item, Duty>();
        for (int i = 0; i < items.size(); i++) {
            duties.put(items.get(i), days.best[i]);
        }
        return days.bestScore == Long.MIN_VALUE ? Optional.empty() : Optional.of(duties);
    }

    private boolean fits() {
        for (var block : frame.blocks()) {
            for (int session = 0; session < frame.sessions(); session++) {
                int count = 0;
                double seconds = 0;
                for (int i = 0; i < items.size(); i++) {
                    boolean here = items.get(i).window().meets(block) && now[i].in(session);
                    count += here ? 1 : 0;
                    seconds += here ? items.get(i).seconds(items.get(i).least()) : 0;
                }
                if (count > frame.perSession() || seconds > frame.seconds() + 1e-6) {
                    return false;
                }
            }
        }
        return true;
    }

    private void decide(int depth, EnumSet<Muscle> hardA, EnumSet<Muscle> hardB) {
        if (depth == items.size()) {
            long score = score();
            if (score > bestScore && fits()) {
                bestScore = score;
                best = now.clone();
            }
            return;
        }
        var hard = items.get(depth).hard();
        for (var duty : Duty.values()) {
            var a = EnumSet.copyOf(hardA);
            var b = EnumSet.copyOf(hardB);
            if (duty.in(0)) {
                a.addAll(hard);
            }
            if (duty.in(1)) {
                b.addAll(hard);
            }
            if (a.stream().noneMatch(b::contains) && !(resting[0] && !a.isEmpty()) && !(resting[1] && !b.isEmpty())) {
                now[depth] = duty;
                decide(depth + 1, a, b);
            }
        }
    }

    private long score() {
        long sessions = 0;
        double apart = 0;
        for (int i = 0; i < items.size(); i++) {
            sessions += times(now[i]);
            double seconds = items.get(i).seconds(items.get(i).least());
            apart += (now[i].in(0) ? seconds : 0) - (now[i].in(1) ? seconds : 0);
        }
        return (covered() * 1000 + sessions) * 100_000 - Math.min(99_999, Math.round(Math.abs(apart)));
    }

    private int times(Duty duty) {
        return (duty.in(0) ? daysOf[0] : 0) + (duty.in(1) ? daysOf[1] : 0);
    }

    /** Over the weeks of the plan taken together. */
    private long covered() {
        long covered = 0;
        for (var side : Side.values()) {
            var halves = new EnumMap<Muscle, Integer>(Muscle.class);
            for (int i = 0; i < items.size(); i++) {
                int times = times(now[i]);
                items.get(i).on(side).forEach((muscle, n) -> halves.merge(muscle, n * times, Integer::sum));
            }
            for (var wanted : frame.wanted().get(side).entrySet()) {
                covered += (long) wanted.getValue() * Math.min(Tally.ENOUGH, halves.getOrDefault(wanted.getKey(), 0));
            }
        }
        return covered;
    }
}
