package contrapposto.mail;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A real SMTP server in this process, over TLS, with a certificate of its own for {@code localhost} that the JDK's own tool makes. */
public final class MailServer {
    public static final String CERTIFICATE = "server.pem";
    public static final String USER = "plans";
    public static final String PASSWORD = "open sesame";
    private static final String KEYS = "k.p12";
    private static final String KEYS_PASSWORD = "changeit";

    private MailServer() { }

    /** Made once: GreenMail reads its keys once in a process. */
    private static Optional<Path> made = Optional.empty();

    /** Started; its certificate lies in {@code folder}. */
    public static GreenMail overTls(Path folder) throws IOException, InterruptedException {
        Files.copy(keys().resolve(CERTIFICATE), folder.resolve(CERTIFICATE));
        var server = new GreenMail(new ServerSetup(0, "localhost", "smtps"));
        server.start();
        server.setUser(USER, PASSWORD);
        return server;
    }

    private static synchronized Path keys() throws IOException, InterruptedException {
        if (made.isEmpty()) {
            Path folder = Files.createDirectories(Path.of("target", "mail-server-" + ProcessHandle.current().pid()));
            String keys = folder.resolve(KEYS).toString();
            Files.deleteIfExists(folder.resolve(KEYS));
            keytool("-genkeypair", "-alias", "server", "-keyalg", "EC", "-dname", "CN=localhost", "-ext", "SAN=dns:localhost", "-validity", "30000",
                    "-keystore", keys, "-storepass", KEYS_PASSWORD, "-storetype", "PKCS12");
            keytool("-exportcert", "-rfc", "-alias", "server", "-keystore", keys, "-storepass", KEYS_PASSWORD, "-file", folder.resolve(CERTIFICATE).toString());
            System.setProperty("greenmail.tls.keystore.file", keys);
            System.setProperty("greenmail.tls.keystore.password", KEYS_PASSWORD);
            made = Optional.of(folder);
        }
        return made.get();
    }

    private static void keytool(String... args) throws IOException, InterruptedException {
        var command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "keytool").toString()));
        command.addAll(List.of(args));
        var process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
    }
}
