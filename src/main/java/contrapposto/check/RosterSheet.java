package contrapposto.check;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The cells of a CSV file with their places. Comma-separated, quoted by {@code "}, UTF-8 (RFC 4180); blank lines do not
 * count.
 *
 * @param lines the first is the header; never empty
 */
record RosterSheet(List<List<Cell>> lines) {
    /** @param text without its quotes and without spaces around it; line ends are line feeds */
    record Cell(Span span, String text) { }

    static Outcome<RosterSheet> read(String file, byte[] bytes) {
        try {
            var decoded = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return read(file, decoded.startsWith("\uFEFF") ? decoded.substring(1) : decoded);
        } catch (CharacterCodingException notUtf8) {
            return refused(Notice.error("roster-not-utf-8", Span.whole(file), "the roster is not UTF-8 text",
                    "export it as CSV in UTF-8"));
        }
    }

    private static Outcome<RosterSheet> read(String file, String text) {
        var lines = new ArrayList<List<Cell>>();
        try (var parser = CSVParser.parse(text, CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get())) {
            for (var record : parser) {
                lines.add(cells(file, text, record));
            }
        } catch (IOException | UncheckedIOException e) {
            int line = lines.isEmpty() ? 1 : lines.getLast().getFirst().span().line() + 1;
            return refused(Notice.error("roster-syntax", new Span(file, line, 1, 1, ""),
                    "this line is not valid CSV", "close each quote; write a quote inside a cell twice"));
        }
        return lines.isEmpty() ? refused(Notice.error("roster-empty", Span.whole(file), "the roster holds nothing to read",
                "begin with a header line: `spec,client.name,client.height`")) : Outcome.done(new RosterSheet(lines));
    }

    private static Outcome<RosterSheet> refused(Notice notice) {
        return new Outcome.Refused<>(List.of(notice));
    }

    /** The parser gives values, not places: those are found by walking over the record's text. */
    private static List<Cell> cells(String file, String text, CSVRecord record) {
        var cells = new ArrayList<Cell>();
        int at = afterBlankLines(text, (int) record.getCharacterPosition());
        for (var value : record) {
            int end = end(text, at);
            cells.add(new Cell(span(file, text, at, Math.max(1, end - at)), value.strip().replace("\r\n", "\n")));
            at = end + 1;
        }
        return List.copyOf(cells);
    }

    private static int afterBlankLines(String text, int at) {
        int i = at;
        while (i < text.length() && (text.charAt(i) == '\n' || text.charAt(i) == '\r')) {
            i++;
        }
        return i;
    }

    /** Where the cell that begins at {@code at} ends: at a comma or line end outside quotes. */
    private static int end(String text, int at) {
        boolean quoted = false;
        int i = at;
        for (; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && (c == ',' || c == '\n' || c == '\r')) {
                break;
            }
        }
        return i;
    }

    private static Span span(String file, String text, int at, int length) {
        int line = (int) text.substring(0, at).chars().filter(c -> c == '\n').count();
        int begin = text.lastIndexOf('\n', at - 1) + 1;
        int end = text.indexOf('\n', at);
        var source = text.substring(begin, end < 0 ? text.length() : end).replace("\r", "");
        return new Span(file, line + 1, text.codePointCount(begin, at) + 1, length, source);
    }
}
