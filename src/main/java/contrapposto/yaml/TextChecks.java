package contrapposto.yaml;

import contrapposto.notice.Notice;
import contrapposto.notice.Unseen;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** What must hold of a file's bare text before it is read as YAML: characters that can be seen, no tabs as indentation. */
final class TextChecks {
    private TextChecks() { }

    static List<Notice> of(SourceText source) {
        var found = new ArrayList<Notice>();
        for (int line = 0; line < source.lines().size() && found.isEmpty(); line++) {
            unseen(source, line, found);
        }
        if (found.isEmpty()) {
            tabs(source, found);
        }
        return found;
    }

    private static void unseen(SourceText source, int line, List<Notice> found) {
        var codes = source.lines().get(line).codePoints().toArray();
        for (int column = 0; column < codes.length; column++) {
            int code = codes[column];
            if (code == 0) {
                found.add(Notice.error("yaml-binary", source.span(line, column, 1),
                        "the file holds a NUL byte, so it is not a text file", "give a YAML file saved as UTF-8 text"));
                return;
            }
            if (Unseen.is(code) && code != '\t') {
                found.add(Notice.error("yaml-hidden-character", source.span(line, column, 1),
                        String.format(Locale.ROOT, "the file holds the character U+%04X, which cannot be seen", code),
                        "delete it; only line ends and visible characters belong in the file"));
                return;
            }
        }
    }

    private static void tabs(SourceText source, List<Notice> found) {
        var lines = IntStream.range(0, source.lines().size())
                .filter(line -> tabInIndentation(source.lines().get(line)) >= 0).boxed().toList();
        if (lines.isEmpty()) {
            return;
        }
        int first = lines.getFirst();
        var more = switch (lines.size()) {
            case 1 -> "";
            case 2 -> ", and one more line";
            default -> ", and " + (lines.size() - 1) + " more lines";
        };
        found.add(Notice.error("yaml-tab", source.span(first, tabInIndentation(source.lines().get(first)), 1),
                "a tab stands in the indentation of this line" + more, "indent with spaces, two a level"));
    }

    /** The column of a tab before the first character that is neither space nor tab, or -1; blank lines do not count. */
    private static int tabInIndentation(String line) {
        int tab = -1;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '\t' && tab < 0) {
                tab = i;
            } else if (c != ' ' && c != '\t') {
                return c == '#' ? -1 : tab;
            }
        }
        return -1;
    }
}
