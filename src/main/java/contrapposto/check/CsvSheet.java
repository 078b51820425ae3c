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
import java.util.Iterator;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The cells of a CSV file with their places, line by line and never all at once. Comma-separated, quoted by {@code "},
 * UTF-8 (RFC 4180); blank lines do not count.
 */
public final class CsvSheet {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get();

    private final String file;
    private final String text;

    private final int count;

    private CsvSheet(String file, String text, int count) {
        this.file = file;
        this.text = text;
        this.count = count;
    }

    /** How many lines, the header among them. */
    public int count() {
        return count;
    }

    /** @param text without its quotes and without spaces around it; line ends are line feeds */
    public record Cell(Span span, String text) { }

    /** A sheet whose every line is CSV; it has at least one. {@code begin} is a header to begin with, for the hint of an empty one. */
    public static Outcome<CsvSheet> read(String file, byte[] bytes, String begin) {
        try {
            var decoded = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return text(file, decoded.startsWith("\uFEFF") ? decoded.substring(1) : decoded, begin);
        } catch (CharacterCodingException notUtf8) {
            return refused(Notice.error("csv-not-utf-8", Span.whole(file), "the file is not UTF-8 text",
                    "export it as CSV in UTF-8"));
        }
    }

    private static Outcome<CsvSheet> text(String file, String text, String begin) {
        var places = new Places(file, text);
        int next = 1;
        int count = 0;
        try (var parser = CSVParser.parse(text, FORMAT)) {
            for (var record : parser) {
                next = places.at(places.afterBlankLines((int) record.getCharacterPosition()), 1).line() + 1;
                count++;
            }
        } catch (IOException | UncheckedIOException e) {
            return refused(Notice.error("csv-syntax", new Span(file, next, 1, 1, ""),
                    "this line is not valid CSV", "close each quote; write a quote inside a cell twice"));
        }
        return count == 0 ? refused(Notice.error("csv-empty", Span.whole(file), "the file holds nothing to read",
                "begin with a header line: `" + begin + "`")) : Outcome.done(new CsvSheet(file, text, count));
    }

    private static Outcome<CsvSheet> refused(Notice notice) {
        return new Outcome.Refused<>(List.of(notice));
    }

    /** The lines from the first on, each read when it is asked for; the first is the header. */
    public Iterator<List<Cell>> lines() {
        var places = new Places(file, text);
        Iterator<CSVRecord> records = records();
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                return records.hasNext();
            }

            @Override
            public List<Cell> next() {
                return cells(places, records.next());
            }
        };
    }

    private Iterator<CSVRecord> records() {
        try {
            return CSVParser.parse(text, FORMAT).iterator();      // holds a text, nothing that must be closed
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The parser gives values, not places: those are found by walking over the record's text. */
    private static List<Cell> cells(Places places, CSVRecord record) {
        var cells = new ArrayList<Cell>();
        int at = places.afterBlankLines((int) record.getCharacterPosition());
        for (var value : record) {
            int end = places.end(at);
            cells.add(new Cell(places.at(at, Math.max(1, end - at)), value.strip().replace("\r\n", "\n")));
            at = Math.min(end + 1, places.end());
        }
        return List.copyOf(cells);
    }

    /** Walks a text from front to back and tells line and column; asking for an earlier place is a bug. */
    private static final class Places {
        private final String file;
        private final String text;
        private int line = 1;
        private int begin;
        private String source = "";

        Places(String file, String text) {
            this.file = file;
            this.text = text;
            this.source = source();
        }

        Span at(int place, int length) {
            for (int feed = text.indexOf('\n', begin); feed >= 0 && feed < place; feed = text.indexOf('\n', begin)) {
                line++;
                begin = feed + 1;
                source = source();
            }
            return new Span(file, line, text.codePointCount(begin, place) + 1, length, source);
        }

        private String source() {
            int end = text.indexOf('\n', begin);
            return text.substring(begin, end < 0 ? text.length() : end).replace("\r", "");
        }

        int end() {
            return text.length();
        }

        int afterBlankLines(int at) {
            int i = at;
            while (i < text.length() && (text.charAt(i) == '\n' || text.charAt(i) == '\r')) {
                i++;
            }
            return i;
        }

        /** Where the cell that begins at {@code at} ends: at a comma or line end outside quotes, which enclose a whole cell or are plain text. */
        int end(int at) {
            boolean enclosed = at < text.length() && text.charAt(at) == '"';
            boolean quoted = false;
            int i = at;
            for (; i < text.length(); i++) {
                char c = text.charAt(i);
                if (enclosed && c == '"') {
                    quoted = !quoted;
                } else if (!quoted && (c == ',' || c == '\n' || c == '\r')) {
                    break;
                }
            }
            return i;
        }
    }
}
