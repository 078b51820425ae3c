package contrapposto.notice;

import java.util.Locale;

/**
 * A notice as the lines a terminal shows: message, place, the source line with carets under the span, the ways out.
 * Carets stand right under wide and combining characters too; long lines are shown in part; characters that could
 * disturb a terminal are shown as {@code ·}.
 */
public final class NoticeText {
    private static final int BEFORE = 60;
    private static final int SHOWN = 110;
    private static final String CUT = "… ";

    private NoticeText() { }

    /** All lines, each ended by a line feed. */
    public static String of(Notice notice) {
        var span = notice.span();
        var text = new StringBuilder();
        text.append(notice.severity().name().toLowerCase(Locale.ROOT)).append('[').append(notice.id()).append("]: ")
                .append(visible(notice.message())).append('\n');
        text.append("  --> ").append(visible(span.file()));
        if (span.line() > 0) {
            text.append(':').append(span.line()).append(':').append(span.column());
        }
        text.append('\n');
        var gutter = " ".repeat(span.line() > 0 ? Integer.toString(span.line()).length() : 2);
        if (span.line() > 0 && !span.source().isEmpty()) {
            source(span, gutter, text);
        }
        for (var hint : notice.hints()) {
            text.append(gutter).append(" = hint: ").append(visible(hint)).append('\n');
        }
        return text.toString();
    }

    private static void source(Span span, String gutter, StringBuilder text) {
        var codes = visible(span.source()).codePoints().toArray();
        int column = Math.min(span.column() - 1, codes.length);
        int from = column > BEFORE ? column - BEFORE / 2 : 0;
        int to = Math.min(codes.length, from + SHOWN);
        var cut = from > 0 ? CUT : "";
        text.append(span.line()).append(" | ").append(cut).append(new String(codes, from, to - from))
                .append(to < codes.length ? " …" : "").append('\n');
        text.append(gutter).append(" | ").append(" ".repeat(cut.length())).append(" ".repeat(cells(codes, from, column)))
                .append("^".repeat(Math.max(1, cells(codes, column, Math.min(to, column + span.length())))))
                .append('\n');
    }

    private static int cells(int[] codes, int from, int to) {
        int cells = 0;
        for (int i = from; i < to; i++) {
            cells += cells(codes[i]);
        }
        return cells;
    }

    /** How many terminal cells a character takes: 0 combining, 2 wide, else 1. */
    private static int cells(int code) {
        return switch (Character.getType(code)) {
            case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT -> 0;
            default -> {
                boolean hangul = Character.UnicodeScript.of(code) == Character.UnicodeScript.HANGUL;
                boolean fullWidth = code >= 0xFF01 && code <= 0xFF60 || code >= 0x3000 && code <= 0x30FF;
                yield Character.isIdeographic(code) || Character.isEmojiPresentation(code) || hangul || fullWidth ? 2 : 1;
            }
        };
    }

    /** Tabs become spaces, one for one, so that columns stay; controls and direction marks become dots. */
    private static String visible(String text) {
        var shown = new StringBuilder();
        text.codePoints().map(code -> code == '\t' ? ' ' : Unseen.is(code) ? '·' : code).forEach(shown::appendCodePoint);
        return shown.toString();
    }
}
