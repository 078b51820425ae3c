package contrapposto.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What keeps a handout private: whether it carries its plan, and the password that opens it. A password is never an argument, and never printed. */
final class Secrecy {
    /** Shorter ones are guessed in no time: house. */
    private static final int SHORTEST = 8;
    private static final String VARIABLE = "env:";
    private static final String ASK = "ask";

    @Option(names = "--no-attachment", description = "Do not put the solved plan into the PDF as an attached file.")
    private boolean bare;

    @Option(names = "--protect", paramLabel = "SOURCE", description = "Ask for a password to open the PDFs (AES-256); it is the first line of the file SOURCE, "
            + "the variable NAME with env:NAME, or typed with ask. The PDFs are then no longer PDF/A.")
    private Optional<String> source = Optional.empty();

    boolean attach() {
        return !bare;
    }

    boolean protects() {
        return source.isPresent();
    }

    /** The password; empty when none is wanted. @throws Console.Usage if it cannot be had or is too short */
    Optional<String> password(Streams streams) {
        return source.map(from -> {
            String password = from.startsWith(VARIABLE) ? ofVariable(from) : from.equals(ASK) ? typed() : ofFile(from, streams);
            if (password.length() < SHORTEST) {
                throw new Console.Usage("the password of `--protect " + from + "` has fewer than " + SHORTEST + " characters; take a longer one");
            }
            streams.err().println("PDFs are encrypted with AES-256; archival conformance (PDF/A) is given up for that. "
                    + "Plan files and HTML pages are not encrypted: keep them apart.");
            return password;
        });
    }

    private static String ofVariable(String from) {
        return Optional.ofNullable(System.getenv(from.substring(VARIABLE.length()))).orElseThrow(() -> new Console.Usage("`--protect " + from
                + "`: there is no such variable; set it, or name a file"));
    }

    private static String typed() {
        return Optional.ofNullable(System.console()).map(console -> new String(console.readPassword("Password for the PDFs: ")))
                .orElseThrow(() -> new Console.Usage("`--protect ask` needs a terminal; name a file or a variable with env:NAME"));
    }

    private static String ofFile(String from, Streams streams) {
        try {
            return Files.readString(streams.path(Path.of(from)), StandardCharsets.UTF_8).lines().findFirst().orElse("").strip();
        } catch (IOException e) {
            throw new Console.Usage("`--protect " + from + "` cannot be read; name a file whose first line is the password, env:NAME or ask");
        }
    }
}
