package contrapposto.document;

import contrapposto.figure.Drawing;
import contrapposto.figure.Tone;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A whole handout before it is set.
 *
 * @param title     of the PDF; holds no health fact when a code is used
 * @param language  BCP 47, as {@code en}
 * @param footer    left part of the footer, the same on every page
 * @param wording   the few words that only the page knows where to put
 * @param made      the day it is dated; also the PDF's creation date, so that the same spec gives the same bytes
 * @param identity  hash that becomes the file identifier
 * @param heads     the ink of heads and rules; dark, since it is read
 */
public record Document(String title, String author, String subject, String language, Paper paper, Print print,
                       List<Inline> footer, Wording wording, LocalDate made, String identity, List<Part> parts,
                       Optional<Attachment> attachment, Tone heads) {
    public Document {
        parts = List.copyOf(parts);
    }

    /** With heads and rules in black. */
    public Document(String title, String author, String subject, String language, Paper paper, Print print, List<Inline> footer, Wording wording,
                    LocalDate made, String identity, List<Part> parts, Optional<Attachment> attachment) {
        this(title, author, subject, language, paper, print, footer, wording, made, identity, parts, attachment, Tone.BLACK);
    }

    /** The same with a file inside. */
    public Document carrying(Attachment file) {
        return new Document(title, author, subject, language, paper, print, footer, wording, made, identity, parts, Optional.of(file), heads);
    }

    public enum Paper { A4, LETTER }

    public enum Print { PLAIN, LARGE }

    /**
     * Words of the document's language that stand on no block.
     *
     * @param of        between page number and page count
     * @param continued after the title of a page that goes on
     * @param left      what a screen reader says for the left pill; likewise {@code right} and {@code both}
     * @param leftLetter what stands in the left pill; likewise {@code rightLetter}
     * @param heavier   what a screen reader says for the drawn triangle
     * @param notAsked  what a screen reader says for a dash in place of a box
     */
    public record Wording(String of, String continued, String left, String right, String both, String heavier,
                          String notAsked, String leftLetter, String rightLetter) {
        /** With the letters L and R. */
        public Wording(String of, String continued, String left, String right, String both, String heavier, String notAsked) {
            this(of, continued, left, right, both, heavier, notAsked, "L", "R");
        }
    }

    /** How the sheets of a part are used: whole, or folded lengthways, a column on each half, set close and without a footer. */
    public enum Format { WHOLE, FOLDED }

    /**
     * A run of pages with a name in the footer and a bookmark.
     *
     * @param folio  prefix of the page number ("C" in coach pages), else empty
     * @param legend at the foot of every page of the part
     * @param freshSheet whether it starts on an odd page when printed on both sides
     */
    public record Part(String name, String folio, Format format, List<Block> blocks, Optional<Legend> legend,
                       boolean freshSheet) {
        public Part {
            blocks = List.copyOf(blocks);
        }
    }

    /** Small drawings with their meaning, and words at the right. */
    public record Legend(List<Item> items, String aside) {
        public record Item(Drawing drawing, double width, double height, String words) { }
    }

    /** A file inside the PDF. */
    public record Attachment(String fileName, String mimeType, byte[] bytes, String description) { }
}
