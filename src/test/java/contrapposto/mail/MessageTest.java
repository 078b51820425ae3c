package contrapposto.mail;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.notice.Outcome;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import org.apache.james.mime4j.dom.BinaryBody;
import org.apache.james.mime4j.dom.Multipart;
import org.apache.james.mime4j.dom.TextBody;
import org.apache.james.mime4j.message.DefaultMessageBuilder;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Drafts, read back by Apache James mime4j, which knows nothing of the library that wrote them. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class MessageTest {
    private static final Instant DAY = Instant.parse("2026-03-02T00:00:00Z");
    static final byte[] PDF = "%PDF-1.7 not really\n".getBytes(StandardCharsets.US_ASCII);

    static Message message(String to) {
        return new Message("HS-7", "Hafenstraße <plans@example.org>", to, "Ihr Blatt von Hafenstraße", List.of("Guten Tag Zoë,", "1 < 2 & Grüße"), "block-client.pdf", PDF);
    }

    @Test
    void another_parser_finds_text_html_and_the_handout() throws IOException {
        var read = new DefaultMessageBuilder().parseMessage(new ByteArrayInputStream(eml()));
        assertEquals("Ihr Blatt von Hafenstraße", read.getSubject());
        assertEquals("Hafenstraße", read.getFrom().getFirst().getName());
        assertEquals("zoe@example.org", read.getTo().flatten().getFirst().getAddress());
        assertEquals(Date.from(DAY), read.getDate());
        var mixed = assertInstanceOf(Multipart.class, read.getBody());
        assertEquals("mixed", mixed.getSubType());
        var words = assertInstanceOf(Multipart.class, mixed.getBodyParts().getFirst().getBody());
        assertEquals("alternative", words.getSubType());
        assertEquals(List.of("text/plain", "text/html"), words.getBodyParts().stream().map(p -> p.getMimeType()).toList());
        assertEquals("Guten Tag Zoë,\r\n\r\n1 < 2 & Grüße\r\n", text(words, 0));
        assertTrue(text(words, 1).contains("<p>1 &lt; 2 &amp; Grüße</p>"), text(words, 1));
        var file = mixed.getBodyParts().get(1);
        assertEquals(List.of("application/pdf", "attachment", "block-client.pdf"), List.of(file.getMimeType(), file.getDispositionType(), file.getFilename()));
        assertArrayEquals(PDF, ((BinaryBody) file.getBody()).getInputStream().readAllBytes());
    }

    @Test
    void the_same_message_gives_the_same_bytes_in_lines_of_at_most_998() {
        assertArrayEquals(eml(), eml());
        String text = new String(eml(), StandardCharsets.ISO_8859_1);
        assertTrue(text.lines().allMatch(line -> line.length() <= 998), "RFC 5322, 2.1.1");
        assertTrue(text.chars().allMatch(c -> c < 127), "7 bit");
    }

    @Test
    void what_is_no_address_is_one_notice() {
        for (String to : List.of("nobody", "a@b, c@d", "a@example.org\r\nBcc: all@example.org", "")) {
            assertEquals(List.of("mail-address"), message(to).draft(DAY).notices().stream().map(n -> n.id()).toList(), to);
        }
    }

    private static byte[] eml() {
        return ((Outcome.Done<byte[]>) message("Zoë <zoe@example.org>").draft(DAY)).value();
    }

    private static String text(Multipart words, int part) throws IOException {
        return new String(((TextBody) words.getBodyParts().get(part).getBody()).getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
}
