package contrapposto.yaml;

import contrapposto.notice.Span;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.error.Mark;

/**
 * The text of one file and its lines, broken where YAML breaks them. Columns count characters (code points), as YAML's
 * marks do.
 *
 * @param lengths of the lines, in characters
 */
record SourceText(String file, String text, List<String> lines, List<Integer> lengths) {
    private static final Pattern BREAK = Pattern.compile("\r\n|[\n\r\u0085\u2028\u2029]");
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /** The text of {@code bytes}, without a leading byte order mark; empty if they are not UTF-8. */
    static Optional<SourceText> decode(String file, byte[] bytes) {
        try {
            var text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            var body = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
            var lines = List.of(BREAK.split(body, -1));
            return Optional.of(new SourceText(file, body, lines,
                    lines.stream().map(line -> line.codePointCount(0, line.length())).toList()));
        } catch (CharacterCodingException notUtf8) {
            return Optional.empty();
        }
    }

    /** A place by line and column, both from 0, {@code length} characters wide or as far as the line goes. */
    Span span(int line, int column, int length) {
        boolean inside = line < lines.size();
        int left = inside ? lengths.get(line) - column : 0;
        return new Span(file, line + 1, column + 1, Math.max(1, Math.min(length, left)), inside ? lines.get(line) : "");
    }

    Span span(Mark start) {
        return span(start.getLine(), start.getColumn(), 1);
    }

    /** From {@code start} to {@code end}, or to the end of the line where {@code start} stands. */
    Span span(Mark start, Mark end) {
        int length = end.getLine() == start.getLine() ? end.getColumn() - start.getColumn() : Integer.MAX_VALUE;
        return span(start.getLine(), start.getColumn(), length);
    }
}
