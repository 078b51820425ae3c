package contrapposto.returns;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.InflaterInputStream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;

/** The solved plan that travels inside a handout. */
final class Attachment {
    private static final String ENDING = "plan.yaml";
    private static final int MOST_BYTES = 5_000_000;
    private static final int MOST_DEPTH = 8;

    private Attachment() { }

    /** The bytes of the attached file whose name ends in {@code plan.yaml}; empty without one that can be read. */
    static Optional<byte[]> plan(PDDocument pdf) {
        try {
            var names = Optional.ofNullable(pdf.getDocumentCatalog().getNames()).map(n -> n.getEmbeddedFiles());
            var files = new TreeMap<String, PDComplexFileSpecification>();
            if (names.isPresent()) {
                collect(names.get(), files, 0);
            }
            var plan = files.entrySet().stream().filter(e -> e.getKey().endsWith(ENDING)).map(Map.Entry::getValue).findFirst();
            return plan.isPresent() && plan.get().getEmbeddedFile() != null
                    ? bytes(plan.get().getEmbeddedFile().getCOSObject()) : Optional.empty();
        } catch (IOException | RuntimeException broken) {
            return Optional.empty();
        }
    }

    private static void collect(PDNameTreeNode<PDComplexFileSpecification> node, Map<String, PDComplexFileSpecification> into, int depth)
            throws IOException {
        Optional.ofNullable(node.getNames()).ifPresent(into::putAll);
        if (depth < MOST_DEPTH && node.getKids() != null) {
            for (var kid : node.getKids()) {
                collect(kid, into, depth + 1);
            }
        }
    }

    private static Optional<byte[]> bytes(COSStream stream) throws IOException {
        boolean deflated = COSName.FLATE_DECODE.equals(stream.getFilters());
        if (!deflated && stream.getFilters() != null) {
            return Optional.empty();
        }
        try (InputStream raw = stream.createRawInputStream(); InputStream in = deflated ? new InflaterInputStream(raw) : raw) {
            var bytes = in.readNBytes(MOST_BYTES + 1);
            return bytes.length > MOST_BYTES ? Optional.empty() : Optional.of(bytes);
        }
    }
}
