package contrapposto.check;

import contrapposto.check.CheckedSpec.Aim;
import contrapposto.check.CheckedSpec.Choices;
import contrapposto.check.CheckedSpec.Edition;
import contrapposto.check.CheckedSpec.Handout;
import contrapposto.check.CheckedSpec.Paper;
import contrapposto.check.CheckedSpec.Print;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.notice.Notice;
import contrapposto.quantity.Length;
import contrapposto.quantity.Side;
import contrapposto.spec.Written;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/** Aims, the coach's own choices and the handout: their rules and their records. */
final class ChoiceSection {
    private ChoiceSection() { }

    static void includesOrExcludes(Written.Fields spec, Consumer<Notice> found) {
        var choose = spec.fields("choose");
        var included = choose.texts("include").stream().map(Written.Text::text).toList();
        for (var excluded : choose.texts("exclude")) {
            if (included.contains(excluded.text())) {
                found.accept(Notice.error("include-and-exclude", excluded.span(), "`" + excluded.text()
                        + "` is both included and excluded", "keep it in one of the two lists"));
            }
        }
    }

    static List<Aim> aims(Written.Fields spec) {
        return spec.has("aims") ? spec.texts("aims").stream().map(aim -> Aim.valueOf(ClientSection.upper(aim.text()))).toList()
                : List.of(Aim.values());
    }

    static Choices choices(Written.Fields spec) {
        var choose = spec.fields("choose");
        var setUps = new LinkedHashMap<String, Map<Side, SetUpWish>>();
        for (var pair : choose.pairs("setup")) {
            setUps.put(((Written.Text) pair.key()).text(), bySide((Written.Fields) pair.value()));
        }
        var words = new LinkedHashMap<String, String>();
        for (var pair : choose.pairs("own-words")) {
            words.put(((Written.Text) pair.key()).text(), ((Written.Text) pair.value()).text());
        }
        return new Choices(choose.texts("include").stream().map(Written.Text::text).toList(),
                choose.texts("exclude").stream().map(Written.Text::text).toList(), Collections.unmodifiableMap(setUps),
                Collections.unmodifiableMap(words));
    }

    private static Map<Side, SetUpWish> bySide(Written.Fields sides) {
        var wishes = new EnumMap<Side, SetUpWish>(Side.class);
        for (var side : Side.values()) {
            sides.at(side.word(), Written.Fields.class).ifPresent(given -> wishes.put(side, wish(given)));
        }
        return Collections.unmodifiableMap(wishes);
    }

    /** What {@code given} fixes of a set-up; {@link SetUpWish#NONE} if nothing. */
    static SetUpWish wish(Written.Fields given) {
        var hand = given.text("load-hand");
        return new SetUpWish(length(given, "front-raise"), length(given, "rear-raise"), length(given, "heel-wedge"),
                length(given, "stance"), hand.flatMap(AssessmentSection::side), hand.filter("both"::equals).isPresent(),
                length(given, "pulley"), given.amount("pulley-distance").map(a -> OptionalDouble.of(a.standard()))
                .orElseGet(OptionalDouble::empty));
    }

    private static Optional<Length> length(Written.Fields given, String key) {
        return given.amount(key).map(amount -> Length.ofMetres(amount.standard()));
    }

    static Handout handout(Written.Fields spec) {
        var handout = spec.fields("handout");
        var editions = handout.has("editions") ? handout.texts("editions").stream()
                .map(edition -> Edition.valueOf(ClientSection.upper(edition.text()))).sorted().toList() : List.of(Edition.CLIENT, Edition.COACH);
        return new Handout(handout.text("paper").map(ClientSection::upper).map(Paper::valueOf).orElse(Paper.A4), editions,
                handout.text("print").map(ClientSection::upper).map(Print::valueOf).orElse(Print.PLAIN),
                handout.truth("log").orElse(true));
    }
}
