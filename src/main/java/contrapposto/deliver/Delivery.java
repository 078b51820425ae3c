package contrapposto.deliver;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes the files of one client, whole or not at all: each is written beside its place first and moved there when all
 * are written; when one cannot be moved, those before it go back to what they were. What another outcome of the same spec left there is removed, so that no older program lies beside a
 * referral page.
 */
public final class Delivery {
    /** The folder that stands for the root itself. */
    public static final String ROOT = ".";

    private final Path root;

    /** @param root where runs write; made when it is not there */
    public Delivery(Path root) {
        this.root = root;
    }

    /**
     * What goes into one folder.
     *
     * @param folder a name from {@link FileNames}, or {@link #ROOT}
     * @param files  name → bytes, in order
     * @param stale  names that must not stay in the folder
     */
    public record Parcel(String folder, Map<String, byte[]> files, List<String> stale) {
        public Parcel {
            files = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(files));
            stale = List.copyOf(stale);
        }
    }

    /** The paths written, relative to the root, in order; refused with one notice, and nothing changed, when one cannot be written. */
    public Outcome<List<String>> deliver(Parcel parcel) {
        Path folder = root.resolve(parcel.folder());
        if (Files.isSymbolicLink(folder)) {
            return refused(folder, "is a link to somewhere else", "remove the link, or choose another folder with `-o`");
        }
        for (String name : parcel.files().keySet()) {
            Path place = folder.resolve(name);
            if (!Files.isRegularFile(place, LinkOption.NOFOLLOW_LINKS) && Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
                return refused(place, "is not a plain file", "move it away");
            }
        }
        var exchange = new Exchange(folder);
        try {
            Files.createDirectories(folder);
            for (var file : parcel.files().entrySet()) {
                exchange.draft(file.getKey(), file.getValue());
            }
            exchange.swap();
            for (String name : parcel.stale()) {
                Files.deleteIfExists(folder.resolve(name));
            }
        } catch (IOException e) {
            exchange.undo();
            return refused(folder, "cannot be written: " + e.getClass().getSimpleName().replace("Exception", "") + " " + e.getMessage(),
                    "check that the folder exists, may be written and has room, or choose another with `-o`");
        }
        var names = new ArrayList<String>();
        parcel.files().keySet().forEach(name -> names.add(parcel.folder().equals(ROOT) ? name : parcel.folder() + "/" + name));
        return Outcome.done(List.copyOf(names));
    }

    private static Outcome<List<String>> refused(Path place, String what, String hint) {
        return new Outcome.Refused<>(List.of(Notice.error("cannot-write", Span.whole(place.toString()), "`" + place.getFileName() + "` " + what, hint)));
    }
}
