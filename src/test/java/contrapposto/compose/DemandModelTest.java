package contrapposto.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DemandModelTest {
    /** The plan by hand: split squats left 8 and right 10 kg, 1.3 kg under the exact weights; nothing else was tested. */
    @Test
    void left_and_right_stand_together_with_exact_and_printed_weight_and_what_lies_between() {
        var demands = DemandModel.of(PlanWords.of(Plans.turnedRight()));
        assertEquals(List.of("Split squat"), demands.stream().map(DemandModel::name).toList());
        var rows = demands.getFirst().rows();
        assertEquals(List.of("left", "right"), rows.stream().map(DemandModel.Row::badge).toList());
        var left = rows.getFirst().known().orElseThrow();
        assertEquals("180\u00a0N·m", left.capacity());
        assertEquals("68\u00a0%", left.wanted());
        assertEquals(Optional.of("9.3\u00a0kg"), left.exact());
        assertEquals(Optional.of("8\u00a0kg"), left.printed());
        assertEquals(Optional.of("1.3\u00a0kg"), left.cost().mass());
        assertEquals(Optional.of("11.3\u00a0kg"), rows.getLast().known().orElseThrow().exact());
    }
}
