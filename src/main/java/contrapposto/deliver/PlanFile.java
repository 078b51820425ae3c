package contrapposto.deliver;

import contrapposto.assess.Reason;
import contrapposto.assess.Role;
import contrapposto.catalogue.Catalogue;
import contrapposto.check.CheckedSpec;
import contrapposto.prescribe.Plan;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.wording.Teller;
import contrapposto.yaml.YamlText;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The solved plan as a YAML file: everything that is printed, and its reasons. SI units as named; angles in degrees,
 * moments in N·m, loads in kg as loaded, shares 0 to 1. A key that does not apply is absent.
 */
public final class PlanFile {
    private final Plan plan;
    private final SideTree sides;
    private final Teller teller;
    /** By number: what is done on several days is told once. */
    private final Map<Integer, Map<String, Object>> told = new LinkedHashMap<>();

    private PlanFile(Plan plan) {
        this.plan = plan;
        this.teller = Teller.screen(plan.spec().client().units());
        this.sides = new SideTree(plan.spec().client().units(), teller);
    }

    /** The bytes of the file; the same plan gives the same bytes. */
    public static byte[] of(Plan plan) {
        return YamlText.of(new PlanFile(plan).tree()).getBytes(StandardCharsets.UTF_8);
    }

    /**
     * What a client's file may carry of it: exercises, set-ups and weeks; no screening, no restriction, no reason, and of the
     * person the code alone where there is one.
     */
    public static byte[] forClient(Plan plan) {
        return YamlText.of(ClientPlan.of(new PlanFile(plan).tree())).getBytes(StandardCharsets.UTF_8);
    }

    private Map<String, Object> tree() {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("format", 1);
        tree.put("spec-sha256", plan.spec().sha256());
        tree.put("title", plan.spec().title());
        tree.put("client", client(plan.spec().client()));
        plan.assessed().landing().ifPresent(landing -> tree.put("roles", roles(landing)));
        if (plan.withheld()) {
            tree.put("withheld", reasons(plan.assessed().verdict().reasons()));
            return tree;
        }
        tree.put("first-side", plan.firstSide().word());
        tree.put("expires", plan.expires().toString());
        tree.put("weeks", plan.weeks().stream().map(PlanFile::week).toList());
        tree.put("days", plan.days().stream().map(this::day).toList());
        tree.put("volume", volume());
        tree.put("left-out", leftOut());
        tree.put("reasons", reasons(Reason.all(Reason.all(plan.assessed().reasons(),
                plan.assessed().verdict().reasons()), plan.reasons())));
        if (!plan.warnings().isEmpty()) {
            tree.put("warnings", plan.warnings().stream().map(teller::plain).toList());
        }
        return tree;
    }

    private static Map<String, Object> client(CheckedSpec.Client client) {
        var tree = new LinkedHashMap<String, Object>();
        if (!client.name().isEmpty()) {
            tree.put("name", client.name());
        }
        if (!client.code().isEmpty()) {
            tree.put("code", client.code());
        }
        client.age().ifPresent(age -> tree.put("age", age));
        tree.put("sex", word(client.sex()));
        tree.put("height-cm", client.height().centimetres());
        tree.put("mass-kg", SideTree.kilograms(client.mass().kilograms(), client.units()));
        tree.put("training-years", client.trainingYears());
        tree.put("language", client.language());
        tree.put("units", word(client.units()));
        return tree;
    }

    private static Map<String, Object> roles(Side landing) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put(Role.LANDING.word(), landing.word());
        tree.put(Role.DRIVE.word(), landing.other().word());
        return tree;
    }

    private static Map<String, Object> week(Plan.Week week) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("week", week.number());
        tree.put("starts", week.starts().toString());
        tree.put("easy", week.easy());
        tree.put("in-reserve", week.inReserve());
        tree.put("stage", week.stage().word());
        return tree;
    }

    private Map<String, Object> day(Plan.Day day) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("day", day.day().name().substring(0, 3).toLowerCase(Locale.ROOT));
        tree.put("minutes", day.minutes());
        tree.put("exercises", day.numbers().stream().map(number -> told.computeIfAbsent(number, this::exercise)).toList());
        if (!day.ramps().isEmpty()) {
            tree.put("ramps", day.ramps().stream().map(sides::ramp).toList());
        }
        return tree;
    }

    private Map<String, Object> exercise(int number) {
        var exercise = plan.exercises().stream().filter(e -> e.number() == number).findFirst().orElseThrow();
        Catalogue catalogue = plan.catalogue();
        var tree = new LinkedHashMap<String, Object>();
        tree.put("id", exercise.id());
        tree.put("number", exercise.number());
        tree.put("name", catalogue.words(language(), exercise.id()).name());
        tree.put("stage", catalogue.family(exercise.id()).orElseThrow().stage().word());
        tree.put("sides", sides(exercise.sides()));
        exercise.instead().hurts().ifPresent(id -> tree.put("instead", id));
        exercise.instead().taken().ifPresent(id -> tree.put("instead-if-taken", id));
        tree.put("reasons", reasons(exercise.reasons()));
        return tree;
    }

    private String language() {
        String wanted = plan.spec().client().language();
        return plan.catalogue().words().containsKey(wanted) ? wanted : "en";
    }

    private Map<String, Object> sides(Sided<Plan.SidePlan> values) {
        var tree = new LinkedHashMap<String, Object>();
        switch (values) {
            case Sided.Whole<Plan.SidePlan>(var both) -> tree.put("both", sides.of(both));
            case Sided.Each<Plan.SidePlan>(var left, var right) -> {
                tree.put("left", sides.of(left));
                tree.put("right", sides.of(right));
            }
            case Sided.Only<Plan.SidePlan>(var side, var only) -> tree.put(side.word(), sides.of(only));
        }
        return tree;
    }

    private Map<String, Object> volume() {
        var tree = new LinkedHashMap<String, Object>();
        plan.volume().forEach((muscle, sets) -> {
            var pair = new LinkedHashMap<String, Object>();
            pair.put("left", sets.left());
            pair.put("right", sets.right());
            tree.put(muscle.word(), pair);
        });
        return tree;
    }

    private List<Object> leftOut() {
        var list = new ArrayList<>();
        plan.leftOut().forEach((id, reasons) -> reasons.forEach(reason -> {
            var tree = new LinkedHashMap<String, Object>();
            tree.put("id", id);
            tree.putAll(reason(reason, teller));
            list.add(tree);
        }));
        return list;
    }

    private List<Map<String, Object>> reasons(List<Reason> reasons) {
        return reasons(reasons, teller);
    }

    static List<Map<String, Object>> reasons(List<Reason> reasons, Teller teller) {
        return reasons.stream().map(reason -> reason(reason, teller)).toList();
    }

    private static Map<String, Object> reason(Reason reason, Teller teller) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("rule", reason.rule());
        tree.put("because", teller.plain(reason.said()));
        tree.put("source", word(reason.source()));
        if (!reason.reference().isEmpty()) {
            tree.put("reference", reason.reference());
        }
        return tree;
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
