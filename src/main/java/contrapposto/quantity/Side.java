package contrapposto.quantity;

/** A side of the client's own body, never of the page. */
public enum Side {
    LEFT, RIGHT;

    /** The other side. */
    public Side other() {
        return this == LEFT ? RIGHT : LEFT;
    }

    /** +1 for left, -1 for right: the sign of the y axis, which points to the person's left. */
    public int sign() {
        return this == LEFT ? 1 : -1;
    }

    /** The lower-case word used in specs, plans and joint names: {@code left} or {@code right}. */
    public String word() {
        return this == LEFT ? "left" : "right";
    }
}
