package contrapposto.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The numbers of the items, from the published lists (reference F1, F3, F4); their words are our own. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ItemsTest {
    private static List<String> numbers(int from, int to) {
        return IntStream.rangeClosed(from, to).mapToObj(Integer::toString).toList();
    }

    /** 16 items, three of them in two parts: 19. */
    @Test
    void the_consensus_has_19_sub_items() {
        assertEquals(Stream.of(numbers(1, 6), List.of("7a", "7b"), numbers(8, 13), List.of("14a", "14b", "15", "16a", "16b")).flatMap(List::stream).toList(),
                List.copyOf(Items.REPORTING.keySet()));
    }

    /** 26 items, less the two on sound and moving pictures. */
    @Test
    void the_assessment_of_printed_material_has_24_items() {
        assertEquals(Stream.concat(numbers(1, 12).stream(), numbers(15, 26).stream()).toList(), List.copyOf(Items.PATIENT_MATERIAL.keySet()));
    }

    @Test
    void the_index_has_20_items() {
        assertEquals(numbers(1, 20), List.copyOf(Items.CLEAR_COMMUNICATION.keySet()));
    }
}
