package contrapposto.illustrate;

import contrapposto.body.Action;
import contrapposto.body.ArmTask;
import contrapposto.body.BaseOfSupport;
import contrapposto.body.Joint;
import contrapposto.body.Load;
import contrapposto.body.Pose;
import contrapposto.body.PoseProblem;
import contrapposto.body.Prop;
import contrapposto.catalogue.Arrow;
import contrapposto.catalogue.FamilyWords.RoleKey;
import contrapposto.quantity.Length;
import contrapposto.quantity.Side;
import contrapposto.setup.SolvedSetUp;
import contrapposto.sketch.Wish;
import contrapposto.sketch.Wish.Tag.On;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** What a sketch of a set-up is to say: heights and a stance to measure, one movement, and whose foot is whose. */
record SetUpWishes(SolvedSetUp solved, boolean symmetric) {
    /** How far an arrow of the first cue runs, m. */
    private static final double CUE = .24;
    /** Positions nearer to each other than this need no arrow of their path, m. */
    private static final double STILL = .03;

    /** A spine flatter than this share of upright has no ring around it. */
    private static final double LEVEL = .8;

    private PoseProblem problem() {
        return solved.problem();
    }

    private Pose working() {
        return solved.pose().end();
    }

    private Pose start() {
        return solved.pose().start();
    }

    static ArmTask task(PoseProblem problem, Side side) {
        return side == Side.LEFT ? problem.left() : problem.right();
    }

    /** Side marks, the most needed first; none where both sides are alike. */
    List<Wish> tags() {
        List<Wish> tags = new ArrayList<>();
        if (symmetric) {
            return tags;
        }
        Side side = problem().working();
        if (problem().load() instanceof Load.InHand(var hand, var mass)) {
            tags.add(new Wish.Tag(hand, On.HAND));
        } else if (solved.setUp().workingArm().isPresent() || problem().base() instanceof BaseOfSupport.AllFours) {
            tags.add(new Wish.Tag(side, problem().base() instanceof BaseOfSupport.KneelingAtSupport ? On.ELBOW : On.HAND));
        }
        switch (problem().base()) {
            case BaseOfSupport.Split b -> feet(tags, b.front());
            case BaseOfSupport.Staggered b -> feet(tags, b.ahead());
            case BaseOfSupport.Step b -> feet(tags, b.up());
            case BaseOfSupport.OneLeg b -> feet(tags, b.standing());
            case BaseOfSupport.Level b -> { }
            case BaseOfSupport.HalfKneeling(var down, var width) ->
                    tags.addAll(List.of(new Wish.Tag(down.other(), On.FOOT), new Wish.Tag(down, On.KNEE)));
            case BaseOfSupport.Plank b -> hands(tags);
            case BaseOfSupport.SideLying(var below) ->
                    tags.addAll(List.of(new Wish.Tag(below.other(), On.KNEE), new Wish.Tag(below, On.FOOT)));
            case BaseOfSupport.AllFours b -> { }
            case BaseOfSupport.KneelingAtSupport b -> { }
            case BaseOfSupport.TallKneeling b -> { }
            case BaseOfSupport.Supine b -> { }
            case BaseOfSupport.Seated b -> { }
        }
        return tags;
    }

    private static void feet(List<Wish> tags, Side first) {
        tags.add(new Wish.Tag(first, On.FOOT));
        tags.add(new Wish.Tag(first.other(), On.FOOT));
    }

    private static void hands(List<Wish> tags) {
        for (Side side : Side.values()) {
            if (tags.stream().noneMatch(new Wish.Tag(side, On.HAND)::equals)) {
                tags.add(new Wish.Tag(side, On.HAND));
            }
        }
    }

    /** The heights a tape can check. */
    List<Wish> heights(Function<Length, String> lengths) {
        List<Wish> heights = new ArrayList<>();
        for (Prop prop : solved.pose().props()) {
            switch (prop) {
                case Prop.Box(var low, var high) -> heights.add(height(low, high, lengths));
                case Prop.Bench(var low, var high) -> heights.add(height(low, high, lengths));
                case Prop.Wedge w -> heights.add(height(new Vector3D(w.heelX(), w.yLow(), w.floor()),
                        new Vector3D(w.heelX(), w.yHigh(), w.floor() + w.height()), lengths));
                case Prop.Chair p -> { }
                case Prop.Mat p -> { }
                case Prop.Wall p -> { }
                case Prop.Rail p -> { }
                case Prop.Column p -> { }
                case Prop.BandAnchor p -> { }
                case Prop.Dumbbell p -> { }
                case Prop.Kettlebell p -> { }
                case Prop.Barbell p -> { }
                case Prop.Cushion p -> { }
                case Prop.Pillow p -> { }
            }
        }
        return heights;
    }

    private static Wish height(Vector3D low, Vector3D high, Function<Length, String> lengths) {
        return new Wish.Height(low, high, lengths.apply(Length.ofMetres(high.getZ() - low.getZ())));
    }

    /** Front heel to rear toes, where the tape has something to measure. */
    Optional<Wish> stance(Function<Length, String> lengths) {
        return problem().base() instanceof BaseOfSupport.Split split
                ? Optional.of(new Wish.Stance(at(split.front(), Joint.Part.HEEL), at(split.front().other(), Joint.Part.TOE),
                        lengths.apply(Length.ofMetres(split.stance())))) : Optional.empty();
    }

