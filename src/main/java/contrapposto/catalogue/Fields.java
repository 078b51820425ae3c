package contrapposto.catalogue;

import contrapposto.notice.Notice;
import contrapposto.notice.Span;
import contrapposto.yaml.YamlNode;
import contrapposto.yaml.YamlNode.Entry;
import contrapposto.yaml.YamlNode.Mapping;
import contrapposto.yaml.YamlNode.Scalar;
import contrapposto.yaml.YamlNode.Sequence;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One mapping of a catalogue file while it is read. Every problem becomes a notice at its place and a harmless stand-in
 * value, so that all problems of a file come out in one go; {@link #close} names the keys nobody asked for.
 */
final class Fields implements AutoCloseable {
    private final Span span;
    private final Map<String, Entry> entries = new LinkedHashMap<>();
    private final Set<String> asked = new LinkedHashSet<>();
    private final List<Notice> notices;

    Fields(YamlNode node, List<Notice> notices) {
        this.span = node.span();
        this.notices = notices;
        if (node instanceof Mapping(var place, var all)) {
            all.forEach(entry -> entries.put(entry.key().text(), entry));
        } else {
            wrong(node.span(), "this is no mapping", "write `key: value` lines");
        }
    }

    Span span() {
        return span;
    }

    boolean has(String key) {
        asked.add(key);
        return entries.containsKey(key);
    }

    /** Where {@code key} stands, or the whole mapping if it is absent. */
    Span at(String key) {
        return Optional.ofNullable(entries.get(key)).map(e -> e.value().span()).orElse(span);
    }

    private Optional<YamlNode> node(String key, boolean required) {
        if (has(key)) {
            return Optional.of(entries.get(key).value());
        }
        if (required) {
            notices.add(Notice.error("catalogue-missing", span, "`" + key + "` is missing", "add `" + key + ": …`"));
        }
        return Optional.empty();
    }

    /** The keys in file order; asked or not. */
    List<String> keys() {
        return List.copyOf(entries.keySet());
    }

    String text(String key) {
        return node(key, true).map(this::text).orElse("");
    }

    String text(String key, String otherwise) {
        return node(key, false).map(this::text).orElse(otherwise);
    }

    private String text(YamlNode node) {
        return switch (node) {
            case Scalar scalar -> scalar.text();
            case Mapping m -> wrong(m.span(), "a mapping stands where a text is expected", "write one line of text");
            case Sequence s -> wrong(s.span(), "a list stands where a text is expected", "write one line of text");
        };
    }

    double number(String key) {
        return node(key, true).map(this::number).orElse(0.0);
    }

    double number(String key, double otherwise) {
        return node(key, false).map(this::number).orElse(otherwise);
    }

    int whole(String key) {
        double value = number(key);
        if (value != StrictMath.rint(value)) {
            wrong(at(key), "`" + text(key) + "` is no whole number", "write a whole number");
        }
        return (int) value;
    }

    private double number(YamlNode node) {
        var text = text(node);
        try {
            double value = Double.parseDouble(text);
            if (!Double.isNaN(value) && !Double.isInfinite(value)) {
                return value;
            }
        } catch (NumberFormatException noNumber) {
            // told below, with NaN and infinities
        }
        wrong(node.span(), "`" + text + "` is no number", "write a plain number such as `0.45`");
        return 0;
    }

    boolean yes(String key) {
        var word = text(key, "no");
        if (!word.equals("yes") && !word.equals("no")) {
            wrong(at(key), "`" + word + "` is neither `yes` nor `no`", "write `yes` or `no`");
        }
        return word.equals("yes");
    }

    /** Two numbers, low and high; both the same for a single one, both 0 when absent. */
    HouseRules.Range range(String key, boolean required) {
        var node = node(key, required);
        if (node.isPresent() && node.get() instanceof Sequence(var place, var items) && items.size() == 2) {
            double low = number(items.get(0));
            double high = number(items.get(1));
            if (low > high) {
                wrong(place, "the range runs from " + low + " down to " + high, "put the smaller number first");
                return new HouseRules.Range(high, low);
            }
            return new HouseRules.Range(low, high);
        }
        node.ifPresent(n -> wrong(n.span(), "this is no range", "write two numbers such as `[0.40, 0.60]`"));
        return new HouseRules.Range(0, 0);
    }

    <E extends Enum<E>> E word(String key, Class<E> kind) {
        return node(key, true).map(n -> word(n, kind)).orElse(kind.getEnumConstants()[0]);
    }

    <E extends Enum<E>> E word(String key, Class<E> kind, E otherwise) {
        return node(key, false).map(n -> word(n, kind)).orElse(otherwise);
    }

    <E extends Enum<E>> List<E> words(String key, Class<E> kind) {
        return list(key, false).stream().map(n -> word(n, kind)).toList();
    }

    private <E extends Enum<E>> E word(YamlNode node, Class<E> kind) {
        return word(node.span(), text(node), kind);
    }

    <E extends Enum<E>> E word(Span place, String text, Class<E> kind) {
        for (var constant : kind.getEnumConstants()) {
            if (Words.of(constant).equals(text)) {
                return constant;
            }
        }
        notices.add(Notice.error("catalogue-unknown-word", place, "`" + text + "` is not known here",
                "one of " + Arrays.stream(kind.getEnumConstants()).map(c -> "`" + Words.of(c) + "`")
                        .collect(Collectors.joining(", "))));
        return kind.getEnumConstants()[0];
    }

    List<String> texts(String key, boolean required) {
        return list(key, required).stream().map(this::text).toList();
    }

    /** Key and text of every entry of the mapping at {@code key}, in file order; empty when absent. */
    Map<String, String> textsByKey(String key) {
        var found = new LinkedHashMap<String, String>();
        if (has(key)) {
            var inner = fields(key);
            inner.keys().forEach(k -> found.put(k, inner.text(k)));
        }
        return found;
    }

    Fields fields(String key) {
        return new Fields(node(key, true).orElseGet(() -> new Mapping(span, List.of())), notices);
    }

    List<Fields> items(String key, boolean required) {
        return list(key, required).stream().map(n -> new Fields(n, notices)).toList();
    }

    private List<YamlNode> list(String key, boolean required) {
        var node = node(key, required);
        if (node.isPresent() && !(node.get() instanceof Sequence)) {
            wrong(node.get().span(), "this is no list", "write `[…]` or one `- …` a line");
        }
        return node.filter(Sequence.class::isInstance).map(n -> ((Sequence) n).items()).orElse(List.of());
    }

    /** Notes a value that does not fit; gives the empty text to go on with. */
    String wrong(Span place, String message, String wayOut) {
        return problem("catalogue-wrong-value", place, message, wayOut);
    }

    String problem(String id, Span place, String message, String wayOut) {
        notices.add(Notice.error(id, place, message, wayOut));
        return "";
    }

    /** Every key has been asked for: names those that were not. */
    @Override
    public void close() {
        var known = new ArrayList<>(asked);
        entries.forEach((key, entry) -> {
            if (!asked.contains(key)) {
                notices.add(Notice.error("catalogue-unknown-key", entry.key().span(), "`" + key + "` is no key here",
                        "the keys here are " + known.stream().map(k -> "`" + k + "`").collect(Collectors.joining(", "))));
            }
        });
    }
}
