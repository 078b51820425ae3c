package contrapposto.prescribe;

import contrapposto.assess.Assessed;
import contrapposto.assess.Assessor;
import contrapposto.assess.Specs;
import contrapposto.body.Load;
import contrapposto.body.PoseOutcome;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.Implement;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.select.Instead;
import contrapposto.select.Selection;
import contrapposto.select.Selection.Chosen;
import contrapposto.setup.SetUp;
import contrapposto.setup.SetUps;
import contrapposto.setup.SolvedSetUp;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Selections put together by hand for invented clients, and the plans written for them on {@link LinearBody}. */
final class Programs {
    static final Catalogue CATALOGUE = SplitSquats.CATALOGUE;
    static final Prescriber PRESCRIBER = new Prescriber(new LinearBody());

    private Programs() { }

    static CheckedSpec.Test test(String family, Optional<Side> side, double kg, int reps, int inReserve) {
        return new CheckedSpec.Test(family, side, Mass.ofKilograms(kg), reps, inReserve, SetUpWish.NONE, Specs.START);
    }

    static List<CheckedSpec.Test> squatTests(double left, double right) {
        return List.of(test("split-squat", Optional.of(Side.LEFT), left, 8, 2),
                test("split-squat", Optional.of(Side.RIGHT), right, 8, 2));
    }

    /** One exercise of every kind of loading, two days a week, in the roles that the finding gives the sides. */
    static Plan plan(Specs specs) {
        return PRESCRIBER.prescribe(selection(specs, List.of("split-squat", "staggered-deadlift", "goblet-squat",
                "high-to-low-press", "supported-curl", "raised-hand-push-up", "suitcase-carry")));
    }

    static Selection selection(Specs specs, List<String> ids) {
        return selection(specs.spec(), ids);
    }

    static Selection selection(CheckedSpec spec, List<String> ids) {
        var assessed = new Assessor().assess(spec, CATALOGUE.rules());
        int weeks = spec.schedule().weeks();
        var chosen = new ArrayList<Chosen>();
        for (var id : ids) {
            var family = CATALOGUE.family(id).orElseThrow();
            chosen.add(new Chosen(chosen.size() + 1, id, sides(family, assessed), 1, weeks, family.dose().sets(),
                    Instead.of(family.instead()), List.of()));
        }
        var numbers = chosen.stream().map(Chosen::number).toList();
        return new Selection(new SetUps(assessed, CATALOGUE, Map.of(), Map.of(), Map.of()), chosen,
                List.of(new Selection.Day(DayOfWeek.MONDAY, numbers), new Selection.Day(DayOfWeek.THURSDAY, numbers)),
                List.of(new Selection.StageWeeks(Stage.STANDING, 1, weeks)), Map.of(), List.of());
    }

    private static Sided<SolvedSetUp> sides(Family family, Assessed assessed) {
        return family.sides() == Family.Sides.BOTH ? new Sided.Whole<>(side(family, Side.LEFT, assessed))
                : new Sided.Each<>(side(family, Side.LEFT, assessed), side(family, Side.RIGHT, assessed));
    }

    /** The landing side with its front foot raised, the drive side with its rear foot; both flat when the pelvis is square. */
    private static SolvedSetUp side(Family family, Side side, Assessed assessed) {
        boolean landing = assessed.landing().equals(Optional.of(side));
        boolean drive = assessed.landing().equals(Optional.of(side.other()));
        var implement = !assessed.spec().equipment().bands().isEmpty() && family.levers().implement().contains(Implement.BAND) ? Implement.BAND
                : family.levers().implement().getFirst();
        boolean both = family.sides() == Family.Sides.BOTH;
        var problem = SplitSquats.problem(side, landing ? 0.15 : 0, drive ? 0.43 : 0, load(implement, side, both));
        var pose = ((PoseOutcome.Solved) new LinearBody().solve(problem)).pose();
        var setUp = new SetUp(Optional.of(side), Optional.empty(), Optional.of(side), Length.ZERO, Length.ZERO, Length.ZERO,
                Length.ZERO, Optional.empty(), 0.8, 0.2, both ? Optional.empty() : Optional.of(side.other()), both, false, false,
                SetUp.Support.NONE, Length.ZERO, Double.NaN, implement, implement == Implement.BODY_WEIGHT ? 0 : 1);
        return new SolvedSetUp(family, side, assessed.role(side), setUp, problem, pose, Optional.empty(),
                Map.of(Muscle.GLUTEUS_MAXIMUS, 1.0, Muscle.QUADRICEPS, 0.5), Map.of(Muscle.OBLIQUES_TRANSVERSUS, 0.5), List.of(),
                Optional.empty(), Optional.empty(), false);
    }

    private static Load load(Implement implement, Side side, boolean both) {
        return switch (implement) {
            case BODY_WEIGHT -> new Load.None();
            case CABLE -> new Load.Cable(side, 5, 1, 1.8, 1, false, 0);
            case BAND -> new Load.Band(side, 1.8, 1, false);
            case DUMBBELL, KETTLEBELL, BARBELL -> both ? new Load.InBothHands(8) : new Load.InHand(side.other(), 8);
        };
    }
}
