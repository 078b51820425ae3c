package contrapposto.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** What a run has left in its folder, so that two runs can be compared. */
final class RunTree {
    private RunTree() { }

    /** Every file but the ledger, whose lines come in the order of work; of the manifest all but the seconds. */
    static Map<String, String> of(Path root) {
        var tree = new TreeMap<String, String>();
        try (var files = Files.walk(root)) {
            for (Path file : files.filter(Files::isRegularFile).filter(f -> !f.getFileName().toString().equals(".made")).toList()) {
                tree.put(root.relativize(file).toString(), Files.readString(file, StandardCharsets.ISO_8859_1).replaceAll("\"seconds\": [0-9.]+", ""));
            }
            return tree;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
