package contrapposto.catalogue;

import static contrapposto.spec.SchemaTree.above;
import static contrapposto.spec.SchemaTree.also;
import static contrapposto.spec.SchemaTree.anyOf;
import static contrapposto.spec.SchemaTree.has;
import static contrapposto.spec.SchemaTree.list;
import static contrapposto.spec.SchemaTree.map;
import static contrapposto.spec.SchemaTree.node;
import static contrapposto.spec.SchemaTree.not;
import static contrapposto.spec.SchemaTree.number;
import static contrapposto.spec.SchemaTree.optional;
import static contrapposto.spec.SchemaTree.range;
import static contrapposto.spec.SchemaTree.required;
import static contrapposto.spec.SchemaTree.text;
import static contrapposto.spec.SchemaTree.truth;
import static contrapposto.spec.SchemaTree.whole;
import static contrapposto.spec.SchemaTree.words;

import contrapposto.body.PoseProblem.Zone;
import contrapposto.catalogue.Family.BaseKind;
import contrapposto.catalogue.Family.FootPlace;
import contrapposto.catalogue.Family.LoadHand;
import contrapposto.catalogue.Family.Ribs;
import contrapposto.catalogue.Family.Sides;
import contrapposto.catalogue.Family.Toward;
import contrapposto.catalogue.Family.When;
import contrapposto.catalogue.Family.Works;
import contrapposto.spec.SchemaTree;
import contrapposto.spec.SchemaTree.Entry;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * The schemas of family, words and house rules files, their words out of the very enums and tables the readers go by.
 * {@link CatalogueSchemaTest} takes each key of a file away, adds one and spoils each value, and compares with the readers.
 */
public final class CatalogueSchemas {
    private static final Map<String, Object> ID = text();

    private CatalogueSchemas() { }

    /** A family's mechanics. */
    public static Map<String, Object> family() {
        var links = list(map(required("family", ID, "the id of the family"), required("change", ID, "the key of its words")), 1);
        return map(
                required("id", ID, "kebab-case, as the file is named"),
                required("stage", oneOf(Stage.class), "of the program"),
                required("group", oneOf(CapacityGroup.class), "families whose capacity carries over to each other"),
                required("works", oneOf(Works.class), "the limb that works"),
                required("sides", oneOf(Sides.class), "each: a set-up a side; both: one symmetric set-up"),
                required("base", oneOf(BaseKind.class), "what it stands, kneels or lies on"),
                required("action", kinds(Motion.ACTIONS, optional("rear-raised-knee-flexion", number(), "degrees, where the rear foot is raised")), "what moves"),
                required("arms", map(required("working", arm(), "of the working side"), required("other", arm(), "the other one")), "what the arms do"),
                required("levers", levers(), "what a set-up may change"),
                required("turn", map(required("toward", oneOf(Toward.class), "which way the trunk turns"), optional("carried", truth(), "by the load")),
                        "of the trunk"),
                optional("ribs", oneOf(Ribs.class), "which ribs of the working side it opens"),
                required("muscles", list(muscle()), "of the working side"),
                optional("other-side-muscles", list(muscle()), "of the other side"),
                optional("pressure", map(Arrays.stream(Phase.values()).map(phase -> required(Words.of(phase), oneOf(Zone.class), "the zone"))
                        .toArray(Entry[]::new)), "the zone under the working foot, by phase of stance"),
                optional("other-pressure", oneOf(Zone.class), "under the other foot"),
                required("skill", whole(1, 3), "1 anyone, 3 trained"),
                required("steadiness", whole(1, 3), "1 very steady, 3 hard to balance"),
                optional("impact", truth(), "whether it jars"),
                optional("tags", list(oneOf(RestrictionTag.class)), "restrictions it falls under"),
                required("dose", dose(), "to begin with"),
                required("easier", links, "where to go when it is too hard"), required("harder", links, "and when it is too easy"),
                required("instead", ID, "the family that best stands in"),
                required("arrows", byRole(map(required("at", oneOf(Arrow.At.class), "where it begins"),
                        required("toward", oneOf(Arrow.Toward.class), "where it points"))), "the movement that the first cue asks for"));
    }

