package contrapposto.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.zip.CRC32;

/**
 * What besides the spec decides what is printed: the program itself, a practice's own catalogue, rules and templates, and
 * the options of the call. Where two prints are equal, the same spec gives the same bytes.
 */
final class Fingerprint {
    private Fingerprint() { }

    /**
     * The print of a call.
     *
     * @param options what the call asks for, in words
     * @param own     files and folders of the practice; each with all it holds
     */
    static String of(String options, List<Path> own) {
        return hash(program() + "\n" + options, own);
    }

    private static String hash(String words, List<Path> own) {
        try {
            var digest = MessageDigest.getInstance("SHA-256");
            digest.update(words.getBytes(StandardCharsets.UTF_8));
            for (Path path : own) {
                try (var inside = Files.walk(path)) {
                    for (Path file : inside.filter(Files::isRegularFile).sorted().toList()) {
                        digest.update(("\n" + path.relativize(file) + "\n").getBytes(StandardCharsets.UTF_8));
                        digest.update(Files.readAllBytes(file));
                    }
                }
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The key of one client's files. @param spec the hash of the checked spec; {@code client} where its files go */
    static String key(String fingerprint, String spec, String client) {
        return hash(fingerprint + "\n" + spec + "\n" + client, List.of());
    }

    /** Tells one build of the program from another: by the checksum of its jar, or by the times of its class files. */
    private static String program() {
        try {
            Path home = Path.of(Fingerprint.class.getProtectionDomain().getCodeSource().getLocation().toURI());
            if (Files.isRegularFile(home)) {
                var sum = new CRC32();
                sum.update(Files.readAllBytes(home));
                return String.format(Locale.ROOT, "%08x", sum.getValue());
            }
            try (var classes = Files.walk(home)) {
                var sum = new CRC32();
                for (Path file : classes.filter(Files::isRegularFile).sorted().toList()) {
                    sum.update((file + " " + Files.getLastModifiedTime(file)).getBytes(StandardCharsets.UTF_8));
                }
                return String.format(Locale.ROOT, "%08x", sum.getValue());
            }
        } catch (IOException | URISyntaxException e) {
            throw new IllegalStateException("The program cannot find itself.", e);
        }
    }
}
