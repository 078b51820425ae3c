package contrapposto.deliver;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What one run did, spec by spec: {@code manifest.json}. Only {@code seconds} differs between runs over the same specs. */
public record Manifest(List<Entry> entries) {
    public Manifest {
        entries = List.copyOf(entries);
    }

    /** How one spec ended. */
    public enum Result {
        DONE, WITHHELD, FAILED;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** @param spec the file as the user named it */
    public record Entry(String spec, Result result, List<FileFact> files, double seconds) { }

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

    /** The JSON text. */
    public String text() {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("format", 1);
        tree.put("specs", entries.stream().map(Manifest::tree).toList());
        return Json.of(tree);
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
        tree.put("pages", entry.files().stream().mapToInt(FileFact::pages).sum());
        tree.put("seconds", entry.seconds());
        return tree;
    }

    /** Writes {@code manifest.json} into {@code root}, whole or not at all. */
    public Outcome<Path> write(Path root) {
        Path place = root.resolve("manifest.json");
        try {
            Files.createDirectories(root);
            if (Files.isSymbolicLink(place)) {
                return refused(place, "is a link to somewhere else");
            }
            Path draft = root.resolve(".manifest.json.part");
            Files.write(draft, text().getBytes(StandardCharsets.UTF_8));
            Files.move(draft, place, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            return Outcome.done(place);
        } catch (IOException e) {
            return refused(place, "cannot be written: " + e.getClass().getSimpleName());
        }
    }

    private static Outcome<Path> refused(Path place, String what) {
        return new Outcome.Refused<>(List.of(Notice.error("cannot-write", Span.whole(place.toString()), "`manifest.json` " + what,
                "choose another folder with `-o`")));
    }
}
