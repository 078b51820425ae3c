package contrapposto.catalogue;

import contrapposto.body.PoseProblem.Zone;
import contrapposto.catalogue.Family.ActionData;
import contrapposto.catalogue.Family.ArmKind;
import contrapposto.catalogue.Family.BaseKind;
import contrapposto.catalogue.Family.Dose;
import contrapposto.catalogue.Family.FootPlace;
import contrapposto.catalogue.Family.Levers;
import contrapposto.catalogue.Family.Link;
import contrapposto.catalogue.Family.LoadHand;
import contrapposto.catalogue.Family.MuscleUse;
import contrapposto.catalogue.Family.Raise;
import contrapposto.catalogue.Family.Ribs;
import contrapposto.catalogue.Family.Sides;
import contrapposto.catalogue.Family.Toward;
import contrapposto.catalogue.Family.Turn;
import contrapposto.catalogue.Family.When;
import contrapposto.catalogue.Family.Works;
import contrapposto.catalogue.FamilyWords.RoleKey;
import contrapposto.notice.Notice;
import contrapposto.yaml.YamlNode;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads the mechanics of one family file; each problem becomes a notice at its place. */
final class FamilyReader {
    /** Equipment words that {@code needs} may name. */
    static final List<String> NEEDS = List.of("mat", "wall", "band", "chair", "rail", "bench", "box", "wedge", "cable");

    private final String id;
    private final Set<String> ids;
    private final List<Notice> notices;

    /**
     * @param id  that the file's name promises
     * @param ids of all families, for links
     */
    FamilyReader(String id, Set<String> ids, List<Notice> notices) {
        this.id = id;
        this.ids = ids;
        this.notices = notices;
    }

    Family read(YamlNode node) {
        try (var f = new Fields(node, notices)) {
            if (!f.text("id").equals(id)) {
                f.problem("catalogue-file-name", f.at("id"), "the file is named `" + id + "` but its id is `"
                        + f.text("id") + "`", "give both the same name");
            }
            var group = f.word("group", CapacityGroup.class);
            var sides = f.word("sides", Sides.class);
            var arms = arms(f);
            var levers = levers(f);
            var harder = links(f, "harder");
            return new Family(id, f.word("stage", Stage.class), group, f.word("works", Works.class), sides,
                    f.word("base", BaseKind.class), action(f), arms.working(), arms.other(), levers, turn(f),
                    f.word("ribs", Ribs.class, Ribs.NEITHER), muscles(f, "muscles"), muscles(f, "other-side-muscles"),
                    pressure(f), f.word("other-pressure", Zone.class, Zone.WHOLE_SOLE), oneToThree(f, "skill"),
                    oneToThree(f, "steadiness"), f.yes("impact"), tags(f), dose(f), links(f, "easier"), harder,
                    family(f, "instead"), arrows(f, sides));
        }
    }

    private ActionData action(Fields f) {
        try (var action = f.fields("action")) {
            var kind = action.text("kind");
            var values = values(action, kind, Motion.ACTIONS);
            if (action.has("rear-raised-knee-flexion")) {
                values.put("rearRaisedKneeFlexion", action.number("rear-raised-knee-flexion"));
            }
            return new ActionData(kind, Collections.unmodifiableMap(values));
        }
    }

    private record Both(ArmKind working, ArmKind other) { }

    private Both arms(Fields f) {
        try (var arms = f.fields("arms")) {
            return new Both(arm(arms, "working"), arm(arms, "other"));
        }
    }

    private ArmKind arm(Fields arms, String which) {
        try (var arm = arms.fields(which)) {
            var kind = arm.text("kind");
            var values = values(arm, kind, Motion.ARMS);
            Motion.directionProblem(values).ifPresent(problem ->
                    arm.wrong(arm.span(), problem, "give at least one of `forward`, `out`, `up`"));
            return new ArmKind(kind, Collections.unmodifiableMap(values));
        }
    }

    private Map<String, Double> values(Fields f, String kind, Map<String, List<String>> kinds) {
        var values = new LinkedHashMap<String, Double>();
        if (!kinds.containsKey(kind)) {
            f.problem("catalogue-unknown-word", f.at("kind"), "`" + kind + "` is not known here", "one of "
                    + kinds.keySet().stream().map(k -> "`" + k + "`").collect(Collectors.joining(", ")));
            f.keys().forEach(f::has);
        }
        kinds.getOrDefault(kind, List.of()).forEach(field -> values.put(field, f.number(Words.word(field))));
        return values;
    }

