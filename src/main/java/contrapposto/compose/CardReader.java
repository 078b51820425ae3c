package contrapposto.compose;

import contrapposto.document.Badge;
import contrapposto.document.Block;
import contrapposto.document.Inline;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Exercise cards. */
final class CardReader {
    private final Slips slips;
    private final Function<Piece.Element, List<Block>> blocks;

    CardReader(Slips slips, Function<Piece.Element, List<Block>> blocks) {
        this.slips = slips;
        this.blocks = blocks;
    }

    Block.Card card(Piece.Element e) {
        slips.allow(e, "key", "number", "name");
        slips.noText(e);
        var aside = e.elements("aside").stream().findFirst().map(a -> InlineReader.read(a, slips)).orElse(List.<Inline>of());
        return new Block.Card(slips.required(e, "key"), slips.required(e, "number"), slips.required(e, "name"), aside,
                halves(e), band(e, "band-left"), band(e, "band-right"));
    }

    private List<Block> band(Piece.Element card, String name) {
        return card.elements(name).stream().flatMap(band -> blocks.apply(band).stream()).toList();
    }

    private Block.Halves halves(Piece.Element card) {
        for (Piece.Element e : card.elements()) {
            switch (e.name()) {
                case "pair" -> {
                    slips.allow(e);
                    return new Block.Halves.Pair(half(e, "left"), half(e, "right"));
                }
                case "single" -> {
                    slips.allow(e, "side");
                    var empty = only(e, "empty");
                    slips.allow(empty, "heading");
                    return new Block.Halves.Single(slips.word(e, "side", Badge.values()), half(e, "half"),
                            slips.required(empty, "heading"), blocks.apply(empty));
                }
                case "both" -> {
                    slips.allow(e);
                    return new Block.Halves.Together(half(e, "half"));
                }
                case "aside", "band-left", "band-right" -> { }
                default -> slips.unexpected(e, card);
            }
        }
        slips.add(card.span(), "the card has no halves", "write `<pair>`, `<single>` or `<both>` in it");
        return new Block.Halves.Together(new Block.Half("", "", List.of()));
    }

    private Block.Half half(Piece.Element parent, String name) {
        var e = only(parent, name);
        slips.allow(e, "heading", "order");
        return new Block.Half(slips.required(e, "heading"), slips.required(e, "order"), blocks.apply(e));
    }

    private Piece.Element only(Piece.Element parent, String name) {
        var found = parent.elements(name);
        if (found.isEmpty()) {
            slips.add(parent.span(), "`<" + parent.name() + ">` needs a `<" + name + ">`", "write it once");
        }
        return found.isEmpty() ? new Piece.Element(name, Map.of("heading", "", "order", ""), List.of(), parent.span()) : found.getFirst();
    }
}
