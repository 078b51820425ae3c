package contrapposto.mail;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import jakarta.mail.AuthenticationFailedException;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.Transport;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.CertificateFactory;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Objects;
import java.util.Properties;
import java.util.stream.Stream;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLException;
import javax.net.ssl.TrustManagerFactory;
import org.eclipse.angus.mail.smtp.SMTPAddressFailedException;
import org.eclipse.angus.mail.smtp.SMTPSendFailedException;

/**
 * Sends messages over SMTP, one connection for all, never faster than the mail file allows, never the same edition to
 * the same address twice. A message that one server or recipient refuses costs no other theirs.
 */
public final class Post implements AutoCloseable {
    private static final String MILLISECONDS = "20000";
    private static final long MINUTE = Duration.ofMinutes(1).toNanos();

    private final int perMinute;
    private final InstantSource clock;
    private final SendLog log;
    private final Session session;
    private final Transport transport;
    private long next = System.nanoTime();

    private Post(int perMinute, InstantSource clock, SendLog log, Session session, Transport transport) {
        this.perMinute = perMinute;
        this.clock = clock;
        this.log = log;
        this.session = session;
        this.transport = transport;
    }

    /** What became of one message. */
    public enum Result { SENT, SENT_BEFORE }

    /** Opens the log and the connection; refused with a way out when either fails. */
    public static Outcome<Post> open(MailFile file, Path log, InstantSource clock) {
        return SendLog.open(log).then(opened -> {
            var connected = connect(file, clock, opened);
            if (connected instanceof Outcome.Refused<Post>) {
                opened.close();
            }
            return connected;
        });
    }

    private static Outcome<Post> connect(MailFile file, InstantSource clock, SendLog log) {
        try {
            var session = Session.getInstance(properties(file));
            var transport = session.getTransport(file.security() == MailFile.Security.TLS ? "smtps" : "smtp");
            transport.connect(file.host(), file.port(), file.login().map(MailFile.Login::user).orElse(null), file.login().map(MailFile.Login::password).orElse(null));
            return Outcome.done(new Post(file.perMinute(), clock, log, session, transport));
        } catch (AuthenticationFailedException e) {
            return refused(file, "`" + file.host() + "` does not accept the user name and password", "check `user` and `password` in the mail file");
        } catch (MessagingException e) {
            return caused(e, SSLException.class) || caused(e, java.security.cert.CertificateException.class)
                    ? refused(file, "the connection to `" + file.host() + "` cannot be made safe: " + plain(e), "check `host`, `port` and `security`; a server with its own authority needs `certificate: FILE.pem`")
                    : refused(file, "`" + file.host() + "` port " + file.port() + " does not answer as a mail server should: " + plain(e), "check `host`, `port` and `security`, then run again: what was sent is not sent twice");
        } catch (GeneralSecurityException | IOException e) {
            return refused(file, "the certificate file cannot be used: " + e.getMessage(), "give the certificate of the server or its authority as a PEM file");
        }
    }

    /** Over a session that is set up already; for tests of what a server may do. */
    static Post over(Session session, Path log, InstantSource clock) throws MessagingException {
        var transport = session.getTransport("smtp");
        transport.connect();
        return switch (SendLog.open(log)) {
            case Outcome.Done<SendLog>(var opened, var none) -> new Post(Integer.MAX_VALUE, clock, opened, session, transport);
            case Outcome.Refused<SendLog>(var notices) -> throw new MessagingException(notices.toString());
        };
    }

    private static Properties properties(MailFile file) throws GeneralSecurityException, IOException {
        var properties = new Properties();
        String kind = file.security() == MailFile.Security.TLS ? "smtps" : "smtp";
        properties.setProperty("mail." + kind + ".ssl.checkserveridentity", "true");
        properties.setProperty("mail." + kind + ".connectiontimeout", MILLISECONDS);
        properties.setProperty("mail." + kind + ".timeout", MILLISECONDS);
        properties.setProperty("mail." + kind + ".writetimeout", MILLISECONDS);
        properties.setProperty("mail." + kind + ".auth", Boolean.toString(file.login().isPresent()));
        properties.setProperty("mail.smtp.starttls.enable", "true");
        properties.setProperty("mail.smtp.starttls.required", "true");
        if (file.certificate().isPresent()) {
            properties.put("mail." + kind + ".ssl.socketFactory", trusting(file.certificate().get()).getSocketFactory());
        }
        return properties;
    }

