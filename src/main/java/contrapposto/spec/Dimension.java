package contrapposto.spec;

/** What a number with a unit measures; values are kept in the unit named. */
public enum Dimension {
    /** Metres. */
    LENGTH("a length"),
    /** Kilograms. */
    MASS("a mass"),
    /** Degrees. */
    ANGLE("an angle"),
    /** Seconds. */
    TIME("a time");

    private final String called;

    Dimension(String called) {
        this.called = called;
    }

    /** With its article. */
    public String called() {
        return called;
    }
}
