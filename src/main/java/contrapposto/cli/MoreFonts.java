package contrapposto.cli;

import contrapposto.notice.Outcome;
import contrapposto.typeset.Typesetter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import picocli.CommandLine.Option;

/** The fonts a command is given for characters that the program's own face lacks. */
final class MoreFonts {
    @Option(names = "--font", paramLabel = "FILE", description = "Look in this TrueType font for characters that ours lacks; may be given more than once.")
    private List<Path> files = List.of();

    List<Path> files(Streams streams) {
        return files.stream().map(streams::path).toList();
    }

    /** Refused with a notice for each font that is not there, cannot be read or may not be embedded. */
    Outcome<Typesetter> typesetter(Streams streams) {
        Outcome<LinkedHashMap<String, byte[]>> read = Outcome.done(new LinkedHashMap<>());
        for (Path file : files) {
            read = read.then(before -> House.bytes(file, streams.path(file)).map(bytes -> {
                var more = new LinkedHashMap<>(before);
                more.put(file.toString(), bytes);
                return more;
            }));
        }
        return read.then(Typesetter::with);
    }
}
