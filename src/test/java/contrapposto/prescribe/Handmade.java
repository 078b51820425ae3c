package contrapposto.prescribe;

import contrapposto.assess.Specs;
import contrapposto.body.PoseOutcome;
import contrapposto.body.PoseProblem;
import contrapposto.body.SolvedPose;
import contrapposto.catalogue.Muscle;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.prescribe.Plan.Dose;
import contrapposto.prescribe.Plan.Exercise;
import contrapposto.prescribe.Plan.SidePlan;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.select.Instead;
import contrapposto.select.Selection;
import contrapposto.select.Selection.Chosen;
import contrapposto.setup.SolvedSetUp;
import contrapposto.wording.Said;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Exercises and days put together by hand, with set-ups of the catalogue's families for a client turned right. */
final class Handmade {
    private Handmade() { }

    static Sided<SolvedSetUp> setUps(String id) {
        return Programs.selection(Specs.turned(Turned.RIGHT), List.of(id)).exercises().getFirst().sides();
    }

    /** A set of each week with this weight; body weight where it is 0. */
    static Dose dose(int week, int sets, int reps, double load) {
        return new Dose(week, sets, reps, 0, load > 0 ? OptionalDouble.of(load) : OptionalDouble.empty(), false, 2, "2-0-2", 60, false, OptionalDouble.empty());
    }

    static Dose byEffort(int week, int sets, int reps) {
        return new Dose(week, sets, reps, 0, OptionalDouble.empty(), true, 2, "2-0-2", 60, false, OptionalDouble.empty());
    }

    static SidePlan side(SolvedSetUp solved, Dose... doses) {
        return new SidePlan(solved, 0, Optional.empty(), List.of(doses), List.of());
    }

    static Exercise exercise(int number, String id, Dose... doses) {
        return exercise(number, id, setUps(id).map(solved -> side(solved, doses)));
    }

    static Exercise exercise(int number, String id, Sided<SidePlan> sides) {
        return new Exercise(number, id, sides, Instead.NONE, List.of());
    }

    static SolvedSetUp training(SolvedSetUp s, Map<Muscle, Double> own, Map<Muscle, Double> other) {
        return new SolvedSetUp(s.family(), s.side(), s.role(), s.setUp(), s.problem(), s.pose(), s.phase(), own, other, s.reasons(), s.runnerUp(), s.lacks(),
                s.byCoach());
    }

    static Chosen chosen(int number, String id, int sets) {
        return new Chosen(number, id, setUps(id), 1, 8, sets, Instead.NONE, List.of());
    }

    /** A demand of known moments of hip and knee, N·m by kg of load; without a pose under {@code from} and over {@code most} kg. */
    static Demand demand(DoubleUnaryOperator hip, DoubleUnaryOperator knee, double from, double most) {
        return new Demand(SplitSquats.tested(Side.LEFT, 8), problem -> outcome(problem, hip, knee, from, most));
    }

    /** The shoulder bears 7 N·m and the elbow 5, whatever is held. */
    static PoseOutcome outcome(PoseProblem problem, DoubleUnaryOperator hip, DoubleUnaryOperator knee, double from, double most) {
        double load = Demand.mass(problem.load());
        var still = ((PoseOutcome.Solved) new LinearBody().solve(problem)).pose();
        return load < from || load > most ? new PoseOutcome.Impossible(Said.of("none"), 1, "kg")
                : new PoseOutcome.Solved(new SolvedPose(still.start(), still.working(), new SolvedPose.Mechanics(0, 0, 0.5, 0.5, 0, 90,
                hip.applyAsDouble(load), knee.applyAsDouble(load), -7, -5, 0, 0, 0.05, Double.NaN, Vector3D.ZERO, Vector3D.ZERO, List.of()), List.of()));
    }

    /** Every exercise on every day. */
    static Selection selection(List<Chosen> chosen, DayOfWeek... days) {
        var whole = Programs.selection(Specs.turned(Turned.RIGHT), List.of());
        var numbers = chosen.stream().map(Chosen::number).toList();
        return new Selection(whole.setUps(), chosen, Arrays.stream(days).map(day -> new Selection.Day(day, numbers)).toList(), whole.stages(), Map.of(), List.of());
    }

    /** A day of so many minutes in each week. */
    static Plan.Day day(DayOfWeek day, List<Integer> numbers, Integer... minutes) {
        return new Plan.Day(day, List.of(minutes), numbers, List.of());
    }
}
