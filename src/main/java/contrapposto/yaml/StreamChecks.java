package contrapposto.yaml;

import contrapposto.notice.Notice;
import contrapposto.notice.Span;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionEndEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.ScalarEvent;

/**
 * What must hold of a file's YAML events before nodes are made of them: sound syntax, one document, no tags, and sane
 * depth and number of aliases. Works in one pass without recursion, so no input can exhaust the stack here.
 */
final class StreamChecks {
    static final int MOST_DEPTH = 40;
    static final int MOST_ALIASES = 50;

    private final SourceText source;
    private final List<Notice> found = new ArrayList<>();
    private int depth;
    private int aliases;
    private int documents;
    private boolean sound = true;

    private StreamChecks(SourceText source) {
        this.source = source;
    }

    /** @param sound whether nodes can be made of it all the same */
    record Verdict(boolean sound, List<Notice> notices) { }

    static Verdict of(SourceText source, LoaderOptions options) {
        var checks = new StreamChecks(source);
        checks.run(options);
        return new Verdict(checks.sound, List.copyOf(checks.found));
    }

    private void run(LoaderOptions options) {
        try {
            for (var event : new Yaml(options).parse(new StringReader(source.text()))) {
                see(event);
                if (!sound) {
                    return;
                }
            }
        } catch (MarkedYAMLException e) {
            stop(syntax(source, e));
            return;
        }
        if (documents == 0) {
            stop(empty(source));
        }
    }

    static Notice empty(SourceText source) {
        return Notice.error("yaml-empty", Span.whole(source.file()), "the file holds nothing to read",
                "`contrapposto new` writes a commented starting spec");
    }

    static Notice syntax(SourceText source, MarkedYAMLException e) {
        var problem = e.getProblem() == null ? "unreadable" : e.getProblem().strip().replaceAll("\\s+", " ");
        var span = e.getProblemMark() == null ? Span.whole(source.file())
                : source.span(e.getProblemMark());
        return Notice.error("yaml-syntax", span, "not valid YAML: " + problem,
                "look for a missing quote, bracket or comma here or on the line before, or put the text in quotes");
    }

    private void see(Event event) {
        switch (event) {
            case DocumentStartEvent start -> {
                documents++;
                if (documents > 1) {
                    stop(Notice.error("yaml-several-documents", source.span(start.getStartMark()),
                            "a second document starts here, but a file holds one",
                            "remove the `---` line, or make two files"));
                }
            }
            case AliasEvent alias -> {
                aliases++;
                if (aliases > MOST_ALIASES) {
                    stop(Notice.error("yaml-aliases", source.span(alias.getStartMark(), alias.getEndMark()),
                            "this is alias number " + aliases + ", but a file may hold " + MOST_ALIASES,
                            "write the values out"));
                }
            }
            case CollectionStartEvent start -> {
                tag(start, start.getTag());
                depth++;
                if (depth > MOST_DEPTH) {
                    stop(Notice.error("yaml-too-deep", source.span(start.getStartMark()),
                            "the values are nested " + depth + " deep here, but the limit is " + MOST_DEPTH,
                            "close the brackets, or check the indentation"));
                }
            }
            case CollectionEndEvent end -> depth--;
            case ScalarEvent scalar -> tag(scalar, scalar.getTag());
            default -> { }
        }
    }

    private void tag(Event event, String tag) {
        if (tag != null && !tag.equals("!")) {
            found.add(Notice.error("yaml-tag", source.span(event.getStartMark(), event.getEndMark()),
                    "the tag `" + tag.replace("tag:yaml.org,2002:", "!!") + "` is not wanted here",
                    "remove the tag; every key knows the type of its value"));
        }
    }

    private void stop(Notice notice) {
        found.add(notice);
        sound = false;
    }
}
