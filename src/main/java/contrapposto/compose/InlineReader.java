package contrapposto.compose;

import contrapposto.document.Inline;
import java.util.ArrayList;
import java.util.List;

/** Running text with its bold runs, signs and page numbers; white space is set as one space and none at the ends. */
final class InlineReader {
    private final Slips slips;
    private final Piece.Element parent;
    private final List<Inline> runs = new ArrayList<>();
    private boolean spacePending;
    private boolean spaceBold;

    private InlineReader(Slips slips, Piece.Element parent) {
        this.slips = slips;
        this.parent = parent;
    }

    /** All of {@code element} as running text. */
    static List<Inline> read(Piece.Element element, Slips slips) {
        return read(element, element.pieces(), slips);
    }

    /** Only {@code pieces} of {@code element}. */
    static List<Inline> read(Piece.Element element, List<Piece> pieces, Slips slips) {
        var reader = new InlineReader(slips, element);
        reader.add(pieces, false);
        return List.copyOf(reader.runs);
    }

    /** All of {@code element} as plain text; bold or signs in it are slips. */
    static String text(Piece.Element element, Slips slips) {
        element.elements().forEach(inside -> slips.unexpected(inside, element));
        var runs = read(element, element.pieces().stream().filter(Piece.Text.class::isInstance).toList(), slips);
        return runs.stream().map(run -> run instanceof Inline.Text(var text, var bold) ? text : "").reduce("", String::concat);
    }

    private void add(List<Piece> pieces, boolean bold) {
        for (Piece piece : pieces) {
            switch (piece) {
                case Piece.Text(var text) -> addText(text, bold);
                case Piece.Element element -> addElement(element, bold);
            }
        }
    }

    private void addElement(Piece.Element element, boolean bold) {
        switch (element.name()) {
            case "b" -> {
                slips.allow(element);
                add(element.pieces(), true);
            }
            case "sign" -> {
                slips.allow(element, "kind");
                addSpace();
                runs.add(new Inline.Sign(slips.word(element, "kind", Inline.Sign.Kind.values())));
            }
            case "page-of" -> {
                slips.allow(element, "part");
                addSpace();
                runs.add(new Inline.PageOf(slips.required(element, "part")));
            }
            default -> slips.unexpected(element, parent);
        }
    }

    private void addText(String text, boolean bold) {
        var words = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter == ' ' || letter == '\n' || letter == '\t' || letter == '\r') {
                spaceBold = spacePending ? spaceBold : bold;
                spacePending = spacePending || !runs.isEmpty() || !words.isEmpty();
            } else {
                if (spacePending && words.isEmpty()) {
                    addSpace();
                } else if (spacePending) {
                    words.append(' ');
                    spacePending = false;
                }
                words.append(letter);
            }
        }
        join(words.toString(), bold);
    }

    /** Adds the space that is due, in the weight of the text it was written in. */
    private void addSpace() {
        if (spacePending) {
            spacePending = false;
            join(" ", spaceBold);
        }
    }

    /** Adds to the run before it when that is of the same weight. */
    private void join(String words, boolean bold) {
        if (words.isEmpty()) {
            return;
        }
        if (!runs.isEmpty() && runs.getLast() instanceof Inline.Text(var before, var wasBold) && wasBold == bold) {
            runs.set(runs.size() - 1, new Inline.Text(before + words, bold));
        } else {
            runs.add(new Inline.Text(words, bold));
        }
    }
}
