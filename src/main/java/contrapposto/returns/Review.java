package contrapposto.returns;

import contrapposto.assess.Symmetry;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec.Measure;
import contrapposto.prescribe.Plan;
import contrapposto.quantity.Side;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What a block has shown: what each side did, can do now and does next, and what the coach must hear.
 *
 * @param sides     in the order of the plan, left before right
 * @param alarms    for the coach, in the order they came up
 * @param weeksDone with anything filled in, out of the plan's
 * @param starts    the next block
 * @param stage     it starts in
 * @param told      what the client wrote, word for word
 */
public record Review(Plan plan, List<SideReview> sides, List<Balance> balances, List<Alarm> alarms, List<Remeasured> measures,
                     Optional<GateState> gate, int weeksDone, LocalDate starts, Stage stage, Log.Told told) {
    /** Which of the equations in print every symmetry number here is by. */
    public static final Symmetry EQUATION = Symmetry.LIMB_SYMMETRY_INDEX;

    /** How far apart healthy sides are, percent: knee extensors 4.9 to 5.8 (Baroni et al. 2016, B4.12), rounded up. */
    static final double USUAL_DIFFERENCE = 6;

    public enum Decision { UP, HOLD, BACK_OFF, SWAP }

    /** Why a decision was taken: the first that holds, in this order. */
    public enum Why {
        /** Pain over the ceiling in two sessions or more. */
        PAIN_TWICE(Decision.SWAP),
        /** Pain over the ceiling once. */
        PAIN(Decision.BACK_OFF),
        /** Two sessions in a row worse than asked. */
        WORSE_TWICE(Decision.BACK_OFF),
        /** Pain over the ceiling on a morning after. */
        MORNING_PAIN(Decision.HOLD),
        /** Fewer than half of the sessions done. */
        FEW_SESSIONS(Decision.HOLD),
        /** The last two sessions both left far more to spare than asked: the published rule for going up (ACSM 2009, B1.1). */
        EASY_TWICE(Decision.UP),
        /** No weight is measured against a capacity here, or no set said anything about it. */
        NOTHING_MEASURED(Decision.HOLD),
        /** There was no estimate before; now there is. */
        FIRST_ESTIMATE(Decision.UP),
        STRONGER(Decision.UP), WEAKER(Decision.BACK_OFF), SAME(Decision.HOLD);

        private final Decision decision;

        Why(Decision decision) {
            this.decision = decision;
        }

        public Decision decision() {
            return decision;
        }
    }

    /** @param error how far off it may be, as a share; {@code sets} it rests on */
    public record Estimate(double capacity, double error, int sets) { }

    /**
     * One exercise and side.
     *
     * @param side     empty: both at once
     * @param done     sessions, out of {@code asked} up to the last week that was filled in
     * @param before   the estimate the block was written for; empty without
     * @param now      what the sets of the block make of it, or what was known, grown old; empty without either
     * @param next     what the next block is written for: {@code now}, less where it is backed off; empty without
     * @param heaviest kg on an implement, of all sets; empty without
     * @param worst    pain, 0 to 10
     * @param instead  the exercise to take in its place, where it is swapped and there is one
     */
    public record SideReview(String exercise, Optional<Side> side, int done, int asked, Optional<Estimate> before,
                             Optional<Estimate> now, Optional<Estimate> next, OptionalDouble heaviest, OptionalInt worst, Why why,
                             Optional<String> instead) {
        public Decision decision() {
            return why.decision();
        }

        /** How much stronger than before, as a share; empty where one of the two is not known. */
        public OptionalDouble change() {
            return before.isPresent() && now.isPresent()
                    ? OptionalDouble.of(now.get().capacity() / before.get().capacity() - 1) : OptionalDouble.empty();
        }
    }

    /**
     * Left against right, percent by {@link Review#EQUATION}.
     *
     * @param weaker the weaker side now; empty where the sides are no farther apart than {@link Review#USUAL_DIFFERENCE}
     */
    public record Balance(String exercise, OptionalDouble before, double now, Optional<Side> weaker) {
        /** @param left capacity, as {@code right}, more than 0 */
        static Balance of(String exercise, OptionalDouble before, double left, double right) {
            double now = EQUATION.of(left, right);
            return new Balance(exercise, before, now, 100 - now <= USUAL_DIFFERENCE ? Optional.empty()
                    : Optional.of(left < right ? Side.LEFT : Side.RIGHT));
        }
    }

    /** @param exercise empty where it is about a whole day; {@code pain} 0 where it is about another thing */
    public record Alarm(Why why, Optional<String> exercise, Optional<Side> side, int week, DayOfWeek day, int pain) { }

    /** A pair measured again. */
    public record Remeasured(Optional<Measure> before, Measure now) { }

    /** @param difference between the sides now, in the unit of the gate; empty when it was not measured again */
    public record GateState(String what, double under, String unit, OptionalDouble difference) {
        public boolean met() {
            return difference.isPresent() && difference.getAsDouble() < under;
        }
    }
}
