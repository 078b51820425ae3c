package contrapposto.prescribe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Assessor;
import contrapposto.assess.Specs;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Side;
import contrapposto.select.Instead;
import contrapposto.select.Selection;
import contrapposto.select.Selection.Chosen;
import contrapposto.setup.SetUpChooser;
import contrapposto.setup.SetUps;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Loads on solved poses and chosen set-ups, nothing standing in: the split squat of an invented client. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SolvedLoadsTest {
    private static final Catalogue SQUATS = new Catalogue(List.of(SplitSquats.FAMILY), SplitSquats.CATALOGUE.words(),
            SplitSquats.CATALOGUE.rules());

    private static Plan plan(Turned turned, double left, double right) {
        var specs = Specs.turned(turned).tested(Programs.squatTests(left, right));
        var setUps = new SetUpChooser().choose(new Assessor().assess(specs.spec(), SQUATS.rules()), SQUATS);
        return new Prescriber().prescribe(selection(setUps));
    }

    private static Selection selection(SetUps setUps) {
        return new Selection(setUps, List.of(new Chosen(1, "split-squat", setUps.usable().get("split-squat"), 1, 8, 2, Instead.NONE, List.of())),
                List.of(new Selection.Day(DayOfWeek.MONDAY, List.of(1))),
                List.of(new Selection.StageWeeks(Stage.STANDING, 1, 8)), Map.of(), List.of());
    }

    private static Plan.SidePlan side(Plan plan, Side side) {
        return plan.exercises().getFirst().sides().on(side);
    }

    @Test
    void a_mirrored_client_gets_the_mirrored_loads_to_the_bit() {
        var right = plan(Turned.RIGHT, 14, 18);
        var left = plan(Turned.LEFT, 18, 14);
        for (var side : Side.values()) {
            assertEquals(side(right, side).doses(), side(left, side.other()).doses());
            assertEquals(side(right, side).capacity(), side(left, side.other()).capacity());
        }
    }

    /** A client tested at 14 and 18 kg, 8 repeats with 2 to spare, begins lighter than that, and never over the band. */
    @Test
    void a_newcomer_begins_under_the_test_and_stays_inside_the_band() {
        var plan = plan(Turned.RIGHT, 14, 18);
        for (var side : Side.values()) {
            var doses = side(plan, side).doses();
            double first = doses.getFirst().load().orElseThrow();
            assertTrue(first >= 2 && first < (side == Side.LEFT ? 14 : 18), side + " begins with " + first);
            assertTrue(doses.getFirst().share().orElseThrow() <= 0.68 + 1e-6);
            assertTrue(doses.stream().allMatch(dose -> dose.share().orElseThrow() <= 0.76 + 1e-6));
            var mechanics = side(plan, side).solved().pose().mechanics();
            double together = Math.max(0, mechanics.hipMoment()) + Math.max(0, mechanics.kneeMoment());
            assertEquals(doses.getFirst().share().orElseThrow(), together / side(plan, side).capacity().orElseThrow().together(), 0.01,
                    "the printed moments give the printed share");
        }
    }

    @Test
    void a_stronger_test_never_begins_lighter() {
        double left = 0;
        double right = 0;
        for (double tested = 8; tested <= 24; tested += 4) {
            var plan = plan(Turned.RIGHT, tested, tested);
            double nowLeft = side(plan, Side.LEFT).doses().getFirst().load().orElse(0);
            double nowRight = side(plan, Side.RIGHT).doses().getFirst().load().orElse(0);
            assertTrue(nowLeft >= left && nowRight >= right, tested + " kg");
            left = nowLeft;
            right = nowRight;
        }
        assertTrue(left > 0 && right > 0);
    }
}
