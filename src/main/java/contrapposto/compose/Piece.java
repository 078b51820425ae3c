package contrapposto.compose;

import contrapposto.notice.Span;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A piece of what a template wrote: running text, or an element with the template line it was written on.
 */
sealed interface Piece {
    record Text(String text) implements Piece { }

    /**
     * @param attributes in the order written, without the mark of the line
     * @param span       the place in the template
     */
    record Element(String name, Map<String, String> attributes, List<Piece> pieces, Span span) implements Piece {
        public Element {
            pieces = List.copyOf(pieces);
        }

        Optional<String> attribute(String wanted) {
            return Optional.ofNullable(attributes.get(wanted));
        }

        /** The elements among its pieces, in order. */
        List<Element> elements() {
            return pieces.stream().filter(Element.class::isInstance).map(Element.class::cast).toList();
        }

        List<Element> elements(String wanted) {
            return elements().stream().filter(e -> e.name().equals(wanted)).toList();
        }

        /** Whether some text other than white space stands directly in it. */
        boolean hasText() {
            return pieces.stream().anyMatch(p -> p instanceof Text(var text) && !text.isBlank());
        }
    }
}
