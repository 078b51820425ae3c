package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Rules;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.Family;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TrainingOrderTest {
    private static final Catalogue CATALOGUE = CatalogueReader.house(Rules.house());

    private static final java.util.Comparator<Family> ORDER = TrainingOrder.families(false);

    private static Family family(String id) {
        return CATALOGUE.family(id).orElseThrow();
    }

    /** ACSM 2009 (B1.13, grade C): large before small, several joints before one. */
    @ParameterizedTest
    @CsvSource({"split-squat, triceps-extension", "staggered-deadlift, triceps-extension", "goblet-squat, high-to-low-press",
        "high-to-low-press, triceps-extension", "triceps-extension, suitcase-carry"})
    void large_lifts_of_several_joints_come_before_small_ones(String first, String then) {
        assertTrue(ORDER.compare(family(first), family(then)) < 0);
    }

    /** The one exception: what opens the ribs comes first whatever its size, since the rest is done over open ribs (common practice, no source). */
    @Test
    void what_opens_the_ribs_comes_before_all_that_stands() {
        assertTrue(ORDER.compare(family("supported-curl"), family("split-squat")) < 0);
    }

    /** Legs, pushes, pulls, arms, the rest, calves, and carries last, when the grip may tire (common practice, no source). */
    @Test
    void a_session_goes_from_the_floor_to_the_carry() {
        var session = java.util.List.of("floor-bridge", "supported-curl", "split-squat", "staggered-deadlift", "high-to-low-press", "standing-row", "triceps-extension", "slow-march",
                "one-leg-calf-raise", "suitcase-carry");
        assertEquals(session, session.reversed().stream().map(TrainingOrderTest::family).sorted(ORDER).map(Family::id).toList());
        var balance = java.util.List.of("floor-bridge", "wall-one-leg-stand", "supported-curl", "split-squat");
        assertEquals(balance, balance.reversed().stream().map(TrainingOrderTest::family).sorted(TrainingOrder.families(true)).map(Family::id).toList(), "fresh, where balance comes first");
    }
}
