package contrapposto.typeset;

import contrapposto.font.FontFile;
import contrapposto.notice.Notice;
import contrapposto.notice.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.SequencedMap;

/** Fonts that a practice adds for characters that the own face lacks: read, and asked whether they may be embedded. */
record AddedFonts(List<Face.Cut> cuts, List<Notice> notices) {
    /** Names the subsets of added fonts; R and B are the own face's. */
    private static final String LETTERS = "CDEFGHIJKLMNOPQSTUVWXYZ";

    static AddedFonts read(SequencedMap<String, byte[]> files) {
        var cuts = new ArrayList<Face.Cut>();
        var notices = new ArrayList<Notice>();
        files.forEach((name, bytes) -> {
            try {
                if (new FontFile(bytes).mayBeEmbedded()) {
                    cuts.add(Face.Cut.of(name + ".ttf", bytes, LETTERS.charAt(cuts.size() % LETTERS.length())));
                } else {
                    notices.add(Notice.error("font-not-embeddable", Span.whole(name), "the maker of the font `" + name + "` does not allow it to be put in part into a file",
                            "take a font whose licence allows embedding, such as one under the SIL Open Font License"));
                }
            } catch (RuntimeException damaged) {      // a font is foreign bytes: whatever they break, it is the font's fault
                notices.add(Notice.error("font-unreadable", Span.whole(name), "the font `" + name + "` cannot be read as TrueType",
                        "give a single `.ttf` file with TrueType outlines, no collection and no `.otf`"));
            }
        });
        return new AddedFonts(List.copyOf(cuts), List.copyOf(notices));
    }
}
