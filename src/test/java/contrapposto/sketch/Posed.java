package contrapposto.sketch;

import contrapposto.body.Action;
import contrapposto.body.ArmTask;
import contrapposto.body.BaseOfSupport;
import contrapposto.body.JointLimits;
import contrapposto.body.Joint;
import contrapposto.body.Load;
import contrapposto.body.Person;
import contrapposto.body.Pose;
import contrapposto.body.PoseOutcome;
import contrapposto.body.PoseProblem;
import contrapposto.body.PoseProblem.Effort;
import contrapposto.body.PoseProblem.Zone;
import contrapposto.body.PoseSolver;
import contrapposto.body.Prop;
import contrapposto.body.Segments;
import contrapposto.body.SolvedPose;
import contrapposto.body.SolvedPose.Mechanics;
import contrapposto.quantity.Sex;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** One posed exercise for drawing tests: what was asked, what was found, what is to be said. */
public record Posed(String name, PoseProblem problem, SolvedPose solved, List<Wish> wishes) {
    private static final Effort EFFORT = new Effort(3.0, 2.6, 15, 20);

    /** The same exercise on the other side of the body. */
    public Posed mirrored() {
        return new Posed(name + "-mirrored", problem.mirrored(), solved.mirrored(), wishes.stream().map(Wish::mirrored).toList());
    }

