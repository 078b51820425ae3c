package contrapposto.body;

import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;

/**
 * Everything the solver needs to find the start and the working position of one set-up.
 *
 * @param working    the working side (of the legs for leg work, of the arm for arm work)
 * @param limits     per side
 * @param left       what the left arm does
 * @param right      what the right arm does
 * @param hipShift   whether the pelvis is shifted forward and across over the working foot
 * @param handSupport whether a hand on a rail, wall or chair steadies the person
 * @param pressure   the zone each foot's centre of pressure must stay in
 * @param effort     weights of the objective, from the house rules
 */
public record PoseProblem(Person person, Side working, Sided<JointLimits> limits, BaseOfSupport base, Action action,
                          ArmTask left, ArmTask right, Load load, boolean hipShift, boolean handSupport,
                          Sided<Zone> pressure, Effort effort) {
    /** Where under a sole the pressure may lie. */
    public enum Zone { HEEL, WHOLE_SOLE, BALL }

    /**
     * The objective Σ (Mⱼ / (cⱼ · mass))² + ((lean − lean₀) / leanScale)².
     *
     * @param hip        c of the hip, N·m/kg
     * @param knee       c of the knee, N·m/kg
     * @param lean       wanted trunk lean, degrees forward
     * @param leanScale  degrees
     */
    public record Effort(double hip, double knee, double lean, double leanScale) { }

    /** The same in the mirror: left and right change places. */
    public PoseProblem mirrored() {
        return new PoseProblem(person, working.other(), swapped(limits), base.mirrored(), action.mirrored(),
                right.mirrored(), left.mirrored(), load.mirrored(), hipShift, handSupport, swapped(pressure), effort);
    }

    /** What the arm of {@code side} does. */
    public ArmTask arm(Side side) {
        return side == Side.LEFT ? left : right;
    }

    private static <T> Sided<T> swapped(Sided<T> sides) {
        return new Sided.Each<>(sides.on(Side.RIGHT), sides.on(Side.LEFT));
    }
}
