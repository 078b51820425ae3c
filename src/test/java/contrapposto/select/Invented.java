package contrapposto.select;

import contrapposto.assess.Assessed;
import contrapposto.assess.Assessor;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.catalogue.RestrictionTag;
import contrapposto.check.CheckedSpec;
import contrapposto.check.Checks;
import contrapposto.notice.Outcome;
import contrapposto.setup.SetUpChooser;
import contrapposto.setup.SetUps;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Invented clients as spec text, and how their set-ups come about. */
final class Invented {
    static final Catalogue CATALOGUE = CatalogueReader.house(HouseRulesReader.house());

    /** Neighbouring seeds begin alike; this far apart they do not. */
    private static final long APART = 0x9E3779B97F4A7C15L;

    private Invented() { }

    static SetUps setUps(CheckedSpec spec) {
        return new SetUpChooser().choose(new Assessor().assess(spec, CATALOGUE.rules()), CATALOGUE);
    }

    /** Refused specs are faults of the test. */
    static CheckedSpec checked(String text) {
        return switch (Checks.check("invented.yaml", text.getBytes(StandardCharsets.UTF_8), CATALOGUE)) {
            case Outcome.Done<CheckedSpec>(var spec, var notices) -> spec;
            case Outcome.Refused<CheckedSpec>(var notices) -> throw new IllegalArgumentException(notices + "\n" + text);
        };
    }

    /** A client of any build, age and finding, in any room, with none to two restrictions; the same seed gives the same one. */
    static CheckedSpec random(int seed) {
        return restricted(seed, 0);
    }

    /** The same with so many things more to keep away from on both sides. */
    static CheckedSpec restricted(int seed, int more) {
        var chance = new Random(seed * APART);
        var equipment = new ArrayList<String>();
        if (chance.nextInt(4) > 0) {
            equipment.add("  dumbbells: " + one(chance, "{from: 2 kg, to: 24 kg, step: 2 kg}", "[3 kg, 5 kg, 8 kg, 10 kg]",
                    "{from: 1 kg, to: 10 kg, step: 1 kg}", "{from: 4 kg, to: 40 kg, step: 2 kg}"));
        }
        if (chance.nextInt(3) == 0) {
            equipment.add("  kettlebells: [8 kg, 12 kg, 16 kg]");
        }
        if (chance.nextInt(3) == 0) {
            equipment.add("  barbell: {bar: 20 kg, plates: {20 kg: 2, 10 kg: 2, 5 kg: 2, 2.5 kg: 2, 1.25 kg: 2}}");
        }
        if (chance.nextInt(2) == 0) {
            equipment.add("  cable: {step: 2.5 kg, to: 60 kg}");
        }
        if (chance.nextInt(3) > 0) {
            equipment.add("  boxes: " + one(chance, "[10 cm, 15 cm, 30 cm, 45 cm]", "[12 cm, 30 cm, 45 cm]", "[20 cm, 40 cm]"));
        }
        if (chance.nextInt(2) == 0) {
            equipment.add("  bench: 43 cm");
        }
        if (chance.nextInt(2) == 0) {
            equipment.add("  wedges: [3 cm]");
        }
        equipment.add("  also: [wall" + one(chance, "", ", mat") + one(chance, "", ", chair") + one(chance, "", ", band")
                + one(chance, "", "", ", rail") + "]");
        var restrictions = new ArrayList<String>();
        for (int i = chance.nextInt(3); i > 0; i--) {
            restrictions.add("  - {avoid: %s, side: %s}".formatted(one(chance, RestrictionTag.words().toArray(String[]::new)),
                    one(chance, "left", "right", "both")));
        }
        var further = new Random(seed + APART);
        for (int i = 0; i < more; i++) {
            restrictions.add("  - {avoid: %s, side: both}".formatted(one(further, RestrictionTag.words().toArray(String[]::new))));
        }
        return checked("""
                format: 1
                client: {name: Invented, age: %d, height: %d cm, mass: %d kg, training-years: %d}
                assessment: {date: 2026-03-02, pelvis: {turned: %s}}
                schedule: {start: 2026-03-09, weeks: %d, days: %s, minutes: %d, start-stage: %s}
                aims: %s
                equipment:
                %s
                %s
                """.formatted(chance.nextInt(18, 80), chance.nextInt(152, 195), chance.nextInt(50, 95), chance.nextInt(0, 6),
                one(chance, "left", "right", "right", "square"), chance.nextInt(1, 13),
                one(chance, "[mon, wed, fri]", "[tue, thu]", "[mon, wed, sun]", "[sat]", "[mon, tue, thu, fri]", "[mon, tue, wed, thu, fri]"),
                5 * chance.nextInt(4, 16), one(chance, "floor", "supported", "standing", "integrated"),
                one(chance, "[side-to-side movement, strength]", "[strength, side-to-side movement]", "[side-to-side movement]", "[strength]"),
                String.join("\n", equipment), restrictions.isEmpty() ? "" : "restrictions:\n" + String.join("\n", restrictions)));
    }

    private static String one(Random chance, String... words) {
        return words[chance.nextInt(words.length)];
    }

    /** The same client with other equipment. */
    static CheckedSpec with(CheckedSpec s, CheckedSpec.Equipment equipment) {
        return new CheckedSpec(s.fileName(), s.sha256(), s.title(), s.client(), s.practice(), s.assessment(), s.screening(),
                s.clearance(), s.restrictions(), equipment, s.schedule(), s.aims(), s.choices(), s.handout());
    }

    /** The same set-ups under another schedule, which set-ups do not depend on. */
    static SetUps with(SetUps setUps, CheckedSpec.Schedule schedule) {
        var s = setUps.assessed().spec();
        return with(setUps, new CheckedSpec(s.fileName(), s.sha256(), s.title(), s.client(), s.practice(), s.assessment(), s.screening(),
                s.clearance(), s.restrictions(), s.equipment(), schedule, s.aims(), s.choices(), s.handout()));
    }

    /** The same set-ups when the coach asks for and leaves out these. */
    static SetUps with(SetUps setUps, List<String> include, List<String> exclude) {
        var s = setUps.assessed().spec();
        return with(setUps, new CheckedSpec(s.fileName(), s.sha256(), s.title(), s.client(), s.practice(), s.assessment(), s.screening(),
                s.clearance(), s.restrictions(), s.equipment(), s.schedule(), s.aims(), new CheckedSpec.Choices(include, exclude,
                s.choices().setup(), s.choices().ownWords()), s.handout()));
    }

    private static SetUps with(SetUps setUps, CheckedSpec spec) {
        var a = setUps.assessed();
        return new SetUps(new Assessed(spec, a.landing(), a.left(), a.right(), a.agreements(), a.verdict(), a.cautious(),
                a.unanswered(), a.restrained(), a.reasons()), setUps.catalogue(),
                setUps.usable(), setUps.leftOut(), setUps.refused());
    }
}
