package contrapposto.deliver;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What runs have made in one folder, client by client: {@code .made}. A line is added when a client's files are in
 * place, so that a run that was cut off, even by the power, goes on where it stopped; and a client whose inputs are the
 * same need not be made again. While it is open no other run may write into the folder.
 */
public final class Ledger implements AutoCloseable {
    private static final String NAME = ".made";
    /** More lines than this beyond those in force, and the file is written anew. */
    private static final int MOST_OLD_LINES = 500;

    private final Path root;
    private final FileChannel file;
    private final Map<String, String> byClient;

    private Ledger(Path root, FileChannel file, Map<String, String> byClient) {
        this.root = root;
        this.file = file;
        this.byClient = byClient;
    }

    /** Whether a run has written into {@code root}. */
    public static boolean isThere(Path root) {
        return Files.exists(root.resolve(NAME), LinkOption.NOFOLLOW_LINKS);
    }

    /** Opens the ledger of {@code root} and holds the folder; refused when another run holds it, or it cannot be written. */
    public static Outcome<Ledger> open(Path root) {
        Path place = root.resolve(NAME);
        try {
            Files.createDirectories(root);
            var file = FileChannel.open(place, Set.of(StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS));
            return held(file) ? Outcome.done(read(root, file)) : busy(root, file);
        } catch (IOException e) {
            return refused(root, "cannot be written: " + e.getClass().getSimpleName().replace("Exception", "") + " " + e.getMessage(),
                    "check that the folder may be written and has room, or choose another with `-o`");
        }
    }

    private static boolean held(FileChannel file) throws IOException {
        try {
            return file.tryLock() != null;      // no lock object: another process has it
        } catch (OverlappingFileLockException sameProgram) {
            return false;
        }
    }

    private static Outcome<Ledger> busy(Path root, FileChannel file) throws IOException {
        file.close();
        return refused(root, "is written to by another run", "wait until that run is done, or choose another folder with `-o`");
    }

    private static Outcome<Ledger> refused(Path root, String what, String hint) {
        return new Outcome.Refused<>(List.of(Notice.error("cannot-write", Span.whole(root.toString()), "`" + root.getFileName() + "` " + what, hint)));
    }

    private static Ledger read(Path root, FileChannel file) throws IOException {
        var bytes = ByteBuffer.allocate(Math.toIntExact(file.size()));
        while (bytes.hasRemaining() && file.read(bytes) >= 0) {
            continue;
        }
        var byClient = new LinkedHashMap<String, String>();
        String text = new String(bytes.array(), 0, bytes.position(), StandardCharsets.UTF_8);
        var lines = text.lines().toList();
        lines.stream().map(Line::parse).flatMap(Optional::stream).forEach(line -> byClient.put(line.client(), line.text()));
        var ledger = new Ledger(root, file, byClient);
        if (lines.size() > byClient.size() + MOST_OLD_LINES || !text.isEmpty() && !text.endsWith("\n")) {
            file.truncate(0);
            ledger.append(byClient.values());
        }
        file.position(file.size());
        return ledger;
    }

    /** What was made for {@code client} from inputs of that {@code key}; empty unless every file still is as it was left. */
    public Optional<Made> unchanged(String client, String key) {
        String text;
        synchronized (this) {
            text = byClient.getOrDefault(client, "");
        }
        return Line.parse(text).filter(line -> line.key().equals(key)).map(Line::made)
                .filter(made -> made.files().stream().allMatch(this::still));
    }

    private boolean still(Manifest.FileFact fact) {
        Path place = root.resolve(fact.path());
        try {
            return Files.isRegularFile(place, LinkOption.NOFOLLOW_LINKS)
                    && Manifest.FileFact.of(fact.path(), Files.readAllBytes(place), fact.pages()).equals(fact);
        } catch (IOException e) {
            return false;
        }
    }

    /** Notes that the files of a client are in place. Never fails: what cannot be noted is only made again. */
    public synchronized void add(String client, String key, Made made) {
        String line = new Line(client, key, made).text();
        byClient.put(client, line);
        try {
            append(List.of(line));
        } catch (IOException full) {
            byClient.remove(client);
        }
    }

    private void append(Iterable<String> lines) throws IOException {
        var text = new StringBuilder();
        lines.forEach(line -> text.append(line).append('\n'));
        var bytes = ByteBuffer.wrap(text.toString().getBytes(StandardCharsets.UTF_8));
        while (bytes.hasRemaining()) {
            file.write(bytes);
        }
    }

    @Override
    public void close() {
        try {
            file.close();
        } catch (IOException e) {
            return;      // its lines are written already
        }
    }

    /** How a client's inputs ended, and the files that stand in the folder. */
    public record Made(Manifest.Result result, List<Manifest.FileFact> files) {
        public Made {
            files = List.copyOf(files);
        }
    }

    /** {@code client key result path sha256 pages path sha256 pages …}; nothing in it has a space. */
    private record Line(String client, String key, Made made) {
        private static final int HEAD = 3;
        private static final int FACT = 3;

        String text() {
            var text = new StringBuilder(client).append(' ').append(key).append(' ').append(made.result().word());
            made.files().forEach(f -> text.append(' ').append(f.path()).append(' ').append(f.sha256()).append(' ').append(f.pages()));
            return text.append(" .").toString();
        }

        static Optional<Line> parse(String text) {
            var words = text.split(" ");
            boolean whole = words.length >= HEAD + 1 && words[words.length - 1].equals(".") && (words.length - HEAD - 1) % FACT == 0;
            if (!whole) {
                return Optional.empty();
            }
            try {
                var facts = new ArrayList<Manifest.FileFact>();
                for (int i = HEAD; i < words.length - 1; i += FACT) {
                    facts.add(new Manifest.FileFact(words[i], words[i + 1], Integer.parseInt(words[i + 2])));
                }
                return Manifest.Result.of(words[2]).map(result -> new Line(words[0], words[1], new Made(result, facts)));
            } catch (NumberFormatException torn) {
                return Optional.empty();
            }
        }
    }
}
