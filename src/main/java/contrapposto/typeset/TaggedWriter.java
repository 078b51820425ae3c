package contrapposto.typeset;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.openpdf.text.Document;
import org.openpdf.text.pdf.PdfBoolean;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfDocument;
import org.openpdf.text.pdf.PdfIndirectObject;
import org.openpdf.text.pdf.PdfIndirectReference;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfNumber;
import org.openpdf.text.pdf.PdfObject;
import org.openpdf.text.pdf.PdfWriter;

/** The PDF library's writer with page contents and a structure tree of our own: the library's tree costs a dictionary for each word that is read. */
final class TaggedWriter extends PdfWriter {
    private Ink ink;
    private Tags tags;

    private TaggedWriter(PdfDocument pdf, OutputStream out) {
        super(pdf, out);
    }

    /** A writer of {@code file}; open the file, then {@link #begin}. */
    static TaggedWriter of(Document file, OutputStream out) {
        var pdf = new PdfDocument();
        file.addDocListener(pdf);
        var writer = new TaggedWriter(pdf, out);
        pdf.addWriter(writer);
        return writer;
    }

    /** Begins the contents. */
    void begin() {
        var root = getPdfIndirectReference();
        ink = new Ink(this);
        tags = new Tags(ink, this, root);
    }

    Ink ink() {
        return ink;
    }

    Tags tags() {
        return tags;
    }

    /** Also gives each page the key of its marks. */
    @Override
    public PdfIndirectObject addToBody(PdfObject object, PdfIndirectReference reference) throws IOException {
        if (object instanceof PdfDictionary dictionary && dictionary.isPage()) {
            dictionary.put(new PdfName("StructParents"), new PdfNumber(tags.turn()));
        }
        return super.addToBody(object, reference);
    }

    @Override
    protected PdfDictionary getCatalog(PdfIndirectReference pages) {
        var catalog = super.getCatalog(pages);
        var marked = new PdfDictionary();
        marked.put(PdfName.MARKED, PdfBoolean.PDFTRUE);
        try {
            catalog.put(PdfName.STRUCTTREEROOT, tags.written());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        catalog.put(PdfName.MARKINFO, marked);
        return catalog;
    }
}
