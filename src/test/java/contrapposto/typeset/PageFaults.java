package contrapposto.typeset;

import contrapposto.document.Document;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/** What breaks the rules of a page in a finished file, found by reading it back. */
public final class PageFaults {
    private final PDDocument file;
    private final Stock stock;
    private final double floor;
    private final boolean folded;
    private final Set<String> found = new TreeSet<>();

    private PageFaults(PDDocument file, Stock stock, double floor, boolean folded) {
        this.file = file;
        this.stock = stock;
        this.floor = floor;
        this.folded = folded;
    }

    /** @param folded whether its pages are folded lengthways, each half with margins of its own */
    public static Set<String> of(byte[] pdf, Document.Paper paper, double floor, boolean folded) throws IOException {
        try (var file = Loader.loadPDF(pdf)) {
            var faults = new PageFaults(file, Stock.of(paper), floor, folded);
            for (int page = 1; page <= file.getNumberOfPages(); page++) {
                faults.letters(page);
                faults.heads(page);
                for (String faint : Inks.faint(file.getPage(page - 1))) {
                    faults.found.add("page " + page + ": " + faint);
                }
            }
            faults.walk(file.getDocumentCatalog().getStructureTreeRoot().getCOSObject(), null);
            return faults.found;
        }
    }

    private void letters(int page) throws IOException {
        var runs = Letterpress.of(file, page);
        for (int i = 0; i < runs.size(); i++) {
            var run = runs.get(i);
            String where = "page " + page + ": `" + run.text() + "` ";
            if (run.size() < floor) {
                found.add(where + "is set in " + run.size() + " pt");
            }
            if (outside(run)) {
                found.add(where + "runs out of the margins, from " + run.left() + " to " + run.right() + " at " + run.bottom());
            }
            for (int k = i + 1; k < runs.size(); k++) {
                if (run.overlaps(runs.get(k)) && !run.isTwin(runs.get(k))) {
                    found.add(where + "lies under `" + runs.get(k).text() + "`");
                }
            }
        }
    }

    private boolean outside(Letterpress.Run run) {
        if (folded) {
            double fold = stock.width() / 2;
            boolean right = run.left() > fold;
            return run.left() < (right ? fold + 5 : 5) || run.right() > (right ? stock.width() - 5 : fold - 5)
                    || run.top() < 5 || run.bottom() > stock.height() - 5;
        }
        return run.left() < stock.margin() - 0.1 || run.right() > stock.margin() + Stock.MEASURE + 0.1
                || run.top() < stock.top() - 0.1 || run.bottom() > stock.folio() + 0.01;
    }

    /** A heading with nothing below it on its page stands alone. */
    private void heads(int page) throws IOException {
        var extractor = new PDFMarkedContentExtractor();
        extractor.processPage(file.getPage(page - 1));
        var heads = new ArrayList<List<TextPosition>>();
        double lowest = 0;
        for (var content : extractor.getMarkedContents()) {
            var letters = content.getContents().stream().filter(TextPosition.class::isInstance).map(TextPosition.class::cast).toList();
            if (letters.isEmpty() || content.getTag().equals("Artifact")) {
                continue;
            }
            if (content.getTag().matches("H[1-6]")) {
                heads.add(letters);
            } else {
                lowest = Math.max(lowest, letters.getLast().getYDirAdj());
            }
        }
        for (var head : heads) {
            if (head.getLast().getYDirAdj() > lowest + 1) {
                found.add("page " + page + ": nothing stands below the heading `" + text(head) + "`");
            }
        }
    }

    private static String text(List<TextPosition> letters) {
        return letters.stream().map(TextPosition::getUnicode).reduce("", String::concat);
    }

    /** The pages of an element's content; rows, and cards with figures, lie on one, and tables begin with heads. */
    private Set<COSDictionary> walk(COSDictionary element, COSDictionary inherited) {
        var page = element.getCOSDictionary(COSName.PG) == null ? inherited : element.getCOSDictionary(COSName.PG);
        var pages = new HashSet<COSDictionary>();
        for (var kid : kids(element)) {
            if (kid instanceof COSInteger) {
                pages.add(page);
            } else if (kid instanceof COSDictionary inner) {
                String type = inner.getNameAsString(COSName.TYPE);
                var own = inner.getCOSDictionary(COSName.PG);
                if ("MCR".equals(type) || "OBJR".equals(type)) {
                    pages.add(own == null ? page : own);
                } else {
                    pages.addAll(walk(inner, page));
                }
            }
        }
        String kind = String.valueOf(element.getNameAsString(COSName.S));
        if (pages.size() > 1 && (kind.equals("TR") || kind.equals("Sect") && has(element, "Figure"))) {
            found.add("a " + (kind.equals("TR") ? "row" : "card") + " is split over " + pages.size() + " pages");
        }
        if (kind.equals("Table") && !has((COSDictionary) kids(element).getFirst(), "TH")) {
            found.add("a table begins without heads");
        }
        return pages;
    }

    private static boolean has(COSDictionary element, String kind) {
        return kids(element).stream().anyMatch(kid -> kid instanceof COSDictionary inner
                && (kind.equals(inner.getNameAsString(COSName.S)) || has(inner, kind)));
    }

    private static List<COSBase> kids(COSDictionary element) {
        return switch (element.getDictionaryObject(COSName.K)) {
            case null -> List.of();
            case COSArray array -> {
                var list = new ArrayList<COSBase>();
                for (int i = 0; i < array.size(); i++) {
                    list.add(array.getObject(i));
                }
                yield list;
            }
            case COSBase one -> List.of(one);
        };
    }
}
