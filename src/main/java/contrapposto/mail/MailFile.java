package contrapposto.mail;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import contrapposto.yaml.YamlNode;
import contrapposto.yaml.YamlReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A practice's mail file: who writes, over which server, and each client's address by code or folder name.
 *
 * @param addresses   client → address
 * @param certificate a PEM file of the server's or the practice's own authority, trusted besides no other
 * @param perMinute   the most messages in one minute
 */
public record MailFile(String from, Map<String, String> addresses, String host, int port, Security security, Optional<Login> login,
                       Optional<Path> certificate, int perMinute) {
    private static final int MOST_PER_MINUTE = 600;
    private static final List<String> KEYS = List.of("mail", "from", "host", "port", "security", "user", "password", "certificate", "per-minute", "addresses");

    /** How the connection is made safe: from the first byte, or by a step up that is asked for and insisted on. */
    public enum Security { TLS, STARTTLS }

    /** Never shown. */
    public record Login(String user, String password) {
        @Override
        public String toString() {
            return "Login[" + user + "]";
        }
    }

    /** Reads the file; refused with every problem, also when others than its owner may read it. */
    public static Outcome<MailFile> read(Path shown, Path file) {
        try {
            if (!Files.isRegularFile(file)) {
                return refused(Span.whole(shown.toString()), "`" + shown + "` is not there", "write one with `mail: 1`, `from`, `host`, `addresses`; see docs/mail.md");
            }
            if (openToOthers(file)) {
                return refused(Span.whole(shown.toString()), "`" + shown + "` holds addresses and perhaps a password, but others than you may read it",
                        "make it yours alone: chmod 600 " + shown);
            }
            return YamlReader.read(shown.toString(), Files.readAllBytes(file)).then(root -> new Reader(file).of(root));
        } catch (IOException e) {
            return refused(Span.whole(shown.toString()), "`" + shown + "` cannot be read", "check the path and its permissions");
        }
    }

    /** Where a file system knows no such permissions, the folder's own must do. */
    private static boolean openToOthers(Path file) throws IOException {
        if (!file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            return false;
        }
        return Files.getPosixFilePermissions(file).stream().anyMatch(p -> p == PosixFilePermission.GROUP_READ || p == PosixFilePermission.OTHERS_READ
                || p == PosixFilePermission.GROUP_WRITE || p == PosixFilePermission.OTHERS_WRITE);
    }

    private static <T> Outcome<T> refused(Span span, String message, String hint) {
        return new Outcome.Refused<>(List.of(Notice.error("mail-file", span, message, hint)));
    }

    /** One reading of the nodes. */
    private static final class Reader {
        private final Path file;
        private final Map<String, YamlNode> values = new LinkedHashMap<>();
        private final List<Notice> problems = new ArrayList<>();

        Reader(Path file) {
            this.file = file;
        }

        Outcome<MailFile> of(YamlNode root) {
            if (root instanceof YamlNode.Mapping map) {
                map.entries().forEach(e -> values.put(e.key().text(), e.value()));
                map.entries().stream().map(YamlNode.Entry::key).filter(key -> !KEYS.contains(key.text())).forEach(key ->
                        problem(key.span(), "`" + key.text() + "` is no key of a mail file", "known are " + String.join(", ", KEYS)));
            }
            String security = text("security", "starttls", root);
            if (!security.equals("starttls") && !security.equals("tls")) {
                problem(values.get("security").span(), "`" + security + "` is no way to make a connection safe", "write `starttls` or `tls`; there is no third");
            }
            var user = Optional.ofNullable(values.get("user")).map(node -> text("user", "", node));
            var read = new MailFile(text("from", "", root), addresses(root), text("host", "localhost", root),
                    number("port", security.equals("tls") ? 465 : 587, 65_535, root), security.equals("tls") ? Security.TLS : Security.STARTTLS,
                    user.map(name -> new Login(name, text("password", "", root))), Optional.ofNullable(values.get("certificate"))
                    .map(node -> file.resolveSibling(text("certificate", "", node))), number("per-minute", 30, MOST_PER_MINUTE, root));
            if (read.from().isEmpty()) {
                problem(root.span(), "the mail file does not say who writes", "add `from: Name <name@example.org>`");
            }
            return Outcome.of(read, problems);
        }

        private Map<String, String> addresses(YamlNode root) {
            var addresses = new LinkedHashMap<String, String>();
            if (values.get("addresses") instanceof YamlNode.Mapping map) {
                map.entries().forEach(e -> addresses.put(e.key().text().toLowerCase(Locale.ROOT), e.value() instanceof YamlNode.Scalar s ? s.text() : ""));
            } else {
                problem(root.span(), "the mail file has no addresses", "add `addresses: {HS-0142: name@example.org}`, by code or folder name");
            }
            return addresses;
        }

        private String text(String key, String otherwise, YamlNode place) {
            return switch (Optional.ofNullable(values.get(key))) {
                case Optional<YamlNode> o when o.isEmpty() -> otherwise;
                case Optional<YamlNode> o when o.get() instanceof YamlNode.Scalar scalar -> scalar.text();
                case Optional<YamlNode> o -> {
                    problem(place.span(), "`" + key + "` holds no single text", "give one value");
                    yield otherwise;
                }
            };
        }

        private int number(String key, int otherwise, int most, YamlNode root) {
            String text = text(key, Integer.toString(otherwise), root);
            if (text.matches("[1-9][0-9]{0,5}") && Integer.parseInt(text) <= most) {
                return Integer.parseInt(text);
            }
            problem(values.get(key).span(), "`" + key + ": " + text + "` is out of range", "give a number from 1 to " + most);
            return otherwise;
        }

        private void problem(Span span, String message, String hint) {
            problems.add(Notice.error("mail-file", span, message, hint));
        }
    }
}
