package contrapposto.notice;

import java.util.List;

/**
 * One thing the tool says about an input. Lower case, no full stop, input words in back-ticks; it gives the value,
 * the limit, the place and a way out.
 *
 * @param id    kebab-case name of the rule, one per kind of problem
 * @param hints ways out, at least one for an error
 */
public record Notice(Severity severity, String id, Span span, String message, List<String> hints) {
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
