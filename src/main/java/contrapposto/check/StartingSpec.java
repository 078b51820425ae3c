package contrapposto.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The commented spec from which a new one is begun; it checks without a notice. */
public final class StartingSpec {
    private static final String RESOURCE = "/contrapposto/starting-spec.yaml";

    private StartingSpec() { }

    public static String text() {
        try (var in = StartingSpec.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("The class path lacks (" + RESOURCE + ").");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
