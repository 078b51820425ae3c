package contrapposto.cli;

import contrapposto.notice.Notice;
import contrapposto.notice.Span;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Finds where in the user's file a character stands that no font has: typesetting sees a document and knows no file.
 * Notices about characters that come from elsewhere stay as they are.
 */
final class GlyphPlaces {
    private static final String ID = "no-glyph";
    /** {@code clients.csv:3}, a row of a roster. */
    private static final Pattern ROW = Pattern.compile("(.+\\.csv):(\\d+)", Pattern.CASE_INSENSITIVE);

    private GlyphPlaces() { }

    /**
     * @param input as the user named it
     * @param path  where a file lies that is named so
     */
    static List<Notice> located(List<Notice> notices, String input, Function<Path, Path> path) {
        return notices.stream().map(notice -> notice.id().equals(ID) && notice.span().line() == 0 && !notice.span().source().isEmpty()
                ? place(notice.span().source().codePointAt(0), input, path).map(span -> new Notice(notice.severity(), ID, span, notice.message(),
                notice.hints())).orElse(notice) : notice).toList();
    }

    private static Optional<Span> place(int character, String input, Function<Path, Path> path) {
        var row = ROW.matcher(input);
        String file = row.matches() ? row.group(1) : input;
        var lines = lines(path.apply(Path.of(file)));
        var places = row.matches() ? IntStream.of(Integer.parseInt(row.group(2))).filter(line -> line <= lines.size()) : IntStream.rangeClosed(1, lines.size());
        return places.mapToObj(line -> inLine(character, file, line, lines.get(line - 1))).flatMap(Optional::stream).findFirst();
    }

    /** Columns count characters; a letter that is written as letter and mark is found where its letter stands. */
    private static Optional<Span> inLine(int character, String file, int line, String text) {
        int at = text.indexOf(character);
        for (int end = 1; at < 0 && end <= text.length(); end++) {
            at = Normalizer.normalize(text.substring(0, end), Normalizer.Form.NFC).indexOf(character) < 0 ? -1 : Math.max(0, end - 2);
        }
        return at < 0 ? Optional.empty() : Optional.of(new Span(file, line, text.codePointCount(0, at) + 1, 1, text));
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8).lines().toList();
        } catch (IOException gone) {
            return List.of();
        }
    }
}
