package contrapposto.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ClauseTest {
    private static final String TEXT = "Hold a rail. {loaded: Use no weight.}{free: Bend the {side} knee less.}";

    @Test
    void only_what_holds_is_told() {
        assertEquals("Hold a rail. Use no weight.", Clause.told(TEXT, Clause.holding(true, false)));
        assertEquals("Hold a rail. Bend the {side} knee less.", Clause.told(TEXT, Clause.holding(false, false)));
        assertEquals("", Clause.told("{raised: Check the box.}", Clause.holding(true, false)));
        assertEquals("Check the box. Breathe.", Clause.told("{raised: Check the box.} Breathe.", Clause.holding(true, true)));
    }

    @Test
    void a_text_without_a_clause_has_one_way_of_being_told() {
        assertEquals(List.of("Press the {side} heel."), Clause.ways("Press the {side} heel."));
        assertEquals(2, Clause.ways(TEXT).size());
    }

    /** A family that can be done with nothing in the hands must not speak of a weight there; one that can be done on the floor, not of a box. */
    @Test
    void who_holds_nothing_is_told_of_no_weight() {
        var catalogue = CatalogueReader.house(HouseRulesReader.house());
        var free = catalogue.families().stream().filter(f -> f.levers().implement().contains(Implement.BODY_WEIGHT)).toList();
        assertTrue(free.size() > 30);
        for (var family : free) {
            var words = catalogue.words("en", family.id());
            for (String text : List.of(words.cautions().toString(), words.mistakes().toString(), words.easier().toString())) {
                String told = Clause.told(text, Clause.holding(false, false));
                assertTrue(!told.matches("(?i).*(lighter weight|no weight|set the weight|set it down|hold the weight).*"), family.id() + ": " + told);
            }
        }
    }
}
