package contrapposto.yaml;

import contrapposto.notice.Span;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The node trees of many YAML files in one compact file, made once by the build and read at each start in place of the
 * files: of each tree what it says, not where it stood. Trees are made as they are asked for.
 *
 * <p>The format is private to one build: all texts first, each once; then a place for each file by name; then the nodes, each
 * with its kind, then a text or its number of children. Numbers take seven bits a byte.
 */
final class TreeFile {
    private static final int BARE = 0;
    private static final int QUOTED = 1;
    private static final int SEQUENCE = 2;
    private static final int MAPPING = 3;

    private final ByteBuffer bytes;
    private final String[] texts;
    private final Map<String, Integer> places = new LinkedHashMap<>();

    private TreeFile(ByteBuffer bytes) {
        this.bytes = bytes;
        this.texts = new String[number()];
        for (int i = 0; i < texts.length; i++) {
            texts[i] = text();
        }
        int files = number();
        for (int i = 0; i < files; i++) {
            places.put(texts[number()], number());
        }
        int start = bytes.position();
        places.replaceAll((file, place) -> start + place);
    }

    /** @param bytes as {@link #of} made them */
    static TreeFile read(byte[] bytes) {
        return new TreeFile(ByteBuffer.wrap(bytes));
    }

    /** The tree of a file; its spans name the file as a whole. Threads may share this object. */
    Optional<YamlNode> tree(String file) {
        return Optional.ofNullable(places.get(file)).map(place -> new TreeFile.Walk(bytes.duplicate().position(place), Span.whole(file)).node());
    }

    private final class Walk {
        private final ByteBuffer at;
        private final Span whole;

        Walk(ByteBuffer at, Span whole) {
            this.at = at;
            this.whole = whole;
        }

        YamlNode node() {
            int kind = at.get();
            return switch (kind) {
                case BARE, QUOTED -> new YamlNode.Scalar(whole, texts[number(at)], kind == QUOTED);
                case SEQUENCE -> {
                    var items = new ArrayList<YamlNode>();
                    for (int i = number(at); i > 0; i--) {
                        items.add(node());
                    }
                    yield new YamlNode.Sequence(whole, List.copyOf(items));
                }
                case MAPPING -> {
                    var entries = new ArrayList<YamlNode.Entry>();
                    for (int i = number(at); i > 0; i--) {
                        entries.add(new YamlNode.Entry((YamlNode.Scalar) node(), node()));
                    }
                    yield new YamlNode.Mapping(whole, List.copyOf(entries));
                }
                default -> throw new IllegalStateException("No kind of node: " + kind);
            };
        }
    }

    private int number() {
        return number(bytes);
    }

    private static int number(ByteBuffer from) {
        int number = 0;
        for (int shift = 0; ; shift += 7) {
            byte next = from.get();
            number |= (next & 0x7F) << shift;
            if (next >= 0) {
                return number;
            }
        }
    }

    private String text() {
        int length = number();
        var text = new String(bytes.array(), bytes.position(), length, StandardCharsets.UTF_8);
        bytes.position(bytes.position() + length);
        return text;
    }

    /** @param trees by the name they are asked for by */
    static byte[] of(Map<String, YamlNode> trees) {
        var writing = new Writing();
        var places = new LinkedHashMap<String, Integer>();
        trees.forEach((file, tree) -> {
            places.put(file, writing.nodes.size());
            writing.node(tree);
        });
        places.keySet().forEach(writing::text);
        var all = new ByteArrayOutputStream();
        number(all, writing.texts.size());
        writing.texts.keySet().forEach(text -> {
            byte[] utf8 = text.getBytes(StandardCharsets.UTF_8);
            number(all, utf8.length);
            all.writeBytes(utf8);
        });
        number(all, places.size());
        places.forEach((file, place) -> {
            number(all, writing.text(file));
            number(all, place);
        });
        all.writeBytes(writing.nodes.toByteArray());
        return all.toByteArray();
    }

    private static void number(ByteArrayOutputStream to, int number) {
        int rest = number;
        for (; rest >= 0x80; rest >>>= 7) {
            to.write(rest & 0x7F | 0x80);
        }
        to.write(rest);
    }

    private static final class Writing {
        private final Map<String, Integer> texts = new LinkedHashMap<>();
        private final ByteArrayOutputStream nodes = new ByteArrayOutputStream();

        int text(String text) {
            texts.putIfAbsent(text, texts.size());
            return texts.get(text);
        }

        void node(YamlNode node) {
            switch (node) {
                case YamlNode.Scalar scalar -> {
                    nodes.write(scalar.quoted() ? QUOTED : BARE);
                    number(nodes, text(scalar.text()));
                }
                case YamlNode.Sequence(var span, var items) -> {
                    nodes.write(SEQUENCE);
                    number(nodes, items.size());
                    items.forEach(this::node);
                }
                case YamlNode.Mapping(var span, var entries) -> {
                    nodes.write(MAPPING);
                    number(nodes, entries.size());
                    entries.forEach(entry -> {
                        node(entry.key());
                        node(entry.value());
                    });
                }
            }
        }
    }
}
