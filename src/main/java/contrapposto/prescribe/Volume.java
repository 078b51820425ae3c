package contrapposto.prescribe;

import contrapposto.catalogue.HouseRules.Range;
import contrapposto.catalogue.Muscle;
import contrapposto.prescribe.Plan.Day;
import contrapposto.prescribe.Plan.Exercise;
import contrapposto.prescribe.Plan.LeftRight;
import contrapposto.prescribe.Plan.SidePlan;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Weekly sets by muscle and side in the first week: a direct set counts one, an indirect set one half (Pelland et al. 2024
 * preprint, B3.15).
 */
final class Volume {
    private final double[][] sets = new double[Side.values().length][Muscle.values().length];

    static Map<Muscle, LeftRight> of(List<Exercise> exercises, List<Day> days) {
        var volume = new Volume();
        for (var day : days) {
            exercises.stream().filter(exercise -> day.numbers().contains(exercise.number())).forEach(volume::add);
        }
        return volume.byMuscle();
    }

    private void add(Exercise exercise) {
        switch (exercise.sides()) {
            case Sided.Whole<SidePlan>(var both) -> {
                add(both, Side.LEFT, both.solved().muscles());
                add(both, Side.RIGHT, both.solved().muscles());
            }
            case Sided.Each<SidePlan>(var left, var right) -> {
                one(left, Side.LEFT);
                one(right, Side.RIGHT);
            }
            case Sided.Only<SidePlan>(var side, var only) -> one(only, side);
        }
    }

    private void one(SidePlan plan, Side side) {
        add(plan, side, plan.solved().muscles());
        add(plan, side.other(), plan.solved().otherSideMuscles());
    }

    private void add(SidePlan plan, Side side, Map<Muscle, Double> muscles) {
        int done = plan.doses().stream().filter(dose -> dose.week() == 1).mapToInt(Plan.Dose::sets).sum();
        muscles.forEach((muscle, counts) -> sets[side.ordinal()][muscle.ordinal()] += counts * done);
    }

    private Map<Muscle, LeftRight> byMuscle() {
        var byMuscle = new EnumMap<Muscle, LeftRight>(Muscle.class);
        for (var muscle : Muscle.values()) {
            var both = new LeftRight(sets[Side.LEFT.ordinal()][muscle.ordinal()], sets[Side.RIGHT.ordinal()][muscle.ordinal()]);
            if (both.left() > 0 || both.right() > 0) {
                byMuscle.put(muscle, both);
            }
        }
        return Collections.unmodifiableMap(byMuscle);
    }

    /** A line for the coach for what lies under, and one for what lies over, the published classes. */
    static List<Said> warnings(Map<Muscle, LeftRight> volume, Range weekly) {
        var low = new ArrayList<Said>();
        var high = new ArrayList<Said>();
        volume.forEach((muscle, both) -> {
            for (var side : Side.values()) {
                double done = both.on(side);
                if (done > 0 && done < weekly.low()) {
                    low.add(sets(muscle, side, done));
                } else if (done > weekly.high()) {
                    high.add(sets(muscle, side, done));
                }
            }
        });
        var lines = new ArrayList<Said>();
        line("volume/under", weekly.low(), low).ifPresent(lines::add);
        line("volume/over", weekly.high(), high).ifPresent(lines::add);
        return List.copyOf(lines);
    }

    private static Said sets(Muscle muscle, Side side, double sets) {
        return Said.of("volume/muscle").word("muscle", muscle.word()).side("side", side).number("sets", sets, 1);
    }

    private static Optional<Said> line(String key, double limit, List<Said> muscles) {
        return muscles.isEmpty() ? Optional.empty() : Optional.of(Said.of(key).number("limit", limit, 1).listed("muscles", muscles));
    }
}
