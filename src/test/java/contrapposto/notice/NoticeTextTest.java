package contrapposto.notice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NoticeTextTest {
    private static String text(int column, int length, String source) {
        return NoticeText.of(Notice.error("rule", new Span("a.yaml", 14, column, length, source), "says `this`", "do that"));
    }

    @Test
    void shows_message_place_line_caret_and_way_out() {
        assertEquals("""
                error[rule]: says `this`
                  --> a.yaml:14:9
                14 |   load: 62.5 lb
                   |         ^^^^^^^
                   = hint: do that
                """, text(9, 7, "  load: 62.5 lb"));
    }

    @Test
    void a_notice_about_the_whole_file_has_no_line() {
        assertEquals("warning[rule]: says\n  --> a.yaml\n", NoticeText.of(Notice.warning("rule", Span.whole("a.yaml"), "says")));
    }

    @Test
    void carets_stand_under_wide_and_combining_characters() {
        assertEquals("   |      ^^^^", text(4, 2, "日本 早川").lines().skip(3).findFirst().orElseThrow());
        assertEquals("   |  ^^", text(3, 3, "u\u0308e\u0301x").lines().skip(3).findFirst().orElseThrow());
    }

    @Test
    void long_lines_are_shown_in_part_with_the_caret_in_view() {
        var lines = text(15_000, 3, "x".repeat(14_999) + "abc" + "y".repeat(5_000)).lines().toList();
        assertTrue(lines.get(2).length() < 130, lines.get(2));
        assertEquals(lines.get(2).indexOf("abc"), lines.get(3).indexOf("^^^"));
    }

    @Test
    void nothing_in_it_can_disturb_a_terminal() {
        assertEquals("14 | a·[31m·b c", text(1, 1, "a\u001B[31m\u202Eb\tc").lines().skip(2).findFirst().orElseThrow());
    }
}
