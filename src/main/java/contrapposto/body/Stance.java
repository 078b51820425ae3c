package contrapposto.body;

import contrapposto.quantity.Side;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * What a body on its feet is to do in one position: where the feet are, how deep it goes, and between which bounds the
 * solver may choose the rest.
 *
 * @param lead     the leg whose knee sets the depth
 * @param foot     of the lead leg
 * @param other    the second foot on a support; empty while that leg is in the air
 * @param air      the shape of a leg in the air
 * @param tall     whether the pelvis is as high as the straighter knee, bent by {@code KNEE}, lets it be; else the lead
 *                 knee is bent by {@code KNEE}
 * @param fold     height above the floor that the hands are to reach by folding the trunk; empty where the lean is free
 * @param turn     of the ribs against the pelvis, + = left, degrees
 * @param yaw      of the pelvis, + = left, degrees
 * @param bend     of the trunk to the left besides what balance asks for, degrees
 * @param wantedLean the lean the objective pulls toward
 * @param mostKnee the most that a carrying knee bends, degrees, where the legs hold still
 * @param leastLeadShare of the weight that the lead foot carries
 * @param leastShare of the weight that the other foot carries
 * @param alike    whether both feet press at the same share of the foot
 * @param low      lowest value of each variable, by {@link Free}
 * @param high     highest value; a variable whose bounds meet is fixed
 */
record Stance(Side lead, Foot foot, Optional<Foot> other, AirLeg air, boolean tall, OptionalDouble fold, double turn,
              double yaw, double bend, double wantedLean, double mostKnee, double leastLeadShare, double leastShare,
              boolean alike, double[] low, double[] high) {
    /** What the solver may choose. */
    enum Free {
        /** The pelvis along the line from the other foot (0) to the lead foot (1). */
        ALONG,
        /** Trunk lean, degrees. */
        LEAN,
        /** Heel up of a foot on its ball, degrees. */
        PITCH,
        /** Bend of the knee that sets the height, degrees. */
        KNEE,
        /** Where the lead foot presses, share of the foot from its heel. */
        PRESSURE,
        /** Where the other foot presses; of two that press alike it follows {@link #PRESSURE}. */
        OTHER_PRESSURE
    }

    /**
     * A leg in the air, by angles in the side view.
     *
     * @param thigh  forward of straight down, degrees
     * @param knee   bend, degrees
     * @param ankle  bent up (dorsiflexion), degrees
     * @param inLine whether {@code thigh} counts from the line of the trunk instead of from the vertical
     */
    record AirLeg(double thigh, double knee, double ankle, boolean inLine) { }

    /** A point of the foot that does not move while its heel rises: the pelvis is placed from these. */
    static Vector3D reference(Foot foot, Segments lengths) {
        return switch (foot.contact()) {
            case SOLE -> {
                double back = 0.5 * lengths.heelToBall();
                yield foot.anchor().subtract(new Vector3D(back * Degrees.cos(foot.yaw()), back * Degrees.sin(foot.yaw()), 0));
            }
            case BALL, HEEL, LACES -> foot.anchor();
        };
    }
}
