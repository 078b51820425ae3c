package contrapposto.notice;

/**
 * A place in an input file.
 *
 * @param file   the file as the user named it
 * @param line   from 1; 0 when the whole file is meant
 * @param column from 1, counted in characters; 0 when the whole file is meant
 * @param length characters to underline, at least 1
 * @param source the text of that line, or the empty string
 */
public record Span(String file, int line, int column, int length, String source) {
    /** The whole of {@code file}. */
    public static Span whole(String file) {
        return new Span(file, 0, 0, 1, "");
    }
}
