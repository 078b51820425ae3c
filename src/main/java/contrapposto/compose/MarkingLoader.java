package contrapposto.compose;

import contrapposto.notice.Span;
import freemarker.cache.TemplateLoader;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Loads templates and marks each element written in them with its template and line, so that a slip found in the
 * output can be shown where it was made.
 */
final class MarkingLoader implements TemplateLoader {
    /** The attribute that carries {@code template:line}. */
    static final String MARK = "at-line";

    private static final Pattern ELEMENT = Pattern.compile("<([a-z][a-z-]*)(?=[\\s/>])");

    private final TemplateLoader source;

    MarkingLoader(TemplateLoader source) {
        this.source = source;
    }

    /** The place that a mark names. */
    static Span span(String mark) {
        int colon = mark.lastIndexOf(':');
        return new Span("templates/" + mark.substring(0, colon), Integer.parseInt(mark.substring(colon + 1)), 1, 1, "");
    }

    private record Found(String name, Object source) { }

    @Override
    public Object findTemplateSource(String name) throws IOException {
        Object found = source.findTemplateSource(name);
        return found == null ? null : new Found(name, found);      // null is this interface's word for "not here"
    }

    @Override
    public long getLastModified(Object template) {
        return source.getLastModified(((Found) template).source());
    }

    @Override
    public Reader getReader(Object template, String encoding) throws IOException {
        var found = (Found) template;
        try (var reader = new BufferedReader(source.getReader(found.source(), encoding))) {
            int[] line = {0};
            return new StringReader(reader.lines()
                    .map(text -> ELEMENT.matcher(text).replaceAll("<$1 " + MARK + "='" + found.name() + ":" + ++line[0] + "'"))
                    .map(text -> text + "\n").collect(Collectors.joining()));
        }
    }

    @Override
    public void closeTemplateSource(Object template) throws IOException {
        source.closeTemplateSource(((Found) template).source());
    }
}