    private static Map<String, Object> levers() {
        var withLine = node("properties", node("implements", node("contains", words(List.of(Implement.CABLE.word(), Implement.BAND.word())))));
        return also(map(
                optional("working-foot", list(oneOf(FootPlace.class)), "where it may stand"), optional("kickstand", truth(), "whether the other foot only steadies"),
                optional("load-hands", list(oneOf(LoadHand.class)), "relative to the working side"),
                required("implements", list(oneOf(Implement.class), 1), "what may load it"),
                optional("stance", range(number()), "shares of stature"), optional("width", number(), "of the stance, a share of stature"),
                optional("front-raise", truth(), "whether the front foot may be raised"), optional("rear-raise", truth(), "and the rear foot"),
                optional("heel-wedge", truth(), "and the heel"), optional("raise", range(number()), "of what is stepped on or rested on, shares of stature"),
                optional("pulley", map(required("height", range(number()), "shares of stature"), required("slope", range(number()), "degrees"),
                        required("distance", number(), "a share of stature"), optional("ahead", truth(), "whether it stands in front")), "of a cable or band"),
                optional("hip-shift", truth(), "whether the hip may be shifted"), optional("hand-support", truth(), "whether a hand may hold on"),
                optional("needs", list(words(FamilyReader.NEEDS)), "equipment besides")),
                node("if", withLine, "then", has("pulley"), "else", not(has("pulley"))));
    }

    private static Map<String, Object> dose() {
        return also(map(required("sets", whole(), "a session and side"), optional("reps", range(number()), "repetitions"),
                optional("seconds", whole(), "held, instead of repetitions"), required("tempo", text("\\d-\\d-\\d"), "lowering-pause-lifting, seconds"),
                required("rest", whole(), "seconds"), required("set-up-minutes", number(), "to get ready")), anyOf(List.of(has("reps"), has("seconds"))));
    }

    private static Map<String, Object> muscle() {
        return map(required("muscle", oneOf(Muscle.class), "which"), optional("direct", truth(), "counts a whole set; else one half"),
                optional("when", oneOf(When.class), "the phase of stance that trains it"), required("source", text(), "who says so"));
    }

    private static Map<String, Object> arm() {
        return kinds(Motion.ARMS);
    }

    /** A map whose {@code kind} says which numbers it needs. */
    private static Map<String, Object> kinds(Map<String, List<String>> kinds, Entry... besides) {
        return anyOf(kinds.entrySet().stream().map(kind -> {
            var numbers = kind.getValue().stream().map(field -> required(Words.word(field), number(), "see docs/add-a-family.md")).toList();
            return map(with(required("kind", words(List.of(kind.getKey())), "what it is"), SchemaTree.both(numbers, List.of(besides))));
        }).toList());
    }

    /** For all roles at once, for each, or for a symmetric family's only one. */
    private static Map<String, Object> byRole(Map<String, Object> value) {
        return anyOf(List.of(map(required("all", value, "whatever the side has to learn")),
                map(required("landing", value, "on the landing side"), required("drive", value, "on the drive side"), required("both", value, "without a finding")),
                map(required("both", value, "symmetric"))));
    }

    /** What a family says in one language. */
    public static Map<String, Object> familyWords() {
        var side = map(required("cues", list(text(), 3, 4), "one on breathing, one on a foot or hand contact"),
                required("feel", text(), "after: you should feel"), required("arrow", text(), "the movement that the first cue asks for"));
        var changes = node("type", "object", "additionalProperties", text());
        return also(map(
                required("id", ID, "of the family"), required("name", text(), "as the client reads it"), required("purpose", text(), "one sentence for the coach"),
                optional("heading", map(WordsReader.HEADINGS.stream().map(key -> optional(key, text(), "of the card's half")).toArray(Entry[]::new)),
                        "by where the working foot stands"),
                optional("all", side, "the same words whatever the side has to learn"), optional("landing", side, "for the landing side"),
                optional("drive", side, "for the drive side"), optional("both", side, "without a finding, or for a symmetric family"),
                required("mistakes", list(map(required("what", text(), "is seen"), required("fix", text(), "what helps")), 2, 2), "the two most usual"),
                optional("easier", changes, "words of each change"), optional("harder", changes, "words of each change"),
                optional("cautions", list(text()), "beside the usual ones")),
                anyOf(List.of(has("all"), has("both"))), not(node("required", List.of("all", "both"))), node("dependentRequired", node("landing", List.of("drive", "both"), "drive", List.of("landing", "both"))));
    }

