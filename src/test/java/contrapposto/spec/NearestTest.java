package contrapposto.spec;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NearestTest {
    /** kitten/sitting and CA/ABC are the worked examples usual for this distance (common practice, no source). */
    @ParameterizedTest
    @CsvSource({"kitten, sitting, 3", "ca, abc, 3", "rigth, right, 1", "'', abc, 3", "same, SAME, 0"})
    void counts_edits(String one, String other, int edits) {
        assertEquals(edits, Nearest.edits(one, other));
        assertEquals(edits, Nearest.edits(other, one));
    }

    @Test
    void suggests_only_what_is_near() {
        var words = List.of("left", "right", "square");
        assertEquals(Optional.of("square"), Nearest.of("sqare", words));
        assertEquals(Optional.of("left"), Nearest.of("LEFT", words));
        assertEquals(Optional.empty(), Nearest.of("sideways", words));
        assertEquals(Optional.empty(), Nearest.of("x".repeat(5000), words));
        assertEquals(Optional.of("wed"), Nearest.of("Wednesday", List.of("mon", "wed")));
    }
}
