package contrapposto.yaml;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * Reads the bytes of one YAML file into nodes that keep their place. Refuses what is no plain, single UTF-8 document:
 * too big, not UTF-8, binary, empty, tabs as indentation, tags, duplicate keys, alias bombs, endless nesting. No input
 * makes it fail otherwise, nor take more than a moment.
 */
public final class YamlReader {
    /** The largest file read, in bytes; a spec has about 4,000. */
    public static final int MOST_BYTES = 250_000;

    private YamlReader() { }

    /**
     * What could be made of a file.
     *
     * @param root    empty if no node tree could be made; may be there beside errors, so that later checks can go on
     * @param notices in file order
     */
    public record Reading(Optional<YamlNode> root, List<Notice> notices) {
        public Reading {
            notices = List.copyOf(notices);
        }
    }

    /** @param file the name that notices show */
    public static Outcome<YamlNode> read(String file, byte[] bytes) {
        var reading = readOn(file, bytes);
        return reading.root().map(root -> Outcome.of(root, reading.notices()))
                .orElseGet(() -> new Outcome.Refused<>(reading.notices()));
    }

    /** As {@link #read}, but keeps the tree beside errors that leave one. */
    public static Reading readOn(String file, byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            return nothing(Notice.error("yaml-too-big", Span.whole(file),
                    "the file has " + bytes.length + " bytes, but the limit is " + MOST_BYTES,
                    "give a single spec; `contrapposto new` shows one"));
        }
        return SourceText.decode(file, bytes).map(YamlReader::compose).orElseGet(() -> nothing(holdsNul(bytes)
                ? Notice.error("yaml-binary", Span.whole(file), "the file is not a text file", "give a YAML file saved as UTF-8 text")
                : Notice.error("yaml-not-utf-8", Span.whole(file), "the file is not UTF-8 text", "save it as UTF-8 in your editor")));
    }

    /**
     * The nodes of a file that is part of this program: a test, not each run, has seen that {@link #read} takes it without
     * a notice, so it is only composed.
     *
     * @throws IllegalStateException if it does not compose (a bug)
     */
    public static YamlNode shipped(String file, byte[] bytes) {
        return SourceText.decode(file, bytes).flatMap(source ->
                        new NodeBuilder(source).build(new Yaml(options()).compose(new StringReader(source.text()))))
                .orElseThrow(() -> new IllegalStateException("The shipped file (" + file + ") does not read."));
    }

    private static Reading compose(SourceText source) {
        var unreadable = TextChecks.of(source);
        if (!unreadable.isEmpty()) {
            return new Reading(Optional.empty(), unreadable);
        }
        var stream = StreamChecks.of(source, options());
        if (!stream.sound()) {
            return new Reading(Optional.empty(), stream.notices());
        }
        try {
            var builder = new NodeBuilder(source);
            var root = builder.build(new Yaml(options()).compose(new StringReader(source.text())));
            if (root.filter(YamlReader::isAbsent).isPresent()) {
                return nothing(StreamChecks.empty(source));
            }
            var all = new ArrayList<>(stream.notices());
            all.addAll(builder.notices());
            all.sort(Notice.IN_FILE_ORDER);
            return new Reading(root, all);
        } catch (MarkedYAMLException undefinedAlias) {
            return nothing(StreamChecks.syntax(source, undefinedAlias));
        }
    }

    private static boolean holdsNul(byte[] bytes) {
        for (byte b : bytes) {
            if (b == 0) {
                return true;
            }
        }
        return false;
    }

    private static boolean isAbsent(YamlNode root) {
        return root instanceof YamlNode.Scalar scalar && scalar.text().isEmpty() && !scalar.quoted();
    }

    private static Reading nothing(Notice notice) {
        return new Reading(Optional.empty(), List.of(notice));
    }

    /**
     * Never tighter than {@link StreamChecks}, which refuses the same with a place. Any tag may pass here, since nodes are
     * composed but never constructed: a tag has no power, and {@code StreamChecks} refuses it.
     */
    private static LoaderOptions options() {
        var options = new LoaderOptions();
        options.setNestingDepthLimit(StreamChecks.MOST_DEPTH + 2);
        options.setMaxAliasesForCollections(StreamChecks.MOST_ALIASES + 2);
        options.setCodePointLimit(MOST_BYTES + 1);
        options.setAllowRecursiveKeys(false);
        options.setTagInspector(tag -> true);
        return options;
    }
}
