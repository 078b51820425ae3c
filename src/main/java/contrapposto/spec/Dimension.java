package contrapposto.spec;

/** What a number with a unit measures; values are kept in the unit named. */
public enum Dimension {
    /** Metres. */
    LENGTH("length"),
    /** Kilograms. */
    MASS("mass"),
    /** Degrees. */
    ANGLE("angle"),
    /** Seconds. */
    TIME("time");

    private final String word;

    Dimension(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
