package contrapposto.setup;

import static contrapposto.setup.PaperBody.question;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;

import contrapposto.assess.Assessor;
import contrapposto.assess.Specs;
import contrapposto.body.PoseOutcome;
import contrapposto.body.PoseProblem;
import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.Family.MuscleUse;
import contrapposto.catalogue.Family.When;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Phase;
import contrapposto.check.CheckedSpec.Restriction;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Length;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is asked about a family, and what is kept of the answers; what stands, hinges and staggers is the catalogue's. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class QuestionTest {
    private static final Specs RIGHT = Specs.turned(Turned.RIGHT);

    @ParameterizedTest
    @CsvSource({"split-squat, true, false, false, false", "staggered-deadlift, true, true, true, false", "one-leg-squat, true, false, false, false",
            "step-up, true, false, false, false", "goblet-squat, false, false, false, true", "half-kneeling-press, false, false, true, false",
            "standing-row, false, false, true, false", "floor-bridge, false, false, false, true", "two-leg-deadlift, false, true, false, true"})
    void what_a_family_does_is_told_by_its_base_and_group(String id, boolean stands, boolean hinges, boolean staggered, boolean symmetric) {
        var q = question(id, Side.LEFT, RIGHT);
        assertEquals(List.of(stands, hinges, staggered, symmetric), List.of(q.standsOnALeg(), q.hinges(), q.staggered(), q.symmetric()));
        assertEquals(q.target().role(), q.role());
        assertEquals(hinges, q.family().group() == CapacityGroup.HINGE);
    }

    @Test
    void another_room_or_a_free_hand_leave_the_rest_as_it_was() {
        var wish = new SetUpWish(Optional.of(Length.ofCentimetres(20)), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), false, Optional.empty(),
                OptionalDouble.empty());
        var q = question(PaperBody.family("split-squat"), Side.LEFT, RIGHT, wish);
        assertEquals(List.of(true, false), List.of(q.fixedByCoach(), q.withoutWish().fixedByCoach()));
        assertEquals(q, new Question(q.assessed(), q.rules(), q.family(), q.side(), q.target(), q.person(), q.restraints(), q.equipment(), wish));
        assertEquals(q, q.with(q.equipment()));
        assertSame(q.restraints(), q.withoutWish().restraints());
        assertEquals(1.71, q.stature(), 1e-12);
        assertSame(q.assessed().spec(), q.spec());
    }

    private static SetUps chosen(Specs specs, String... ids) {
        return PaperBody.chosen(PaperBody.of(0.86, 0), specs, ids);
    }

    /** A sore left knee stands on no left leg: that side falls away with its reason, the other stays. */
    @Test
    void a_side_that_falls_away_is_named_with_why() {
        var sore = new Restriction.Avoid("single-leg", Set.of(Side.LEFT), Optional.empty(), "sore knee");
        var setUps = chosen(RIGHT.restricted(sore), "split-squat", "suitcase-carry");
        assertEquals(List.of(Side.RIGHT), List.copyOf(setUps.usable().get("split-squat").sides()));
        assertEquals(Set.of(Side.LEFT), setUps.refused().get("split-squat").keySet());
        assertEquals(List.of("restriction"), setUps.refused().get("split-squat").get(Side.LEFT).stream().map(r -> r.rule()).toList());
        var other = new Restriction.Avoid("single-leg", Set.of(Side.RIGHT), Optional.empty(), "sore knee");
        assertEquals(List.of(Side.LEFT), List.copyOf(chosen(RIGHT.restricted(other), "split-squat").usable().get("split-squat").sides()));
        var both = chosen(RIGHT.restricted(sore, other), "split-squat");
        assertEquals(List.of(Set.of("split-squat"), Map.of(), Map.of()), List.of(both.leftOut().keySet(), both.refused(), both.usable()));
        assertEquals(Map.of(), chosen(RIGHT, "split-squat").refused());
    }

    /** Chosen for left and right, each mirror pair is solved once; the same chooser asked again solves nothing. */
    @Test
    void what_was_solved_is_not_solved_again() {
        var asked = new ArrayList<PoseProblem>();
        var body = PaperBody.of(0.86, 0);
        var chooser = new SetUpChooser(p -> {
            asked.add(p);
            return body.apply(p);
        }).remembering();
        var assessed = new Assessor().assess(RIGHT.spec(), PaperBody.RULES);
        var only = new contrapposto.catalogue.Catalogue(List.of(PaperBody.family("split-squat")), PaperBody.CATALOGUE.words(), PaperBody.RULES);
        var first = chooser.choose(assessed, only);
        assertEquals(asked.stream().distinct().toList(), asked);
        assertEquals(List.of(Side.LEFT), asked.stream().map(PoseProblem::working).distinct().toList(), "the right is the left in the mirror");
        int once = asked.size();
        assertEquals(first.usable().keySet(), chooser.choose(assessed, only).usable().keySet());
        assertEquals(once, asked.size());
        var test = chooser.asTested(first, PaperBody.family("split-squat"), Side.LEFT, SetUpWish.NONE, 16);
        assertEquals(Side.LEFT, test.working());
        var known = new SolvedOnce(body);
        assertEquals(known.apply(test), known.apply(test.mirrored()).mirrored());
        assertSame(known.apply(test), known.apply(test));
        assertInstanceOf(PoseOutcome.Solved.class, known.apply(test));
    }

    /** A set counts once where it trains a muscle directly, half where it does not, and only in its phase. */
    @Test
    void a_muscle_is_trained_in_its_phase() {
        var one = Muscle.values()[0];
        var two = Muscle.values()[1];
        var uses = List.of(new MuscleUse(one, false, When.ALWAYS, ""), new MuscleUse(one, true, When.EARLY_TO_MID, ""), new MuscleUse(two, true, When.MID_TO_LATE, ""));
        assertEquals(Map.of(one, 0.5), TrainedMuscles.of(uses, Optional.empty()));
        assertEquals(Map.of(one, 1.0), TrainedMuscles.of(uses, Optional.of(Phase.EARLY_TO_MID)));
        assertEquals(Map.of(one, 0.5, two, 1.0), TrainedMuscles.of(uses, Optional.of(Phase.MID_TO_LATE)));
    }
}