    /** Every pose of the figure study, with its equipment, as the study drew it. */
    public static List<Posed> study() {
        List<Posed> all = new ArrayList<>();
        Person p = person(StudyPoses.STATURE);
        Vector3D along = Vector3D.PLUS_I;
        Pose w = StudyPoses.working("split-squat-left");
        all.add(study("split-squat-left", Side.LEFT, new BaseOfSupport.Split(Side.LEFT, .95, .17, .15, 0, false), new ArmTask.Hang(),
                new ArmTask.Hang(), List.of(box(.21, .60, -.08, .25, .15), new Prop.Dumbbell(Side.RIGHT, along)),
                List.of(feet(Side.LEFT), feet(Side.RIGHT), hand(Side.RIGHT), new Wish.Shin(Side.LEFT, "6° back"),
                        new Wish.Stance(at(w, Side.LEFT, Joint.Part.HEEL), at(w, Side.RIGHT, Joint.Part.TOE), "95 cm"),
                        new Wish.Height(v(.21, -.08, 0), v(.60, .25, .15), "15 cm"), move("split-squat-left"),
                        new Wish.Caption("Down", true))));
        Pose r = StudyPoses.working("split-squat-right");
        all.add(study("split-squat-right", Side.RIGHT, new BaseOfSupport.Split(Side.RIGHT, .86, .17, 0, .43, true), new ArmTask.Hang(),
                new ArmTask.Hang(), List.of(new Prop.Bench(v(-.72, -.28, 0), v(-.40, .38, .43)), new Prop.Dumbbell(Side.RIGHT, along)),
                List.of(feet(Side.LEFT), feet(Side.RIGHT), hand(Side.RIGHT), new Wish.Shin(Side.RIGHT, "20° forward"),
                        new Wish.Stance(at(r, Side.RIGHT, Joint.Part.HEEL), at(r, Side.LEFT, Joint.Part.TOE), "86 cm"),
                        new Wish.Height(v(-.72, -.28, 0), v(-.40, .38, .43), "43 cm"), move("split-squat-right"),
                        new Wish.Caption("Down", true))));
        all.add(study("staggered-deadlift", Side.LEFT, new BaseOfSupport.Staggered(Side.RIGHT, .1, .17, Side.LEFT, .048, false),
                new ArmTask.Rest(), new ArmTask.Hang(), List.of(new Prop.Wedge(Side.LEFT, -.20, 0, .02, .17, 0, .048),
                        new Prop.Dumbbell(Side.RIGHT, along)), List.of(feet(Side.LEFT), feet(Side.RIGHT), hand(Side.RIGHT),
                        move("staggered-deadlift"), new Wish.Height(v(-.20, .02, 0), v(-.20, .17, .048), "5 cm"))));
        Pose c = StudyPoses.working("cable-press");
        all.add(study("cable-press", Side.RIGHT, new BaseOfSupport.Staggered(Side.RIGHT, -.1, .17, Side.LEFT, 0, false),
                new ArmTask.DrawBack(), new ArmTask.Press(along), List.of(new Prop.Column(v(-.715, -.24, 1.6), Side.RIGHT)),
                List.of(feet(Side.LEFT), feet(Side.RIGHT), hand(Side.RIGHT), new Wish.Turn(true),
                        new Wish.Push(at(c, Side.RIGHT, Joint.Part.HAND).add(v(.07, 0, 0)), v(1, 0, -.25)))));
        all.add(study("pushup", Side.LEFT, new BaseOfSupport.Plank(.15, 0, .45, false), new ArmTask.Planted(), new ArmTask.Planted(),
                List.of(box(.33, .63, .10, .42, .15)), List.of(hand(Side.LEFT), hand(Side.RIGHT),
                        new Wish.Height(v(.33, .10, 0), v(.63, .42, .15), "15 cm"), new Wish.Turn(true))));
        Vector3D knees = new Vector3D(.5, at(StudyPoses.working("side-lying"), Side.LEFT, Joint.Part.KNEE), .5,
                at(StudyPoses.working("side-lying"), Side.RIGHT, Joint.Part.KNEE));
        all.add(study("side-lying", Side.LEFT, new BaseOfSupport.SideLying(Side.RIGHT), new ArmTask.Pillow(), new ArmTask.Pillow(),
                List.of(new Prop.Mat(v(-.30, -1.02, -.012), v(.66, .80, 0)), new Prop.Pillow(v(-.16, -.92, 0), v(.20, -.52, .085)),
                        new Prop.Cushion(knees)), List.of(new Wish.Tag(Side.LEFT, Wish.Tag.On.KNEE), feet(Side.RIGHT),
                        new Wish.Squeeze(knees.add(v(0, 0, .12)), v(0, 0, -1)), new Wish.Caption("Press", true))));
        all.add(study("allfours", Side.RIGHT, new BaseOfSupport.AllFours(.2), new ArmTask.Planted(), new ArmTask.Reach(along, 60),
                List.of(new Prop.Mat(v(-1.0, -.33, -.012), v(.55, .33, 0))), List.of(hand(Side.LEFT), hand(Side.RIGHT),
                        new Wish.Push(at(StudyPoses.working("allfours"), Side.RIGHT, Joint.Part.HAND).add(v(.12, 0, .03)), v(1, 0, .25)))));
        Pose h = StudyPoses.working("half-kneeling-press");
        all.add(study("half-kneeling-press", Side.RIGHT, new BaseOfSupport.HalfKneeling(Side.RIGHT, .18), new ArmTask.DrawBack(),
                new ArmTask.Press(along), List.of(new Prop.Column(v(-.765, -.24, .92), Side.RIGHT),
                        new Prop.Mat(v(-.52, -.28, -.012), v(.14, .04, 0))), List.of(feet(Side.LEFT),
                        new Wish.Tag(Side.RIGHT, Wish.Tag.On.KNEE), hand(Side.RIGHT),
                        new Wish.Push(at(h, Side.RIGHT, Joint.Part.HAND).add(v(.07, 0, 0)), along))));
        Pose k = StudyPoses.working("supported-curl");
        Pose k0 = StudyPoses.start("supported-curl");
        all.add(study("supported-curl", Side.LEFT, new BaseOfSupport.KneelingAtSupport(.43, .2), new ArmTask.Curl(15, 115, true),
                new ArmTask.Planted(), List.of(new Prop.Bench(v(.22, -.36, 0), v(.54, .36, .43)),
                        new Prop.Dumbbell(Side.LEFT, Vector3D.PLUS_J), new Prop.Mat(v(-.66, -.26, -.012), v(.14, .26, 0))),
                List.of(new Wish.Tag(Side.LEFT, Wish.Tag.On.ELBOW), hand(Side.RIGHT), new Wish.Height(v(.22, -.36, 0), v(.54, .36, .43), "43 cm"),
                        new Wish.Curl(at(k, Side.LEFT, Joint.Part.ELBOW), at(k0, Side.LEFT, Joint.Part.HAND), at(k, Side.LEFT, Joint.Part.HAND)))));
        all.add(study("goblet-squat", Side.RIGHT, new BaseOfSupport.Level(.3, 0), new ArmTask.AtChest(), new ArmTask.AtChest(),
                List.of(new Prop.Kettlebell(Side.RIGHT, true)), List.of(move("goblet-squat"), new Wish.Caption("Down", true))));
        all.add(study("suitcase-carry", Side.RIGHT, new BaseOfSupport.Level(.15, 0), new ArmTask.Hang(), new ArmTask.Hang(),
                List.of(new Prop.Kettlebell(Side.RIGHT, false)), List.of(feet(Side.LEFT), feet(Side.RIGHT), hand(Side.RIGHT),
                        new Wish.Move(v(.1, -.2, .9), v(.5, -.2, .9)))));
        all.add(study("bridge", Side.RIGHT, new BaseOfSupport.Supine(.30, .18), new ArmTask.Flat(), new ArmTask.Flat(),
                List.of(box(.46, .88, -.24, .24, .30), new Prop.Mat(v(-.95, -.36, -.012), v(.32, .36, 0))),
                List.of(new Wish.Height(v(.46, -.24, 0), v(.88, .24, .30), "30 cm"), move("bridge"))));
        return all;
    }

