package contrapposto.catalogue;

/**
 * The movement that the first cue asks for, as the one spot-coloured arrow of the working sketch. Relative to the
 * working side, so that it mirrors.
 *
 * @param at     what moves
 * @param toward where it goes
 */
public record Arrow(At at, Toward toward) {
    /** {@code WORKING_…} lies on the working side. */
    public enum At { PELVIS, CHEST, HEAD, WORKING_HIP, WORKING_KNEE, WORKING_HEEL, WORKING_HAND, OTHER_HAND }

    /** {@code WORKING_SIDE} and {@code OTHER_SIDE} run sideways; {@code TURN_…} is seen from above. */
    public enum Toward { FORWARD, BACK, UP, DOWN, WORKING_SIDE, OTHER_SIDE, TURN_WORKING, TURN_OTHER }
}
