package contrapposto.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.prescribe.Plan;
import contrapposto.quantity.Sided;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** "Your left side gets number 2, in place of this one" must be true in each week in which this one is done. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CounterpartTest {
    @Test
    void what_the_other_side_gets_is_done_in_every_week_of_the_exercise_and_on_that_side_alone() {
        int named = 0;
        for (int number = 0; number < 240; number++) {
            Plan plan = GeneratedPlans.of(number);
            for (CardModel card : cards(plan)) {
                if (card.instead().isPresent()) {
                    named++;
                    var own = exercise(plan, card.number());
                    var other = exercise(plan, card.instead().get().number().orElseThrow());
                    assertTrue(weeks(other).containsAll(weeks(own)), "plan " + number + ": " + card.number() + " " + weeks(own) + ", " + other.number()
                            + " " + weeks(other));
                    assertEquals(Set.of(true), Set.of(other.sides() instanceof Sided.Only<Plan.SidePlan> only && !only.side().word().equals(card.single().orElseThrow())));
                }
            }
        }
        assertTrue(named > 40, named + " cards name one");
    }

    @Test
    void an_exercise_that_has_ended_before_is_not_named() {
        Plan plan = Plans.turnedRight();
        var right = plan.exercises().get(1);
        var left = plan.exercises().get(2);
        var late = new Plan.Exercise(2, "triceps-extension", right.sides().map(s -> during(s, 5, Plans.WEEKS)), right.instead(), List.of());
        assertEquals("3", cards(with(plan, List.of(late, left))).getFirst().instead().orElseThrow().number().orElseThrow());
        var early = new Plan.Exercise(3, left.id(), left.sides().map(s -> during(s, 1, 4)), left.instead(), List.of());
        assertTrue(cards(with(plan, List.of(late, early))).getFirst().instead().isEmpty());
    }

    private static Plan with(Plan plan, List<Plan.Exercise> exercises) {
        return new Plan(plan.assessed(), plan.catalogue(), plan.firstSide(), plan.expires(), plan.weeks(), exercises, plan.days(), plan.volume(),
                plan.leftOut(), plan.reasons(), plan.warnings());
    }

    private static Plan.SidePlan during(Plan.SidePlan side, int first, int last) {
        return new Plan.SidePlan(side.solved(), side.loadUsed(), side.capacity(),
                side.doses().stream().filter(d -> d.week() >= first && d.week() <= last).toList(), side.reasons());
    }

    private static List<CardModel> cards(Plan plan) {
        return CardModel.all(PlanWords.of(plan), Set.of());
    }

    private static Plan.Exercise exercise(Plan plan, String number) {
        return plan.exercises().stream().filter(e -> Integer.toString(e.number()).equals(number)).findFirst().orElseThrow();
    }

    private static Set<Integer> weeks(Plan.Exercise exercise) {
        return exercise.sides().values().stream().flatMap(s -> s.doses().stream()).map(Plan.Dose::week).collect(Collectors.toSet());
    }
}
