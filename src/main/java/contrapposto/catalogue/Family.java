package contrapposto.catalogue;

import contrapposto.body.Action;
import contrapposto.body.ArmTask;
import contrapposto.body.PoseProblem.Zone;
import contrapposto.catalogue.FamilyWords.RoleKey;
import contrapposto.quantity.Side;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One exercise family as data: what it rests on, what moves, which levers a set-up may pull, what it trains and what
 * it costs. Words live in {@link FamilyWords}. All of it relative to the WORKING side, so that it mirrors.
 *
 * @param id         kebab-case, stable
 * @param works      which limb is the working one
 * @param sides      whether each side has a set-up of its own, or one symmetric set-up serves both
 * @param base       what it stands, kneels or lies on
 * @param action     what moves
 * @param workingArm what the arm of the working side does
 * @param otherArm   what the other arm does (for leg work: the arm without the weight)
 * @param levers     what a set-up may change
 * @param turn       the turn of the trunk that doing it asks for, and whether the load carries it or the muscles resist it
 * @param ribs       which ribs of the working side it opens
 * @param muscles    of the working side; by phase where the phase decides
 * @param otherSideMuscles muscles of the other side that it also trains
 * @param pressure   the zone of each phase under the working foot; {@code WHOLE_SOLE} where feet do not matter
 * @param otherPressure the zone under the other foot; {@code WHOLE_SOLE} where it does not matter
 * @param skill      1 (anyone) to 3 (trained)
 * @param steadiness 1 (very steady) to 3 (hard to balance)
 * @param impact     whether it jars
 * @param tags       restriction tags it falls under, each the word of a {@link RestrictionTag}
 * @param dose       defaults
 * @param easier     links, never empty
 * @param harder     links, never empty
 * @param instead    id of the family that best stands in
 * @param arrows     the movement the first cue asks for, for each duty its words have
 */
