package contrapposto.cli;

import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.HouseRules;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/** The catalogue and the house rules a command works with: ours, or a practice's own over them. */
final class House {
    private static final int MOST_BYTES = 40_000_000;

    @Option(names = "--catalogue", paramLabel = "DIR", description = "Lay the exercise families of this folder over ours.")
    private Optional<Path> catalogue = Optional.empty();

    @Option(names = "--rules", paramLabel = "FILE", description = "Use these house rules in place of ours.")
    private Optional<Path> rules = Optional.empty();

    /** Refused with every problem of the files named. */
    Outcome<Catalogue> open(Streams streams) {
        return rules(streams).then(read -> catalogue.map(folder -> overlay(folder, streams.path(folder), read))
                .orElseGet(() -> Outcome.done(CatalogueReader.house(read))));
    }

    /** The files and folders of the practice that are in use. */
    List<Path> own(Streams streams) {
        return Stream.of(catalogue, rules).flatMap(Optional::stream).map(streams::path).toList();
    }

    private Outcome<HouseRules> rules(Streams streams) {
        return rules.map(file -> bytes(file, streams.path(file)).then(bytes -> HouseRulesReader.read(file.toString(), bytes)))
                .orElseGet(() -> Outcome.done(HouseRulesReader.house()));
    }

    private static Outcome<Catalogue> overlay(Path given, Path folder, HouseRules rules) {
        return Files.isDirectory(folder) ? CatalogueReader.withFolder(folder, rules) : unreadable(given, "is no folder");
    }

    /** The bytes of a file; refused with one notice when it cannot be read, or is larger than any file of its kind has a reason to be. */
    static Outcome<byte[]> bytes(Path given, Path file) {
        return bytes(given, file, MOST_BYTES);
    }

    /** The bytes of a file of at most so many; a larger one is not read at all. */
    static Outcome<byte[]> bytes(Path given, Path file, int most) {
        try {
            if (!Files.isRegularFile(file)) {
                return unreadable(given, Files.isDirectory(file) ? "is a folder that cannot be looked into" : Files.exists(file) ? "is no file" : "is not there");
            }
            return Files.size(file) <= most ? Outcome.done(Files.readAllBytes(file)) : new Outcome.Refused<>(List.of(Notice.error("cannot-read", Span.whole(given.toString()),
                    "`" + given + "` has " + Files.size(file) + " bytes, but the limit is " + most, "see whether it is the file you mean; make two of a long roster")));
        } catch (IOException e) {
            return unreadable(given, "cannot be read");
        }
    }

    private static <T> Outcome<T> unreadable(Path given, String what) {
        return new Outcome.Refused<>(List.of(Notice.error("cannot-read", Span.whole(given.toString()), "`" + given + "` " + what,
                "check the path; it starts from the folder you are in")));
    }
}
