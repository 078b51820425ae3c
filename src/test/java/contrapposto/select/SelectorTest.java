package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Assessor;
import contrapposto.assess.Specs;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.setup.SetUpChooser;
import contrapposto.setup.SetUps;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Selection over the real catalogue and solved set-ups; what a plan should hold is common practice, no source. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SelectorTest {
    private static final Catalogue CATALOGUE = CatalogueReader.house(HouseRulesReader.house());
    private static final SetUps RIGHT = setUps(Specs.turned(Turned.RIGHT));

    private static SetUps setUps(Specs specs) {
        return new SetUpChooser().choose(new Assessor().assess(specs.spec(), CATALOGUE.rules()), CATALOGUE);
    }

    private static List<String> ids(Selection selection) {
        return selection.exercises().stream().map(Selection.Chosen::id).toList();
    }

    @Test
    void a_session_holds_no_more_than_its_minutes_and_six_exercises() {
        var selection = new Selector().select(RIGHT);
        int minutes = RIGHT.assessed().spec().schedule().minutes();
        assertTrue(selection.exercises().size() >= 5 && selection.exercises().size() <= 8, () -> "" + ids(selection));
        for (var day : selection.days()) {
            for (int week = 1; week <= RIGHT.assessed().spec().schedule().weeks(); week++) {
                double seconds = 0;
                int count = 0;
                for (int number : day.numbers()) {
                    var chosen = selection.exercises().get(number - 1);
                    if (chosen.firstWeek() <= week && week <= chosen.lastWeek()) {
                        var dose = chosen.sides().values().getFirst().family().dose();
                        seconds += SessionTime.seconds(dose.setUpMinutes(), chosen.sides().values().size(), chosen.sets(),
                                dose.repsTo(), dose.seconds(), dose.tempo(), dose.rest());
                        count++;
                    }
                }
                assertTrue(seconds <= minutes * 60 && count <= 6 && count >= 4, "week " + week + ": " + count + ", " + seconds + " s");
            }
        }
    }

    @Test
    void one_two_sided_lift_is_kept_and_floor_work_comes_first() {
        var selection = new Selector().select(RIGHT);
        assertEquals(1, selection.exercises().stream().filter(c -> c.reasons().stream()
                .anyMatch(r -> r.rule().equals("two-sided"))).count());
        int lastFloor = 0;
        int firstOther = Integer.MAX_VALUE;
        for (var chosen : selection.exercises()) {
            boolean floor = chosen.sides().values().getFirst().family().stage() == Stage.FLOOR;
            lastFloor = floor ? chosen.number() : lastFloor;
            firstOther = floor ? firstOther : Math.min(firstOther, chosen.number());
        }
        assertTrue(lastFloor < firstOther);
    }

    @Test
    void every_family_is_in_the_plan_or_left_out_with_a_reason() {
        var selection = new Selector().select(RIGHT);
        for (var family : CATALOGUE.families()) {
            boolean in = ids(selection).contains(family.id());
            assertEquals(!in, selection.leftOut().containsKey(family.id()), family.id());
            assertTrue(in || !selection.leftOut().get(family.id()).isEmpty(), family.id());
        }
    }

    @Test
    void the_other_turn_gives_the_same_exercises_on_the_other_side() {
        var left = new Selector().select(setUps(Specs.turned(Turned.LEFT)));
        var right = new Selector().select(RIGHT);
        assertEquals(ids(right), ids(left));
        for (int i = 0; i < ids(right).size(); i++) {
            var one = right.exercises().get(i).sides();
            var other = left.exercises().get(i).sides();
            one.sides().forEach(side -> assertTrue(other.has(side.other())));
        }
    }

    @Test
    void one_dumbbell_less_hardly_changes_the_plan() {
        var before = new TreeSet<>(ids(new Selector().select(RIGHT)));
        var gym = Specs.gym();
        for (int gone : new int[] {0, 3, gym.dumbbells().size() - 1}) {
            var fewer = new ArrayList<>(gym.dumbbells());
            fewer.remove(gone);
            var equipment = new CheckedSpec.Equipment(List.copyOf(fewer), false, gym.kettlebells(), gym.bars(), gym.cable(),
                    gym.boxes(), gym.bench(), gym.wedges(), gym.also());
            var after = ids(new Selector().select(setUps(Specs.turned(Turned.RIGHT).equipped(equipment))));
            long kept = after.stream().filter(before::contains).count();
            assertTrue(kept >= before.size() - 1, () -> "without dumbbell " + gone + ": " + after + " after " + before);
        }
    }
}
