package contrapposto.typeset;

import java.io.IOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/** Reads a tagged PDF back through PDFBox: the structure tree with its text, and what lies outside it. */
final class ReadBack implements AutoCloseable {
    private static final Set<String> PAINTING = Set.of("Tj", "TJ", "'", "\"", "S", "s", "f", "F", "f*", "B", "B*", "b",
            "b*", "Do", "sh");

    final PDDocument file;
    private final Map<COSDictionary, Map<Integer, String>> texts = new IdentityHashMap<>();

    /** An element with its kids; text stands in elements of marked content. */
    record Element(String type, String text, List<Element> kids) {
        /** All text below, in order. */
        String allText() {
            var all = new StringBuilder(text);
            kids.forEach(kid -> all.append(all.isEmpty() ? "" : " | ").append(kid.allText()));
            return all.toString();
        }

        List<Element> all(String wanted) {
            var found = new ArrayList<Element>();
            if (type.equals(wanted)) {
                found.add(this);
            }
            kids.forEach(kid -> found.addAll(kid.all(wanted)));
            return found;
        }
    }

    ReadBack(byte[] pdf) throws IOException {
        file = Loader.loadPDF(pdf);
        for (var page : file.getPages()) {
            var extractor = new PDFMarkedContentExtractor();
            extractor.processPage(page);
            var byNumber = new LinkedHashMap<Integer, String>();
            collect(extractor.getMarkedContents(), byNumber);
            texts.put(page.getCOSObject(), byNumber);
        }
    }

    private static void collect(List<PDMarkedContent> contents, Map<Integer, String> byNumber) {
        for (var content : contents) {
            var text = new StringBuilder();
            for (var item : content.getContents()) {
                if (item instanceof TextPosition position) {
                    text.append(position.getUnicode());
                }
            }
            byNumber.put(content.getMCID(), text.toString());
        }
    }

    Element tree() {
        return element(file.getDocumentCatalog().getStructureTreeRoot().getCOSObject(), null);
    }

    private Element element(COSDictionary element, COSDictionary inherited) {
        var page = element.getCOSDictionary(COSName.PG) == null ? inherited : element.getCOSDictionary(COSName.PG);
        var text = new StringBuilder();
        var kids = new ArrayList<Element>();
        for (var kid : kids(element)) {
            if (kid instanceof COSInteger number) {
                text.append(texts.get(page).get(number.intValue()));
            } else if (kid instanceof COSDictionary dictionary) {
                String kind = dictionary.getNameAsString(COSName.TYPE);
                if ("MCR".equals(kind)) {
                    var own = dictionary.getCOSDictionary(COSName.PG);
                    text.append(texts.get(own == null ? page : own).get(dictionary.getInt(COSName.MCID)));
                } else if (!"OBJR".equals(kind)) {
                    kids.add(element(dictionary, page));
                }
            }
        }
        return new Element(String.valueOf(element.getNameAsString(COSName.S)), text.toString(), kids);
    }

    private static List<COSBase> kids(COSDictionary element) {
        var list = new ArrayList<COSBase>();
        switch (element.getDictionaryObject(COSName.K)) {
            case null -> { }
            case COSArray array -> {
                for (int i = 0; i < array.size(); i++) {
                    list.add(array.getObject(i));
                }
            }
            case COSBase one -> list.add(one);
        }
        return list;
    }

    /** What breaks the rule that each painting operator lies in exactly one marked content, read or artifact. */
    Set<String> strays() throws IOException {
        var strays = new TreeSet<String>();
        int number = 0;
        for (PDPage page : file.getPages()) {
            number++;
            int depth = 0;
            for (Object token : new PDFStreamParser(page).parse()) {
                if (token instanceof Operator operator) {
                    String name = operator.getName();
                    depth += name.equals("BDC") || name.equals("BMC") ? 1 : name.equals("EMC") ? -1 : 0;
                    if (depth == 0 && PAINTING.contains(name)) {
                        strays.add("page " + number + " paints " + name + " outside");
                    }
                    if (depth > 1) {
                        strays.add("page " + number + " nests marked content");
                    }
                }
            }
        }
        return strays;
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
