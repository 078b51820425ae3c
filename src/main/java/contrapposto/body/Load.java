package contrapposto.body;

import contrapposto.quantity.Side;

/** An outside load. Masses in kg, lengths in m. */
public sealed interface Load {
    /** Nothing held. */
    record None() implements Load { }

    /** A free weight hanging from, or held in, one hand. */
    record InHand(Side hand, double mass) implements Load { }

    /** {@code mass} in each hand. */
    record InEachHand(double mass) implements Load { }

    /** One weight held by both hands (goblet, or a bar at arm's length): the mass is shared equally. */
    record InBothHands(double mass) implements Load { }

    /** Lies across the hips. */
    record OnHips(double mass) implements Load { }

    /**
     * A cable: force = mass · g ÷ ratio from the hand toward the pulley.
     *
     * @param hand         the hand on the handle
     * @param mass         on the stack
     * @param ratio        pulley ratio, at least 1
     * @param pulleyHeight above the floor
     * @param distance     from the pelvis back (or, if {@code ahead}, forward) to the pulley along x
     * @param across       of the pulley from the midline, + = left
     */
    record Cable(Side hand, double mass, double ratio, double pulleyHeight, double distance, boolean ahead,
                 double across) implements Load { }

    /** A band: its force is not known, so it is drawn but not computed. */
    record Band(Side hand, double anchorHeight, double distance, boolean ahead) implements Load { }

    /** The same in the mirror. */
    default Load mirrored() {
        return switch (this) {
            case InHand(var hand, var mass) -> new InHand(hand.other(), mass);
            case Cable(var hand, var mass, var ratio, var height, var distance, var ahead, var across) ->
                    new Cable(hand.other(), mass, ratio, height, distance, ahead, -across);
            case Band(var hand, var height, var distance, var ahead) -> new Band(hand.other(), height, distance, ahead);
            case None same -> same;
            case InEachHand same -> same;
            case InBothHands same -> same;
            case OnHips same -> same;
        };
    }
}