    /** Trusts the certificates of that file and no others. */
    private static SSLContext trusting(Path pem) throws GeneralSecurityException, IOException {
        var store = KeyStore.getInstance(KeyStore.getDefaultType());
        store.load(null, null);      // null: a new, empty store
        try (InputStream in = Files.newInputStream(pem)) {
            int number = 0;
            for (var certificate : CertificateFactory.getInstance("X.509").generateCertificates(in)) {
                store.setCertificateEntry("given-" + number++, certificate);
            }
        }
        var trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(store);
        var context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        return context;
    }

    /** Sends one message, unless this edition has gone to this address before. Waits as long as the rate asks. */
    public Outcome<Result> send(Message message) {
        var known = log.of(message);
        if (known.filter(state -> state == SendLog.State.SENT).isPresent()) {
            return Outcome.done(Result.SENT_BEFORE);
        }
        if (known.filter(state -> state == SendLog.State.SENDING).isPresent()) {
            return failed(message, "mail-unsure", "an earlier run was cut off while it sent this edition, and nobody knows whether it arrived",
                    "ask the client; to send it again, delete the line of `" + message.client() + "` that ends in `sending` from the send log");
        }
        return message.mime(session, clock.instant()).then(mime -> {
            pause();
            return leave(message, mime);
        });
    }

    private Outcome<Result> leave(Message message, MimeMessage mime) {
        try {
            log.note(message, SendLog.State.SENDING);
        } catch (IOException full) {
            return failed(message, "send-log", "the send log cannot be written, so nothing was sent", "make room on the disk and run again");
        }
        try {
            transport.sendMessage(mime, mime.getAllRecipients());
            return noted(message, SendLog.State.SENT, Outcome.done(Result.SENT));
        } catch (MessagingException e) {
            return answered(e) ? noted(message, SendLog.State.REFUSED, failed(message, "mail-refused", "the server does not take this message: " + plain(e), "check the address in the mail file, then run again"))
                    : failed(message, "mail-unsure", "the connection broke while this message was sent: " + plain(e),
                    "ask the client whether it came; the send log keeps it from going twice");
        }
    }

    /** Whether the server itself said no (RFC 5321, 4.2.1: codes from 400 on), so that the message is surely not under way. */
    private static boolean answered(MessagingException e) {
        return Stream.iterate((Exception) e, Objects::nonNull, next -> next instanceof MessagingException m ? m.getNextException() : null)      // null ends the library's chain
                .mapToInt(next -> switch (next) {
                    case SMTPAddressFailedException address -> address.getReturnCode();
                    case SMTPSendFailedException send -> send.getReturnCode();
                    default -> 0;
                }).anyMatch(code -> code >= 400);
    }

    private Outcome<Result> noted(Message message, SendLog.State state, Outcome<Result> result) {
        try {
            log.note(message, state);
            return result;
        } catch (IOException full) {
            return failed(message, "send-log", "the message was " + state.name().toLowerCase(java.util.Locale.ROOT) + ", but the send log cannot say so", "make room on the disk; the log keeps it from going twice");
        }
    }

    private void pause() {
        long wait = next - System.nanoTime();
        if (wait > 0) {
            try {
                Thread.sleep(Duration.ofNanos(wait));
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
        next = System.nanoTime() + MINUTE / perMinute;
    }

    @Override
    public void close() {
        log.close();
        try {
            transport.close();
        } catch (MessagingException e) {
            return;      // everything was said before
        }
    }

    private static boolean caused(Throwable e, Class<? extends Throwable> kind) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (kind.isInstance(cause)) {
                return true;
            }
        }
        return false;
    }

    private static String plain(MessagingException e) {
        Throwable last = e;
        while (last.getCause() != null) {
            last = last.getCause();
        }
        return String.valueOf(last.getMessage()).lines().findFirst().orElse("no reason given").strip();
    }

    private static <T> Outcome<T> refused(MailFile file, String message, String hint) {
        return new Outcome.Refused<>(List.of(Notice.error("mail-server", Span.whole(file.host()), message, hint)));
    }

    private static Outcome<Result> failed(Message message, String id, String what, String hint) {
        return new Outcome.Refused<>(List.of(Notice.error(id, Span.whole(message.client()), what, hint)));
    }
}
