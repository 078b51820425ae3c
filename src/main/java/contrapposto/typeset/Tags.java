package contrapposto.typeset;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import org.openpdf.text.pdf.PdfArray;
import org.openpdf.text.pdf.PdfContentByte;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfNumber;
import org.openpdf.text.pdf.PdfObject;
import org.openpdf.text.pdf.PdfRectangle;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.text.pdf.PdfStructureElement;
import org.openpdf.text.pdf.PdfStructureTreeRoot;

/**
 * Grows the structure tree while the pages are painted: elements are born in painting order, which is reading order.
 * An element holds either other elements or marked content.
 */
final class Tags {
    private static final PdfName ARTIFACT = new PdfName("Artifact");
    private static final int DEEPEST_HEADING = 6;

    private final PdfContentByte ink;
    private final PdfStructureTreeRoot root;
    private final Deque<PdfStructureElement> open = new ArrayDeque<>();
    private final Map<String, PdfName> names = new LinkedHashMap<>();
    private PdfStructureElement last;
    private int heading;

    Tags(PdfContentByte ink, PdfStructureTreeRoot root) {
        this.ink = ink;
        this.root = root;
        last = new PdfStructureElement(root, name("Document"));
        open.push(last);
    }

    private PdfName name(String name) {
        return names.computeIfAbsent(name, PdfName::new);
    }

    /** A new element under the open one, which becomes the open one. */
    PdfStructureElement begin(String type) {
        var element = new PdfStructureElement(open.peek(), name(type));
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
    PdfStructureElement leaf(String type, Runnable content) {
        begin(type);
        mark(content);
        end();
        return last;
    }

    /** Marked content right in the open element, which has no other kids. */
    void mark(Runnable content) {
        last = open.peek();
        ink.beginMarkedContentSequence(last);
        content.run();
        ink.endMarkedContentSequence();
    }

    /** More content of the leaf marked last: it goes on after a page or column break. */
    void resume(Runnable content) {
        ink.beginMarkedContentSequence(last);
        content.run();
        ink.endMarkedContentSequence();
    }

    /** Content that is not read: rules, frames, footers. */
    void artifact(Runnable content) {
        artifact("Layout", content);
    }

    void artifact(String kind, Runnable content) {
        var properties = new PdfDictionary();
        properties.put(PdfName.TYPE, name(kind));
        ink.beginMarkedContentSequence(ARTIFACT, properties, true);
        content.run();
        ink.endMarkedContentSequence();
    }

    /** The heading type for a wished level: levels are never skipped on the way down. */
    String heading(int level) {
        heading = Math.min(Math.min(level, heading + 1), DEEPEST_HEADING);
        return "H" + heading;
    }

    /** A drawing with its words; the box is on the page, in pt. */
    void figure(String alt, PdfRectangle box, Runnable content) {
        var figure = begin("Figure");
        figure.put(PdfName.ALT, text(alt));
        var layout = attributes("Layout");
        layout.put(PdfName.BBOX, box);
        layout.put(name("Placement"), name("Block"));
        figure.put(PdfName.A, layout);
        mark(content);
        end();
    }

    /** A drawn sign that is read as {@code words}. */
    void sign(String words, Runnable content) {
        begin("Span").put(PdfName.ACTUALTEXT, text(words));
        mark(content);
        end();
    }

    /** Says of the open element that it heads a column or a row, and over how many rows it stands. */
    void cell(String scope, int rows) {
        var table = attributes("Table");
        if (!scope.isEmpty()) {
            table.put(name("Scope"), name(scope));
        }
        if (rows > 1) {
            table.put(name("RowSpan"), new PdfNumber(rows));
        }
        if (table.size() > 1) {
            open.peek().put(PdfName.A, table);
        }
    }

    /** How the items of the open list are labelled. */
    void listing(String numbering) {
        var list = attributes("List");
        list.put(name("ListNumbering"), name(numbering));
        open.peek().put(PdfName.A, list);
    }

    private PdfDictionary attributes(String owner) {
        var attributes = new PdfDictionary();
        attributes.put(PdfName.O, name(owner));
        return attributes;
    }

    static PdfString text(String text) {
        return new PdfString(text, PdfObject.TEXT_UNICODE);
    }

    /** Ties an annotation on {@code page} to {@code element}, beside the marked content it may hold. */
    void tie(PdfStructureElement element, PdfDictionary annotation, PdfObject reference, PdfObject page) {
        var object = new PdfDictionary(name("OBJR"));
        object.put(name("Obj"), reference);
        object.put(PdfName.PG, page);
        PdfObject content = element.get(PdfName.K);
        if (content == null) {
            element.put(PdfName.K, object);
        } else {
            var kids = new PdfArray(content);
            kids.add(object);
            element.put(PdfName.K, kids);
        }
        annotation.put(name("StructParent"), new PdfNumber(root.addExistingObject(element.getReference())));
    }
}
