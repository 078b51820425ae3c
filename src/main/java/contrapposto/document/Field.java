package contrapposto.document;

/**
 * A box to fill by pen or on screen.
 *
 * @param name unique, words joined by {@code /}, without a period
 * @param tip  what a screen reader says
 */
public record Field(String name, String tip, Kind kind) {
    public enum Kind { TEXT, MULTILINE, CHECK }
}
