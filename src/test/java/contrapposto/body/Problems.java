package contrapposto.body;

import contrapposto.body.PoseProblem.Effort;
import contrapposto.body.PoseProblem.Zone;
import contrapposto.quantity.Sex;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Pose problems of every base, relative to a working side; numbers are our own inventions. */
final class Problems {
    static final Effort EFFORT = new Effort(2.8, 2.4, 10, 20);

    private Problems() { }

    /** @param name what it is, for messages */
    record Named(String name, PoseProblem problem) { }

    static PoseProblem of(Person person, Side working, BaseOfSupport base, Action action, ArmTask own, ArmTask other, Load load) {
        boolean left = working == Side.LEFT;
        return new PoseProblem(person, working, new Sided.Whole<>(JointLimits.COMMON), base, action, left ? own : other,
                left ? other : own, load, false, false, new Sided.Whole<>(Zone.WHOLE_SOLE), EFFORT);
    }

    static PoseProblem split(Person person, Side working, double stance, double frontRaise, double rearRaise, boolean laces, Load load) {
        double h = person.stature();
        return of(person, working, new BaseOfSupport.Split(working, stance * h, 0.11 * h, frontRaise, rearRaise, laces),
                new Action.KneeBend(rearRaise > 0 ? 95 : 90, 0.05), new ArmTask.Hang(), new ArmTask.Hang(), load);
    }

    /** The same client with other joint limits on both sides. */
    static PoseProblem limited(PoseProblem p, JointLimits limits) {
        return new PoseProblem(p.person(), p.working(), new Sided.Whole<>(limits), p.base(), p.action(), p.left(), p.right(),
                p.load(), p.hipShift(), p.handSupport(), p.pressure(), p.effort());
    }

    private static PoseProblem steadied(PoseProblem p) {
        return new PoseProblem(p.person(), p.working(), p.limits(), p.base(), p.action(), p.left(), p.right(), p.load(),
                p.hipShift(), true, p.pressure(), p.effort());
    }

    private static PoseProblem shifted(PoseProblem p) {
        return new PoseProblem(p.person(), p.working(), p.limits(), p.base(), p.action(), p.left(), p.right(), p.load(),
                true, p.handSupport(), new Sided.Whole<>(Zone.HEEL), p.effort());
    }

