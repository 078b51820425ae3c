package contrapposto.deliver;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What one run did, spec by spec: {@code manifest.json}. Entries are written as they come and not kept; the file stands in
 * its place when the run is done, whole or not at all. Only {@code seconds} differs between runs over the same specs.
 */
public final class Manifest implements AutoCloseable {
    private static final String NAME = "manifest.json";

    private final Path draft;
    private final Path place;
    private final Writer out;
    private boolean any;
    private Optional<IOException> broken = Optional.empty();

    private Manifest(Path draft, Path place, Writer out) {
        this.draft = draft;
        this.place = place;
        this.out = out;
    }

    /** How one spec ended. */
    public enum Result {
        DONE, WITHHELD, FAILED;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        static Optional<Result> of(String word) {
            return Arrays.stream(values()).filter(result -> result.word().equals(word)).findFirst();
        }
    }

    /**
     * @param spec     the file as the user named it
     * @param problems of a spec that failed, each with its place
     */
    public record Entry(String spec, Result result, List<FileFact> files, List<String> problems, double seconds) {
        public Entry {
            files = List.copyOf(files);
            problems = List.copyOf(problems);
        }
    }

    /** @param path relative to the run's folder; {@code pages} 0 for what has none */
    public record FileFact(String path, String sha256, int pages) {
        public static FileFact of(String path, byte[] bytes, int pages) {
            try {
                return new FileFact(path, HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)), pages);
            } catch (NoSuchAlgorithmException e) {
                throw new IllegalStateException("Every Java has SHA-256.", e);
            }
        }
    }

    /** Begins the manifest of a run into {@code root}. */
    public static Outcome<Manifest> begin(Path root) {
        Path place = root.resolve(NAME);
        try {
            Files.createDirectories(root);
            if (Files.isSymbolicLink(place)) {
                return refused(place, "is a link to somewhere else");
            }
            Path draft = root.resolve("." + NAME + ".part");
            Files.deleteIfExists(draft);
            var out = Files.newBufferedWriter(draft, StandardCharsets.UTF_8);
            out.write("{\n  \"format\": 1,\n  \"specs\": [");
            return Outcome.done(new Manifest(draft, place, out));
        } catch (IOException e) {
            return refused(place, "cannot be written: " + e.getClass().getSimpleName());
        }
    }

    /** Adds what became of the next spec. When the disk is full the run goes on, and {@link #finish} says so. */
    public void add(Entry entry) {
        if (broken.isPresent()) {
            return;
        }
        try {
            out.write((any ? "," : "") + "\n    " + Json.at(tree(entry), 2));
            any = true;
        } catch (IOException e) {
            broken = Optional.of(e);
        }
    }

    private static Map<String, Object> tree(Entry entry) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("spec", entry.spec());
        tree.put("outcome", entry.result().word());
        tree.put("files", entry.files().stream().map(file -> {
            var fact = new LinkedHashMap<String, Object>();
            fact.put("path", file.path());
            fact.put("sha256", file.sha256());
            if (file.pages() > 0) {
                fact.put("pages", file.pages());
            }
            return fact;
        }).toList());
        if (!entry.problems().isEmpty()) {
            tree.put("problems", entry.problems());
        }
        tree.put("pages", entry.files().stream().mapToInt(FileFact::pages).sum());
        tree.put("seconds", entry.seconds());
        return tree;
    }

    /** Puts {@code manifest.json} in its place. */
    public Outcome<Path> finish() {
        if (broken.isPresent()) {
            return refused(place, "cannot be written: " + broken.get().getClass().getSimpleName() + " " + broken.get().getMessage());
        }
        try {
            out.write((any ? "\n  " : "") + "]\n}\n");
            out.close();
            Files.move(draft, place, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            return Outcome.done(place);
        } catch (IOException e) {
            return refused(place, "cannot be written: " + e.getClass().getSimpleName());
        }
    }

    /** Leaves no draft behind. */
    @Override
    public void close() {
        try {
            out.close();
            Files.deleteIfExists(draft);
        } catch (IOException e) {
            return;      // the notice about the folder says more than this would
        }
    }

    private static <T> Outcome<T> refused(Path place, String what) {
        return new Outcome.Refused<>(List.of(Notice.error("cannot-write", Span.whole(place.toString()), "`" + NAME + "` " + what,
                "check that the folder may be written and has room, or choose another with `-o`")));
    }
}