public record Family(String id, Stage stage, CapacityGroup group, Works works, Sides sides, BaseKind base,
                     ActionData action, ArmKind workingArm, ArmKind otherArm, Levers levers, Turn turn, Ribs ribs,
                     List<MuscleUse> muscles, List<MuscleUse> otherSideMuscles, Map<Phase, Zone> pressure,
                     Zone otherPressure, int skill, int steadiness, boolean impact, Set<String> tags, Dose dose,
                     List<Link> easier, List<Link> harder, String instead, Map<RoleKey, Arrow> arrows) {

    public enum Works { LEG, ARM, TRUNK }

    public enum Sides { EACH, BOTH }

    /** Names a {@code body.BaseOfSupport}; set-up fills in the measures. */
    public enum BaseKind {
        SPLIT, STAGGERED, LEVEL, STEP, ONE_LEG, HALF_KNEELING, TALL_KNEELING, KNEELING_AT_SUPPORT, ALL_FOURS, PLANK,
        SUPINE, SIDE_LYING, SEATED
    }

    /**
     * Names a {@code body.Action} (in kebab-case) and its numbers, relative to the working side; see {@link Motion}.
     *
     * @param values by the record's field names
     */
    public record ActionData(String kind, Map<String, Double> values) {
        /** The action with this side working, for a person {@code stature} metres tall. */
        public Action on(Side working, double stature) {
            return Motion.action(kind, values, working, stature);
        }

        /** The same where the rear foot is raised, which may ask for a deeper front knee ({@code rear-raised-knee-flexion}). */
        public Action withRearRaised(Side working, double stature) {
            return switch (on(working, stature)) {
                case Action.KneeBend bend -> new Action.KneeBend(
                        values.getOrDefault("rearRaisedKneeFlexion", bend.kneeFlexion()), bend.rearKneeClear());
                case Action other -> other;
            };
        }
    }

    /** Names a {@code body.ArmTask} (in kebab-case) and its numbers; directions are forward, out and up. */
    public record ArmKind(String kind, Map<String, Double> values) {
        /** The task of the arm of side {@code arm}, for a person {@code stature} metres tall. */
        public ArmTask on(Side arm, double stature) {
            return Motion.arm(kind, values, arm, stature);
        }
    }

    /**
     * @param workingFoot   where the working foot may be: in a split, staggered or half-kneeling base (behind: that knee is
     *                      down), on a step or when lying on the side
     * @param kickstand     whether the other foot, when it is behind, stands on its ball with the heel up
     * @param loadHands     hands that may hold the weight, relative to the working side
     * @param implement     in order of preference
     * @param stanceFrom    smallest stance as a share of stature; equal to {@code stanceTo} where it is fixed
     * @param widthShare    width between the feet as a share of stature
     * @param frontRaise    whether the front foot may be raised
     * @param rearRaise     whether the rear foot may be raised
     * @param heelWedge     whether a wedge may go under the working heel
     * @param raise         whether what the base rests on (hand, both feet, seat, step) needs a box or bench, and its range
     * @param pulleyFrom    lowest height of the pulley as a share of stature; both 0 without a cable or band
     * @param pulleyTo      highest
     * @param pulleyDistance from the pelvis to the pulley along x, as a share of stature; set-up may vary it for the slope
     * @param pulleyAhead   whether the person faces the pulley (pulls) or has it behind (presses)
     * @param slopeFrom     line of pull below horizontal, degrees, least wanted
     * @param slopeTo       most wanted
     * @param hipShift      whether the pelvis may be shifted forward and across over the working foot
     * @param handSupport   whether a hand may hold a rail, chair or wall
     * @param needs         equipment words without which the family cannot be done (mat, wall, bench, box, chair, band, rail)
     */
    public record Levers(Set<FootPlace> workingFoot, boolean kickstand, Set<LoadHand> loadHands, List<Implement> implement,
                         double stanceFrom, double stanceTo, double widthShare, boolean frontRaise, boolean rearRaise,
                         boolean heelWedge, Raise raise, double pulleyFrom, double pulleyTo, double slopeFrom,
                         double slopeTo, double pulleyDistance, boolean pulleyAhead, boolean hipShift,
                         boolean handSupport, Set<String> needs) { }

    /**
     * Where the working foot (or leg) is: in front, behind, level; {@code ABOVE} on the box or uppermost when lying on
     * the side, {@code BELOW} on the side that lies on the floor.
     */
    public enum FootPlace { AHEAD, BEHIND, LEVEL, ABOVE, BELOW }

    public enum LoadHand { OPPOSITE, SAME, BOTH, EACH }

    /** Range of heights in metres that a box or bench for the base must have; both 0 when none is needed. */
    public record Raise(double from, double to) { }

    /**
     * @param toward  whether the trunk turns toward the working side, away from it, or not
     * @param carried whether the load turns the trunk (true) or the muscles turn it against the load (false)
     */
    public record Turn(Toward toward, boolean carried) { }

    /** {@code BY_LOAD_HAND}: the hand that holds the weight decides, so set-up solves it. */
    public enum Toward { WORKING, AWAY, NONE, BY_LOAD_HAND }

    public enum Ribs { OPENS_BACK, OPENS_FRONT, NEITHER }

    /**
     * @param direct whether a set counts one, else one half
     * @param source "common practice" or a reference id such as D3.13
     */
    public record MuscleUse(Muscle muscle, boolean direct, When when, String source) { }

    public enum When { ALWAYS, EARLY_TO_MID, MID_TO_LATE }

    /**
     * @param sets    at the start
     * @param repsFrom double progression goes from here
     * @param repsTo  to here before the weight goes up
     * @param seconds a hold or distance in seconds in place of reps, 0 when reps count
     * @param tempo   lowering-pause-lifting seconds
     * @param rest    seconds
     * @param setUpMinutes to fetch and arrange things
     */
    public record Dose(int sets, int repsFrom, int repsTo, int seconds, String tempo, int rest, double setUpMinutes) { }

    /**
     * An easier or harder step.
     *
     * @param family id of another family, or this one's own id when only the set-up changes
     * @param change key of the words that say what changes
     */
    public record Link(String family, String change) { }
}
