package contrapposto.prescribe;

import contrapposto.assess.Role;
import contrapposto.body.BaseOfSupport;
import contrapposto.body.JointLimits;
import contrapposto.body.Load;
import contrapposto.body.Person;
import contrapposto.body.PoseOutcome;
import contrapposto.body.PoseProblem;
import contrapposto.body.PoseProblem.Zone;
import contrapposto.body.PoseSolver;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.catalogue.Implement;
import contrapposto.catalogue.Muscle;
import contrapposto.quantity.Length;
import contrapposto.quantity.Sex;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.setup.SetUp;
import contrapposto.setup.SolvedSetUp;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Split squats of an invented person of 171 cm and 64 kg, put together by hand and solved by the real solver. */
final class SplitSquats {
    static final Catalogue CATALOGUE = CatalogueReader.house(HouseRulesReader.house());
    static final Family FAMILY = CATALOGUE.family("split-squat").orElseThrow();
    private static final double STATURE = 1.71;
    private static final Person PERSON = Person.of(STATURE, 64, Sex.FEMALE);

    private SplitSquats() { }

    static PoseProblem problem(Side side, double frontRaise, double rearRaise, Load load) {
        return new PoseProblem(PERSON, side, new Sided.Whole<>(JointLimits.COMMON),
                new BaseOfSupport.Split(side, 0.5 * STATURE, 0.11 * STATURE, frontRaise, rearRaise, rearRaise > 0.3),
                FAMILY.action().on(side, STATURE), FAMILY.workingArm().on(Side.LEFT, STATURE),
                FAMILY.workingArm().on(Side.RIGHT, STATURE), load, false, false, new Sided.Whole<>(Zone.WHOLE_SOLE),
                CATALOGUE.rules().legEffort());
    }

    /** Flat feet, one weight in both hands: how tests are arranged. */
    static PoseProblem tested(Side side, double load) {
        return problem(side, 0, 0, new Load.InBothHands(load));
    }

    static SolvedSetUp solved(Side side, Role role, double frontRaise, double rearRaise) {
        var problem = problem(side, frontRaise, rearRaise, new Load.InHand(side.other(), 8));
        var pose = ((PoseOutcome.Solved) PoseSolver.solve(problem)).pose();
        var setUp = new SetUp(Optional.of(side), Optional.empty(), Optional.of(side), Length.ofMetres(frontRaise),
                Length.ofMetres(rearRaise), Length.ZERO, Length.ZERO, Optional.empty(), 0.5 * STATURE, 0.11 * STATURE,
                Optional.of(side.other()), false, false, false, SetUp.Support.NONE, Length.ZERO, Double.NaN, Implement.DUMBBELL, 1);
        return new SolvedSetUp(FAMILY, side, role, setUp, problem, pose, Optional.empty(),
                Map.of(Muscle.GLUTEUS_MAXIMUS, 1.0), Map.of(), List.of(), Optional.empty(), Optional.empty(), false);
    }
}
