package contrapposto.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.TreeMap;
import java.util.Map;
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
            try (var inside = Files.walk(given)) {
                for (Path file : inside.filter(Files::isRegularFile).toList()) {
                    stamps.put(file, Files.size(file) + " " + Files.getLastModifiedTime(file));
                }
            } catch (IOException | java.io.UncheckedIOException gone) {
                stamps.put(given, "gone");
            }
        }
        return stamps;
    }
}
