package contrapposto.typeset;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.openpdf.text.pdf.PdfIndirectReference;
import org.openpdf.text.pdf.PdfObject;
import org.openpdf.text.pdf.PdfWriter;

/**
 * An element of the structure tree; a file holds thousands, so each writes itself without dictionaries. It holds other elements, or marked content, or
 * annotations, or both of these.
 */
final class Element extends PdfObject {
    private final int parent;
    private final String tag;
    private final PdfIndirectReference reference;
    private final Bytes desk;
    private final List<Element> kids = new ArrayList<>(0);
    private final List<Content> contents = new ArrayList<>(1);
    private Bytes attributes = Bytes.NONE;
    private String alt = "";
    private String actual = "";

    /** What an element shows: marked content of a page, or an annotation there. */
    private record Content(int page, int number, boolean annotation) { }

    /** @param parent number of the object it hangs from, {@code desk} where all elements of a tree are written before they go out */
    Element(int parent, String tag, PdfIndirectReference reference, Bytes desk) {
        super(DICTIONARY);
        this.parent = parent;
        this.tag = tag;
        this.reference = reference;
        this.desk = desk;
    }

    /** A new element in it. */
    Element kid(String tag, PdfWriter writer) {
        var kid = new Element(number(), tag, writer.getPdfIndirectReference(), desk);
        kids.add(kid);
        return kid;
    }

    /** Its structure type. */
    String tag() {
        return tag;
    }

    PdfIndirectReference reference() {
        return reference;
    }

    int number() {
        return reference.getNumber();
    }

    /** @param page object number of the page, {@code mark} of the content on it */
    void marks(int page, int mark) {
        contents.add(new Content(page, mark, false));
    }

    /** @param annotation its object number */
    void holds(int page, int annotation) {
        contents.add(new Content(page, annotation, true));
    }

    /** @param attributes a dictionary, written */
    void says(Bytes attributes) {
        this.attributes = attributes;
    }

    /** @param words read in place of a drawing */
    void alt(String words) {
        alt = words;
    }

    /** @param words read in place of what is shown */
    void actual(String words) {
        actual = words;
    }

    /** Its kids, then itself. */
    void addTo(PdfWriter writer) throws IOException {
        for (var kid : kids) {
            kid.addTo(writer);
        }
        writer.addToBody(this, reference);
    }

    @Override
    public void toPdf(PdfWriter writer, OutputStream out) throws IOException {
        var to = desk;
        to.clear();
        to.ascii("<<");
        if (!actual.isEmpty()) {
            to.ascii("/ActualText").text(actual);
        }
        to.ascii("/P ").reference(parent);
        if (attributes.size() > 0) {
            to.ascii("/A").put(attributes);
        }
        to.ascii("/S/").ascii(tag);
        if (!contents.isEmpty() && !contents.getFirst().annotation()) {
            to.ascii("/Pg ").reference(contents.getFirst().page());
        }
        to.ascii("/Type/StructElem");
        if (!alt.isEmpty()) {
            to.ascii("/Alt").text(alt);
        }
        if (!kids.isEmpty() || !contents.isEmpty()) {
            to.ascii("/K");
            held(to);
        }
        to.ascii(">>").writeTo(out);
    }

    private void held(Bytes to) {
        boolean several = kids.size() + contents.size() > 1;
        if (several || !kids.isEmpty()) {
            to.put('[');
            for (int i = 0; i < kids.size(); i++) {
                to.ascii(i > 0 ? " " : "").reference(kids.get(i).number());
            }
            for (int i = 0; i < contents.size(); i++) {
                content(contents.get(i), i == 0, to);
            }
            to.put(']');
        } else {
            to.ascii(contents.getFirst().annotation() ? "" : " ");
            content(contents.getFirst(), true, to);
        }
    }

    /** @param first whose page is the element's own */
    private static void content(Content content, boolean first, Bytes to) {
        if (content.annotation()) {
            to.ascii("<</Pg ").reference(content.page()).ascii("/Type/OBJR/Obj ").reference(content.number()).ascii(">>");
        } else if (first) {
            to.whole(content.number());
        } else {
            to.ascii("<</Pg ").reference(content.page()).ascii("/Type/MCR/MCID ").whole(content.number()).ascii(">>");
        }
    }
}
