package contrapposto.cli;

import contrapposto.catalogue.Catalogue;
import contrapposto.check.CheckedSpec;
import contrapposto.check.Checks;
import contrapposto.check.Roster;
import contrapposto.notice.Outcome;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The specs a command is given: files, all specs of folders, the rows of rosters. */
final class Inputs {
    /** Lies among the demo specs, but is none. */
    private static final String HOUSE_RULES = "house-rules.yaml";

    private Inputs() { }

    /**
     * One spec.
     *
     * @param name  as the user named it
     * @param there whether there was a file to read
     */
    record Input(String name, boolean there, Outcome<CheckedSpec> spec) { }

    /** All specs, read and checked, in the order given; those of a folder by name. */
    static List<Input> read(List<Path> given, Streams streams, Catalogue catalogue) {
        return given.stream().flatMap(path -> files(path, streams)).flatMap(path -> inputs(path, streams, catalogue)).toList();
    }

    private static Stream<Path> files(Path given, Streams streams) {
        Path place = streams.path(given);
        if (!Files.isDirectory(place)) {
            return Stream.of(given);
        }
        try (var found = Files.list(place)) {
            return found.map(f -> f.getFileName().toString()).filter(Inputs::isSpec).sorted().toList().stream().map(given::resolve);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isSpec(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return (lower.endsWith(".yaml") || lower.endsWith(".yml")) && !lower.equals(HOUSE_RULES) && !lower.startsWith(".");
    }

    private static Stream<Input> inputs(Path given, Streams streams, Catalogue catalogue) {
        return given.toString().toLowerCase(Locale.ROOT).endsWith(".csv") ? roster(given, streams, catalogue)
                : Stream.of(input(given, streams, catalogue));
    }

    /** One input a row; specs that a roster names lie relative to it. */
    private static Stream<Input> roster(Path given, Streams streams, Catalogue catalogue) {
        Path place = streams.path(given);
        var rows = House.bytes(given, place).then(csv -> Roster.read(given.toString(), csv, name -> sibling(place, name), catalogue));
        return switch (rows) {
            case Outcome.Refused<List<Roster.Row>>(var notices) -> Stream.of(new Input(given.toString(), Files.isRegularFile(place), new Outcome.Refused<>(notices)));
            case Outcome.Done<List<Roster.Row>>(var found, var notices) ->
                    found.stream().map(row -> new Input(given + ":" + row.line(), true, row.outcome()));
        };
    }

    private static Optional<byte[]> sibling(Path roster, String name) {
        try {
            return Optional.of(Files.readAllBytes(roster.resolveSibling(name)));
        } catch (IOException | InvalidPathException e) {
            return Optional.empty();
        }
    }

    private static Input input(Path given, Streams streams, Catalogue catalogue) {
        String name = given.toString();
        var bytes = House.bytes(given, streams.path(given));
        return new Input(name, bytes instanceof Outcome.Done<byte[]>, bytes.then(read -> Checks.check(name, read, catalogue)));
    }
}
