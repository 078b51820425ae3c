package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.catalogue.Family;
import contrapposto.catalogue.RestrictionTag;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec.Schedule;
import contrapposto.prescribe.Plan;
import contrapposto.prescribe.Prescriber;
import contrapposto.quantity.Side;
import contrapposto.setup.SetUps;
import contrapposto.wording.Said;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A room with a floor and a wall, and one thing to keep away from on both sides: each such client gets a finished program. Every day
 * of every week has three exercises and more than one kind of work, from every start stage. A mat changes nothing: no family needs one.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class BareRoomTest {
    private static final int WEEKS = 8;
    private static final int FEWEST = 3;
    private static final int KINDS = 2;

    @ParameterizedTest
    @EnumSource(RestrictionTag.class)
    void a_bare_room_makes_a_finished_program_under_any_single_restriction(RestrictionTag tag) {
        var setUps = restricted(tag);
        for (var start : Stage.values()) {
            var plan = plan(setUps, start);
            for (int week = 1; week <= WEEKS; week++) {
                for (var day : plan.days()) {
                    var works = works(plan, day, week);
                    var what = tag.word() + ", from " + start.word() + ", week " + week + ", " + day.day() + ": " + works;
                    assertTrue(works.size() >= FEWEST, what);
                    assertTrue(works.stream().distinct().count() >= KINDS, what);
                    assertTrue(day.minutes().get(week - 1) > 0, what);
                }
            }
            var sides = EnumSet.noneOf(Side.class);
            plan.exercises().forEach(exercise -> sides.addAll(exercise.sides().sides()));
            assertEquals(EnumSet.allOf(Side.class), sides);
            assertEquals(List.of(), plan.exercises().stream().filter(e -> tag != RestrictionTag.GRIP && family(e).tags().contains(tag.word())).toList());
            assertEquals(tag == RestrictionTag.FLOOR && start == Stage.FLOOR ? List.of("shortfall/starts-later") : List.of(), shortfalls(plan));
        }
    }

    /** Who may not lie or kneel on the floor begins with supported work, and is told what binds. */
    @Test
    void a_client_kept_off_the_floor_starts_supported_and_the_restriction_is_named() {
        var selection = new Selector().select(restricted(RestrictionTag.FLOOR));
        assertEquals(Stage.SUPPORTED, selection.stages().getFirst().stage());
        var said = selection.shortfalls().getFirst();
        assertTrue(said.keys().containsAll(List.of("shortfall/starts-later", "binds/alone", "restriction/avoid")), said::toString);
        var free = new Selector().select(restricted(RestrictionTag.NECK));
        assertEquals(Stage.FLOOR, free.stages().getFirst().stage());
    }

    private static SetUps restricted(RestrictionTag tag) {
        return Invented.setUps(Invented.checked("""
                format: 1
                client: {name: Invented, age: 34, height: 171 cm, mass: 64 kg, training-years: 0.5}
                assessment: {date: 2026-03-02, pelvis: {turned: right}}
                schedule: {start: 2026-03-09, weeks: %d, days: [mon, wed, fri], minutes: 50, start-stage: floor}
                equipment: {also: [wall]}
                restrictions: [{avoid: %s, side: both}]
                """.formatted(WEEKS, tag.word())));
    }

    private static Plan plan(SetUps setUps, Stage start) {
        var s = setUps.assessed().spec().schedule();
        return new Prescriber().prescribe(new Selector().select(Invented.with(setUps,
                new Schedule(s.start(), s.weeks(), s.days(), s.minutes(), start, s.gate()))));
    }

    private static List<String> shortfalls(Plan plan) {
        return plan.warnings().stream().map(Said::key).filter(key -> key.startsWith("shortfall/")).toList();
    }

    private static List<Family.Works> works(Plan plan, Plan.Day day, int week) {
        return day.numbers().stream().map(number -> plan.exercises().stream().filter(e -> e.number() == number).findFirst().orElseThrow())
                .filter(exercise -> exercise.sides().values().getFirst().doses().stream().anyMatch(dose -> dose.week() == week && dose.sets() > 0))
                .map(exercise -> family(exercise).works()).toList();
    }

    private static Family family(Plan.Exercise exercise) {
        return Invented.CATALOGUE.family(exercise.id()).orElseThrow();
    }
}
