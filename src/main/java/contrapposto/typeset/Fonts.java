package contrapposto.typeset;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** The two weights in use. Read once. */
record Fonts(Face regular, Face bold) {
    private static final String FOLDER = "/com/formdev/flatlaf/fonts/roboto/";

    /** Roboto, from its artifact on the class path. */
    static Fonts roboto() {
        return new Fonts(face("Roboto-Regular.ttf", 'R'), face("Roboto-Bold.ttf", 'B'));
    }

    /** The same with fonts that show what Roboto cannot, in both weights as they are. */
    Fonts with(List<Face.Cut> more) {
        return new Fonts(regular.with(more), bold.with(more));
    }

    private static Face face(String file, char letter) {
        try (InputStream in = Fonts.class.getResourceAsStream(FOLDER + file)) {
            return new Face(List.of(Face.Cut.of(file, Optional.ofNullable(in).orElseThrow(
                    () -> new IllegalStateException("The font " + file + " is not on the class path.")).readAllBytes(), letter)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Face of(boolean bold) {
        return bold ? this.bold : regular;
    }

    /** The characters of {@code text} that cannot be printed, in their own order. */
    TreeSet<Integer> missing(String text) {
        var missing = new TreeSet<Integer>();
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            if (!(regular.has(c) && bold.has(c) && Letters.standsAlone(c))) {
                missing.add(c);
            }
            i += Character.charCount(c);
        }
        return missing;
    }
}
