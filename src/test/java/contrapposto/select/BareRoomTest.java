package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Assessor;
import contrapposto.catalogue.RestrictionTag;
import contrapposto.compose.Composer;
import contrapposto.compose.Templates;
import contrapposto.notice.Outcome;
import contrapposto.prescribe.Plan;
import contrapposto.prescribe.Prescriber;
import contrapposto.press.Press;
import contrapposto.press.Wanted;
import contrapposto.quantity.Side;
import contrapposto.setup.SetUpChooser;
import java.util.EnumSet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A room with a floor, a mat and a wall, and one thing to keep away from on both sides: each such client gets a finished program. With
 * {@code -Dcontrapposto.bare=pdf} each is set as a PDF too.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class BareRoomTest {
    private static final int FEWEST = 2;

    @ParameterizedTest
    @EnumSource(RestrictionTag.class)
    void a_bare_room_makes_a_finished_program_under_any_single_restriction(RestrictionTag tag) {
        var spec = Invented.checked("""
                format: 1
                client: {name: Invented, age: 34, height: 171 cm, mass: 64 kg, training-years: 0.5}
                assessment: {date: 2026-03-02, pelvis: {turned: right}}
                schedule: {start: 2026-03-09, weeks: 8, days: [mon, wed, fri], minutes: 40, start-stage: floor}
                equipment: {also: [mat, wall]}
                restrictions: [{avoid: %s, side: both}]
                """.formatted(tag.word()));
        var plan = new Prescriber().prescribe(new Selector().select(new SetUpChooser().choose(
                new Assessor().assess(spec, Invented.CATALOGUE.rules()), Invented.CATALOGUE)));
        assertTrue(plan.warnings().stream().noneMatch(said -> said.key().startsWith("shortfall/")), () -> plan.warnings().toString());
        for (var day : plan.days()) {
            for (int week = 1; week <= 8; week++) {
                int now = week;
                long done = day.numbers().stream().map(number -> exercise(plan, number)).filter(e -> does(e, now)).count();
                assertTrue(done >= FEWEST, tag.word() + ", week " + week + ": " + done);
            }
        }
        var sides = EnumSet.noneOf(Side.class);
        for (var exercise : plan.exercises()) {
            var family = Invented.CATALOGUE.family(exercise.id()).orElseThrow();
            assertTrue(!family.tags().contains(tag.word()) || tag == RestrictionTag.GRIP, exercise.id());
            sides.addAll(exercise.sides().sides());
        }
        assertEquals(EnumSet.allOf(Side.class), sides);
        assertTrue(plan.exercises().stream().map(e -> Invented.CATALOGUE.family(e.id()).orElseThrow().works()).distinct().count() >= 2,
                "legs and something else");
        if (System.getProperty("contrapposto.bare", "").equals("pdf")) {
            var press = new Press(Invented.CATALOGUE, new Composer(Templates.own()), Wanted.AS_THE_SPEC_SAYS);
            assertTrue(press.press(spec) instanceof Outcome.Done<Press.Pressed>, tag.word());
        }
    }

    private static boolean does(Plan.Exercise exercise, int week) {
        return exercise.sides().values().getFirst().doses().stream().anyMatch(dose -> dose.week() == week);
    }

    private static Plan.Exercise exercise(Plan plan, int number) {
        return plan.exercises().stream().filter(e -> e.number() == number).findFirst().orElseThrow();
    }
}
