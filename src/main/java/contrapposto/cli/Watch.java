package contrapposto.cli;

import contrapposto.deliver.Ledger;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.function.IntSupplier;

/**
 * Does a piece of work again whenever one of some files is saved. What the work leaves when it fails is its own affair: a
 * build writes whole files or none, so the last good handout stays.
 *
 * @param files files, and folders with all they hold; also those that are not there yet
 */
record Watch(List<Path> files, Streams streams, BooleanSupplier goOn) {
    private static final Duration PAUSE = Duration.ofMillis(300);

    /** Works once, then after each change, until told to stop; the last exit code. */
    int each(IntSupplier work) {
        int code = work.getAsInt();
        var seen = stamps();
        streams.err().println("watching; stop with Ctrl-C");
        while (goOn.getAsBoolean() && paused()) {
            var now = stamps();
            if (!now.equals(seen)) {
                seen = now;
                code = work.getAsInt();
            }
        }
        return code;
    }

    private static boolean paused() {
        try {
            Thread.sleep(PAUSE);
            return true;
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** Size and time of every file; a file that goes while we look counts as gone. */
    private Map<Path, String> stamps() {
        var stamps = new TreeMap<Path, String>();
        for (Path given : files) {
            try {
                Files.walkFileTree(given, new Stamper(stamps));
            } catch (IOException gone) {
                stamps.put(given, "gone");
            }
        }
        return stamps;
    }

    /** Leaves out hidden files and what a run has written: it changes with every build. */
    private static final class Stamper extends SimpleFileVisitor<Path> {
        private final Map<Path, String> stamps;

        private Stamper(Map<Path, String> stamps) {
            this.stamps = stamps;
        }

        @Override
        public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes facts) {
            return Ledger.isThere(folder) ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes facts) {
            if (!file.getFileName().toString().startsWith(".")) {
                stamps.put(file, facts.size() + " " + facts.lastModifiedTime());
            }
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFileFailed(Path file, IOException gone) {
            stamps.put(file, "gone");
            return FileVisitResult.CONTINUE;
        }
    }
}
