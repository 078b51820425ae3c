package contrapposto.prescribe;

import contrapposto.catalogue.Stage;
import contrapposto.prescribe.Plan.Day;
import contrapposto.prescribe.Plan.Dose;
import contrapposto.prescribe.Plan.Exercise;
import contrapposto.prescribe.Plan.Ramp;
import contrapposto.prescribe.Plan.SidePlan;
import contrapposto.prescribe.Plan.Week;
import contrapposto.quantity.Sided;
import contrapposto.select.Selection;
import contrapposto.select.SessionTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Training days: their minutes in every week and their easy ramp sets before the first loaded standing exercise. */
final class Sessions {
    /** Shares of the day's weight and repeats of the ramp sets, lightest first; a plan takes the last of them. House. */
    private static final List<Double> SHARES = List.of(0.3, 0.5, 0.75);
    private static final List<Integer> REPS = List.of(8, 6, 4);

    private final int rampSets;
    private final SideWeights weights;

    /** The weights that exist for one side of one exercise. */
    @FunctionalInterface
    interface SideWeights {
        Weights of(SidePlan side);
    }

    Sessions(int rampSets, SideWeights weights) {
        this.rampSets = Math.clamp(rampSets, 0, SHARES.size());
        this.weights = weights;
    }

    Day day(Selection.Day day, List<Integer> numbers, List<Exercise> exercises, List<Week> weeks) {
        var own = numbers.stream().map(number -> numbered(exercises, number)).toList();
        var minutes = weeks.stream().map(week -> minutes(own, week)).toList();
        return new Day(day.day(), minutes, List.copyOf(numbers), firstLoaded(own).map(this::ramps).orElse(List.of()));
    }

    private static Exercise numbered(List<Exercise> exercises, int number) {
        return exercises.stream().filter(exercise -> exercise.number() == number).findFirst().orElseThrow();
    }

    /** Minutes of a session, ramp sets included, rounded up. */
    private int minutes(List<Exercise> own, Week week) {
        double seconds = own.stream().mapToDouble(exercise -> seconds(exercise, week.number())).sum();
        boolean ramped = firstLoaded(own).filter(first -> doses(first).stream().anyMatch(dose -> dose.week() == week.number()))
                .isPresent();
        return (int) StrictMath.ceil((seconds + (ramped ? rampSets * SessionTime.RAMP_SET : 0)) / 60 - 1e-9);
    }

    private static double seconds(Exercise exercise, int week) {
        var sides = exercise.sides().values();
        var dose = sides.stream().flatMap(side -> side.doses().stream()).filter(d -> d.week() == week)
                .reduce((a, b) -> a.reps() * a.sets() >= b.reps() * b.sets() ? a : b);
        return dose.map(d -> SessionTime.seconds(sides.getFirst().solved().family().dose().setUpMinutes(), sides.size(),
                d.sets(), d.reps(), d.seconds(), d.tempo(), d.rest())).orElse(0.0);
    }

    private static List<Dose> doses(Exercise exercise) {
        return exercise.sides().values().getFirst().doses();
    }

    private static Optional<Exercise> firstLoaded(List<Exercise> own) {
        return own.stream().filter(exercise -> exercise.sides().values().getFirst().solved().family().stage()
                .compareTo(Stage.STANDING) >= 0 && exercise.sides().values().stream().anyMatch(side -> side.doses().stream()
                .anyMatch(dose -> dose.load().isPresent() || dose.byEffort()))).findFirst();
    }

    private List<Ramp> ramps(Exercise exercise) {
        var ramps = new ArrayList<Ramp>();
        for (int i = SHARES.size() - rampSets; i < SHARES.size(); i++) {
            double share = SHARES.get(i);
            Sided<OptionalDouble> loads = exercise.sides().map(side -> load(side, share));
            ramps.add(new Ramp(exercise.number(), REPS.get(i), share, loads));
        }
        return List.copyOf(ramps);
    }

    private OptionalDouble load(SidePlan side, double share) {
        return side.doses().stream().map(Dose::load).filter(OptionalDouble::isPresent).findFirst()
                .map(load -> weights.of(side).roundedDown(load.getAsDouble() * share)).filter(mass -> mass > 0)
                .map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
