package contrapposto.sketch;

import contrapposto.quantity.Side;

/** What a painted part is of. */
enum Piece {
    TRUNK, NECK, HEAD,
    LEFT_THIGH, LEFT_SHANK, LEFT_UPPER_ARM, LEFT_FOREARM,
    RIGHT_THIGH, RIGHT_SHANK, RIGHT_UPPER_ARM, RIGHT_FOREARM,
    /** Something that is not of the body. */
    THING;

    enum Limb { THIGH, SHANK, UPPER_ARM, FOREARM }

    static Piece of(Side side, Limb limb) {
        return values()[limb.ordinal() + (side == Side.LEFT ? LEFT_THIGH : RIGHT_THIGH).ordinal()];
    }

    /** Whether both belong to the same arm or the same leg. */
    boolean sameLimbAs(Piece other) {
        return limbNumber() >= 0 && limbNumber() == other.limbNumber();
    }

    private int limbNumber() {
        return this == THING || ordinal() < LEFT_THIGH.ordinal() ? -1 : (ordinal() - LEFT_THIGH.ordinal()) / 2;
    }

    boolean isThigh() {
        return this == LEFT_THIGH || this == RIGHT_THIGH;
    }
}