    /** The tilt of the working shin. */
    Optional<Wish> shin(Function<Double, String> tilt) {
        double angle = solved.pose().mechanics().shinWorking();
        return solved.setUp().workingLeg().filter(leg -> Double.isFinite(angle))
                .map(leg -> new Wish.Shin(leg, tilt.apply(angle)));
    }

    /** The movement the first cue asks for, if it can be seen from the side; else the way from start to working position. */
    Optional<Wish> movement() {
        return Optional.ofNullable(solved.family().arrows().get(roleKey())).flatMap(this::cue).or(this::path);
    }

    private RoleKey roleKey() {
        return switch (solved.role()) {
            case LANDING -> RoleKey.LANDING;
            case DRIVE -> RoleKey.DRIVE;
            case BOTH -> RoleKey.BOTH;
        };
    }

    private Optional<Wish> cue(Arrow arrow) {
        Side side = problem().working();
        Vector3D from = place(arrow.at(), side);
        return switch (arrow.toward()) {
            case FORWARD -> seen(toward(arrow, from, Vector3D.PLUS_I));
            case BACK -> seen(toward(arrow, from, Vector3D.MINUS_I));
            case UP -> Optional.of(toward(arrow, from, Vector3D.PLUS_K));
            case DOWN -> Optional.of(toward(arrow, from, Vector3D.MINUS_K));
            case WORKING_SIDE -> Optional.empty();
            case OTHER_SIDE -> Optional.empty();
            case TURN_WORKING -> turn(side == Side.LEFT);
            case TURN_OTHER -> turn(side == Side.RIGHT);
        };
    }

    /** Round an upright spine; a turn about a level one is {@link TurnView}'s to show, and the sketch shows the path. */
    private Optional<Wish> turn(boolean toLeft) {
        Vector3D spine = working().at(Joint.NECK).subtract(working().at(Joint.PELVIS));
        return spine.getZ() < LEVEL * spine.getNorm() ? Optional.empty() : Optional.of(new Wish.Turn(toLeft));
    }

    /** Someone on their side is looked at from the front: there forward and back would read as down and up. */
    private Optional<Wish> seen(Wish alongX) {
        return problem().base() instanceof BaseOfSupport.SideLying ? Optional.empty() : Optional.of(alongX);
    }

    private Wish toward(Arrow arrow, Vector3D from, Vector3D direction) {
        boolean hand = arrow.at() == Arrow.At.WORKING_HAND || arrow.at() == Arrow.At.OTHER_HAND;
        return hand ? new Wish.Push(from.add(.10, direction), direction)
                : new Wish.Move(from.add(-CUE / 2, direction), from.add(CUE / 2, direction));
    }

    private Vector3D place(Arrow.At at, Side side) {
        return switch (at) {
            case PELVIS -> working().at(Joint.PELVIS);
            case CHEST -> working().at(Joint.PELVIS).add(.75, working().at(Joint.NECK).subtract(working().at(Joint.PELVIS)));
            case HEAD -> working().at(Joint.HEAD_TOP);
            case WORKING_HIP -> at(side, Joint.Part.HIP);
            case WORKING_KNEE -> at(side, Joint.Part.KNEE);
            case WORKING_HEEL -> at(side, Joint.Part.HEEL);
            case WORKING_HAND -> at(side, Joint.Part.HAND);
            case OTHER_HAND -> at(side.other(), Joint.Part.HAND);
        };
    }

    private Optional<Wish> path() {
        Side side = problem().working();
        return switch (problem().action()) {
            case Action.KneeBend a -> way(Joint.PELVIS);
            case Action.HipFold a -> way(Joint.PELVIS);
            case Action.HipLift a -> way(Joint.PELVIS);
            case Action.StepUp a -> way(Joint.PELVIS);
            case Action.Shift a -> way(Joint.PELVIS);
            case Action.HeelRise a -> way(Joint.of(side, Joint.Part.HEEL));
            case Action.PressUp a -> way(Joint.HEAD_TOP);
            case Action.Squeeze(var lift) -> lift > 0 ? way(Joint.of(side, Joint.Part.KNEE)) : Optional.of(new Wish.Squeeze(
                    at(side, Joint.Part.KNEE).add(.06, Vector3D.PLUS_K), Vector3D.MINUS_K));
            case Action.Walk a -> Optional.of(new Wish.Move(working().at(Joint.PELVIS),
                    working().at(Joint.PELVIS).add(.4, Vector3D.PLUS_I)));
            case Action.ArmsMove a -> problem().base() instanceof BaseOfSupport.OneLeg ? way(Joint.of(side.other(), Joint.Part.KNEE)) : arm(side);
        };
    }

    private Optional<Wish> arm(Side side) {
        boolean bends = task(problem(), side) instanceof ArmTask.Curl || task(problem(), side) instanceof ArmTask.Extend;
        return bends ? Optional.of(new Wish.Curl(at(side, Joint.Part.ELBOW), start().at(Joint.of(side, Joint.Part.HAND)),
                at(side, Joint.Part.HAND))) : way(Joint.of(side, Joint.Part.HAND));
    }

    private Optional<Wish> way(Joint joint) {
        return Vector3D.distance(start().at(joint), working().at(joint)) < STILL ? Optional.empty()
                : Optional.of(new Wish.Move(start().at(joint), working().at(joint)));
    }

    private Vector3D at(Side side, Joint.Part part) {
        return working().at(Joint.of(side, part));
    }

    /** The farthest that any joint travels between the two positions, m. */
    double travel() {
        double most = 0;
        for (Joint joint : Joint.values()) {
            most = Math.max(most, Vector3D.distance(start().at(joint), working().at(joint)));
        }
        return most;
    }
}
