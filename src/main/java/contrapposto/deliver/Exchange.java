package contrapposto.deliver;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The files of one folder exchanged for new ones, all or none. New bytes wait beside their place as {@code .NAME.part},
 * what stood there is kept as {@code .NAME.old} until all are in place; at no moment is a file half written.
 */
final class Exchange {
    private final Path folder;
    private final Map<Path, Path> drafts = new LinkedHashMap<>();
    private final Map<Path, Path> kept = new LinkedHashMap<>();
    private final List<Path> placed = new ArrayList<>();

    Exchange(Path folder) {
        this.folder = folder;
    }

    /** Writes the new bytes of {@code name} beside its place. */
    void draft(String name, byte[] bytes) throws IOException {
        Path draft = folder.resolve("." + name + ".part");
        Files.deleteIfExists(draft);
        drafts.put(folder.resolve(name), draft);
        Files.write(draft, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    }

    /** Puts every draft in its place. */
    void swap() throws IOException {
        for (Path place : drafts.keySet()) {
            if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
                Path old = folder.resolve("." + place.getFileName() + ".old");
                Files.deleteIfExists(old);
                kept.put(place, old);
                keep(place, old);
            }
        }
        for (var draft : drafts.entrySet()) {
            Files.move(draft.getValue(), draft.getKey(), StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            placed.add(draft.getKey());
        }
        kept.values().forEach(Exchange::forget);
    }

    /** A second name for what stands there, or a copy where the file system has no second names. */
    private static void keep(Path place, Path old) throws IOException {
        try {
            Files.createLink(old, place);
        } catch (UnsupportedOperationException | IOException noLinks) {
            Files.copy(place, old, StandardCopyOption.REPLACE_EXISTING, LinkOption.NOFOLLOW_LINKS);
        }
    }

    /** Everything back as it was, as far as the disk lets us. */
    void undo() {
        for (Path place : placed) {
            if (kept.containsKey(place)) {
                restore(kept.get(place), place);
            } else {
                forget(place);
            }
        }
        kept.values().forEach(Exchange::forget);
        drafts.values().forEach(Exchange::forget);
    }

    private static void restore(Path old, Path place) {
        try {
            Files.move(old, place, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            return;      // the notice about the folder says more than this would
        }
    }

    private static void forget(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            return;      // as above
        }
    }
}
