package contrapposto.returns;

import contrapposto.prescribe.Gauge;
import contrapposto.prescribe.Plan.Dose;
import contrapposto.returns.Log.Line;
import contrapposto.returns.StrengthFilter.State;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** What one side did of one exercise, session by session in order, and what it shows. */
record SideHistory(Asked asked, List<Session> sessions, int askedSessions) {
    private static final double DAYS_A_WEEK = 7;
    /** So many fewer to spare than asked is worse: house, three times what is misjudged (A7.3). */
    private static final int FAR_FEWER = 3;
    /** So many more are over the target: one or two repeats (ACSM 2009, B1.1), two of them (B3.5). */
    private static final int FAR_MORE = 2;

    /** One session: what was asked and what was done. */
    record Session(LocalDate date, Line line, Dose dose) {
        /** The weight of the sets, kg on an implement: what was written; nothing where none was asked. */
        OptionalDouble load() {
            return line.kilograms().isPresent() ? line.kilograms()
                    : dose.load().isEmpty() && !dose.byEffort() ? OptionalDouble.of(0) : OptionalDouble.empty();
        }

        boolean done() {
            return !line.sets().isEmpty();
        }

        boolean easy() {
            int wanted = dose.seconds() > 0 ? dose.seconds() : dose.reps();
            boolean lighter = dose.load().isPresent() && line.kilograms().orElse(0) < dose.load().getAsDouble() - 1e-6;
            return done() && !lighter && line.sets().values().stream().allMatch(reps -> reps >= wanted)
                    && line.spare().isPresent() && line.spare().getAsInt() >= dose.inReserve() + FAR_MORE;
        }

        /**
         * Whether it fell short of what was asked: repeats missing in a set that was done, at the weight asked or a heavier one
         * that was not; a lighter weight for no more repeats; or far fewer to spare.
         */
        boolean worse() {
            int wanted = dose.seconds() > 0 ? dose.seconds() : dose.reps();
            boolean fewer = line.sets().values().stream().anyMatch(reps -> reps < wanted);
            boolean more = line.sets().values().stream().allMatch(reps -> reps > wanted);
            boolean heavier = dose.load().isPresent() && line.kilograms().orElse(0) > dose.load().getAsDouble() + 1e-6;
            boolean lighter = dose.load().isPresent() && line.kilograms().isPresent()
                    && line.kilograms().getAsDouble() < dose.load().getAsDouble() - 1e-6;
            boolean closer = line.spare().isPresent() && line.spare().getAsInt() <= dose.inReserve() - FAR_FEWER;
            return done() && (fewer && !heavier || lighter && !more || closer && !more && !heavier);
        }
    }

    int done() {
        return (int) sessions.stream().filter(Session::done).count();
    }

    /** The last of two sessions in a row that were worse than asked. */
    Optional<Session> worseTwice() {
        var held = sessions.stream().filter(Session::done).toList();
        for (int i = 1; i < held.size(); i++) {
            if (held.get(i).worse() && held.get(i - 1).worse()) {
                return Optional.of(held.get(i));
            }
        }
        return Optional.empty();
    }

    /** Whether the last two sessions left at least two repeats more to spare than asked, and missed none. */
    boolean easyTwice() {
        var held = sessions.stream().filter(Session::done).toList();
        return held.size() >= 2 && held.subList(held.size() - 2, held.size()).stream().allMatch(Session::easy);
    }

    List<Session> painful(int ceiling) {
        return sessions.stream().filter(session -> session.line().pain().orElse(0) > ceiling).toList();
    }

    OptionalInt worstPain() {
        return sessions.stream().map(session -> session.line().pain()).filter(OptionalInt::isPresent).mapToInt(OptionalInt::getAsInt).max();
    }

    OptionalDouble heaviest() {
        return sessions.stream().map(session -> session.line().kilograms()).filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble).max();
    }

    /** The estimate after all sessions, as it stands on {@code until}; empty where nothing was known and nothing shown. */
    Optional<State> followed(StrengthFilter filter, Gauge gauge, Optional<State> before, LocalDate since, LocalDate until) {
        var state = before;
        var last = since;
        if (gauge.measures(asked.plan())) {
            for (var session : sessions) {
                double weeks = weeks(last, session.date());
                var next = after(filter, gauge, state.map(known -> known.after(weeks)), session);
                if (next.isPresent()) {
                    state = next;
                    last = session.date();
                }
            }
        }
        double old = weeks(last, until);
        return state.map(known -> known.after(old));
    }

    /** After the last set of a session, the only one whose repeats to spare are written down; empty where it shows nothing. */
    private Optional<State> after(StrengthFilter filter, Gauge gauge, Optional<State> state, Session session) {
        var load = session.load();
        var line = session.line();
        if (!session.done() || line.spare().isEmpty() || load.isEmpty() || session.dose().seconds() > 0
                || load.getAsDouble() <= 0 && !gauge.countsBody(asked.plan())) {
            return Optional.empty();
        }
        int reps = line.sets().get(line.sets().lastKey());
        int spare = line.spare().getAsInt();
        var variance = filter.variance(reps, spare);
        if (variance.isPresent()) {
            return optional(gauge.shown(asked.plan(), load.getAsDouble(), reps + spare)).map(capacity -> state
                    .map(known -> filter.with(known, capacity, variance.getAsDouble())).orElseGet(() -> filter.first(capacity)));
        }
        return reps < 1 ? Optional.empty() : state.flatMap(known -> optional(gauge.shown(asked.plan(), load.getAsDouble(),
                filter.atLeastPossible(reps))).filter(capacity -> capacity > known.capacity()).map(capacity -> filter.atLeast(known, capacity)));
    }

    private static Optional<Double> optional(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    private static double weeks(LocalDate from, LocalDate to) {
        return ChronoUnit.DAYS.between(from, to) / DAYS_A_WEEK;
    }
}
