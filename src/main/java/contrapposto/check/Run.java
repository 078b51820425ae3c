package contrapposto.check;

import contrapposto.notice.Notice;
import contrapposto.quantity.Mass;
import contrapposto.spec.Digits;
import contrapposto.spec.Unit;
import contrapposto.spec.Written;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Weights from one to another by equal steps, counted in the unit they are written in, so that no rounding builds up. */
record Run(Written.Amount from, Written.Amount to, Written.Amount step) {
    private static final int MOST = 200;
    private static final double EVEN = 1e-6;

    /** The run that {@code given} describes; empty if it is a list or misses an end. Without {@code from} it begins at one step. */
    static Optional<Run> in(Written given) {
        return given instanceof Written.Fields fields ? fields.amount("to").flatMap(to -> fields.amount("step")
                .map(step -> new Run(fields.amount("from").orElse(step), to, step))) : Optional.empty();
    }

    Optional<Notice> problem(String key) {
        if (to.standard() < from.standard()) {
            return Optional.of(Notice.error("from-above-to", to.span(), "the weights of `" + key + "` end at `" + text(to) + "`, below their start, "
                    + text(from), "give the lightest as `from`, the heaviest as `to`"));
        }
        if (steps() + 1 > MOST) {
            return Optional.of(Notice.error("too-many-weights", step.span(), "steps of `" + text(step) + "` make "
                    + ((long) steps() + 1) + " weights, but the limit is " + MOST, "check `step`"));
        }
        if (Math.abs(steps() - Math.rint(steps())) > EVEN) {
            return Optional.of(Notice.error("step-misses-end", to.span(), "`" + text(to) + "` is not reached from " + text(from)
                    + " in steps of " + text(step), "end at " + Digits.of(weight((int) steps())) + " "
                    + step.unit().word() + ", or list the weights"));
        }
        return Optional.empty();
    }

    /** Ascending; only for a run without problem. */
    List<Mass> weights() {
        return IntStream.rangeClosed(0, (int) Math.rint(steps()))
                .mapToObj(i -> Mass.ofKilograms(step.unit().toStandard(weight(i)))).toList();
    }

    /** The {@code i}-th weight in the unit of the step, free of the dust of binary fractions. */
    private double weight(int i) {
        return Math.rint((in(from, step.unit()) + i * step.number()) * 1e6) / 1e6;
    }

    private double steps() {
        return (in(to, step.unit()) - in(from, step.unit())) / step.number();
    }

    private static double in(Written.Amount amount, Unit unit) {
        return amount.unit() == unit ? amount.number() : unit.fromStandard(amount.standard());
    }

    private static String text(Written.Amount amount) {
        return Digits.of(amount.number()) + " " + amount.unit().word();
    }
}
