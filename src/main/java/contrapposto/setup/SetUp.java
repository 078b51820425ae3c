package contrapposto.setup;

import contrapposto.catalogue.Implement;
import contrapposto.quantity.Length;
import contrapposto.quantity.Side;
import java.util.Optional;

/**
 * How one side is arranged. What does not apply is empty, zero or false.
 *
 * @param workingLeg  the leg that works, for leg families
 * @param frontFoot   the foot ahead where the stance is split, staggered or half-kneeling
 * @param frontRaise  height under the front foot
 * @param rearRaise   height under the rear foot
 * @param raise       height under the hand, the seat, both feet or the stepping foot, as the base has it
 * @param heelWedge   height under the heel of {@code wedgeFoot}
 * @param stance      front heel to rear toe, signed metres (negative: rear toe ahead of front heel); NaN where none
 * @param stanceWidth between the feet, m; NaN where none
 * @param loadHand    the hand with the weight; empty for none, both or each
 * @param bothHands   one weight in both hands
 * @param eachHand    a weight in each hand
 * @param pulley      height of the pulley, and its distance in m; NaN without
 * @param count       weights of this size to fetch
 */
public record SetUp(Optional<Side> workingLeg, Optional<Side> workingArm, Optional<Side> frontFoot, Length frontRaise,
                    Length rearRaise, Length raise, Length heelWedge, Optional<Side> wedgeFoot, double stance,
                    double stanceWidth, Optional<Side> loadHand, boolean bothHands, boolean eachHand, boolean hipShift,
                    Support handSupport, Length pulley, double pulleyDistance, Implement implement, int count) {
    public enum Support { NONE, CHAIR, WALL, RAIL }
}
