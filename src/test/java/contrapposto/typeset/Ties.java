package contrapposto.typeset;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * What ties a page to the structure tree, followed both ways: from elements down to marked content and annotations, and
 * from pages up through the parent tree. ISO 32000-1, 14.7.4.4: both ways must meet.
 */
final class Ties {
    private final Map<COSBase, COSBase> annotated = new IdentityHashMap<>();
    private final Map<COSBase, Map<Integer, COSBase>> marked = new IdentityHashMap<>();
    private final Set<String> loose = new TreeSet<>();
    private int count;

    private Ties() { }

    /** What is found: the number of ties that hold, and a line for each that does not. */
    record Findings(int ties, Set<String> loose) { }

    static Findings of(PDDocument file) {
        var ties = new Ties();
        var root = file.getDocumentCatalog().getStructureTreeRoot().getCOSObject();
        ties.down(root, null, null);
        var parents = new TreeMap<Integer, COSBase>();
        flatten(root.getCOSDictionary(COSName.PARENT_TREE), parents);
        int page = 0;
        for (var sheet : file.getPages()) {
            ties.up(sheet.getCOSObject(), ++page, parents);
        }
        ties.marked.values().forEach(left -> left.forEach((id, element) -> ties.loose.add("no parent entry for content " + id)));
        ties.annotated.keySet().forEach(left -> ties.loose.add("an element ties an annotation that names another"));
        return new Findings(ties.count, ties.loose);
    }

    private void down(COSDictionary element, COSDictionary inherited, COSDictionary parent) {
        if (parent != null && element.getCOSDictionary(COSName.P) != parent) {
            loose.add("an element names another parent than the one that holds it");
        }
        var page = element.getCOSDictionary(COSName.PG) == null ? inherited : element.getCOSDictionary(COSName.PG);
        for (var kid : kids(element)) {
            if (kid instanceof COSInteger id) {
                content(page, id.intValue(), element);
            } else if (kid instanceof COSDictionary dictionary) {
                String kind = String.valueOf(dictionary.getNameAsString(COSName.TYPE));
                var own = dictionary.getCOSDictionary(COSName.PG);
                switch (kind) {
                    case "MCR" -> content(own == null ? page : own, dictionary.getInt(COSName.MCID), element);
                    case "OBJR" -> annotated.put(dictionary.getDictionaryObject(COSName.OBJ), element);
                    default -> down(dictionary, page, element);
                }
            }
        }
    }

    private void content(COSDictionary page, int id, COSBase element) {
        if (marked.computeIfAbsent(page, p -> new TreeMap<>()).put(id, element) != null) {
            loose.add("content " + id + " of a page stands twice in the tree");
        }
    }

    private static List<COSBase> kids(COSDictionary element) {
        var kid = element.getDictionaryObject(COSName.K);
        return kid instanceof COSArray array ? objects(array) : kid == null ? List.of() : List.of(kid);
    }

    private static List<COSBase> objects(COSArray array) {
        var objects = new ArrayList<COSBase>();
        for (int i = 0; i < array.size(); i++) {
            objects.add(array.getObject(i));
        }
        return objects;
    }

    private static void flatten(COSDictionary node, Map<Integer, COSBase> into) {
        var numbers = node.getCOSArray(COSName.NUMS);
        for (int i = 0; numbers != null && i + 1 < numbers.size(); i += 2) {
            into.put(numbers.getInt(i), numbers.getObject(i + 1));
        }
        var below = node.getCOSArray(COSName.KIDS);
        for (int i = 0; below != null && i < below.size(); i++) {
            flatten((COSDictionary) below.getObject(i), into);
        }
    }

    private void up(COSDictionary sheet, int page, Map<Integer, COSBase> parents) {
        var held = marked.getOrDefault(sheet, Map.of());
        if (parents.get(sheet.getInt(COSName.STRUCT_PARENTS)) instanceof COSArray elements) {
            for (int id = 0; id < elements.size(); id++) {
                meets(held.remove(id), elements.getObject(id), "page " + page + " content " + id);
            }
        } else {
            loose.add("page " + page + " has no row in the parent tree");
        }
        var annotations = sheet.getCOSArray(COSName.ANNOTS);
        for (int i = 0; annotations != null && i < annotations.size(); i++) {
            var annotation = (COSDictionary) annotations.getObject(i);
            meets(annotated.remove(annotation), parents.get(annotation.getInt(COSName.STRUCT_PARENT)),
                    "page " + page + " annotation " + i);
        }
    }

    private void meets(COSBase fromAbove, COSBase fromBelow, String place) {
        if (fromAbove != null && fromAbove == fromBelow) {
            count++;
        } else {
            loose.add(place + " does not meet its element");
        }
    }
}
