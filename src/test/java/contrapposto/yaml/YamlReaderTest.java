package contrapposto.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class YamlReaderTest {
    private static Outcome<YamlNode> read(String text) {
        return assertTimeoutPreemptively(Duration.ofSeconds(20),
                () -> YamlReader.read("x.yaml", text.getBytes(StandardCharsets.UTF_8)));
    }

    private static YamlNode.Mapping quietly(String text) {
        var outcome = read(text);
        assertEquals(List.of(), outcome.notices());
        return assertInstanceOf(YamlNode.Mapping.class, ((Outcome.Done<YamlNode>) outcome).value());
    }

    private static String refused(String text) {
        var notices = assertInstanceOf(Outcome.Refused.class, read(text)).notices();
        return String.join(" ", ((List<?>) notices).stream().map(n -> (Notice) n)
                .map(n -> n.id() + "@" + n.span().line() + ":" + n.span().column()).toList());
    }

    @Test
    void keeps_text_as_written_with_its_place() {
        var map = quietly("a: no\nb:\n  - {c: 1.50 kg, d: \"no\"}\n");
        var a = (YamlNode.Scalar) map.entries().getFirst().value();
        assertEquals("no", a.text());
        assertEquals("1:4+2 a: no", a.span().line() + ":" + a.span().column() + "+" + a.span().length() + " " + a.span().source());
        var item = (YamlNode.Mapping) ((YamlNode.Sequence) map.entries().get(1).value()).items().getFirst();
        var c = (YamlNode.Scalar) item.entries().getFirst().value();
        assertEquals("1.50 kg", c.text());
        assertEquals(9, c.span().column());
        assertTrue(((YamlNode.Scalar) item.entries().get(1).value()).quoted());
    }

    @Test
    void counts_columns_in_characters_and_skips_a_byte_order_mark() {
        var map = quietly("\uFEFFname: {a: 𝄞Łu\u0308, b: 2}\r\nc: 3\r\n");
        var inner = (YamlNode.Mapping) map.entries().getFirst().value();
        assertEquals(17, inner.entries().get(1).key().span().column());
        assertEquals(2, map.entries().get(1).key().span().line());
    }

    @Test
    void an_absent_value_is_the_empty_plain_scalar() {
        var value = (YamlNode.Scalar) quietly("a:\nb: 2\n").entries().getFirst().value();
        assertEquals("", value.text());
        assertEquals(1, value.span().line());
    }

    @Test
    void writes_aliases_out() {
        var map = quietly("a: &x {k: 1}\nb: *x\n");
        assertEquals(1, ((YamlNode.Mapping) map.entries().get(1).value()).entries().size());
    }

    @Test
    void refuses_what_is_no_single_plain_document() {
        assertEquals("yaml-empty@0:0", refused(""));
        assertEquals("yaml-empty@0:0", refused("# only a comment\n"));
        assertEquals("yaml-empty@0:0", refused("---\n"));
        assertEquals("yaml-several-documents@2:1", refused("a: 1\n---\nb: 2\n"));
        assertEquals("yaml-tag@1:4", refused("a: !!java.net.URL [\"http://localhost\"]\n"));
        assertEquals("yaml-tab@2:1", refused("a:\n\tb: 1\n"));
        assertEquals("yaml-binary@2:2", refused("a: 1\nb\0: 2\n"));
        assertEquals("yaml-hidden-character@1:4", refused("a: \u001B[31m\n"));
        assertEquals("yaml-complex-key@1:3", refused("? [1, 2]\n: 3\n"));
        assertEquals("yaml-syntax@2:2", refused("a: [1, 2\nb: 3\n"));
        assertEquals("yaml-syntax@1:4", refused("a: *nowhere\n"));
    }

    @Test
    void reports_all_duplicate_keys_at_once_in_file_order() {
        assertEquals("yaml-duplicate-key@2:1 yaml-duplicate-key@4:3", refused("a: 1\na: 2\nb: {c: 1,\n  c: 2}\n"));
    }

    @Test
    void refuses_bytes_that_are_not_utf_8() {
        var outcome = YamlReader.read("x.yaml", new byte[] {'a', ':', ' ', (byte) 0xE9, '\n'});
        assertEquals("yaml-not-utf-8", outcome.notices().getFirst().id());
    }

    @Test
    void nesting_size_and_aliases_have_limits() {
        assertEquals("yaml-too-deep@1:41", refused("[".repeat(20_000) + "]".repeat(20_000)));
        assertEquals("yaml-too-deep@1:41", refused("[".repeat(20_000)));
        assertEquals("yaml-too-big@0:0", refused("# " + "x".repeat(YamlReader.MOST_BYTES)));
        assertEquals("yaml-aliases@2:255", refused("a: &x 1\nb: [" + "*x , ".repeat(60) + "]\n"));
        assertEquals("yaml-alias-bomb@1:4", refused("a: &x [*x]\n"));
        var bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i <= 6; i++) {
            bomb.append("a").append(i).append(": &a").append(i).append(" [")
                    .append(("*a" + (i - 1) + ", ").repeat(8)).append("]\n");
        }
        assertEquals("yaml-alias-bomb@1:25", refused(bomb.toString()));
    }

    @Test
    void a_tree_survives_beside_errors_that_leave_one() {
        var reading = YamlReader.readOn("x.yaml", "a: 1\na: 2\n".getBytes(StandardCharsets.UTF_8));
        assertTrue(reading.root().isPresent());
        assertEquals(1, reading.notices().size());
    }
}
