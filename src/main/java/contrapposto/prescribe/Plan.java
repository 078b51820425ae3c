package contrapposto.prescribe;

import contrapposto.assess.Assessed;
import contrapposto.assess.Reason;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.select.Instead;
import contrapposto.setup.SolvedSetUp;
import contrapposto.wording.Said;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The solved program: everything that is printed, and why. Withheld by screening: {@code days} and {@code exercises}
 * are empty and {@link Assessed#verdict()} says why.
 *
 * @param firstSide the side that goes first within an exercise
 * @param expires   the date after which the plan is not to be used without a re-check
 * @param weeks     of the whole plan, in order
 * @param volume    weekly sets in week 1 by muscle and side; indirect sets count one half
 * @param leftOut   family id → why
 * @param warnings  for the coach (volume outside published ranges, minutes, rounding …)
 */
public record Plan(Assessed assessed, Catalogue catalogue, Side firstSide, LocalDate expires, List<Week> weeks,
                   List<Exercise> exercises, List<Day> days, Map<Muscle, LeftRight> volume,
                   Map<String, List<Reason>> leftOut, List<Reason> reasons, List<Said> warnings) {

    public CheckedSpec spec() {
        return assessed.spec();
    }

    /** The last of the first weeks whose sessions leave many minutes over; empty where they do not. */
    public Optional<Long> shortUntil() {
        return ShortSessions.last(reasons);
    }

    public boolean withheld() {
        return assessed.verdict().withheld();
    }

    /**
     * @param number  from 1
     * @param starts  its Monday-based or start-day-based first day
     * @param easy    whether it is an easy (deload) week
     * @param stage   that leads this week
     * @param inReserve repeats to spare unless an exercise says otherwise
     */
    public record Week(int number, LocalDate starts, boolean easy, int inReserve, Stage stage) { }

    public record LeftRight(double left, double right) {
        public double on(Side side) {
            return side == Side.LEFT ? left : right;
        }
    }

    /**
     * One exercise of the plan, the same on every day it is done.
     *
     * @param instead what to do on a day when its things are taken or it hurts
     */
    public record Exercise(int number, String id, Sided<SidePlan> sides, Instead instead, List<Reason> reasons) {
        /** The exercise to take in its place when it hurts; a family id. */
        public Optional<String> ifItHurts() {
            return instead.hurts();
        }
    }

    /**
     * @param solved   set-up with poses solved for the week-1 load
     * @param capacity of this side in N·m and which joint binds; empty when there is no test
     * @param doses    one for each week it is done in, in order (see {@code Selection.Chosen#firstWeek})
     */
    public record SidePlan(SolvedSetUp solved, double loadUsed, Optional<Capacity> capacity, List<Dose> doses,
                           List<Reason> reasons) { }

    /**
     * @param joint   hip, knee, shoulder or elbow: the one with the largest |M|/c
     * @param moment  N·m at the estimated 1RM in the set-up of the test
     * @param together N·m of hip and knee added up there, of which the shares of a leg are; for an arm the same as {@code moment}
     * @param oneRepMax kg, outside load
     * @param wanted  share of it that the first week is to ask, before rounding
     * @param exactLoad kg per implement that asks just that, before rounding down to a weight that exists
     * @param error   printed with the estimate: how far off it may be, as a share of it
     * @param tests   sets it rests on
     */
    public record Capacity(String joint, double moment, double together, double oneRepMax, double wanted, double exactLoad,
                           String formula, double error, int tests) { }

    /**
     * @param seconds   of a hold or walk in place of reps, 0 when reps count
     * @param load      kg per implement; empty: start by effort (find the weight that leaves {@code inReserve}) or body weight
     * @param byEffort  whether the client finds the weight
     * @param heavier   than in any earlier week that is not easy
     * @param share     of capacity asked; empty without one
     */
    public record Dose(int week, int sets, int reps, int seconds, OptionalDouble load, boolean byEffort, int inReserve,
                       String tempo, int rest, boolean heavier, OptionalDouble share) { }

    /**
     * @param minutes by week
     * @param numbers of exercises in training order, of all weeks
     * @param ramps   easy sets before the first loaded standing exercise, in order; empty where none is loaded
     */
    public record Day(DayOfWeek day, List<Integer> minutes, List<Integer> numbers, List<Ramp> ramps) { }

    /**
     * One easy set before the work sets of an exercise.
     *
     * @param exercise its number
     * @param share    of the day's weight
     * @param loads    that share of its first loaded week as a weight that exists, kg per implement; empty: body weight,
     *                 or a share of the weight the client finds
     */
    public record Ramp(int exercise, int reps, double share, Sided<OptionalDouble> loads) { }
}
