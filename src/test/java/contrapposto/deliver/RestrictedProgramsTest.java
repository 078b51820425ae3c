package contrapposto.deliver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Assessor;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.catalogue.RestrictionTag;
import contrapposto.check.CheckedSpec;
import contrapposto.check.Checks;
import contrapposto.notice.Outcome;
import contrapposto.prescribe.Prescriber;
import contrapposto.select.Selector;
import contrapposto.setup.SetUpChooser;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Invented clients with random restrictions: nothing that is printed violates one, by the eyes of {@link PlanWatch}. A few
 * always; {@code -Dcontrapposto.restricted=500} for the whole run, whose result stands in docs/safety.md.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RestrictedProgramsTest {
    private static final int ALWAYS = 6;
    private static final Catalogue CATALOGUE = CatalogueReader.house(HouseRulesReader.house());

    static IntStream clients() {
        return IntStream.range(0, Integer.getInteger("contrapposto.restricted", ALWAYS));
    }

    @ParameterizedTest
    @MethodSource("clients")
    void nothing_printed_violates_a_restriction(int number) {
        var client = new Client(new Random(41_000 + number));
        var spec = client.checked();
        var assessed = new Assessor().assess(spec, CATALOGUE.rules());
        assertTrue(!assessed.verdict().withheld(), client.text);
        var plan = new Prescriber().prescribe(new Selector().select(new SetUpChooser().choose(assessed, CATALOGUE)));
        assertEquals(List.of(), PlanWatch.violations(new String(PlanFile.of(plan), StandardCharsets.UTF_8), client.rules()), client.text);
    }

    /** One invented client and what the watch has to look for. */
    private static final class Client {
        private final Random chance;
        private final List<PlanWatch.Ban> bans = new ArrayList<>();
        private final List<Double> heights = new ArrayList<>();
        private final String text;
        private boolean pregnant;
        private int age;

        Client(Random chance) {
            this.chance = chance;
            this.text = write();
        }

        CheckedSpec checked() {
            var checked = Checks.check("restricted.yaml", text.getBytes(StandardCharsets.UTF_8), CATALOGUE);
            assertTrue(checked instanceof Outcome.Done<CheckedSpec>, () -> checked.notices() + "\n" + text);
            return ((Outcome.Done<CheckedSpec>) checked).value();
        }

        PlanWatch.Rules rules() {
            return new PlanWatch.Rules(bans, pregnant, pregnant, pregnant || age < 18 || age >= 65, heights);
        }

        private String write() {
            age = chance.nextInt(14, 85);
            pregnant = age > 18 && age < 45 && chance.nextInt(4) == 0;
            var equipment = new ArrayList<String>();
            if (chance.nextBoolean()) {
                equipment.add("  dumbbells: {from: 2 kg, to: 24 kg, step: 2 kg}");
            }
            if (chance.nextBoolean()) {
                equipment.add("  cable: {step: 2.5 kg, to: 60 kg}");
            }
            if (chance.nextBoolean()) {
                equipment.add("  boxes: [12 cm, 30 cm, 45 cm]");
                heights.addAll(List.of(12.0, 30.0, 45.0));
            }
            if (chance.nextInt(3) == 0) {
                equipment.add("  bench: 42 cm");
                heights.add(42.0);
            }
            equipment.add("  also: [wall" + (chance.nextBoolean() ? ", chair" : "") + (chance.nextBoolean() ? ", mat" : "")
                    + (chance.nextInt(4) == 0 ? ", rail" : "") + "]");
            return """
                    format: 1
                    client: {name: Invented, age: %d, height: %d cm, mass: %d kg, training-years: %d}
                    assessment: {date: 2026-03-02, pelvis: {turned: %s}}
                    screening: {pregnant: %s}
                    schedule: {start: 2026-03-09, weeks: %d, days: [mon, wed, fri], minutes: %d, start-stage: %s}
                    equipment:
                    %s
                    restrictions:
                    %s
                    """.formatted(age, chance.nextInt(152, 195), chance.nextInt(50, 95), chance.nextInt(0, 4), one("left", "right", "square"),
                    pregnant ? "yes" : "no", chance.nextInt(1, 9), chance.nextInt(20, 60), one("floor", "supported", "standing"),
                    String.join("\n", equipment), String.join("\n", restrictions()));
        }

        private List<String> restrictions() {
            var lines = new ArrayList<String>();
            for (int i = chance.nextInt(1, 6); i > 0; i--) {
                String side = one("left", "right", "both");
                if (chance.nextInt(3) > 0) {
                    String what = chance.nextInt(6) == 0 ? CATALOGUE.families().get(chance.nextInt(CATALOGUE.families().size())).id()
                            : RestrictionTag.words().get(chance.nextInt(RestrictionTag.words().size()));
                    lines.add("  - {avoid: %s, side: %s}".formatted(what, side));
                    bans.add(new PlanWatch.Ban(what, side, 0));
                } else if (chance.nextBoolean()) {
                    int most = chance.nextInt(3, 16);
                    lines.add("  - {limit: hand-load, to: %d kg}".formatted(most));
                    bans.add(new PlanWatch.Ban("hand-load", "both", most));
                } else {
                    String what = one("knee-flexion", "hip-flexion", "dorsiflexion");
                    int most = what.equals("dorsiflexion") ? chance.nextInt(10, 35) : chance.nextInt(60, 115);
                    lines.add("  - {limit: %s, to: %d deg, side: %s}".formatted(what, most, side));
                    bans.add(new PlanWatch.Ban(what, side, most));
                }
            }
            return lines;
        }

        private String one(String... words) {
            return words[chance.nextInt(words.length)];
        }
    }
}
