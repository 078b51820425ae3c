package contrapposto.compose;

import contrapposto.document.Document;
import contrapposto.document.Inline;
import contrapposto.figure.Drawing;
import java.util.List;
import java.util.Map;

/** The outermost element, {@code <handout>}, with its footer and its parts. */
final class DocumentReader {
    private final Slips slips;
    private final BlockReader blocks;

    DocumentReader(Map<String, Drawing> drawings, Slips slips) {
        this.slips = slips;
        this.blocks = new BlockReader(drawings, slips);
    }

    /** What a template alone decides of a document. */
    record Written(String title, String subject, List<Inline> footer, List<Document.Part> parts) { }

    Written read(Piece.Element root) {
        slips.allow(root, "title", "subject");
        slips.noText(root);
        if (!root.name().equals("handout")) {
            slips.add(root.span(), "the outermost element is `<" + root.name() + ">`", "begin with `<handout>`");
        }
        root.elements().stream().filter(e -> !List.of("footer", "part").contains(e.name())).forEach(e -> slips.unexpected(e, root));
        var footer = root.elements("footer").stream().findFirst().map(f -> InlineReader.read(f, slips)).orElse(List.<Inline>of());
        return new Written(slips.required(root, "title"), slips.required(root, "subject"), footer,
                root.elements("part").stream().map(this::part).toList());
    }

    private Document.Part part(Piece.Element e) {
        slips.allow(e, "name", "folio", "format", "fresh");
        var content = new Piece.Element(e.name(), e.attributes(), e.pieces().stream()
                .filter(p -> !(p instanceof Piece.Element inside && inside.name().equals("legend"))).toList(), e.span());
        var format = e.attribute("format").isPresent() ? slips.word(e, "format", Document.Format.values()) : Document.Format.WHOLE;
        return new Document.Part(slips.required(e, "name"), e.attribute("folio").orElse(""), format, blocks.blocks(content),
                e.elements("legend").stream().findFirst().map(this::legend), e.attribute("fresh").filter("yes"::equals).isPresent());
    }

    private Document.Legend legend(Piece.Element e) {
        slips.allow(e, "aside");
        slips.noText(e);
        return new Document.Legend(e.elements().stream().map(item -> {
            slips.allow(item, "drawing", "width", "height");
            return new Document.Legend.Item(blocks.drawing(item), slips.number(item, "width"), slips.number(item, "height"),
                    InlineReader.text(item, slips));
        }).toList(), e.attribute("aside").orElse(""));
    }
}
