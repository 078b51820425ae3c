package contrapposto.compose;

import java.io.IOException;
import java.util.regex.Pattern;

/** What no template needs and no interruption could stop, found in a template before it runs. */
final class Unbounded extends IOException {
    private static final long serialVersionUID = 1;
    /** A range that does not end at the size of a list, nor cuts one; three dots are words. */
    private static final Pattern RANGE = Pattern.compile("(?<![.])[.]{2}(?![./])(?!<[\\w.]+\\?size)(?<!\\[\\d{1,3}[.]{2}(?=\\]))");
    /** Text made into code, and patterns that may search for ever. */
    private static final Pattern CODE = Pattern.compile("\\?\\s*(eval|interpret|matches)\\b");
    private static final int SHOWN = 12;

    private final String template;
    private final transient String what;
    private final transient String hint;

    private Unbounded(String template, String what, String hint) {
        super(what);
        this.template = template;
        this.what = what;
        this.hint = hint;
    }

    String template() {
        return template;
    }

    String what() {
        return what;
    }

    String hint() {
        return hint;
    }

    /** @param text of the template, as FreeMarker writes it back: without comments inside expressions */
    static void check(String template, String text) throws Unbounded {
        var range = RANGE.matcher(text);
        if (range.find()) {
            throw new Unbounded(template, "the range in `" + around(text, range.start()) + "` may have no end",
                    "let a range end at the size of a list, `1..<list?size`, or cut a list, `list[1..]`");
        }
        var code = CODE.matcher(text);
        if (code.find()) {
            throw new Unbounded(template, "`?" + code.group(1) + "` cannot be used here", "the words a template may use are listed in templates/README.md");
        }
    }

    private static String around(String text, int at) {
        return text.substring(Math.max(0, at - SHOWN), Math.min(text.length(), at + SHOWN)).replaceAll("\\s+", " ").strip();
    }
}