    /** The defaults of the house. */
    public static Map<String, Object> houseRules() {
        var source = required("source", text(), "published with its source, common practice, or house");
        var share = range(number(0, 1));
        var effort = map(required("hip", above(0), "N·m per kg"), required("knee", above(0), "N·m per kg"), required("lean", number(), "wanted, degrees"),
                required("lean-scale", above(0), "degrees"));
        return map(
                required("format", node("const", 1), "the version of this file format"),
                required("bands", map(source, required("lines", list(map(optional("under-years", number(), "years of training; not in the last line"),
                        required("legs-movement", share, "wanted share of capacity"), required("legs-strength", share, "wanted share of capacity"),
                        required("arms-movement", share, "wanted share of capacity"), required("arms-strength", share, "wanted share of capacity"),
                        required("sets", whole(), "to begin with"), required("in-reserve", whole(), "repeats to spare to begin with")), 1),
                        "from the newcomer on")), "wanted share of a side's capacity"),
                required("side-specific", map(with(source, Arrays.stream(Stage.values()).map(stage -> required(stage.word(), number(0, 1), "share of lower-body sets")).toList())), "sets that are set up per side"),
                required("effort", map(source, required("legs", effort, "of leg work"), required("hinge", effort, "of hinges")), "weights of the pose objective"),
                required("measurement-error", errors(source), "smaller differences do not count"),
                required("ramp-sets", rule(source, whole()), "easy sets before the first loaded standing exercise"),
                required("expiry-weeks", rule(source, whole()), "after the last week"),
                required("progression", rule(source, range(number())), "least and greatest rise of a load in one step"),
                required("one-rep-max-formula", rule(source, words(HouseRulesReader.FORMULAS)), "one of the published seven"),
                required("deload-every", rule(source, whole()), "weeks; 0 for none"),
                required("shin-vertical", rule(source, number()), "half width, degrees"),
                required("weekly-sets", rule(source, range(number())), "for one muscle of one side"),
                required("reps-for-formula", rule(source, whole()), "the most from which a 1RM is estimated"),
                required("in-reserve-for-estimate", rule(source, whole()), "the most from which a 1RM is estimated"),
                required("placing", placing(source), "where feet and hands may be put"));
    }

    private static Map<String, Object> placing(Entry source) {
        var share = rule(source, number(0, 1));
        return map(required("front-raise-most", share, "under a front foot, share of stature"), required("rear-raise-most", share, "under a rear foot, share of stature"),
                required("laces-from", share, "m: from here on a rear foot lies on its laces"), required("rail-height", share, "of a hand, share of stature"),
                required("wall-height", share, "of a hand, share of stature"), required("support-ahead", share, "m before the pelvis"),
                required("novice-years", rule(source, number(0, 100)), "under which a low rear foot counts as steadier"),
                required("ankle-reserve", rule(source, number(0, 40)), "degrees less than measured"));
    }

    private static Map<String, Object> errors(Entry source) {
        return map(with(source, HouseRulesReader.MEASURES.stream().map(measure -> optional(measure, number(), "degrees, seconds or centimetres")).toList()));
    }

    private static Entry[] with(Entry first, List<Entry> rest) {
        return SchemaTree.<Entry>both(List.of(first), rest).toArray(Entry[]::new);
    }

    private static Map<String, Object> rule(Entry source, Map<String, Object> value) {
        return map(required("value", value, "the rule"), source);
    }

    private static <E extends Enum<E>> Map<String, Object> oneOf(Class<E> kind) {
        return words(Arrays.stream(kind.getEnumConstants()).map(Words::of).toList());
    }
}
