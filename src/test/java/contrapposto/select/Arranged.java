package contrapposto.select;

import contrapposto.assess.Assessor;
import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.body.BaseOfSupport;
import contrapposto.body.Joint;
import contrapposto.body.JointLimits;
import contrapposto.body.Load;
import contrapposto.body.Person;
import contrapposto.body.Pose;
import contrapposto.body.PoseProblem;
import contrapposto.body.PoseProblem.Zone;
import contrapposto.body.SolvedPose;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.Family;
import contrapposto.catalogue.Implement;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Phase;
import contrapposto.check.CheckedSpec;
import contrapposto.quantity.Length;
import contrapposto.quantity.Sex;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.setup.SetUp;
import contrapposto.setup.SetUps;
import contrapposto.setup.SolvedSetUp;
import contrapposto.wording.Said;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Set-ups as selection reads them, put together from the catalogue without solving a pose: each family with its first implement, the muscles
 * the catalogue names, the phase its side wants. Where a test is about choosing, not about mechanics.
 */
final class Arranged {
    private static final SolvedPose STILL = still();

    private Arranged() { }

    /** These families, in a catalogue that knows no others and not even them: so nothing is ever set up anew to see what binds. */
    static SetUps only(CheckedSpec spec, List<String> ids) {
        return knowing(among(spec, ids), List.of());
    }

    /** The same set-ups in a catalogue of these families. */
    static SetUps knowing(SetUps setUps, List<String> ids) {
        var families = Invented.CATALOGUE.families().stream().filter(family -> ids.contains(family.id())).toList();
        return new SetUps(setUps.assessed(), new Catalogue(families, Invented.CATALOGUE.words(), Invented.CATALOGUE.rules()), setUps.usable(), Map.of(), Map.of());
    }

    /** Only these of the whole catalogue can be set up; all others lack their equipment. */
    static SetUps among(CheckedSpec spec, List<String> ids) {
        var assessed = new Assessor().assess(spec, Invented.CATALOGUE.rules());
        var usable = new LinkedHashMap<String, Sided<SolvedSetUp>>();
        var leftOut = new LinkedHashMap<String, List<Reason>>();
        for (var family : Invented.CATALOGUE.families()) {
            if (ids.contains(family.id())) {
                usable.put(family.id(), sides(family, assessed.target(Side.LEFT).phases().getFirst(), assessed.target(Side.RIGHT).phases().getFirst()));
            } else {
                leftOut.put(family.id(), List.of(Reason.of("equipment", Said.of("excluded"), Source.SOLVED)));
            }
        }
        return new SetUps(assessed, Invented.CATALOGUE, usable, leftOut, Map.of());
    }

    static SetUps with(SetUps setUps, String id, Sided<SolvedSetUp> sides) {
        var usable = new LinkedHashMap<>(setUps.usable());
        usable.put(id, sides);
        return new SetUps(setUps.assessed(), setUps.catalogue(), usable, setUps.leftOut(), setUps.refused());
    }

    static Family family(String id) {
        return Invented.CATALOGUE.family(id).orElseThrow();
    }

    private static Sided<SolvedSetUp> sides(Family family, Phase left, Phase right) {
        return family.sides() == Family.Sides.BOTH ? new Sided.Whole<>(solved(family, Side.LEFT, left, setUp(family, 0)))
                : new Sided.Each<>(solved(family, Side.LEFT, left, setUp(family, 0)), solved(family, Side.RIGHT, right, setUp(family, 0)));
    }

    /** @param raise of the front foot, m */
    static SetUp setUp(Family family, double raise) {
        var implement = family.levers().implement().getFirst();
        return new SetUp(Optional.empty(), Optional.empty(), Optional.empty(), Length.ofMetres(raise), Length.ZERO, Length.ZERO, Length.ZERO, Optional.empty(), Double.NaN,
                Double.NaN, Optional.empty(), false, false, false, SetUp.Support.NONE, Length.ZERO, Double.NaN, implement, implement == Implement.BODY_WEIGHT ? 0 : 1);
    }

    static SolvedSetUp solved(Family family, Side side, Phase phase, SetUp setUp) {
        return new SolvedSetUp(family, side, contrapposto.assess.Role.BOTH, setUp, problem(side), STILL, family.works() == Family.Works.LEG ? Optional.of(phase) : Optional.empty(),
                shares(family.muscles()), shares(family.otherSideMuscles()), List.of(), Optional.empty(), Optional.empty(), false);
    }

    private static Map<Muscle, Double> shares(List<Family.MuscleUse> uses) {
        var shares = new EnumMap<Muscle, Double>(Muscle.class);
        uses.forEach(use -> shares.merge(use.muscle(), use.direct() ? 1.0 : 0.5, Math::max));
        return shares;
    }

    private static PoseProblem problem(Side side) {
        var family = family("split-squat");
        return new PoseProblem(Person.of(1.71, 64, Sex.FEMALE), side, new Sided.Whole<>(JointLimits.COMMON), new BaseOfSupport.Split(side, 0.85, 0.19, 0, 0, false),
                family.action().on(side, 1.71), family.workingArm().on(Side.LEFT, 1.71), family.workingArm().on(Side.RIGHT, 1.71), new Load.None(), false, false,
                new Sided.Whole<>(Zone.WHOLE_SOLE), Invented.CATALOGUE.rules().legEffort());
    }

    private static SolvedPose still() {
        var joints = new EnumMap<Joint, Vector3D>(Joint.class);
        for (var joint : Joint.values()) {
            joints.put(joint, Vector3D.ZERO);
        }
        var pose = new Pose(joints, Vector3D.PLUS_I, Vector3D.PLUS_I);
        return new SolvedPose(pose, pose, new SolvedPose.Mechanics(0, 0, 0.5, 0.5, 0, 90, 100, 60, 0, 0, 0, 0, 0.05, Double.NaN, Vector3D.ZERO, Vector3D.ZERO, List.of()), List.of());
    }
}
