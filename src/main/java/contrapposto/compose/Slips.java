package contrapposto.compose;

import contrapposto.notice.Notice;
import contrapposto.notice.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** What is wrong with the output of a template, collected in order; each slip carries the template's line. */
final class Slips {
    private final List<Notice> found = new ArrayList<>();

    List<Notice> found() {
        return List.copyOf(found);
    }

    void add(Span span, String message, String hint) {
        found.add(Notice.error("template-slip", span, message, hint));
    }

    /** The attribute {@code name}; a slip and the empty string when it is missing. */
    String required(Piece.Element element, String name) {
        if (element.attribute(name).isEmpty()) {
            add(element.span(), "`<" + element.name() + ">` lacks `" + name + "`", "write `" + name + "=\"…\"` in that element");
        }
        return element.attribute(name).orElse("");
    }

    /** The attribute {@code name} as a number of millimetres or a share; a slip and 0 when it is none. */
    double number(Piece.Element element, String name) {
        String text = required(element, name);
        try {
            return text.isEmpty() ? 0 : Double.parseDouble(text);
        } catch (NumberFormatException none) {
            add(element.span(), "`" + name + "=\"" + text + "\"` is not a number", "write a number such as `14.5`");
            return 0;
        }
    }

    /** The attribute {@code name} as one of {@code values}, written in lower case with hyphens; a slip and the first when it is none. */
    <E extends Enum<E>> E word(Piece.Element element, String name, E[] values) {
        String text = required(element, name);
        for (E value : values) {
            if (Values.word(value).equals(text)) {
                return value;
            }
        }
        if (!text.isEmpty()) {
            add(element.span(), "`" + name + "=\"" + text + "\"` is not known",
                    "write one of " + Arrays.stream(values).map(v -> "`" + Values.word(v) + "`").collect(Collectors.joining(", ")));
        }
        return values[0];
    }

    /** Notes each attribute that {@code element} may not have. */
    void allow(Piece.Element element, String... names) {
        var known = Arrays.asList(names);
        element.attributes().keySet().stream().filter(a -> !known.contains(a))
                .forEach(a -> add(element.span(), "`<" + element.name() + ">` has no `" + a + "`",
                        known.isEmpty() ? "remove it" : "it may have " + String.join(", ", known)));
    }

    /** Notes text that stands where only elements may. */
    void noText(Piece.Element element) {
        if (element.hasText()) {
            add(element.span(), "text stands directly in `<" + element.name() + ">`", "put it in one of its elements");
        }
    }

    void unexpected(Piece.Element element, Piece.Element parent) {
        add(element.span(), "`<" + element.name() + ">` cannot stand in `<" + parent.name() + ">`",
                "see the list of elements in templates/README.md");
    }
}
