package contrapposto.typeset;

import contrapposto.typeset.Line.Run;
import java.util.List;

/** The words of lines, without what is drawn and the hyphens of divided words. */
final class Text {
    private Text() { }

    static String of(List<Line> lines) {
        var text = new StringBuilder();
        for (var line : lines) {
            for (var run : line.runs()) {
                switch (run) {
                    case Run.Words words -> text.append(words.text());
                    case Run.Link link -> text.append(link.text());
                    case Run.Sign sign -> { }
                }
            }
        }
        return text.toString().replace(Character.toString(Divisions.MARK), "").strip();
    }
}
