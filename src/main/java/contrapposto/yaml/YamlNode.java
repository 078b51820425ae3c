package contrapposto.yaml;

import contrapposto.notice.Span;
import java.util.List;

/** A YAML value and where it stands. Scalars keep their text as written; nothing is converted here. */
public sealed interface YamlNode {
    Span span();

    /** A mapping; keys are scalars, unique, in file order. */
    record Mapping(Span span, List<Entry> entries) implements YamlNode {
        public Mapping {
            entries = List.copyOf(entries);
        }
    }

    /** A sequence. */
    record Sequence(Span span, List<YamlNode> items) implements YamlNode {
        public Sequence {
            items = List.copyOf(items);
        }
    }

    /** A scalar; {@code quoted} tells "no" the text from no the word. An absent value is the empty plain scalar. */
    record Scalar(Span span, String text, boolean quoted) implements YamlNode { }

    /** One key and its value. */
    record Entry(Scalar key, YamlNode value) { }
}
