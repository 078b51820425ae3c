package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.icegreen.greenmail.util.GreenMail;
import contrapposto.mail.MailServer;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.apache.james.mime4j.dom.BinaryBody;
import org.apache.james.mime4j.dom.Entity;
import org.apache.james.mime4j.dom.Multipart;
import org.apache.james.mime4j.dom.TextBody;
import org.apache.james.mime4j.message.DefaultMessageBuilder;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A handout with a password, sent to a real SMTP server: it arrives locked, once, and its password does not. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "has other permissions")
class LockedMailTest {
    private static final String WORD = "heron-over-the-weir";

    @TempDir
    static Path here;
    private static GreenMail server;
    private static Terminal terminal;

    @BeforeAll
    static void start() throws IOException, InterruptedException {
        terminal = new Terminal(here);
        server = MailServer.overTls(here);
        Files.writeString(here.resolve("ex.yaml"), """
                format: 1
                client: {name: Invented Example, code: EX-1, height: 171 cm, mass: 64 kg}
                practice: {name: Invented Practice, contact: "+00 555 0100"}
                assessment: {date: 2026-03-02, pelvis: {turned: right, degree: marked}}
                choose: {include: [floor-bridge]}
                schedule: {start: 2026-03-09, weeks: 1, days: [mon], minutes: 15}
                """);
        Files.writeString(here.resolve("word.txt"), WORD + "\n");
        Files.writeString(here.resolve("mail.yaml"), "mail: 1\nfrom: Practice <plans@example.org>\nhost: localhost\nport: " + server.getSmtps().getPort()
                + "\nsecurity: tls\nuser: " + MailServer.USER + "\npassword: " + MailServer.PASSWORD + "\ncertificate: " + MailServer.CERTIFICATE
                + "\naddresses: {EX-1: one@example.org}\n");
        Files.setPosixFilePermissions(here.resolve("mail.yaml"), PosixFilePermissions.fromString("rw-------"));
    }

    @AfterAll
    static void stop() {
        server.stop();
    }

    @Test
    void it_arrives_once_opens_with_the_password_only_and_the_password_is_nowhere_in_the_message() throws Exception {
        assertEquals(Console.DONE, terminal.run("mail", "ex.yaml", "--send", "--protect", "word.txt"), terminal.err());
        assertFalse(terminal.err().contains(WORD), terminal.err());
        assertEquals(Console.DONE, terminal.run("mail", "ex.yaml", "--send", "--protect", "word.txt"), terminal.err());
        assertTrue(terminal.err().contains("has gone to one@example.org before"), "the cipher differs, the edition does not: " + terminal.err());
        assertEquals(1, server.getReceivedMessages().length);
        var raw = new ByteArrayOutputStream();
        server.getReceivedMessages()[0].writeTo(raw);
        holds(raw.toByteArray());
        assertFalse(Files.readString(here.resolve("mail-sent.log")).contains(WORD));
    }

    @Test
    void a_draft_says_that_the_password_comes_another_way() throws Exception {
        assertEquals(Console.DONE, terminal.run("mail", "ex.yaml", "--draft", "drafts", "--protect", "word.txt"), terminal.err());
        holds(Files.readAllBytes(here.resolve("drafts/EX-1-ex-client.eml")));
    }

    /** Read by a parser of another project. */
    private static void holds(byte[] message) throws IOException {
        assertFalse(new String(message, StandardCharsets.ISO_8859_1).contains(WORD), "in the open");
        var parts = new ByteArrayOutputStream();
        var words = new StringBuilder();
        collect(new DefaultMessageBuilder().parseMessage(new ByteArrayInputStream(message)), parts, words);
        byte[] pdf = parts.toByteArray();
        assertTrue(words.toString().contains("It opens with a password, which you get another way, not by mail."), words.toString());
        for (String all : List.of(words.toString(), new String(pdf, StandardCharsets.ISO_8859_1), new String(pdf, StandardCharsets.UTF_16BE))) {
            assertFalse(all.contains(WORD), "once decoded");
        }
        assertThrows(InvalidPasswordException.class, () -> Loader.loadPDF(pdf));
        try (var opened = Loader.loadPDF(pdf, WORD)) {
            assertTrue(opened.getNumberOfPages() > 1);
        }
    }

    private static void collect(Entity entity, ByteArrayOutputStream pdf, StringBuilder words) throws IOException {
        switch (entity.getBody()) {
            case Multipart many -> {
                for (Entity part : many.getBodyParts()) {
                    collect(part, pdf, words);
                }
            }
            case TextBody text -> words.append(new String(text.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
            case BinaryBody binary -> pdf.write(binary.getInputStream().readAllBytes());
            default -> throw new AssertionError("a body of another kind: " + entity.getBody());
        }
    }
}
