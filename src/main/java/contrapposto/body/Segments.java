package contrapposto.body;

/**
 * Segment lengths in metres and the joint spacing of one person.
 *
 * @param thigh        hip to knee
 * @param shank        knee to ankle
 * @param ankleHeight  ankle above the sole
 * @param foot         heel to toe
 * @param heelToAnkle  ankle ahead of the heel, along the sole
 * @param heelToBall   ball of the foot ahead of the heel, along the sole
 * @param trunk        pelvis (midpoint of hips) to neck (midpoint of shoulders)
 * @param neckHead     neck to the top of the head
 * @param upperArm     shoulder to elbow
 * @param forearm      elbow to wrist
 * @param hand         wrist to fingertip
 * @param hipSpacing   between the hip joints
 * @param shoulderSpacing between the shoulder joints
 */
public record Segments(double thigh, double shank, double ankleHeight, double foot, double heelToAnkle,
                       double heelToBall, double trunk, double neckHead, double upperArm, double forearm, double hand,
                       double hipSpacing, double shoulderSpacing) { }
