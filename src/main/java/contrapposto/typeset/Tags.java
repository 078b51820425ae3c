package contrapposto.typeset;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.openpdf.text.pdf.PdfArray;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfIndirectReference;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfNumberTree;
import org.openpdf.text.pdf.PdfObject;
import org.openpdf.text.pdf.PdfRectangle;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.text.pdf.PdfWriter;

/**
 * Grows the structure tree while the pages are painted: elements are born in painting order, which is reading order.
 * An element holds either other elements or marked content.
 */
final class Tags {
    private static final int DEEPEST_HEADING = 6;

    private final Ink ink;
    private final PdfWriter writer;
    private final PdfIndirectReference root;
    private final Element document;
    private final Deque<Element> open = new ArrayDeque<>();
    /** Which element a key belongs to: one for each annotation, and for each page one for all of its marks. */
    private final List<PdfObject> keys = new ArrayList<>();
    private Marks marks = new Marks();
    private Element last;
    private int heading;

    /** @param root of the tree, an object of the file that is still to be written */
    Tags(Ink ink, PdfWriter writer, PdfIndirectReference root) {
        this.ink = ink;
        this.writer = writer;
        this.root = root;
        document = new Element(root.getNumber(), "Document", writer.getPdfIndirectReference(), new Bytes(512));
        last = document;
        open.push(document);
    }

    /** The elements of the marks on one page, in their order. */
    private static final class Marks extends PdfObject {
        private final List<Element> elements = new ArrayList<>();
        private int key = -1;

        Marks() {
            super(ARRAY);
        }

        @Override
        public void toPdf(PdfWriter writer, OutputStream out) throws IOException {
            var to = new Bytes(16 + 10 * elements.size());
            to.put('[');
            for (int i = 0; i < elements.size(); i++) {
                to.ascii(i > 0 ? " " : "").reference(elements.get(i).number());
            }
            to.put(']').writeTo(out);
        }
    }

    /** The key of the page in hand, under which its marks are found. */
    private int key() {
        if (marks.key < 0) {
            marks.key = keys.size();
            keys.add(marks);
        }
        return marks.key;
    }

    /** Ends the page in hand; its key. */
    int turn() {
        int key = key();
        marks = new Marks();
        return key;
    }

    /** Writes the whole tree; call it once, after the last page. */
    PdfIndirectReference written() throws IOException {
        Map<Integer, PdfObject> parents = new TreeMap<>();
        for (int key = 0; key < keys.size(); key++) {
            parents.put(key, keys.get(key) instanceof Marks of ? writer.addToBody(of).getIndirectReference() : keys.get(key));
        }
        var tree = new PdfDictionary(PdfName.STRUCTTREEROOT);
        tree.put(PdfName.PARENTTREE, writer.addToBody(PdfNumberTree.writeTree(parents, writer)).getIndirectReference());
        document.addTo(writer);
        tree.put(PdfName.K, new PdfArray(document.reference()));
        writer.addToBody(tree, root);
        return root;
    }

    /** A new element under the open one, which becomes the open one. */
    Element begin(String type) {
        var element = open.getFirst().kid(type, writer);
        open.push(element);
        return element;
    }

    void end() {
        open.pop();
    }

    void within(String type, Runnable content) {
        begin(type);
        content.run();
        end();
    }

    /** An element of marked content. */
    Element leaf(String type, Runnable content) {
        begin(type);
        mark(content);
        end();
        return last;
    }

    /** Marked content right in the open element, which has no other kids. */
    void mark(Runnable content) {
        last = open.getFirst();
        resume(content);
    }

    /** More content of the leaf marked last: it goes on after a page or column break. */
    void resume(Runnable content) {
        key();
        int number = marks.elements.size();
        marks.elements.add(last);
        last.marks(page().getNumber(), number);
        ink.mark(last.tag(), number);
        content.run();
        ink.operator("EMC");
    }

    /** What is read in passing: the leaf marked before it may still go on after it. */
    void passing(Runnable content) {
        var before = last;
        content.run();
        last = before;
    }

    private PdfIndirectReference page() {
        return writer.getPageReference(writer.getPageNumber());
    }

    /** Content that is not read: rules, frames, footers. */
    void artifact(Runnable content) {
        artifact("Layout", content);
    }

    void artifact(String kind, Runnable content) {
        ink.artifact(kind);
        content.run();
        ink.operator("EMC");
    }

    /** The heading type for a wished level: levels are never skipped on the way down. */
    String heading(int level) {
        heading = Math.min(Math.min(level, heading + 1), DEEPEST_HEADING);
        return "H" + heading;
    }

    /** A drawing with its words; the box is on the page, in pt. */
    void figure(String alt, PdfRectangle box, Runnable content) {
        var figure = begin("Figure");
        figure.alt(alt);
        figure.says(new Bytes(80).ascii("<</O/Layout/BBox").box(box.left(), box.bottom(), box.right(), box.top()).ascii("/Placement/Block>>"));
        mark(content);
        end();
    }

    /** A drawn sign that is read as {@code words}. */
    void sign(String words, Runnable content) {
        begin("Span").actual(words);
        mark(content);
        end();
    }

    /** Says of the open element that it heads a column or a row, and over how many rows it stands. */
    void cell(String scope, int rows) {
        var said = new Bytes(48).ascii("<</O/Table");
        if (!scope.isEmpty()) {
            said.ascii("/Scope/").ascii(scope);
        }
        if (rows > 1) {
            said.ascii("/RowSpan ").whole(rows);
        }
        if (!scope.isEmpty() || rows > 1) {
            open.getFirst().says(said.ascii(">>"));
        }
    }

    /** How the items of the open list are labelled. */
    void listing(String numbering) {
        open.getFirst().says(new Bytes(48).ascii("<</O/List/ListNumbering/").ascii(numbering).ascii(">>"));
    }

    static PdfString text(String text) {
        return new PdfString(text, PdfObject.TEXT_UNICODE);
    }

    /** Ties an annotation on the page in hand to {@code element}, beside the marked content it may hold; its key among the annotations. */
    int tie(Element element, PdfIndirectReference annotation) {
        element.holds(page().getNumber(), annotation.getNumber());
        keys.add(element.reference());
        return keys.size() - 1;
    }
}
