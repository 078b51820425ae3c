package contrapposto.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Assessor;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.check.CheckedSpec;
import contrapposto.check.Checks;
import contrapposto.notice.Outcome;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** No family of the catalogue is a promise only: in a furnished room each one has a pose that holds. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WholeCatalogueTest {
    /** A person and a room of our own invention; height and finding filled in. */
    private static final String FURNISHED = """
            format: 1
            client: {name: Furnished Room, age: 34, sex: %s, height: %s, mass: %s, training-years: 2}
            assessment: {date: 2026-03-02, pelvis: {turned: %s}}
            equipment:
              dumbbells: {from: 2 kg, to: 24 kg, step: 2 kg}
              kettlebells: [8 kg, 12 kg, 16 kg]
              cable: {step: 2.5 kg, to: 60 kg, pulley: {from: 20 cm, to: 210 cm}}
              boxes: [10 cm, 15 cm, 30 cm, 45 cm]
              bench: 43 cm
              wedges: [3 cm]
              also: [mat, wall, band]
            schedule: {start: 2026-03-09, weeks: 8, days: [mon, wed, fri], minutes: 50}
            """;

    private static SetUps chosen(String sex, String height, String mass, String turned) {
        var rules = HouseRulesReader.house();
        var catalogue = CatalogueReader.house(rules);
        var text = FURNISHED.formatted(sex, height, mass, turned);
        var checked = Checks.check("furnished.yaml", text.getBytes(StandardCharsets.UTF_8), catalogue);
        assertTrue(checked instanceof Outcome.Done<CheckedSpec>, () -> checked.notices().toString());
        var spec = ((Outcome.Done<CheckedSpec>) checked).value();
        return new SetUpChooser().choose(new Assessor().assess(spec, rules), catalogue);
    }

    @ParameterizedTest
    @CsvSource({"female, 152 cm, 50 kg, square", "male, 193 cm, 92 kg, square"})
    void a_square_pelvis_gets_every_family_on_both_sides(String sex, String height, String mass, String turned) {
        var chosen = chosen(sex, height, mass, turned);
        assertEquals(Map.of(), chosen.leftOut());
        chosen.usable().forEach((id, sides) -> assertEquals(2, sides.sides().size(), id));
    }

    @Test
    void a_turned_pelvis_loses_no_family_and_sides_only_to_a_turn_or_to_ribs() {
        var chosen = chosen("female", "171 cm", "64 kg", "right");
        assertEquals(Map.of(), chosen.leftOut());
        chosen.usable().forEach((id, sides) -> {
            var family = chosen.catalogue().family(id).orElseThrow();
            boolean maySpare = family.turn().toward() != Family.Toward.NONE || family.ribs() != Family.Ribs.NEITHER;
            assertTrue(sides.sides().size() == 2 || maySpare, id);
        });
    }
}