    /** Set-ups on the feet, solved for one person. */
    public static List<Posed> solved(double stature) {
        Map<String, PoseProblem> problems = new LinkedHashMap<>();
        double h = stature;
        Side left = Side.LEFT;
        Side right = Side.RIGHT;
        problems.put("split-flat", problem(h, left, new BaseOfSupport.Split(left, .44 * h, .1 * h, 0, 0, false), new Action.KneeBend(90, .05), new Load.InHand(right, 8)));
        problems.put("split-front", problem(h, left, new BaseOfSupport.Split(left, .52 * h, .1 * h, .15, 0, false), new Action.KneeBend(90, .05), new Load.InHand(right, 8)));
        problems.put("split-rear", problem(h, right, new BaseOfSupport.Split(right, .46 * h, .1 * h, 0, .43, true), new Action.KneeBend(95, .05), new Load.InHand(right, 8)));
        problems.put("stag-dead", problem(h, left, new BaseOfSupport.Staggered(right, .12 * h, .1 * h, left, .03, false), new Action.HipFold(1), new Load.InHand(right, 8)));
        problems.put("kickstand", problem(h, right, new BaseOfSupport.Staggered(right, .15 * h, .1 * h, left, 0, true), new Action.HipFold(1), new Load.InHand(right, 8)));
        problems.put("squat", problem(h, right, new BaseOfSupport.Level(.14 * h, 0), new Action.KneeBend(95, 0), new Load.InBothHands(12)));
        problems.put("step", problem(h, right, new BaseOfSupport.Step(right, .30, .1 * h), new Action.StepUp(), new Load.InHand(left, 8)));
        problems.put("calf", problem(h, right, new BaseOfSupport.OneLeg(right), new Action.HeelRise(.9), new Load.InHand(right, 8)));
        List<Posed> all = new ArrayList<>();
        problems.forEach((name, problem) -> {
            if (PoseSolver.solve(problem) instanceof PoseOutcome.Solved(var pose)) {
                List<Wish> wishes = new ArrayList<>(List.of(feet(left), feet(right),
                        new Wish.Move(pose.start().at(Joint.PELVIS), pose.working().at(Joint.PELVIS)), new Wish.Caption("Down", true)));
                problem.load();
                if (problem.load() instanceof Load.InHand(var hand, var mass)) {
                    wishes.add(hand(hand));
                }
                all.add(new Posed(name + "-" + Math.round(h * 100), problem, pose, wishes));
            } else {
                System.err.println(name + " " + PoseSolver.solve(problem));
            }
        });
        return all;
    }

    static PoseProblem problem(double h, Side working, BaseOfSupport base, Action action, Load load) {
        ArmTask arm = load instanceof Load.InBothHands ? new ArmTask.AtChest() : new ArmTask.Hang();
        return new PoseProblem(person(h), working, new Sided.Whole<>(JointLimits.COMMON), base, action, arm, arm, load, false,
                false, new Sided.Whole<>(Zone.WHOLE_SOLE), EFFORT);
    }

    /** Segment lengths as shares of stature after Drillis and Contini, in the rounding of the figure study. */
    static Person person(double h) {
        return new Person(h, 22.5 * h * h, Sex.FEMALE, new Segments(.245 * h, .246 * h, .039 * h, .152 * h, .038 * h,
                .72 * .152 * h, .288 * h, .182 * h, .186 * h, .146 * h, .108 * h, .105 * h, .215 * h));
    }

    private static Posed study(String name, Side working, BaseOfSupport base, ArmTask left, ArmTask right, List<Prop> props, List<Wish> wishes) {
        PoseProblem problem = new PoseProblem(person(StudyPoses.STATURE), working, new Sided.Whole<>(JointLimits.COMMON), base,
                new Action.Squeeze(0), left, right, new Load.None(), false, false, new Sided.Whole<>(Zone.WHOLE_SOLE), EFFORT);
        double none = Double.NaN;
        Mechanics mechanics = new Mechanics(none, none, none, none, none, none, none, none, none, none, none, none, none, none,
                Vector3D.ZERO, Vector3D.ZERO, List.of());
        return new Posed(name, problem, new SolvedPose(StudyPoses.start(name), StudyPoses.working(name), mechanics, props), wishes);
    }

    private static Vector3D v(double x, double y, double z) {
        return new Vector3D(x, y, z);
    }

    private static Prop box(double x0, double x1, double y0, double y1, double top) {
        return new Prop.Box(v(x0, y0, 0), v(x1, y1, top));
    }

    private static Vector3D at(Pose pose, Side side, Joint.Part part) {
        return pose.at(Joint.of(side, part));
    }

    private static Wish feet(Side side) {
        return new Wish.Tag(side, Wish.Tag.On.FOOT);
    }

    private static Wish hand(Side side) {
        return new Wish.Tag(side, Wish.Tag.On.HAND);
    }

    private static Wish move(String name) {
        return new Wish.Move(StudyPoses.start(name).at(Joint.PELVIS), StudyPoses.working(name).at(Joint.PELVIS));
    }
}
