package contrapposto.assess;

import contrapposto.catalogue.Family.Ribs;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Phase;
import contrapposto.body.PoseProblem.Zone;
import contrapposto.check.CheckedSpec;
import contrapposto.quantity.Side;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The finding turned into tasks.
 *
 * @param landing    the side to shift into; empty when the pelvis is square
 * @param left       what the left side is to train
 * @param right      what the right side is to train
 * @param agreements each pair of measures, whether its difference counts and whether it agrees
 * @param verdict    of the screening answers
 * @param cautious   whether the cautions for 65 and over (or age unknown) apply
 * @param unanswered screening questions without an answer, in order
 * @param restrained what binds the plan: the coach's restrictions that hold at its start, then those of conditions
 */
public record Assessed(CheckedSpec spec, Optional<Side> landing, Target left, Target right, List<Agreement> agreements,
                       Verdict verdict, boolean cautious, List<String> unanswered, List<Restrained> restrained,
                       List<Reason> reasons) {

    /** The same finding under a spec that differs in nothing an assessment reads. */
    public Assessed under(CheckedSpec changed) {
        return new Assessed(changed, landing, left, right, agreements, verdict, cautious, unanswered, restrained, reasons);
    }

    /** The same with other restrictions. */
    public Assessed bound(List<Restrained> changed) {
        return new Assessed(spec, landing, left, right, agreements, verdict, cautious, unanswered, changed, reasons);
    }

    public Target target(Side side) {
        return side == Side.LEFT ? left : right;
    }

    public Role role(Side side) {
        return target(side).role();
    }

    /**
     * One side's task.
     *
     * @param phases  phases of stance to train, the wanted one first; both when the pelvis is square
     * @param pressure where the foot is to press
     * @param muscles wanted, most wanted first
     * @param ribs    to open; {@code NEITHER} when square
     * @param turnTo  the side the trunk and pelvis are to turn toward while this side works; empty when square
     */
    public record Target(Role role, List<Phase> phases, Zone pressure, List<Muscle> muscles, Ribs ribs,
                         Optional<Side> turnTo) { }

    public enum Agrees { YES, NO, WITHIN_ERROR, NOT_RELATED }

    /**
     * @param error           the measurement error it was compared with
     * @param symmetryPercent by {@link Symmetry#LIMB_SYMMETRY_INDEX}, whose words are printed with it
     */
    public record Agreement(CheckedSpec.Measure measure, double error, Agrees agrees, OptionalDouble symmetryPercent) { }

    /** What the screening answers allow. */
    public sealed interface Verdict {
        List<Reason> reasons();

        /** What has to be kept where the program goes on; none otherwise. */
        default Set<Limit> limits() {
            return Set.of();
        }

        record Clear(List<Reason> reasons) implements Verdict { }

        /** Go on with limits that set-up and prescription must keep. */
        record WithLimits(Set<Limit> limits, List<Reason> reasons) implements Verdict { }

        /** No loaded program: a referral page, until a clinician has cleared it. */
        record NeedsClearance(List<String> answers, List<Reason> reasons) implements Verdict { }

        /** Signs of an emergency or of something no form can clear: a referral page. */
        record Stop(List<String> answers, List<Reason> reasons) implements Verdict { }

        default boolean withheld() {
            return this instanceof NeedsClearance || this instanceof Stop;
        }
    }

    /** What set-up, prescription and paper must keep; in the order they are printed. */
    public enum Limit {
        /** No held breath: breathe out on the effort. */
        NO_BREATH_HOLD,
        /** The load stays at the low end of its band. */
        MODERATE_LOAD,
        /** No long spells on the back. */
        NO_SUPINE,
        NO_IMPACT,
        /** The rear foot is raised only with a hand on something steady. */
        HAND_SUPPORT_FOR_REAR_RAISE,
        /** Balance work is in every session, before other work on the feet. */
        BALANCE_FIRST,
        /** Repeats before weight, and weight only after the full range was reached twice. */
        SLOWER_PROGRESSION,
        /** Someone who knows the exercises is in the room. */
        SUPERVISION
    }
}
