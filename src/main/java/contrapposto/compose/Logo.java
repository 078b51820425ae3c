package contrapposto.compose;

import contrapposto.figure.Drawing;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/**
 * A practice's logo, {@code logo.svg} or {@code logo.png} in its templates: read once, however many handouts it goes on.
 *
 * @param drawing  or what is wrong with the file
 * @param identity the file itself, as text: other bytes make another document
 */
record Logo(Outcome<Drawing> drawing, String identity) {
    /** Its key among the drawings. */
    static final String KEY = "logo";
    /** Far above what a logo needs, far below what a machine minds, bytes. */
    static final long MOST_BYTES = 2_000_000;

    private static final String VECTOR = "logo.svg";
    private static final String DOTS = "logo.png";

    /** The logo in {@code folder}, if there is one. @throws IOException if it is there and cannot be read */
    static Optional<Logo> in(Path folder) throws IOException {
        var vector = folder.resolve(VECTOR);
        var dots = folder.resolve(DOTS);
        boolean drawn = Files.isRegularFile(vector);
        boolean dotted = Files.isRegularFile(dots);
        if (drawn && dotted) {
            return Optional.of(refused(VECTOR, "the folder holds both `" + VECTOR + "` and `" + DOTS + "`", "keep one of them; the vector prints sharp at every size"));
        }
        return drawn ? Optional.of(of(vector)) : dotted ? Optional.of(of(dots)) : Optional.empty();
    }

    private static Logo of(Path file) throws IOException {
        var name = file.getFileName().toString();
        if (Files.size(file) > MOST_BYTES) {
            return refused(name, "the logo has " + Files.size(file) + " bytes, but the limit is " + MOST_BYTES, "save it smaller: 800 dots across are enough for any print");
        }
        var bytes = Files.readAllBytes(file);
        if (name.equals(DOTS)) {
            return new Logo(LogoDots.read("templates/" + name, bytes).map(Drawing::remembered), Base64.getEncoder().encodeToString(bytes));
        }
        var svg = new String(bytes, StandardCharsets.UTF_8);
        return new Logo(LogoReader.read("templates/" + name, svg).map(Drawing::remembered), svg);
    }

    private static Logo refused(String name, String message, String hint) {
        return new Logo(new Outcome.Refused<>(List.of(Notice.error("template-slip", Span.whole("templates/" + name), message, hint))), "");
    }
}
