package contrapposto.catalogue;

import contrapposto.catalogue.Family.Link;
import contrapposto.catalogue.Family.Sides;
import contrapposto.catalogue.FamilyWords.ByRole;
import contrapposto.catalogue.FamilyWords.Mistake;
import contrapposto.catalogue.FamilyWords.RoleKey;
import contrapposto.notice.Notice;
import contrapposto.yaml.YamlNode;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Reads the words of one family in one language, and refuses words that would not fit the card, would name a side
 * outright (they must mirror) or hold a placeholder that nothing fills.
 */
final class WordsReader {
    /** What the card fills in, per side. */
    static final List<String> PLACEHOLDERS = List.of("side", "other", "hand", "front", "rear", "Side", "Other", "Hand",
            "Front", "Rear");
    /** Where the working foot stands, as far as a heading may differ by it. */
    static final List<String> HEADINGS = List.of("ahead", "behind", "each", "both");
    static final int MOST_HEADING = 34;
    static final int MOST_CUE = 60;
    static final int MOST_FEEL = 70;
    static final int MOST_MISTAKE = 110;
    static final int MOST_CHANGE = 60;
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^}]*)}");

    private final Family family;
    private final Tongue tongue;
    private final List<Notice> notices;

    WordsReader(Family family, String language, List<Notice> notices) {
        this.family = family;
        this.tongue = Tongue.of(language);
        this.notices = notices;
    }

    FamilyWords read(YamlNode node) {
        try (var f = new Fields(node, notices)) {
            if (!f.text("id").equals(family.id())) {
                f.problem("catalogue-file-name", f.at("id"), "the words are for `" + family.id() + "` but their id is `"
                        + f.text("id") + "`", "give both the same name");
            }
            var cues = new EnumMap<RoleKey, List<String>>(RoleKey.class);
            var feel = new EnumMap<RoleKey, String>(RoleKey.class);
            var arrow = new EnumMap<RoleKey, String>(RoleKey.class);
            for (var role : roles()) {
                try (var r = f.fields(f.has("all") ? "all" : Words.of(role))) {
                    cues.put(role, cues(r));
                    feel.put(role, fitting(r, "feel", r.text("feel"), MOST_FEEL));
                    arrow.put(role, fitting(r, "arrow", r.text("arrow"), MOST_CUE));
                }
            }
            var both = cues.getOrDefault(RoleKey.BOTH, List.of());
            var headings = headings(f);
            headings.values().forEach(h -> fitting(f, "heading", h, MOST_HEADING));
            return new FamilyWords(family.id(), fitting(f, "name", f.text("name"), MOST_HEADING), headings,
                    new ByRole(cues.getOrDefault(RoleKey.LANDING, both), cues.getOrDefault(RoleKey.DRIVE, both), both),
                    Collections.unmodifiableMap(feel), mistakes(f), changes(f, "easier", family.easier()),
                    changes(f, "harder", family.harder()), Collections.unmodifiableMap(arrow), f.text("purpose"),
                    f.texts("cautions", false));
        }
    }

    private List<RoleKey> roles() {
        return family.sides() == Sides.BOTH ? List.of(RoleKey.BOTH) : List.of(RoleKey.values());
    }

    private static Map<String, String> headings(Fields f) {
        var headings = new LinkedHashMap<String, String>();
        if (f.has("heading")) {
            try (var h = f.fields("heading")) {
                HEADINGS.stream().filter(h::has).forEach(key -> headings.put(key, h.text(key)));
            }
        }
        return Collections.unmodifiableMap(headings);
    }

    private List<String> cues(Fields r) {
        var cues = r.texts("cues", true);
        if (cues.size() < 3 || cues.size() > 4) {
            r.problem("words-missing", r.at("cues"), "the cues number " + cues.size() + ", but a card has 3 or 4",
                    "give three or four, one on breathing and one on a foot or hand contact");
        }
        cues.forEach(cue -> fitting(r, "cues", cue, MOST_CUE));
        return cues;
    }

    private List<Mistake> mistakes(Fields f) {
        var mistakes = f.items("mistakes", true).stream().map(m -> {
            try (m) {
                var mistake = new Mistake(m.text("what"), m.text("fix"));
                fitting(m, "fix", mistake.what() + " " + mistake.fix(), MOST_MISTAKE);
                return mistake;
            }
        }).toList();
        if (mistakes.size() != 2) {
            f.problem("words-missing", f.at("mistakes"), "the mistakes number " + mistakes.size() + ", but a card has 2",
                    "give the two most usual ones, each with its fix");
        }
        return mistakes;
    }

    private Map<String, String> changes(Fields f, String key, List<Link> links) {
        var texts = f.textsByKey(key);
        for (var link : links) {
            if (!texts.containsKey(link.change())) {
                f.problem("words-missing", f.at(key), "`" + key + "` has no words for `" + link.change() + "`",
                        "add `" + link.change() + ": …`");
            }
        }
        texts.values().forEach(text -> fitting(f, key, text, MOST_CHANGE));
        return texts;
    }

    /** {@code text}, after each way of telling it has been looked at: its length as printed, its placeholders, its sides. */
    private String fitting(Fields f, String key, String text, int mostInEnglish) {
        Clause.ways(text).forEach(told -> toldFits(f, key, told, mostInEnglish));
        return text;
    }

    private void toldFits(Fields f, String key, String text, int mostInEnglish) {
        var placeholders = PLACEHOLDER.matcher(text);
        while (placeholders.find()) {
            if (!PLACEHOLDERS.contains(placeholders.group(1))) {
                f.problem("words-unknown-placeholder", f.at(key), "nothing fills `" + placeholders.group() + "`",
                        "use one of `{" + String.join("}`, `{", PLACEHOLDERS) + "}`");
            }
        }
        if (tongue.namesASide(text)) {
            f.problem("words-name-a-side", f.at(key), "`" + text + "` names a side, so it cannot mirror",
                    "write `{side}` or `{other}`, with the ending after it where the language has one");
        }
        int printed = PLACEHOLDER.matcher(text).replaceAll(tongue.longestStem()).length();
        int most = mostInEnglish > MOST_HEADING ? tongue.room(mostInEnglish) : mostInEnglish;
        if (printed > most) {
            f.problem("words-too-long", f.at(key), "`" + text + "` prints " + printed + " characters, but " + most
                    + " fit", "say it in fewer words");
        }
    }
}
