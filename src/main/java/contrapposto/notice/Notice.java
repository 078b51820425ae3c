package contrapposto.notice;

import java.util.Comparator;
import java.util.List;

/**
 * One thing the tool says about an input. Lower case, no full stop, input words in back-ticks; it gives the value,
 * the limit, the place and a way out.
 *
 * @param id    kebab-case name of the rule, one per kind of problem
 * @param hints ways out, at least one for an error
 */
public record Notice(Severity severity, String id, Span span, String message, List<String> hints) {
    /** By line, then column; what concerns the whole file comes first. Stable for notices of the same place. */
    public static final Comparator<Notice> IN_FILE_ORDER = Comparator.<Notice>comparingInt(n -> n.span().line())
            .thenComparingInt(n -> n.span().column());

    public Notice {
        hints = List.copyOf(hints);
    }

    public static Notice error(String id, Span span, String message, String... hints) {
        return new Notice(Severity.ERROR, id, span, message, List.of(hints));
    }

    public static Notice warning(String id, Span span, String message, String... hints) {
        return new Notice(Severity.WARNING, id, span, message, List.of(hints));
    }
}
