package contrapposto.compose;

import contrapposto.notice.Outcome;
import java.util.LinkedHashMap;
import java.util.Map;

/** Single words by key: those that stand in drawings or that the page itself places. */
record Labels(Map<String, String> byKey) {
    /** The labels that a template writes as {@code <label key="…">…</label>}. */
    static Outcome<Labels> read(Templates templates, String template) {
        return templates.run(template, Map.of()).then(xml -> MarkupParser.parse(xml, template)).then(root -> {
            var slips = new Slips();
            var byKey = new LinkedHashMap<String, String>();
            for (Piece.Element label : root.elements()) {
                slips.allow(label, "key");
                byKey.put(slips.required(label, "key"), InlineReader.text(label, slips));
            }
            return Outcome.of(new Labels(byKey), slips.found());
        });
    }

    /** The label of that key; the key itself where there is none. */
    String of(String key) {
        return byKey.getOrDefault(key, key);
    }
}
