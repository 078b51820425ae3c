package contrapposto.cli;

import contrapposto.compose.Templates;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The templates a command works with: ours, or a practice's own over them. */
final class OwnTemplates {
    @Option(names = "--templates", paramLabel = "DIR", description = "Lay the templates of this folder over ours.")
    private Optional<Path> templates = Optional.empty();

    /** @throws Console.Usage if the folder named cannot be read */
    Templates open(Streams streams) {
        if (templates.isEmpty()) {
            return Templates.own();
        }
        try {
            return Templates.over(streams.path(templates.get()));
        } catch (IOException e) {
            throw new Console.Usage("`--templates " + templates.get() + "` is no folder that can be read");
        }
    }

    /** The folder of the practice, if one is in use. */
    List<Path> own(Streams streams) {
        return templates.map(streams::path).stream().toList();
    }
}
