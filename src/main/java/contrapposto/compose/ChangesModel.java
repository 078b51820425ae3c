package contrapposto.compose;

import contrapposto.prescribe.Plan;
import contrapposto.quantity.Side;
import contrapposto.returns.Review;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What the coach's page on a block that is over says, as finished words.
 *
 * @param weeksDone with anything filled in, out of {@code weeks}
 * @param equation  by which left and right are compared, as a word
 * @param gate      met, not-met or not-measured; empty without a gate
 * @param told      what the client wrote for the re-check
 */
record ChangesModel(String title, String who, String practice, String began, String next, String stage, String weeksDone, String weeks,
                    List<Row> rows, List<Alarm> alarms, String equation, List<Balance> balances, List<Measure> measures,
                    Optional<Gate> gate, List<Told> told) {
    /**
     * @param change   on the last block, signed; empty without
     * @param error    of the estimate now; empty without one
     * @param heaviest weight used; empty without
     * @param decision word of {@link Review.Decision}, {@code why} of {@link Review.Why}
     * @param instead  name of the exercise that takes its place
     */
    record Row(String name, String badge, String sessions, Optional<String> change, Optional<String> error, Optional<String> sets,
               Optional<String> heaviest, Optional<String> pain, String decision, String why, Optional<String> instead) { }

    /** @param name empty where it is about a whole day */
    record Alarm(String why, Optional<String> name, Optional<String> side, String week, String day, String pain) { }

    record Balance(String name, Optional<String> before, String now, Optional<String> weaker) { }

    record Measure(String what, Optional<String> left, Optional<String> right, String leftNow, String rightNow) { }

    /** What the client wrote. @param kind notes, weeks or changes */
    record Told(String kind, String text) { }

    record Gate(String what, String under, String state) { }

    static ChangesModel of(PlanWords words, Review review) {
        Plan plan = words.plan();
        var units = words.units();
        var spec = plan.spec();
        return new ChangesModel(spec.title(), spec.client().label(), spec.practice().name(), units.date(spec.schedule().start()),
                units.date(review.starts()), review.stage().word(), Integer.toString(review.weeksDone()), Integer.toString(plan.weeks().size()),
                review.sides().stream().map(side -> row(words, side)).toList(),
                review.alarms().stream().map(alarm -> alarm(words, alarm)).toList(), Values.word(Review.EQUATION),
                review.balances().stream().map(b -> new Balance(words.name(b.exercise()), known(b.before(), units::percentOf),
                        units.percentOf(b.now()), b.weaker().map(Side::word))).toList(),
                review.measures().stream().map(m -> new Measure(words.word(m.now().what().replace(' ', '-')), m.before().map(b -> units.measured(b.left(), b.unit())),
                        m.before().map(b -> units.measured(b.right(), b.unit())), units.measured(m.now().left(), m.now().unit()),
                        units.measured(m.now().right(), m.now().unit()))).toList(),
                review.gate().map(gate -> new Gate(words.word(gate.what().replace(' ', '-')), units.measured(gate.under(), gate.unit()),
                        gate.difference().isEmpty() ? "not-measured" : gate.met() ? "met" : "not-met")),
                Stream.of(told("notes", review.told().notes()), told("weeks", review.told().weeks()), told("changes", review.told().changes()))
                        .flatMap(Optional::stream).toList());
    }

    /** Line breaks become spaces: a page sets its own lines. */
    private static Optional<Told> told(String kind, Optional<String> text) {
        return text.map(words -> new Told(kind, words.strip().replaceAll("\\s+", " "))).filter(told -> !told.text().isEmpty());
    }

    private static Row row(PlanWords words, Review.SideReview side) {
        var units = words.units();
        return new Row(words.name(side.exercise()), side.side().map(Side::word).orElse("both"), side.done() + " / " + side.asked(),
                known(side.change(), units::signedPercent), side.now().map(now -> units.percentOf(100 * now.error())),
                side.now().map(now -> Integer.toString(now.sets())), known(side.heaviest(), units::mass),
                side.worst().isPresent() ? Optional.of(Integer.toString(side.worst().getAsInt())) : Optional.empty(),
                Values.word(side.decision()), Values.word(side.why()), side.instead().map(words::name));
    }

    private static Alarm alarm(PlanWords words, Review.Alarm alarm) {
        return new Alarm(Values.word(alarm.why()), alarm.exercise().map(words::name), alarm.side().map(Side::word),
                Integer.toString(alarm.week()), words.units().weekday(alarm.day()), Integer.toString(alarm.pain()));
    }

    private static Optional<String> known(OptionalDouble value, java.util.function.DoubleFunction<String> words) {
        return value.isPresent() ? Optional.of(words.apply(value.getAsDouble())) : Optional.empty();
    }
}
