package contrapposto.assess;

/** What a side has to learn. */
public enum Role {
    /** To shift into and turn toward. */
    LANDING,
    /** To push out of. */
    DRIVE,
    /** No turn found: both sides the same. */
    BOTH;

    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
