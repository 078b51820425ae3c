package contrapposto.cli;

import contrapposto.catalogue.Catalogue;
import contrapposto.check.CheckedSpec;
import contrapposto.check.Checks;
import contrapposto.check.Pack;
import contrapposto.check.Roster;
import contrapposto.notice.Outcome;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The specs a command is given: files, all specs of folders, the rows of rosters, the combinations of packs. Read and
 * checked one by one, as they are asked for, so that any number of them takes no more memory than a few.
 */
final class Inputs implements Iterable<Inputs.Input> {
    /** A hundred thousand rows, more or less. */
    private static final int MOST_ROSTER_BYTES = 16_000_000;
    /** What is larger is not read; what is smaller and still too large the reader of YAML refuses. */
    private static final int MOST_SPEC_BYTES = 4_000_000;

    private final List<Source> sources;

    private Inputs(List<Source> sources) {
        this.sources = sources;
    }

    /**
     * One spec.
     *
     * @param name as the user named it
     */
    record Input(String name, Outcome<CheckedSpec> spec) { }

    /**
     * One file that was named, opened.
     *
     * @param there  whether there was a file to read
     * @param count  how many specs it gives
     * @param pack   what a pack's index page is made of
     */
    private record Source(boolean there, int count, Iterable<Input> inputs, Optional<Packed> pack) {
        static Source of(boolean there, Input one) {
            return new Source(there, 1, List.of(one), Optional.empty());
        }
    }

    /** Everything named, in the order given; what lies in a folder as {@link SpecFolder} finds it. */
    static Inputs of(List<Path> given, Streams streams, Catalogue catalogue) {
        return new Inputs(given.stream().flatMap(path -> Files.isDirectory(streams.path(path)) ? SpecFolder.files(path, streams).stream() : Stream.of(path)).map(path -> source(path, streams, catalogue)).toList());
    }

    /** The first spec that {@code given} holds. */
    static Input one(Path given, Streams streams, Catalogue catalogue) {
        var all = of(List.of(given), streams, catalogue).iterator();
        if (!all.hasNext()) {
            throw new Console.Usage("there is no spec in `" + given + "`");
        }
        return all.next();
    }

    boolean isEmpty() {
        return sources.isEmpty();
    }

    /** Whether there was any file to read. */
    boolean anyThere() {
        return sources.stream().anyMatch(Source::there);
    }

    int size() {
        return sources.stream().mapToInt(Source::count).sum();
    }

    /** The packs among what was named, in order. */
    List<Packed> packs() {
        return sources.stream().flatMap(source -> source.pack().stream()).toList();
    }

    /** A pack and its file as the user named it; its inputs are called {@code file:number}. */
    record Packed(Path file, Pack pack) {
        String inputOf(Pack.Sheet sheet) {
            return file + ":" + sheet.number();
        }
    }

    @Override
    public Iterator<Input> iterator() {
        var left = sources.iterator();
        return new Iterator<>() {
            private Iterator<Input> current = List.<Input>of().iterator();

            @Override
            public boolean hasNext() {
                while (!current.hasNext() && left.hasNext()) {
                    current = left.next().inputs().iterator();
                }
                return current.hasNext();
            }

            @Override
            public Input next() {
                if (!hasNext()) {
                    throw new NoSuchElementException();
                }
                return current.next();
            }
        };
    }

    private static Source source(Path given, Streams streams, Catalogue catalogue) {
        Path place = streams.path(given);
        boolean csv = given.toString().toLowerCase(Locale.ROOT).endsWith(".csv");
        return switch (House.bytes(given, place, csv ? MOST_ROSTER_BYTES : MOST_SPEC_BYTES)) {
            case Outcome.Refused<byte[]>(var notices) -> Source.of(false, new Input(given.toString(), new Outcome.Refused<>(notices)));
            case Outcome.Done<byte[]>(var bytes, var none) when csv -> roster(given, place, bytes, catalogue);
            case Outcome.Done<byte[]>(var bytes, var none) when Pack.is(bytes) -> pack(given, place, bytes, catalogue);
            case Outcome.Done<byte[]>(var bytes, var none) -> new Source(true, 1,
                    () -> List.of(new Input(given.toString(), Checks.check(given.toString(), bytes, catalogue))).iterator(), Optional.empty());
        };
    }

    /** One input a row; specs that a roster names lie relative to it. */
    private static Source roster(Path given, Path place, byte[] csv, Catalogue catalogue) {
        return switch (Roster.open(given.toString(), csv, name -> sibling(place, name), catalogue)) {
            case Outcome.Refused<Roster>(var notices) -> Source.of(true, new Input(given.toString(), new Outcome.Refused<>(notices)));
            case Outcome.Done<Roster>(var roster, var none) -> new Source(true, roster.size(), () -> rows(given, roster.iterator()), Optional.empty());
        };
    }

    private static Iterator<Input> rows(Path given, Iterator<Roster.Row> rows) {
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                return rows.hasNext();
            }

            @Override
            public Input next() {
                var row = rows.next();
                return new Input(given + ":" + row.line(), row.outcome());
            }
        };
    }

    private static Source pack(Path given, Path place, byte[] bytes, Catalogue catalogue) {
        return switch (Pack.open(given.toString(), bytes, name -> sibling(place, name), catalogue)) {
            case Outcome.Refused<Pack>(var notices) -> Source.of(true, new Input(given.toString(), new Outcome.Refused<>(notices)));
            case Outcome.Done<Pack>(var pack, var none) -> {
                var inputs = new ArrayList<Input>();
                var packed = new Packed(given, pack);
                pack.sheets().forEach(sheet -> inputs.add(new Input(packed.inputOf(sheet), sheet.outcome())));
                yield new Source(true, inputs.size(), inputs, Optional.of(packed));
            }
        };
    }

    private static Optional<byte[]> sibling(Path file, String name) {
        try {
            Path named = file.resolveSibling(name);
            return House.bytes(named, named, MOST_SPEC_BYTES) instanceof Outcome.Done<byte[]>(var bytes, var none) ? Optional.of(bytes) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
