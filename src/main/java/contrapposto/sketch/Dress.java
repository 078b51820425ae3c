package contrapposto.sketch;

import contrapposto.quantity.Side;

/**
 * How side is told by shade. In a scene that was mirrored to face right, the limbs named right are truly left ones.
 *
 * @param dark the side, as the scene names it, that wears the dark shoe and the wrist band: truly the right
 */
record Dress(Side dark) {
    double shoe(Side side) {
        return side == dark ? Tones.DARK_SHOE : Tones.LIGHT_SHOE;
    }

    double sole(Side side) {
        return side == dark ? Tones.DARK_SHOE_SOLE : Tones.LIGHT_SHOE_SOLE;
    }

    boolean band(Side side) {
        return side == dark;
    }

    /** The person's own side of what the scene calls {@code side}. */
    Side truly(Side side) {
        return dark == Side.RIGHT ? side : side.other();
    }
}
