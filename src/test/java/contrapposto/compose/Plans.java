package contrapposto.compose;

import contrapposto.assess.Assessed;
import contrapposto.assess.Assessor;
import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.assess.Role;
import contrapposto.assess.Rules;
import contrapposto.assess.Specs;
import contrapposto.body.Action;
import contrapposto.body.ArmTask;
import contrapposto.body.BaseOfSupport;
import contrapposto.body.Joint;
import contrapposto.body.JointLimits;
import contrapposto.body.Load;
import contrapposto.body.Person;
import contrapposto.body.Pose;
import contrapposto.body.PoseProblem;
import contrapposto.body.Segments;
import contrapposto.body.SolvedPose;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.Implement;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Phase;
import contrapposto.catalogue.Stage;
import contrapposto.check.CheckedSpec;
import contrapposto.prescribe.Plan;
import contrapposto.quantity.Length;
import contrapposto.quantity.Sex;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.select.Instead;
import contrapposto.setup.SetUp;
import contrapposto.setup.SolvedSetUp;
import contrapposto.wording.Said;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A plan made by hand for tests: an invented client turned right; a two-sided, a one-sided and a symmetric exercise over
 * ten weeks. Poses are not solved: only the numbers that reach a page are given.
 */
public final class Plans {
    private static final Catalogue CATALOGUE = CatalogueReader.house(Rules.house());
    static final int WEEKS = 10;

    private Plans() { }

    public static Plan turnedRight() {
        return of(Specs.turned(CheckedSpec.Turned.RIGHT).lasting(WEEKS, 50).spec());
    }

    /** A plan held back: chest pain is answered with yes. */
    public static Plan withheld() {
        var assessed = new Assessor().assess(Specs.turned(CheckedSpec.Turned.RIGHT).answering("chest-pain", true).spec(), Rules.house());
        return new Plan(assessed, CATALOGUE, Side.LEFT, Specs.START.plusWeeks(14), List.of(), List.of(), List.of(), Map.of(), Map.of(),
                List.of(), List.of());
    }

    public static Plan of(CheckedSpec spec) {
        Assessed assessed = new Assessor().assess(spec, Rules.house());
        var weeks = IntStream.rangeClosed(1, WEEKS).mapToObj(n -> new Plan.Week(n, Specs.START.plusWeeks(n - 1), n == 5, n == 5 ? 4 : 3,
                Stage.STANDING)).toList();
        var exercises = List.of(
                new Plan.Exercise(1, "split-squat", new Sided.Each<>(side(Side.LEFT, Role.LANDING, 0.15, 0, 8), side(Side.RIGHT, Role.DRIVE, 0, 0.30, 10)),
                        Instead.of("step-up"), List.of(Reason.of("stage", Said.of("stage/ends").count("week", 4), Source.PRACTICE))),
                new Plan.Exercise(2, "high-to-low-press", new Sided.Only<>(Side.RIGHT, press()), Instead.of("triceps-extension"), List.of()),
                new Plan.Exercise(3, "supported-curl", new Sided.Only<>(Side.LEFT, curl()), Instead.of("one-arm-row"), List.of()),
                new Plan.Exercise(4, "goblet-squat", new Sided.Whole<>(squat()), Instead.of("box-bridge"), List.of()));
        var minutes = Collections.nCopies(WEEKS, 48);
        var days = List.of(new Plan.Day(DayOfWeek.MONDAY, minutes, List.of(1, 2, 4), List.of(
                        new Plan.Ramp(1, 8, 0, new Sided.Whole<>(OptionalDouble.empty())),
                        new Plan.Ramp(1, 5, 0.5, new Sided.Each<>(OptionalDouble.of(4), OptionalDouble.of(4))))),
                new Plan.Day(DayOfWeek.THURSDAY, minutes, List.of(1, 3, 4), List.of()));
        var volume = new EnumMap<Muscle, Plan.LeftRight>(Muscle.class);
        volume.put(Muscle.GLUTEUS_MAXIMUS, new Plan.LeftRight(6, 9));
        volume.put(Muscle.HAMSTRINGS, new Plan.LeftRight(7.5, 4));
        return new Plan(assessed, CATALOGUE, Side.LEFT, Specs.START.plusWeeks(WEEKS + 4).minusDays(1), weeks, exercises, days,
                Collections.unmodifiableMap(volume), Map.of("step-up", List.of(Reason.of("minutes", Said.of("minutes/no-day"), Source.SOLVED))),
                List.of(Reason.of("deload", Said.of("missed-week"), Source.HOUSE)), List.of(Said.of("volume/muscle").word("muscle", "biceps").word("side", "left").count("sets", 2)));
    }

    private static Plan.SidePlan side(Side side, Role role, double frontRaise, double rearRaise, double load) {
        var base = new BaseOfSupport.Split(side, 0.80, 0.18, frontRaise, rearRaise, false);
        var setUp = setUp(Optional.of(side), Optional.of(side), frontRaise, rearRaise, 0.80, Optional.of(Side.RIGHT), Implement.DUMBBELL);
        var solved = solved("split-squat", side, role, setUp, base, new Load.InHand(Side.RIGHT, load),
                Optional.of(side == Side.LEFT ? Phase.EARLY_TO_MID : Phase.MID_TO_LATE), side == Side.LEFT ? 0.65 : 0.20);
        return new Plan.SidePlan(solved, load, Optional.of(new Plan.Capacity("hip", 142, 180, 28, 0.68, load + 1.3, "Brzycki", 0.05, 1)),
                doses(1, 8, OptionalDouble.of(load), false), List.of(new Reason("load", Said.of("body-weight/only").percent("share", 0.66, 0), Source.HOUSE, "house-rules: bands")));
    }

