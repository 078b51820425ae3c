package contrapposto.typeset;

import contrapposto.document.Document;
import contrapposto.document.Document.Print;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import java.util.ArrayList;
import java.util.Optional;
import java.util.SequencedMap;

/**
 * Stage 9, typeset: a {@link Document} → {@link Pages}. Lines are broken and pages filled here, so that nothing is
 * left to chance: equal documents give equal bytes, on any thread. One typesetter serves all documents and threads.
 */
public final class Typesetter {
    /** Layouts after which page numbers in the text must agree with the pages. */
    private static final int MOST_LAYOUTS = 5;

    private final Fonts fonts;
    private final Optional<String> password;

    public Typesetter() {
        this(Fonts.roboto(), Optional.empty());
    }

    private Typesetter(Fonts fonts, Optional<String> password) {
        this.fonts = fonts;
        this.password = password;
    }

    /**
     * One whose files open with {@code password} only (AES-256). They make no claim to be PDF/A, which forbids encryption, and
     * differ from run to run, since the cipher needs chance; screen readers, printing and form filling stay allowed.
     */
    public Typesetter openedBy(String password) {
        return new Typesetter(fonts, Optional.of(password));
    }

    /** Finished pages, opened with {@code password} only. */
    public static byte[] locked(byte[] pdf, String password) {
        return new Lock(password).on(pdf);
    }

    /**
     * One that looks for characters its own face lacks in the fonts of {@code files}, in order.
     *
     * @param files name → bytes of TrueType files
     * @return refused with a notice for each font that cannot be read or whose maker forbids embedding
     */
    public static Outcome<Typesetter> with(SequencedMap<String, byte[]> files) {
        var added = AddedFonts.read(files);
        return Outcome.of(new Typesetter(Fonts.roboto().with(added.cuts()), Optional.empty()), added.notices());
    }

    /**
     * Sets a document.
     *
     * @return the pages; refused with a notice {@code no-glyph} for each character that no font has, and with
     *         {@code too-tall} for each part that holds something no page is high enough for
     */
    public Outcome<Pages> set(Document document) {
        var misses = new Misses(fonts);
        misses.check(Letters.clean(document.title()));
        var layout = layout(document, misses);
        var printed = new Printer(document, layout, password.isEmpty()).printed();
        var pages = password.map(secret -> new Lock(secret).on(printed)).orElse(printed);
        var notices = new ArrayList<Notice>(misses.notices(document.title()));
        layout.overfull().forEach(part -> notices.add(Notice.error("too-tall", Span.whole(document.title()),
                "part `" + part + "` holds something that is taller than a page", "shorten its words")));
        return Outcome.of(pages, notices);
    }

    private Layout layout(Document document, Misses misses) {
        var folios = Folios.UNKNOWN;
        for (int i = 0; i < MOST_LAYOUTS; i++) {
            var layout = Layout.of(document, desk(document, folios, misses));
            if (folios.fits(layout.folios())) {
                return layout;
            }
            folios = layout.folios();
        }
        throw new IllegalStateException("The page numbers in `" + document.title() + "` do not settle.");
    }

    private Desk desk(Document document, Folios folios, Misses misses) {
        return new Desk(fonts, TypeScale.of(document.print()), Stock.of(document.paper()), document.wording(), folios,
                document.print() == Print.LARGE, misses, Divisions.of(document.language()), document.heads());
    }
}
