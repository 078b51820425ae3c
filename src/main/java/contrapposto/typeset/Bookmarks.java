package contrapposto.typeset;

import org.openpdf.text.pdf.PdfDestination;
import org.openpdf.text.pdf.PdfOutline;
import org.openpdf.text.pdf.PdfWriter;

/** The list of parts, and under each its titles, cards and tables. */
final class Bookmarks {
    private final PdfWriter writer;
    private final double height;
    private PdfOutline part;

    /** @param height of the paper, mm */
    Bookmarks(PdfWriter writer, double height) {
        this.writer = writer;
        this.height = height;
        part = writer.getRootOutline();
    }

    void part(String name) {
        part = new PdfOutline(writer.getRootOutline(), new PdfDestination(PdfDestination.FIT), name);
    }

    /** @param y of its top on the page in hand, mm from the upper edge */
    void section(String name, double y) {
        var place = new PdfDestination(PdfDestination.XYZ, 0, Pen.pt(height - y), 0);
        new PdfOutline(part, place, name, false);
    }
}
