package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Specs;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.Implement;
import contrapposto.catalogue.RestrictionTag;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.setup.SetUps;
import contrapposto.setup.SolvedSetUp;
import java.util.HashSet;
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

    @Test
    void when_it_hurts_another_loads_other_joints_or_is_a_step_down() {
        int found = 0;
        for (var selection : selections()) {
            for (var chosen : selection.exercises()) {
                if (chosen.instead().hurts().isPresent()) {
                    var one = chosen.sides().values().getFirst().family();
                    var other = selection.setUps().catalogue().family(chosen.instead().hurts().get()).orElseThrow();
                    var shared = joints(one);
                    shared.retainAll(joints(other));
                    assertTrue(shared.isEmpty() || steps(selection, one, 3).contains(other.id()), one.id() + " → " + other.id() + " " + shared);
                    found++;
                }
            }
        }
        assertTrue(found >= 6, "exercises with something for when they hurt: " + found);
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

    private static TreeSet<String> joints(Family family) {
        var joints = new TreeSet<>(family.tags());
        joints.retainAll(List.of(RestrictionTag.NECK, RestrictionTag.SHOULDER, RestrictionTag.ELBOW, RestrictionTag.WRIST, RestrictionTag.LOWER_BACK,
                RestrictionTag.HIP, RestrictionTag.KNEE, RestrictionTag.ANKLE).stream().map(RestrictionTag::word).toList());
        return joints;
    }

    private static Set<String> steps(Selection selection, Family family, int most) {
        var reached = new HashSet<String>();
        if (most > 0) {
            family.easier().stream().map(Family.Link::family).filter(id -> !id.equals(family.id())).forEach(id -> {
                reached.add(id);
                reached.addAll(steps(selection, selection.setUps().catalogue().family(id).orElseThrow(), most - 1));
            });
        }
        return reached;
    }
}
