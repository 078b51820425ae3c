package contrapposto.typeset;

import java.io.IOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDObjectReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/** A finished file as a screen reader goes through it: the words of each part along the structure tree, with the signs of {@link IntendedOrder}. */
final class SpokenOrder {
    private final Map<COSDictionary, Map<Integer, String>> texts = new IdentityHashMap<>();
    private final List<List<String>> parts = new ArrayList<>();
    private List<String> words = new ArrayList<>();
    private final StringBuilder open = new StringBuilder();

    private SpokenOrder() { }

    /** @return words of each part, in order */
    static List<List<String>> of(byte[] pdf) throws IOException {
        var spoken = new SpokenOrder();
        try (var file = Loader.loadPDF(pdf)) {
            for (var page : file.getPages()) {
                var extractor = new PDFMarkedContentExtractor();
                extractor.processPage(page);
                var byNumber = new LinkedHashMap<Integer, String>();
                extractor.getMarkedContents().forEach(content -> gather(content, byNumber));
                spoken.texts.put(page.getCOSObject(), byNumber);
            }
            spoken.walk(file.getDocumentCatalog().getStructureTreeRoot(), null);
        }
        return spoken.parts;
    }

    private static void gather(PDMarkedContent content, Map<Integer, String> byNumber) {
        byNumber.merge(content.getMCID(), text(content), String::concat);
    }

    private static String text(PDMarkedContent content) {
        if (content.getActualText() != null) {
            return content.getActualText();
        }
        var text = new StringBuilder();
        for (Object part : content.getContents()) {
            switch (part) {
                case TextPosition position -> text.append(position.getUnicode().replace(Character.toString(Divisions.MARK), ""));
                case PDMarkedContent inner -> text.append(text(inner));
                default -> { }
            }
        }
        return text.toString();
    }

    private void walk(PDStructureNode node, COSDictionary inherited) throws IOException {
        var page = node instanceof PDStructureElement e && e.getPage() != null ? e.getPage().getCOSObject() : inherited;
        for (Object kid : node.getKids()) {
            switch (kid) {
                case Integer number -> open.append(texts.get(page).getOrDefault(number, ""));
                case PDMarkedContentReference reference -> {
                    var where = reference.getPage() == null ? page : reference.getPage().getCOSObject();
                    open.append(texts.get(where).getOrDefault(reference.getMCID(), ""));
                }
                case PDObjectReference reference -> tip(reference);
                case PDStructureElement element -> element(element, page);
                default -> { }
            }
        }
    }

    private void tip(PDObjectReference reference) {
        var field = (COSDictionary) reference.getReferencedObject().getCOSObject();
        if ("Widget".equals(field.getNameAsString(COSName.SUBTYPE))) {
            open.append(field.getString(COSName.TU));
        }
    }

    private void element(PDStructureElement element, COSDictionary page) throws IOException {
        String kind = element.getStructureType();
        if (!List.of("Span", "Link").contains(kind)) {
            close();
        }
        switch (kind) {
            case "H1", "H2", "H3", "H4", "H5", "H6" -> words.add(IntendedOrder.HEAD);
            case "LI" -> words.add(IntendedOrder.ITEM);
            case "TR" -> words.add(IntendedOrder.ROW);
            case "Form" -> words.add(IntendedOrder.FIELD);
            case "Figure" -> words.add(IntendedOrder.FIGURE);
            default -> { }
        }
        if (kind.equals("TH") || kind.equals("TD")) {
            int before = words.size();
            walk(element, page);
            close();
            if (words.size() > before) {
                words.add(before, IntendedOrder.CELL);
            }
        } else if (kind.equals("Link")) {
            open.append(" ").append(IntendedOrder.PAGE).append(" ");
        } else if (element.getAlternateDescription() != null || element.getActualText() != null) {
            open.append(element.getActualText() != null ? element.getActualText() : element.getAlternateDescription());
        } else {
            walk(element, page);
        }
        if (!List.of("Span", "Link").contains(kind)) {
            close();
        }
        if (kind.matches("H[1-6]") || kind.equals("TR")) {
            words.add(IntendedOrder.END);
        }
        if (kind.equals("Part")) {
            parts.add(IntendedOrder.pieces(words));
            words = new ArrayList<>();
        }
    }

    private void close() {
        words.addAll(IntendedOrder.split(open.toString()));
        open.setLength(0);
    }
}
