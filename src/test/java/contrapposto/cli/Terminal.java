package contrapposto.cli;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Command lines run in process, in a folder; what the last one said. */
final class Terminal {
    private final Path here;
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    Terminal(Path here) {
        this.here = here;
    }

    /** Runs one command line; its exit code. */
    int run(String... args) {
        return answering("", args);
    }

    /** Runs one command line in front of a person who types {@code answers}. */
    int answering(String answers, String... args) {
        out.reset();
        err.reset();
        return new Console(streams(answers)).run(args);
    }

    /** Streams whose words this terminal keeps, until the next run; a person watches if there are answers. */
    Streams streams(String answers) {
        return new Streams(new BufferedReader(new StringReader(answers)), new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8), here, !answers.isEmpty());
    }

    String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    String err() {
        return err.toString(StandardCharsets.UTF_8);
    }
}
