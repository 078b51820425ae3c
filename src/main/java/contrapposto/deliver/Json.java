package contrapposto.deliver;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Plain trees to JSON text (RFC 8259): {@link Map} with string keys in their order, {@link List}, text, numbers, truth values. */
public final class Json {
    private static final int DECIMALS = 3;

    private final StringBuilder text = new StringBuilder();

    private Json() { }

    /** Indented by two spaces, with a line feed at the end. @throws IllegalArgumentException if the tree holds anything else */
    public static String of(Object tree) {
        var json = new Json();
        json.value(tree, 0);
        return json.text.append('\n').toString();
    }

    /** The same without the line feed, as it stands inside {@code depth} others. */
    static String at(Object tree, int depth) {
        var json = new Json();
        json.value(tree, depth);
        return json.text.toString();
    }

    private void value(Object value, int depth) {
        switch (value) {
            case String words -> string(words);
            case Boolean truth -> text.append(truth);
            case Integer whole -> text.append(whole);
            case Long whole -> text.append(whole);
            case Double real when Double.isFinite(real) ->
                    text.append(BigDecimal.valueOf(real).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString());
            case List<?> list -> items(list.iterator(), '[', ']', depth);
            case Map<?, ?> map -> items(map.entrySet().iterator(), '{', '}', depth);
            case Map.Entry<?, ?> entry -> {
                string((String) entry.getKey());
                text.append(": ");
                value(entry.getValue(), depth);
            }
            default -> throw new IllegalArgumentException("JSON holds no (" + value + ").");
        }
    }

    private void items(Iterator<?> items, char open, char close, int depth) {
        text.append(open);
        boolean any = items.hasNext();
        while (items.hasNext()) {
            indent(depth + 1);
            value(items.next(), depth + 1);
            if (items.hasNext()) {
                text.append(',');
            }
        }
        if (any) {
            indent(depth);
        }
        text.append(close);
    }

    private void indent(int depth) {
        text.append('\n').append("  ".repeat(depth));
    }

    private void string(String words) {
        text.append('"');
        for (int i = 0; i < words.length(); i++) {
            char letter = words.charAt(i);
            switch (letter) {
                case '"' -> text.append("\\\"");
                case '\\' -> text.append("\\\\");
                case '\n' -> text.append("\\n");
                case '\r' -> text.append("\\r");
                case '\t' -> text.append("\\t");
                default -> {
                    if (letter < ' ' || Character.isSurrogate(letter) && !paired(words, i)) {
                        text.append(String.format(Locale.ROOT, "\\u%04x", (int) letter));
                    } else {
                        text.append(letter);
                    }
                }
            }
        }
        text.append('"');
    }

    private static boolean paired(String words, int i) {
        return Character.isHighSurrogate(words.charAt(i)) ? i + 1 < words.length() && Character.isLowSurrogate(words.charAt(i + 1))
                : i > 0 && Character.isHighSurrogate(words.charAt(i - 1));
    }
}
