package contrapposto.setup;

import contrapposto.assess.Assessed.Target;
import contrapposto.assess.Assessor;
import contrapposto.assess.Specs;
import contrapposto.body.BaseOfSupport;
import contrapposto.body.Load;
import contrapposto.body.PoseOutcome;
import contrapposto.body.PoseProblem;
import contrapposto.body.PoseSolver;
import contrapposto.body.SolvedPose;
import contrapposto.body.SolvedPose.Mechanics;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.HouseRules;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.quantity.Side;
import contrapposto.wording.Said;
import java.util.List;
import java.util.function.Function;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A body made of straight lines in place of the solver, so that what setting up does with solved numbers can be told by head: the shin tilts
 * back by a degree for each centimetre of stance beyond the usual one and for each centimetre under the front foot, forward by one for each two
 * centimetres under the rear foot; the front foot has 60 % of the weight; a kilogram turns the trunk by half a newton metre away from its
 * hand; a cable comes to a wrist that keeps its height, half a metre ahead of the pelvis. No person moves so.
 *
 * @param usual    stance at which the shin is at {@code shin}, m
 * @param shin     degrees
 * @param shortest no pose exists in a shorter stance, m
 */
record PaperBody(double usual, double shin, double shortest) implements Function<PoseProblem, PoseOutcome> {
    static final HouseRules RULES = HouseRulesReader.house();
    static final Catalogue CATALOGUE = CatalogueReader.house(RULES);
    private static final double AHEAD = 0.5;
    private static SolvedPose still;

    static PaperBody of(double usual, double shin) {
        return new PaperBody(usual, shin, Double.NEGATIVE_INFINITY);
    }

    /** Poses to fill the record with; nobody here looks at their joints but for a wrist. */
    static synchronized SolvedPose still() {
        if (still == null) {
            still = ((PoseOutcome.Solved) PoseSolver.solve(Posing.problem(question("goblet-squat", Side.LEFT, Specs.turned(Turned.SQUARE)),
                    Candidates.of(question("goblet-squat", Side.LEFT, Specs.turned(Turned.SQUARE))).getLast(), 0))).pose();
        }
        return still;
    }

    static Family family(String id) {
        return CATALOGUE.families().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
    }

    static Question question(String id, Side side, Specs specs) {
        return question(family(id), side, specs, SetUpWish.NONE);
    }

    static Question question(Family family, Side side, Specs specs, SetUpWish wish) {
        var assessed = new Assessor().assess(specs.spec(), RULES);
        Target target = assessed.target(side);
        return new Question(assessed, RULES, family, side, target, assessed.spec().client().person(), Restraints.of(assessed, RULES),
                assessed.spec().equipment(), wish);
    }

    static SetUps chosen(Function<PoseProblem, PoseOutcome> body, Specs specs, String... ids) {
        var only = new Catalogue(CATALOGUE.families().stream().filter(f -> List.of(ids).contains(f.id())).toList(), CATALOGUE.words(), RULES);
        return new SetUpChooser(body).choose(new Assessor().assess(specs.spec(), RULES), only);
    }

    /** Everything still but for what is named. */
    static Mechanics mechanics(double shinStart, double shinWorking, double leftShare, double turnMoment, double lineOfPull) {
        return new Mechanics(shinStart, shinWorking, Double.NaN, leftShare, 20, 90, 10, 10, 0, 0, turnMoment, 0, Double.NaN, lineOfPull,
                Vector3D.ZERO, Vector3D.ZERO, List.of());
    }

    static Trial.Held held(SetUp setUp, Mechanics mechanics, double load) {
        return new Trial.Held(setUp, Posing.problem(question("goblet-squat", Side.LEFT, Specs.turned(Turned.SQUARE)), setUp, 0),
                new SolvedPose(still().start(), still().working(), mechanics, List.of()), load);
    }

    @Override
    public PoseOutcome apply(PoseProblem problem) {
        double tilt = shin;
        double left = 0.5;
        if (problem.base() instanceof BaseOfSupport.Split split) {
            if (split.stance() < shortest - 1e-9) {
                return new PoseOutcome.Impossible(Said.of("pose/pulley"), 1, "m");
            }
            tilt -= 100 * (split.stance() - usual) + 100 * split.frontRaise() - 50 * split.rearRaise();
            left = split.front() == Side.LEFT ? 0.6 : 0.4;
        } else if (problem.base() instanceof BaseOfSupport.Staggered staggered) {
            tilt += (staggered.ahead() == problem.working() ? -100 : 100) * (staggered.stance() - usual);
            left = staggered.ahead() == Side.LEFT ? 0.6 : 0.4;
        }
        double turn = switch (problem.load()) {
            case Load.InHand(Side hand, double kg) -> -hand.sign() * kg / 2;
            case Load.Cable cable -> problem.working().sign() * 4;
            case Load other -> 0;
        };
        double line = switch (problem.load()) {
            case Load.Cable cable -> StrictMath.toDegrees(StrictMath.atan2(cable.pulleyHeight() - wrist(problem), cable.distance() + AHEAD));
            case Load.Band band -> StrictMath.toDegrees(StrictMath.atan2(band.anchorHeight() - wrist(problem), band.distance() + AHEAD));
            case Load other -> Double.NaN;
        };
        return new PoseOutcome.Solved(new SolvedPose(still().start(), still().working(), mechanics(tilt - 12, tilt, left, turn, line), List.of()));
    }

    /** Where the wrist of the still pose is: the slope of a line is foretold from there. */
    static double wrist(PoseProblem problem) {
        return still().working().at(contrapposto.body.Joint.of(problem.working(), contrapposto.body.Joint.Part.WRIST)).getZ();
    }
}
