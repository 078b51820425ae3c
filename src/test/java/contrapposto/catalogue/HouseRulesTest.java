package contrapposto.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.catalogue.HouseRules.Range;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HouseRulesTest {
    private final HouseRules rules = HouseRulesReader.house();

    /** The house's own table; its direction (newcomer higher, veteran lower while movement is the goal) is common practice, no source. */
    @Test
    void every_measure_a_spec_may_name_and_no_other_may_have_an_error_of_its_own() {
        assertEquals(contrapposto.check.MeasureKind.words(), HouseRulesReader.MEASURES);
    }

    @Test
    void bands_fall_with_training_age_for_movement_and_rise_for_strength() {
        var newcomer = rules.band(0.5);
        var some = rules.band(1);
        var veteran = rules.band(12);
        assertEquals(new Range(0.68, 0.76), newcomer.legsMovement());
        assertEquals(new Range(0.64, 0.72), some.legsMovement());
        assertEquals(new Range(0.40, 0.55), veteran.armsMovement());
        for (var pair : List.of(List.of(newcomer, some), List.of(some, veteran))) {
            var less = pair.get(0);
            var more = pair.get(1);
            assertTrue(more.legsMovement().high() < less.legsMovement().high());
            assertTrue(more.armsMovement().high() < less.armsMovement().high());
            assertTrue(more.legsStrength().high() > less.legsStrength().high());
            assertTrue(more.armsStrength().high() > less.armsStrength().high());
        }
    }

    /** ACSM 2009 position stand, reference B1.1. */
    @Test
    void loads_rise_as_published() {
        assertEquals(new Range(0.02, 0.10), rules.progression());
    }

    /** ACSM 2009, reference B1.5: novices 1 to 3 sets. */
    @Test
    void a_newcomer_begins_with_one_to_three_sets() {
        assertTrue(new Range(1, 3).holds(rules.band(0).sets()));
    }

    /** Rogerson et al., reference B3.16: easy weeks come every 5.8 ± 3.4 weeks. */
    @Test
    void easy_weeks_come_within_the_surveyed_spread() {
        assertTrue(new Range(5.8 - 3.4, 5.8 + 3.4).holds(rules.deloadEvery()));
    }

    @Test
    void the_side_specific_share_falls_by_stage() {
        assertEquals(List.of(0.80, 0.80, 0.60, 0.40), List.copyOf(rules.sideSpecific().values()));
    }

    @Test
    void every_rule_names_its_source() {
        assertEquals(21, rules.sources().size());
        rules.sources().forEach((rule, source) ->
                assertTrue(source.matches("(?s)(house|published|common practice).*"), rule + ": " + source));
    }
}
