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

    /** The same but for the distance between the feet. */
    public SetUp withStance(double metres) {
        return new SetUp(workingLeg, workingArm, frontFoot, frontRaise, rearRaise, raise, heelWedge, wedgeFoot, metres,
                stanceWidth, loadHand, bothHands, eachHand, hipShift, handSupport, pulley, pulleyDistance, implement,
                count);
    }

    /** The same with the pulley at {@code height}, {@code distance} metres away. */
    public SetUp withPulley(Length height, double distance) {
        return new SetUp(workingLeg, workingArm, frontFoot, frontRaise, rearRaise, raise, heelWedge, wedgeFoot, stance,
                stanceWidth, loadHand, bothHands, eachHand, hipShift, handSupport, height, distance, implement, count);
    }

    /** Things to fetch before the first set: what is raised, wedged, held and held on to. */
    public int things() {
        int things = 0;
        for (var height : new Length[] {frontRaise, rearRaise, raise, heelWedge}) {
            things += height.metres() > 0 ? 1 : 0;
        }
        return things + (handSupport == Support.NONE ? 0 : 1) + count;
    }

    /** The same for the other side of the body. */
    public SetUp mirrored() {
        return new SetUp(workingLeg.map(Side::other), workingArm.map(Side::other), frontFoot.map(Side::other), frontRaise,
                rearRaise, raise, heelWedge, wedgeFoot.map(Side::other), stance, stanceWidth, loadHand.map(Side::other),
                bothHands, eachHand, hipShift, handSupport, pulley, pulleyDistance, implement, count);
    }
}