    private Levers levers(Fields f) {
        try (var l = f.fields("levers")) {
            var stance = l.range("stance", false);
            var raise = l.range("raise", false);
            boolean line = l.has("pulley");
            var none = new HouseRules.Range(0, 0);
            var implementsList = l.words("implements", Implement.class);
            if (implementsList.isEmpty()) {
                l.wrong(l.at("implements"), "no implement is given", "write `implements: [body-weight]` if none is used");
            }
            if (line != (implementsList.contains(Implement.CABLE) || implementsList.contains(Implement.BAND))) {
                l.wrong(l.at("implements"), "a cable or band and its `pulley` go together", "give both or neither");
            }
            try (var pulley = line ? l.fields("pulley") : new Fields(new YamlNode.Mapping(l.span(), List.of()), notices)) {
                var height = line ? pulley.range("height", true) : none;
                var slope = line ? pulley.range("slope", true) : none;
                double distance = line ? pulley.number("distance") : 0;
                return new Levers(set(l.words("working-foot", FootPlace.class), FootPlace.class), l.yes("kickstand"),
                        set(l.words("load-hands", LoadHand.class), LoadHand.class), implementsList, stance.low(),
                        stance.high(), l.number("width", 0), l.yes("front-raise"), l.yes("rear-raise"),
                        l.yes("heel-wedge"), new Raise(raise.low(), raise.high()), height.low(), height.high(),
                        slope.low(), slope.high(), distance, line && pulley.yes("ahead"), l.yes("hip-shift"),
                        l.yes("hand-support"), needs(l));
            }
        }
    }

    private Set<String> needs(Fields l) {
        var needs = new LinkedHashSet<>(l.texts("needs", false));
        needs.stream().filter(n -> !NEEDS.contains(n)).forEach(n -> l.problem("catalogue-unknown-word", l.at("needs"),
                "`" + n + "` is not known here", "one of `" + String.join("`, `", NEEDS) + "`"));
        return Collections.unmodifiableSet(needs);
    }

    private Turn turn(Fields f) {
        try (var turn = f.fields("turn")) {
            return new Turn(turn.word("toward", Toward.class), turn.yes("carried"));
        }
    }

    private List<MuscleUse> muscles(Fields f, String key) {
        return f.items(key, key.equals("muscles")).stream().map(m -> {
            try (m) {
                return new MuscleUse(m.word("muscle", Muscle.class), m.yes("direct"),
                        m.word("when", When.class, When.ALWAYS), m.text("source"));
            }
        }).toList();
    }

    private Map<Phase, Zone> pressure(Fields f) {
        var zones = new EnumMap<Phase, Zone>(Phase.class);
        for (var phase : Phase.values()) {
            zones.put(phase, Zone.WHOLE_SOLE);
        }
        if (f.has("pressure")) {
            try (var p = f.fields("pressure")) {
                for (var phase : Phase.values()) {
                    zones.put(phase, p.word(Words.of(phase), Zone.class));
                }
            }
        }
        return Collections.unmodifiableMap(zones);
    }

    private int oneToThree(Fields f, String key) {
        int value = f.whole(key);
        if (f.has(key) && (value < 1 || value > 3)) {
            f.wrong(f.at(key), "`" + key + "` is " + value + ", but runs from 1 to 3", "write 1, 2 or 3");
        }
        return value;
    }

    private Set<String> tags(Fields f) {
        return f.words("tags", RestrictionTag.class).stream().sorted().map(RestrictionTag::word)
                .collect(Collectors.collectingAndThen(Collectors.toCollection(LinkedHashSet::new),
                        Collections::unmodifiableSet));
    }

    private Dose dose(Fields f) {
        try (var d = f.fields("dose")) {
            boolean timed = d.has("seconds");
            var reps = d.range("reps", !timed);
            var tempo = d.text("tempo");
            if (!tempo.matches("\\d-\\d-\\d")) {
                d.wrong(d.at("tempo"), "`" + tempo + "` is no tempo", "write lowering-pause-lifting such as `3-1-1`");
            }
            return new Dose(d.whole("sets"), (int) reps.low(), (int) reps.high(), timed ? d.whole("seconds") : 0, tempo,
                    d.whole("rest"), d.number("set-up-minutes"));
        }
    }

    private List<Link> links(Fields f, String key) {
        var links = f.items(key, true).stream().map(l -> {
            try (l) {
                return new Link(family(l, "family"), l.text("change"));
            }
        }).toList();
        if (links.isEmpty()) {
            f.problem("catalogue-dead-end", f.at(key), "nothing is " + key + " than `" + id + "`",
                    "name a family, or `" + id + "` itself with a change of set-up");
        }
        return links;
    }

    private String family(Fields f, String key) {
        var named = f.text(key);
        if (!named.isEmpty() && !ids.contains(named)) {
            f.problem("catalogue-dead-link", f.at(key), "no family is called `" + named + "`",
                    "see `contrapposto exercises` for the ids");
        }
        return named;
    }

    private Map<RoleKey, Arrow> arrows(Fields f, Sides sides) {
        var arrows = new EnumMap<RoleKey, Arrow>(RoleKey.class);
        try (var all = f.fields("arrows")) {
            for (var role : RoleKey.values()) {
                if (sides == Sides.BOTH && role != RoleKey.BOTH) {
                    continue;
                }
                var key = all.has("all") ? "all" : Words.of(role);
                try (var arrow = all.fields(key)) {
                    arrows.put(role, new Arrow(arrow.word("at", Arrow.At.class), arrow.word("toward", Arrow.Toward.class)));
                }
            }
        }
        return Collections.unmodifiableMap(arrows);
    }

    private static <E extends Enum<E>> Set<E> set(List<E> words, Class<E> kind) {
        var set = EnumSet.noneOf(kind);
        set.addAll(words);
        return Collections.unmodifiableSet(set);
    }
}
