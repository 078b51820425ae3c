package contrapposto.press;

import contrapposto.audit.Formula;
import contrapposto.audit.Wording;
import contrapposto.document.Document;
import contrapposto.notice.Notice;
import contrapposto.notice.Span;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Warns where what a client is to read asks for more years of school than it may. */
final class HardWords {
    private HardWords() { }

    /**
     * One notice for each part that is too hard.
     *
     * @param template that wrote the document, without its folder
     */
    static List<Notice> in(Document client, String template) {
        var wording = Wording.of(client);
        return wording.parts().stream().filter(Wording.Part::tooHard).map(part -> Notice.warning("hard-words",
                Span.whole("templates/" + client.language() + "/" + template),
                "`" + part.name() + "` reads at grade " + grades(part) + ", but at most " + String.format(Locale.ROOT, "%.0f", part.most()) + " is wanted",
                "shorten its sentences and words; `contrapposto check --wording` names the long ones")).toList();
    }

    private static String grades(Wording.Part part) {
        return part.grade().by().entrySet().stream().filter(e -> e.getKey().scale() == Formula.Scale.SCHOOL_YEARS && !part.grade().rough(e.getKey()))
                .map(e -> String.format(Locale.ROOT, "%.1f (%s)", e.getValue(), e.getKey().words())).collect(Collectors.joining(", "));
    }
}
