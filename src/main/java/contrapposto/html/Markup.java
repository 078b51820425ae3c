package contrapposto.html;

import java.util.ArrayDeque;
import java.util.Deque;

/** HTML text under construction: every element that is opened is closed, every text and attribute is escaped. */
final class Markup {
    private final StringBuilder text = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /** Opens an element; {@code attributes} are name, value, name, value … */
    Markup open(String element, String... attributes) {
        start(element, attributes);
        open.push(element);
        return this;
    }

    /** An element without content. */
    Markup empty(String element, String... attributes) {
        start(element, attributes);
        return this;
    }

    Markup close() {
        text.append("</").append(open.pop()).append('>');
        return this;
    }

    Markup text(String words) {
        escape(words);
        return this;
    }

    /** An element that holds only {@code words}. */
    Markup element(String element, String words, String... attributes) {
        return open(element, attributes).text(words).close();
    }

    /** Markup that is already well formed, such as a style sheet or a drawing. */
    Markup raw(String markup) {
        text.append(markup);
        return this;
    }

    String finished() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("Still open: " + open + ".");
        }
        return text.toString();
    }

    private void start(String element, String... attributes) {
        text.append('<').append(element);
        for (int i = 0; i < attributes.length; i += 2) {
            text.append(' ').append(attributes[i]).append("=\"");
            escape(attributes[i + 1]);
            text.append('"');
        }
        text.append('>');
    }

    private void escape(String words) {
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            switch (c) {
                case '&' -> text.append("&amp;");
                case '<' -> text.append("&lt;");
                case '>' -> text.append("&gt;");
                case '"' -> text.append("&quot;");
                default -> text.append(c);
            }
        }
    }
}
