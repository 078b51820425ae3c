package contrapposto.returns;

import contrapposto.prescribe.Plan;
import contrapposto.prescribe.Plan.Dose;
import contrapposto.prescribe.Plan.SidePlan;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import java.util.List;
import java.util.Optional;

/**
 * One exercise and side of a plan: what a line of the log answers.
 *
 * @param side empty: both at once
 */
record Asked(Plan.Exercise exercise, Optional<Side> side, SidePlan plan) {
    /** Every line of an exercise, left before right. */
    static List<Asked> of(Plan.Exercise exercise) {
        return switch (exercise.sides()) {
            case Sided.Whole<SidePlan>(var both) -> List.of(new Asked(exercise, Optional.empty(), both));
            case Sided.Each<SidePlan>(var left, var right) -> List.of(new Asked(exercise, Optional.of(Side.LEFT), left),
                    new Asked(exercise, Optional.of(Side.RIGHT), right));
            case Sided.Only<SidePlan>(var side, var only) -> List.of(new Asked(exercise, Optional.of(side), only));
        };
    }

    static List<Asked> of(Plan plan, int number) {
        return plan.exercises().stream().filter(e -> e.number() == number).flatMap(e -> of(e).stream()).toList();
    }

    static List<Asked> all(Plan plan) {
        return plan.exercises().stream().flatMap(e -> of(e).stream()).toList();
    }

    /** As boxes are named: {@code split-squat/left}. */
    String word() {
        return exercise.id() + "/" + side.map(Side::word).orElse("both");
    }

    Optional<Dose> dose(int week) {
        return plan.doses().stream().filter(dose -> dose.week() == week).findFirst();
    }

    boolean answeredBy(Log.Line line) {
        return line.exercise().equals(exercise.id()) && line.side().equals(side);
    }
}
