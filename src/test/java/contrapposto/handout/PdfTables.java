package contrapposto.handout;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/**
 * A PDF read back through its structure tree, as a screen reader would: elements with their kind, text, alternative
 * text and kids, in reading order. Knows nothing of how the file was made.
 */
public final class PdfTables {
    /** One structure element; {@code text} is that of all it holds, in order. */
    public record Element(String kind, String text, String alt, List<Element> kids) {
        public List<Element> all(String wanted) {
            var found = new ArrayList<Element>();
            collect(wanted, found);
            return found;
        }

        private void collect(String wanted, List<Element> found) {
            if (kind.equals(wanted)) {
                found.add(this);
            }
            kids.forEach(kid -> kid.collect(wanted, found));
        }
    }

    private PdfTables() { }

    /** The whole tree under one root. */
    public static Element read(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            var texts = new LinkedHashMap<COSDictionary, Map<Integer, String>>();
            for (PDPage page : document.getPages()) {
                var extractor = new PDFMarkedContentExtractor();
                extractor.processPage(page);
                var byId = new LinkedHashMap<Integer, String>();
                extractor.getMarkedContents().forEach(content -> gather(content, byId));
                texts.put(page.getCOSObject(), byId);
            }
            return element(document.getDocumentCatalog().getStructureTreeRoot(), "Root", "", null, texts);
        }
    }

    private static void gather(PDMarkedContent content, Map<Integer, String> byId) {
        var text = new StringBuilder();
        for (Object part : content.getContents()) {
            switch (part) {
                case TextPosition position -> text.append(position.getUnicode());
                case PDMarkedContent inner -> gather(inner, byId);
                default -> { }
            }
        }
        if (content.getMCID() >= 0) {
            byId.merge(content.getMCID(), text.toString(), String::concat);
        }
    }

    private static Element element(PDStructureNode node, String kind, String alt, COSDictionary page,
                                   Map<COSDictionary, Map<Integer, String>> texts) {
        var text = new StringBuilder();
        var kids = new ArrayList<Element>();
        COSDictionary here = node instanceof PDStructureElement e && e.getPage() != null ? e.getPage().getCOSObject() : page;
        for (Object kid : node.getKids()) {
            switch (kid) {
                case Integer id -> text.append(texts.getOrDefault(here, Map.of()).getOrDefault(id, ""));
                case PDMarkedContentReference reference -> {
                    var where = reference.getPage() == null ? here : reference.getPage().getCOSObject();
                    text.append(texts.getOrDefault(where, Map.of()).getOrDefault(reference.getMCID(), ""));
                }
                case PDStructureElement inner -> {
                    var read = element(inner, inner.getStructureType(), inner.getAlternateDescription(), here, texts);
                    kids.add(read);
                    text.append(block(read.kind()) && !text.isEmpty() ? " " : "").append(read.text());
                }
                default -> { }
            }
        }
        return new Element(kind, text.toString(), alt == null ? "" : alt, List.copyOf(kids));
    }

    private static boolean block(String kind) {
        return !kind.equals("Span") && !kind.equals("Link");
    }
}
