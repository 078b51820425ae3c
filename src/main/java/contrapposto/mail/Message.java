package contrapposto.mail;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import jakarta.activation.DataHandler;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import jakarta.mail.util.ByteArrayDataSource;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.UnsupportedEncodingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.Date;
import java.util.HexFormat;
import java.util.List;
import java.util.Properties;

/**
 * One message to one client: a few words as plain text and as HTML, the handout attached. Subject and words hold no
 * health fact, and never a password.
 *
 * @param client   code or folder name; how notices and the log call the client
 * @param fileName of the attachment
 * @param pdf      that is attached, perhaps locked: its bytes then differ each time
 * @param open     the handout as it is without a lock, by which one edition is told from another
 */
public record Message(String client, String from, String to, String subject, List<String> lines, String fileName, byte[] pdf, byte[] open) {
    private static final String UTF_8 = "UTF-8";

    /** With a handout that anyone can open. */
    public Message(String client, String from, String to, String subject, List<String> lines, String fileName, byte[] pdf) {
        this(client, from, to, subject, lines, fileName, pdf, pdf);
    }

    /** Changes when the handout or the address does: what may be sent once. */
    String edition() {
        return sha256(sha256(HexFormat.of().formatHex(open)) + "\n" + to);
    }

    private static String sha256(String text) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }

    /** The message as RFC 5322 text, marked as a draft for mail programs; the same message gives the same bytes. */
    public Outcome<byte[]> draft(Instant date) {
        return mime(Session.getInstance(new Properties()), date).map(message -> {
            try {
                message.setHeader("X-Unsent", "1");
                var out = new ByteArrayOutputStream();
                message.writeTo(out);
                return out.toByteArray();
            } catch (MessagingException e) {
                throw new IllegalStateException("A message in memory could not be written.", e);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    /** Refused when an address is none. */
    Outcome<MimeMessage> mime(Session session, Instant date) {
        try {
            var message = new Numbered(session, "<" + edition() + "@contrapposto.invalid>");
            message.setFrom(address(from));
            message.setRecipient(jakarta.mail.Message.RecipientType.TO, address(to));
            message.setSubject(subject, UTF_8);
            message.setSentDate(Date.from(date));
            message.setContent(mixed());
            message.saveChanges();
            return Outcome.done(message);
        } catch (MessagingException e) {
            return new Outcome.Refused<>(List.of(Notice.error("mail-address", Span.whole(client), "`" + to + "` or `" + from + "` is no mail address",
                    "write `name@example.org` or `Name <name@example.org>` in the mail file")));
        }
    }

    private static InternetAddress address(String written) throws MessagingException {
        if (written.indexOf('\r') >= 0 || written.indexOf('\n') >= 0) {
            throw new MessagingException("line end in an address");
        }
        var all = InternetAddress.parse(written, true);
        if (all.length != 1 || !all[0].getAddress().contains("@")) {
            throw new MessagingException("not one address");
        }
        try {
            all[0].setPersonal(all[0].getPersonal(), UTF_8);
            return all[0];
        } catch (UnsupportedEncodingException e) {
            throw new IllegalStateException("Every Java has UTF-8.", e);
        }
    }

    private MimeMultipart mixed() throws MessagingException {
        var words = new Bounded("alternative", "words-" + edition());
        var plain = new MimeBodyPart();
        plain.setText(String.join("\r\n\r\n", lines) + "\r\n", UTF_8);
        var html = new MimeBodyPart();
        html.setText(html(), UTF_8, "html");
        words.addBodyPart(plain);
        words.addBodyPart(html);
        var wordsPart = new MimeBodyPart();
        wordsPart.setContent(words);
        var file = new MimeBodyPart();
        file.setDataHandler(new DataHandler(new ByteArrayDataSource(pdf, "application/pdf")));
        file.setFileName(fileName);
        file.setDisposition(jakarta.mail.Part.ATTACHMENT);
        var mixed = new Bounded("mixed", "parts-" + edition());
        mixed.addBodyPart(wordsPart);
        mixed.addBodyPart(file);
        return mixed;
    }

    private String html() {
        var text = new StringBuilder("<!doctype html>\r\n<html><body>\r\n");
        lines.forEach(line -> text.append("<p>").append(line.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")).append("</p>\r\n"));
        return text.append("</body></html>\r\n").toString();
    }

    /** A multipart whose boundary follows from the content, not from the clock. */
    private static final class Bounded extends MimeMultipart {
        Bounded(String subtype, String boundary) {
            super(subtype);
            var type = new jakarta.mail.internet.ContentType("multipart", subtype, null);      // null: no parameters yet, says its interface
            type.setParameter("boundary", "=" + boundary.substring(0, 40));
            contentType = type.toString();
        }
    }

    /** A message whose identifier follows from the content: sent twice by mistake, a mail program shows it once. */
    private static final class Numbered extends MimeMessage {
        private final String id;

        Numbered(Session session, String id) {
            super(session);
            this.id = id;
        }

        @Override
        protected void updateMessageID() throws MessagingException {
            setHeader("Message-ID", id);
        }
    }
}
