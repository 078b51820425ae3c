package contrapposto.cli;

import contrapposto.check.Pack;
import contrapposto.deliver.Ledger;
import contrapposto.notice.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The specs in a folder and in the folders inside it, by name, files before folders. Left out are hidden ones, links to
 * other folders, folders that a run has written into, and a folder inside that holds a pack: what lies there is the
 * pack's, which is built when it is named.
 */
final class SpecFolder {
    /** Files that may lie among specs, but are none. */
    private static final Set<String> OTHERS = Set.of("house-rules.yaml", "mail.yaml");

    private final Streams streams;
    private final List<Path> found = new ArrayList<>();

    private SpecFolder(Streams streams) {
        this.streams = streams;
    }

    /** The files, as the user would name them; a folder that cannot be looked into stands for itself. */
    static List<Path> files(Path given, Streams streams) {
        var folder = new SpecFolder(streams);
        folder.read(given);
        return List.copyOf(folder.found);
    }

    private void read(Path given) {
        try (var inside = Files.list(streams.path(given))) {
            var names = inside.map(p -> p.getFileName().toString()).filter(name -> !name.startsWith(".")).sorted().toList();
            names.stream().filter(SpecFolder::isSpec).map(given::resolve).filter(file -> !Files.isDirectory(streams.path(file))).forEach(found::add);
            names.stream().map(given::resolve).filter(this::isOpen).forEach(this::read);
        } catch (IOException e) {
            found.add(given);
        }
    }

    private static boolean isSpec(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return (lower.endsWith(".yaml") || lower.endsWith(".yml")) && !OTHERS.contains(lower);
    }

    private boolean isOpen(Path given) {
        Path folder = streams.path(given);
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS) || Ledger.isThere(folder)) {
            return false;
        }
        var pack = pack(given);
        pack.stream().limit(1).forEach(file -> streams.err().println(given + ": left out, for it holds a pack; build it by its name, `" + file + "`"));
        return pack.isEmpty();
    }

    private List<Path> pack(Path given) {
        try (var inside = Files.list(streams.path(given))) {
            return inside.map(p -> p.getFileName().toString()).filter(SpecFolder::isSpec).sorted().map(given::resolve)
                    .filter(file -> House.bytes(file, streams.path(file)) instanceof Outcome.Done<byte[]>(var bytes, var none) && Pack.is(bytes)).toList();
        } catch (IOException e) {
            return List.of();
        }
    }
}
