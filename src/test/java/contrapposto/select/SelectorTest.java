package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Assessor;
import contrapposto.assess.Reason;
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
import java.util.Optional;
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

    /** An order every coach keeps (common practice, no source): hands on a wall first, the weight later, never the other way round. */
    @Test
    void no_supported_form_comes_in_after_its_loaded_one_that_was_tested() {
        var spec = Invented.checked("""
                format: 1
                client: {name: Invented, age: 34, height: 171 cm, mass: 64 kg, training-years: 0.5}
                assessment:
                  date: 2026-03-02
                  pelvis: {turned: right}
                  tests:
                    - {exercise: split-squat, side: left, load: 8 kg, reps: 8, in-reserve: 2}
                    - {exercise: split-squat, side: right, load: 10 kg, reps: 8, in-reserve: 2}
                schedule: {start: 2026-03-09, weeks: 8, days: [mon, wed, fri], minutes: 50, start-stage: floor}
                equipment: {dumbbells: {from: 2 kg, to: 24 kg, step: 2 kg}, boxes: [10 cm, 15 cm, 30 cm], also: [mat, wall]}
                """);
        var selection = new Selector().select(Invented.setUps(spec));
        assertEquals(1, chosen(selection, "split-squat").orElseThrow().firstWeek());
        assertEquals(List.of("easier-form"), selection.leftOut().get("wall-split-squat").stream().map(Reason::rule).toList());
        for (var easier : selection.exercises()) {
            var family = easier.sides().values().getFirst().family();
            family.harder().stream().flatMap(link -> chosen(selection, link.family()).stream())
                    .filter(harder -> harder.sides().values().getFirst().family().stage().compareTo(family.stage()) > 0)
                    .forEach(harder -> assertTrue(easier.firstWeek() <= harder.firstWeek(), easier.id() + " comes in after " + harder.id()));
        }
    }

    private static Optional<Selection.Chosen> chosen(Selection selection, String id) {
        return selection.exercises().stream().filter(chosen -> chosen.id().equals(id)).findFirst();
    }
}
