package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Specs;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.Implement;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.setup.SetUps;
import contrapposto.setup.SolvedSetUp;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What stands in when things are taken or it hurts. What may stand in is common practice, no source. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StandInsTest {
    private static final SetUps RIGHT = Invented.setUps(Specs.turned(Turned.RIGHT).spec());

    private static final SetUps FURNISHED = Invented.setUps(Invented.checked("""
            format: 1
            client: {name: Invented, age: 34, height: 170 cm, mass: 68 kg, training-years: 2}
            assessment: {date: 2026-03-02, pelvis: {turned: right}}
            schedule: {start: 2026-03-09, weeks: 1, days: [mon], minutes: 50}
            equipment: {dumbbells: {from: 2 kg, to: 24 kg, step: 2 kg}, boxes: [10 cm, 15 cm, 30 cm, 45 cm], bench: 43 cm, also: [mat, wall]}
            """));

    private static List<Selection> selections() {
        return List.of(new Selector().select(RIGHT), new Selector().select(Invented.setUps(Invented.random(12))));
    }

    @Test
    void what_stands_in_is_not_in_the_plan_and_not_left_out_by_the_coach() {
        for (var selection : selections()) {
            var plan = selection.exercises().stream().map(Selection.Chosen::id).toList();
            for (var chosen : selection.exercises()) {
                for (var id : ids(chosen.instead())) {
                    assertTrue(!plan.contains(id), chosen.id() + " → " + id);
                    assertTrue(selection.setUps().usable().get(id).sides().containsAll(chosen.sides().sides()), chosen.id() + " → " + id);
                    var excluding = new Selector().select(Invented.with(selection.setUps(), plan, List.of(id)));
                    assertTrue(excluding.exercises().stream().noneMatch(other -> ids(other.instead()).contains(id)), id);
                }
            }
        }
    }

    @Test
    void when_things_are_taken_another_needs_none_of_them() {
        int found = 0;
        for (var selection : selections()) {
            for (var chosen : selection.exercises()) {
                if (chosen.instead().taken().isPresent()) {
                    var shared = things(chosen.sides().values());
                    shared.retainAll(things(selection.setUps().usable().get(chosen.instead().taken().get()).values()));
                    assertEquals(Set.of(), shared, chosen.id() + " → " + chosen.instead().taken());
                    found++;
                }
            }
        }
        assertTrue(found >= 6, "exercises with things that can be taken: " + found);
    }

    /** What the catalogue says a movement asks for, its position left aside: the other asks for nothing more, and for less. */
    @Test
    void when_it_hurts_another_of_the_same_kind_asks_for_less_and_for_nothing_else() {
        int found = 0;
        for (var selection : selections()) {
            for (var chosen : selection.exercises()) {
                if (chosen.instead().hurts().isPresent()) {
                    var one = chosen.sides().values().getFirst().family();
                    var other = selection.setUps().catalogue().family(chosen.instead().hurts().get()).orElseThrow();
                    assertTrue(demands(one).containsAll(demands(other)) && !demands(one).equals(demands(other)), one.id() + " → " + other.id());
                    assertEquals(one.works(), other.works(), one.id() + " → " + other.id());
                    found++;
                }
            }
        }
        assertTrue(found >= 4, "exercises with something for when they hurt: " + found);
    }

    /** Pairs a coach would name, common practice, no source; and none that a coach would not. */
    @Test
    void stand_ins_are_what_a_coach_would_name() {
        assertEquals(Optional.of("box-bridge"), alone("split-squat").hurts());
        assertEquals(Optional.of("box-bridge"), alone("staggered-deadlift").hurts());
        assertEquals(Optional.of("seated-turn"), alone("half-kneeling-turn").hurts());
        assertEquals(Optional.of("wall-calf-raise"), alone("calf-raise").hurts());
        assertEquals(Optional.empty(), alone("floor-bridge").hurts());
    }

    private static Instead alone(String id) {
        return Selector.alone(FURNISHED, id).exercises().getFirst().instead();
    }

    @Test
    void the_coach_reads_what_the_plan_would_lose() {
        for (var chosen : new Selector().select(RIGHT).exercises()) {
            assertTrue(chosen.reasons().stream().anyMatch(r -> r.rule().equals("earns") && r.because().matches(".*\\d+ in place of \\d+.*")), chosen.id());
            assertEquals(chosen.instead().hurts().isPresent(), chosen.reasons().stream().anyMatch(r -> r.said().key().equals("instead/hurts")));
        }
    }

    private static List<String> ids(Instead instead) {
        return List.of(instead.taken(), instead.hurts()).stream().flatMap(Optional::stream).distinct().toList();
    }

    private static TreeSet<String> things(List<SolvedSetUp> sides) {
        var things = new TreeSet<String>();
        for (var solved : sides) {
            var s = solved.setUp();
            if (s.count() > 0 && s.implement() != Implement.BODY_WEIGHT) {
                things.add(s.implement().word());
            }
            if (s.frontRaise().metres() > 0 || s.rearRaise().metres() > 0 || s.raise().metres() > 0) {
                things.add("something to stand, sit or lean on");
            }
            if (s.heelWedge().metres() > 0) {
                things.add("wedge");
            }
        }
        return things;
    }

    private static TreeSet<String> demands(Family family) {
        var demands = new TreeSet<>(family.tags());
        demands.removeAll(Set.of("kneeling", "prone", "supine", "side-lying", "floor"));
        return demands;
    }
}
