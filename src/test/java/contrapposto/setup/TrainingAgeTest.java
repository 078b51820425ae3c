package contrapposto.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.assess.Assessor;
import contrapposto.assess.Specs;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * What training age does to a set-up. Steadiness for training age is the last criterion but one (DESIGN's order: safety,
 * phase, turn, pressure, muscles, steadiness, fewer things), so newcomer and veteran get the same set-up wherever
 * something above decides, which in the house catalogue is everywhere: a raised rear foot carries more weight. Loads,
 * sets and repeats to spare are where training age tells (house rules: bands).
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TrainingAgeTest {
    private static final Catalogue CATALOGUE = CatalogueReader.house(HouseRulesReader.house());
    private static final Catalogue SQUATS = new Catalogue(CATALOGUE.families().stream()
            .filter(f -> List.of("split-squat", "goblet-split-squat", "staggered-deadlift", "step-up").contains(f.id())).toList(), CATALOGUE.words(), CATALOGUE.rules());

    private static CheckedSpec spec(double years) {
        return Specs.turned(Turned.RIGHT).trained(years).spec();
    }

    @Test
    void newcomer_and_veteran_stand_alike_since_phase_and_weight_decide_before_steadiness() {
        var newcomer = new SetUpChooser().choose(new Assessor().assess(spec(0.3), CATALOGUE.rules()), CATALOGUE).usable();
        var veteran = new SetUpChooser().choose(new Assessor().assess(spec(12), CATALOGUE.rules()), CATALOGUE).usable();
        assertEquals(newcomer.keySet(), veteran.keySet());
        newcomer.forEach((id, sides) -> sides.values().forEach(one -> assertEquals(one.setUp(), veteran.get(id).on(one.side()).setUp(), id)));
    }

    /** Alike in all that comes first, the lower rear foot wins for a newcomer, and nothing but the rear foot differs from a veteran's marks. */
    @Test
    void steadiness_marks_a_high_rear_foot_for_a_newcomer_alone() {
        var marks = new ArrayList<Double>();
        double rear = 0;
        for (double years : List.of(0.3, 12.0)) {
            var usable = new SetUpChooser().choose(new Assessor().assess(spec(years), CATALOGUE.rules()), SQUATS).usable().get("split-squat").on(Side.RIGHT);
            var assessed = new Assessor().assess(spec(years), CATALOGUE.rules());
            var question = new Question(assessed, CATALOGUE.rules(), usable.family(), Side.RIGHT, assessed.target(Side.RIGHT),
                    assessed.spec().client().person(), Restraints.of(assessed, CATALOGUE.rules()), assessed.spec().equipment(), CheckedSpec.SetUpWish.NONE);
            var held = new Trial.Held(usable.setUp(), usable.problem(), usable.pose(), 8);
            marks.add(new Judge(question).judge(held, 0).marks().get(Criterion.STEADINESS.ordinal()));
            rear = usable.setUp().rearRaise().centimetres();
            assertTrue(rear > 20, "a rear foot raised in spite of it");
        }
        assertEquals(rear, marks.get(0) - marks.get(1), 1, "the rear foot's height in centimetres");
        assertTrue(Criterion.STEADINESS.compareTo(Criterion.PHASE) > 0 && Criterion.STEADINESS.compareTo(Criterion.WEIGHT) > 0);
    }
}