    /** One or more of every base. */
    static List<Named> all(Person person, Side w) {
        double h = person.stature();
        Side o = w.other();
        double out = w.sign();
        ArmTask hang = new ArmTask.Hang();
        ArmTask rest = new ArmTask.Rest();
        ArmTask planted = new ArmTask.Planted();
        ArmTask chest = new ArmTask.AtChest();
        ArmTask flat = new ArmTask.Flat();
        Load none = new Load.None();
        Load across = new Load.InHand(o, 8);
        Action still = new Action.ArmsMove(0, 0, 0);
        var list = new ArrayList<Named>();
        list.add(new Named("split", split(person, w, 0.46, 0, 0, false, across)));
        list.add(new Named("split steadied", steadied(split(person, w, 0.46, 0, 0, false, new Load.None()))));
        list.add(new Named("split front raised", shifted(split(person, w, 0.52, 0.15, 0, false, across))));
        list.add(new Named("split rear raised", split(person, w, 0.46, 0, 0.43, true, new Load.InHand(w, 8))));
        list.add(new Named("split rear on a step", split(person, w, 0.46, 0, 0.15, false, across)));
        list.add(new Named("staggered hinge, working foot behind on a wedge", shifted(of(person, w,
                new BaseOfSupport.Staggered(o, 0.10 * h, 0.10 * h, w, 0.03, false), new Action.HipFold(1), hang, hang, across))));
        list.add(new Named("kickstand hinge", of(person, w, new BaseOfSupport.Staggered(w, 0.12 * h, 0.10 * h, o, 0, true),
                new Action.HipFold(0.8), hang, hang, new Load.InHand(w, 8))));
        list.add(new Named("press from a cable", of(person, w, new BaseOfSupport.Staggered(w, -0.08 * h, 0.11 * h, o, 0, false),
                new Action.ArmsMove(out * 8, -out * 15, 6), new ArmTask.Press(new Vector3D(0.96, -out * 0.10, -0.26)),
                new ArmTask.DrawBack(), new Load.Cable(w, 5, 2, 1.1 * h, 0.6, false, out * 0.2))));
        list.add(new Named("row", of(person, w, new BaseOfSupport.Staggered(o, 0.15 * h, 0.11 * h, w, 0, false), new Action.ArmsMove(0, 0, 45),
                new ArmTask.Pull(new Vector3D(0.71, 0, -0.71)), rest, new Load.InHand(w, 8))));
        list.add(new Named("carry", of(person, w, new BaseOfSupport.Staggered(w, 0.25 * h, 0.08 * h, o, 0, false), new Action.Walk(0.4), hang,
                hang, across)));
        list.add(new Named("goblet squat", of(person, w, new BaseOfSupport.Level(0.19 * h, 0), new Action.KneeBend(95, 0), chest, chest,
                new Load.InBothHands(10))));
        list.add(new Named("two-legged hinge", of(person, w, new BaseOfSupport.Level(0.11 * h, 0), new Action.HipFold(1), hang, hang,
                new Load.InBothHands(20))));
        list.add(new Named("calf raise", of(person, w, new BaseOfSupport.Level(0.10 * h, 0), new Action.HeelRise(0.8), hang, hang,
                new Load.InEachHand(6))));
        list.add(new Named("step up", of(person, w, new BaseOfSupport.Step(w, 0.25, 0.10 * h), new Action.StepUp(), hang, hang, across)));
        list.add(new Named("step down", of(person, w, new BaseOfSupport.Step(w, 0.15, 0.10 * h), new Action.KneeBend(60, 0), hang, hang, none)));
        list.add(new Named("one-leg squat", of(person, w, new BaseOfSupport.OneLeg(w), new Action.KneeBend(50, 0), hang, hang, none)));
        list.add(new Named("one-leg hinge", of(person, w, new BaseOfSupport.OneLeg(w), new Action.HipFold(1), hang, hang, across)));
        list.add(new Named("half-kneeling press", of(person, w, new BaseOfSupport.HalfKneeling(w, 0.12 * h), still, new ArmTask.Overhead(), rest,
                new Load.InHand(w, 6))));
        list.add(new Named("tall kneeling", of(person, w, new BaseOfSupport.TallKneeling(0.15 * h), still, hang, hang, none)));
        list.add(new Named("supported curl", of(person, w, new BaseOfSupport.KneelingAtSupport(0.43, 0.15 * h),
                new Action.ArmsMove(0, out * 18, 35), new ArmTask.Curl(15, 115, true), planted, new Load.InHand(w, 6))));
        list.add(new Named("all-fours reach", of(person, w, new BaseOfSupport.AllFours(0.20 * h), still,
                new ArmTask.Reach(new Vector3D(0.42, out * 0.1, 0.9), 20), planted, none)));
        list.add(new Named("press-up", of(person, w, new BaseOfSupport.Plank(w == Side.LEFT ? 0.15 : 0, w == Side.LEFT ? 0 : 0.15, 0.26 * h, false),
                new Action.PressUp(80, out * 12), planted, planted, none)));
        list.add(new Named("press-up on the knees", of(person, w,
                new BaseOfSupport.Plank(w == Side.LEFT ? 0.15 : 0, w == Side.LEFT ? 0 : 0.15, 0.26 * h, true),
                new Action.PressUp(80, out * 12), planted, planted, none)));
        list.add(new Named("bridge", of(person, w, new BaseOfSupport.Supine(0, 0.12 * h), new Action.HipLift(10), flat, flat, none)));
        list.add(new Named("bridge on a box", of(person, w, new BaseOfSupport.Supine(0.30, 0.12 * h), new Action.HipLift(10), flat, flat,
                new Load.OnHips(10))));
        list.add(new Named("side-lying", of(person, w, new BaseOfSupport.SideLying(o), new Action.Squeeze(0), new ArmTask.Pillow(),
                new ArmTask.Pillow(), none)));
        list.add(new Named("seated", of(person, w, new BaseOfSupport.Seated(0.45, 0.12 * h), new Action.ArmsMove(0, out * 15, 4),
                new ArmTask.Curl(10, 100, false), rest, new Load.InHand(w, 5))));
        return list;
    }

    static List<Person> people() {
        var people = new ArrayList<Person>();
        for (double stature : new double[] {1.45, 1.60, 1.75, 1.90, 2.00}) {
            for (double index : new double[] {19, 24, 32}) {
                for (Sex sex : new Sex[] {Sex.FEMALE, Sex.MALE}) {
                    people.add(Person.of(stature, index * stature * stature, sex));
                }
            }
        }
        return people;
    }
}
