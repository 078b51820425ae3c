package contrapposto.cli;

import contrapposto.wording.Phrasebook;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The language a command prints handouts in, if not each client's own. */
final class Spoken {
    @Option(names = "--language", paramLabel = "LANGUAGE", description = "en, es or de (default: as the spec says).")
    private Optional<String> language = Optional.empty();

    /** @throws Console.Usage for a language that is not spoken here */
    Optional<String> language() {
        language.filter(wanted -> !Phrasebook.LANGUAGES.contains(wanted)).ifPresent(wanted -> {
            throw new Console.Usage("`--language " + wanted + "` is not spoken here; give one of " + String.join(", ", Phrasebook.LANGUAGES));
        });
        return language;
    }
}