    private static Plan.SidePlan press() {
        var setUp = setUp(Optional.empty(), Optional.of(Side.RIGHT), 0, 0, -0.10, Optional.of(Side.RIGHT), Implement.CABLE);
        var solved = solved("high-to-low-press", Side.RIGHT, Role.DRIVE, setUp, new BaseOfSupport.Staggered(Side.RIGHT, -0.10, 0.15, Side.LEFT, 0, false),
                new Load.Cable(Side.RIGHT, 5, 1, 1.65, 1, false, 0), Optional.empty(), 0.5);
        return new Plan.SidePlan(solved, 5, Optional.empty(), doses(1, 10, OptionalDouble.empty(), true), List.of());
    }

    private static Plan.SidePlan curl() {
        var setUp = setUp(Optional.empty(), Optional.empty(), 0, 0, Double.NaN, Optional.of(Side.LEFT), Implement.DUMBBELL);
        var solved = solved("supported-curl", Side.LEFT, Role.LANDING, setUp, new BaseOfSupport.Seated(0.43, 0.3), new Load.InHand(Side.LEFT, 4),
                Optional.empty(), 0.5);
        return new Plan.SidePlan(solved, 4, Optional.empty(), doses(3, 10, OptionalDouble.of(4), false), List.of());
    }

    private static Plan.SidePlan squat() {
        var setUp = setUp(Optional.empty(), Optional.empty(), 0, 0, Double.NaN, Optional.empty(), Implement.BODY_WEIGHT);
        var solved = solved("goblet-squat", Side.LEFT, Role.BOTH, setUp, new BaseOfSupport.Level(0.22, 0), new Load.None(), Optional.empty(), 0.5);
        return new Plan.SidePlan(solved, 0, Optional.empty(), doses(1, 12, OptionalDouble.empty(), false), List.of());
    }

    /** From week {@code first} on; two kilograms more from week 4, marked there. */
    private static List<Plan.Dose> doses(int first, int reps, OptionalDouble load, boolean byEffort) {
        var doses = new ArrayList<Plan.Dose>();
        for (int week = first; week <= WEEKS; week++) {
            boolean easy = week == 5;
            double more = week >= 4 && !easy ? 2 : 0;
            doses.add(new Plan.Dose(week, easy ? 2 : 3, reps, 0, load.isPresent() ? OptionalDouble.of(load.getAsDouble() + more) : load, byEffort,
                    easy ? 4 : 3, "3-1-1", 90, week == 4 && load.isPresent(), OptionalDouble.empty()));
        }
        return doses;
    }

    private static SetUp setUp(Optional<Side> leg, Optional<Side> front, double frontRaise, double rearRaise, double stance, Optional<Side> hand,
                               Implement implement) {
        return new SetUp(leg, Optional.empty(), front, new Length(frontRaise), new Length(rearRaise), Length.ZERO, Length.ZERO, Optional.empty(), stance,
                0.18, hand, false, false, true, SetUp.Support.NONE, Length.ofMetres(implement == Implement.CABLE ? 1.65 : 0),
                implement == Implement.CABLE ? 1.0 : Double.NaN, implement, 1);
    }

    private static SolvedSetUp solved(String id, Side side, Role role, SetUp setUp, BaseOfSupport base, Load load, Optional<Phase> phase, double leftShare) {
        var person = new Person(1.71, 64, Sex.FEMALE, new Segments(0.4, 0.4, 0.07, 0.26, 0.05, 0.19, 0.5, 0.3, 0.3, 0.25, 0.18, 0.17, 0.35));
        var problem = new PoseProblem(person, side, new Sided.Whole<>(JointLimits.COMMON), base, new Action.KneeBend(90, 0.05),
                new ArmTask.Hang(), new ArmTask.Hang(), load, true, false, new Sided.Whole<>(PoseProblem.Zone.WHOLE_SOLE), Rules.house().legEffort());
        var joints = new EnumMap<Joint, Vector3D>(Joint.class);
        for (Joint joint : Joint.values()) {
            joints.put(joint, Vector3D.ZERO);
        }
        var pose = new Pose(joints, Vector3D.PLUS_I, Vector3D.PLUS_I);
        var mechanics = new SolvedPose.Mechanics(-8, 3, leftShare, leftShare, 14, 90, 93, 40, 0, 0, 4, -2, 0.05, Double.NaN, Vector3D.ZERO,
                Vector3D.ZERO, List.of());
        return new SolvedSetUp(CATALOGUE.family(id).orElseThrow(), side, role, setUp, problem, new SolvedPose(pose, pose, mechanics, List.of()), phase,
                Map.of(), Map.of(), List.of(Reason.of("shin", Said.of("shin/vertical").degrees("within", 5), Source.SOLVED)),
                Optional.of(new SolvedSetUp.RunnerUp(setUp, Said.of("set-up/raise").length("height", 0.73), Said.of("lost-on/turn"))), Optional.empty(), false);
    }
}
