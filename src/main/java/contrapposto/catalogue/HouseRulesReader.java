package contrapposto.catalogue;

import contrapposto.body.PoseProblem.Effort;
import contrapposto.catalogue.HouseRules.Band;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.yaml.Shipped;
import contrapposto.yaml.YamlNode;
import contrapposto.yaml.YamlReader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads a house rules file: the one on the class path, or the one a practice gives. Every rule must be there. */
public final class HouseRulesReader {
    static final String ON_CLASS_PATH = "/contrapposto/house-rules.yaml";
    /** The seven published formulas, by name. */
    static final List<String> FORMULAS = List.of("Epley", "Brzycki", "Lombardi", "OConner", "Wathan", "Lander", "Mayhew");

    /** The measures that may have an error of their own; {@code check.MeasureKind} has the same. */
    static final List<String> MEASURES = List.of("hip internal rotation", "hip external rotation", "hip flexion", "hip adduction", "hip abduction",
            "straight-leg raise", "knee flexion", "ankle dorsiflexion", "seated trunk turn", "shoulder flexion", "shoulder internal rotation",
            "shoulder external rotation", "single-leg stance", "knee-to-wall distance");

    private final List<Notice> notices = new ArrayList<>();
    private final Map<String, String> sources = new LinkedHashMap<>();

    private HouseRulesReader() { }

    /** The rules of the house. */
    public static HouseRules house() {
        var root = Shipped.tree(ON_CLASS_PATH).orElseThrow(() -> new IllegalStateException("The class path lacks " + ON_CLASS_PATH));
        return switch (new HouseRulesReader().rules(root)) {
            case Outcome.Done<HouseRules>(var rules, var notices) -> rules;
            case Outcome.Refused<HouseRules>(var notices) ->
                    throw new IllegalStateException("The house rules do not read: " + notices.getFirst());
        };
    }

    /** @param file the name that notices show */
    public static Outcome<HouseRules> read(String file, byte[] bytes) {
        return YamlReader.read(file, bytes).then(root -> new HouseRulesReader().rules(root));
    }

    /** The notices are complete only when every mapping is closed. */
    private Outcome<HouseRules> rules(YamlNode root) {
        var rules = read(root);
        return Outcome.of(rules, notices);
    }

    private HouseRules read(YamlNode root) {
        try (var f = new Fields(root, notices)) {
            if (f.whole("format") != 1) {
                f.wrong(f.at("format"), "format " + f.text("format") + " is not known", "write `format: 1`");
            }
            var bands = bands(f);
            var sideSpecific = sideSpecific(f);
            Effort legs;
            Effort hinge;
            try (var effort = f.fields("effort")) {
                source(effort, "effort");
                legs = effort(effort, "legs");
                hinge = effort(effort, "hinge");
            }
            return new HouseRules(bands, sideSpecific, legs, hinge, errors(f),
                    whole(f, "ramp-sets"), whole(f, "expiry-weeks"), range(f, "progression"), formula(f),
                    whole(f, "deload-every"), number(f, "shin-vertical"), range(f, "weekly-sets"),
                    whole(f, "reps-for-formula"), whole(f, "in-reserve-for-estimate"), placing(f),
                    Collections.unmodifiableMap(sources));
        }
    }

    private List<Band> bands(Fields f) {
        try (var b = f.fields("bands")) {
            source(b, "bands");
            var lines = b.items("lines", true);
            var bands = new ArrayList<Band>();
            for (var line : lines) {
                try (line) {
                    boolean last = bands.size() == lines.size() - 1;
                    bands.add(new Band(last ? line.number("under-years", Double.POSITIVE_INFINITY)
                            : line.number("under-years"), share(line, "legs-movement"), share(line, "legs-strength"),
                            share(line, "arms-movement"), share(line, "arms-strength"), line.whole("sets"),
                            line.whole("in-reserve")));
                }
            }
            if (bands.isEmpty()) {
                b.wrong(b.at("lines"), "no training age has a band", "give at least one line");
            }
            return List.copyOf(bands);
        }
    }

    private HouseRules.Placing placing(Fields f) {
        try (var p = f.fields("placing")) {
            return new HouseRules.Placing(share(p, "front-raise-most", 1), share(p, "rear-raise-most", 1), share(p, "laces-from", 1),
                    share(p, "rail-height", 1), share(p, "wall-height", 1), share(p, "support-ahead", 1), share(p, "novice-years", 100),
                    share(p, "ankle-reserve", 40));
        }
    }

    /** From 0 to {@code most}. */
    private double share(Fields f, String key, double most) {
        try (var rule = f.fields(key)) {
            source(rule, key);
            double value = rule.number("value");
            if (value < 0 || value > most) {
                rule.wrong(rule.at("value"), "`" + key + "` runs from 0 to " + (long) most, "take the house's own number if in doubt");
            }
            return value;
        }
    }

    private static HouseRules.Range share(Fields line, String key) {
        var range = line.range(key, true);
        if (range.low() < 0 || range.high() > 1) {
            line.wrong(line.at(key), "a share of capacity runs from 0 to 1", "write for example `[0.68, 0.76]`");
        }
        return range;
    }

    private Map<Stage, Double> sideSpecific(Fields f) {
        var shares = new EnumMap<Stage, Double>(Stage.class);
        try (var s = f.fields("side-specific")) {
            source(s, "side-specific");
            for (var stage : Stage.values()) {
                double share = s.number(stage.word());
                if (share < 0 || share > 1) {
                    s.wrong(s.at(stage.word()), "a share runs from 0 to 1", "write for example `0.60`");
                }
                shares.put(stage, share);
            }
        }
        return Collections.unmodifiableMap(shares);
    }

    private static Effort effort(Fields both, String which) {
        try (var e = both.fields(which)) {
            var effort = new Effort(e.number("hip"), e.number("knee"), e.number("lean"), e.number("lean-scale"));
            if (!(effort.hip() > 0 && effort.knee() > 0 && effort.leanScale() > 0)) {
                e.wrong(e.span(), "the weights of the effort must be above 0", "write for example `2.5`");
            }
            return effort;
        }
    }

    private Map<String, Double> errors(Fields f) {
        var errors = new LinkedHashMap<String, Double>();
        try (var e = f.fields("measurement-error")) {
            source(e, "measurement-error");
            MEASURES.stream().filter(e::has).forEach(measure -> errors.put(measure, e.number(measure)));
        }
        return Collections.unmodifiableMap(errors);
    }

    private int whole(Fields f, String key) {
        try (var rule = f.fields(key)) {
            source(rule, key);
            return rule.whole("value");
        }
    }

    private double number(Fields f, String key) {
        try (var rule = f.fields(key)) {
            source(rule, key);
            return rule.number("value");
        }
    }

    private HouseRules.Range range(Fields f, String key) {
        try (var rule = f.fields(key)) {
            source(rule, key);
            return rule.range("value", true);
        }
    }

    private String formula(Fields f) {
        try (var rule = f.fields("one-rep-max-formula")) {
            source(rule, "one-rep-max-formula");
            var name = rule.text("value");
            if (!FORMULAS.contains(name)) {
                rule.problem("catalogue-unknown-word", rule.at("value"), "`" + name + "` is not known here",
                        "one of `" + String.join("`, `", FORMULAS) + "`");
            }
            return name;
        }
    }

    private void source(Fields rule, String key) {
        sources.put(key, rule.text("source"));
    }
}
