package contrapposto.illustrate;

import contrapposto.body.Action;
import contrapposto.body.BaseOfSupport;
import contrapposto.body.PoseProblem.Zone;
import contrapposto.catalogue.Family;
import contrapposto.illustrate.Sole.Pad;
import contrapposto.quantity.Length;
import contrapposto.quantity.Side;
import contrapposto.setup.SetUp;
import contrapposto.setup.SolvedSetUp;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a foot map shows, before it has a size. */
record FootPlan(Arrangement arrangement, Foot left, Foot right) {

    sealed interface Arrangement { }

    /** Heels level. */
    record Level() implements Arrangement { }

    /** One foot a little ahead; the rear toes are beside the front foot. */
    record Overlapping(Side ahead) implements Arrangement { }

    /** One knee down behind the other foot. */
    record Kneeling(Side down) implements Arrangement { }

    /** One foot wholly ahead; {@code gap} is what the tape measures, where there is something to measure. */
    record Split(Side front, Optional<Length> gap) implements Arrangement { }

    enum Touch { FLAT, HEEL_UP, LIFTED }

    /** Less weight than this is a foot that leaves the floor. */
    private static final double NOTHING = .025;

    /**
     * @param most  pads that take most of the weight
     * @param some  pads that take some
     * @param share of the weight on the feet
     * @param boxEdgeAhead whether the edge of the box that the tape starts from lies ahead of the toes
     */
    record Foot(Touch touch, boolean onBox, boolean onWedge, List<Pad> most, List<Pad> some, OptionalDouble share,
                boolean boxEdgeAhead) { }

    Foot foot(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** Empty where no sole carries, and where the arms work on someone who lies or sits: there the feet only rest. In a walk they change. */
    static Optional<FootPlan> of(SolvedSetUp solved) {
        BaseOfSupport base = solved.problem().base();
        boolean resting = base instanceof BaseOfSupport.Supine || base instanceof BaseOfSupport.Seated;
        boolean walks = solved.problem().action() instanceof Action.Walk;
        if (walks || resting && solved.family().works() != Family.Works.LEG) {
            return Optional.empty();
        }
        return arranged(base).map(a -> new FootPlan(tape(a, solved.setUp()), foot(solved, Side.LEFT), foot(solved, Side.RIGHT)));
    }

    /** The soles' places for a base; empty where no sole carries. */
    static Optional<Arrangement> arranged(BaseOfSupport base) {
        return switch (base) {
            case BaseOfSupport.Split split -> Optional.of(new Split(split.front(), Optional.empty()));
            case BaseOfSupport.Staggered staggered -> Optional.of(staggered.stance() > .03
                    ? new Split(staggered.ahead(), Optional.empty()) : new Overlapping(staggered.ahead()));
            case BaseOfSupport.Step step -> Optional.of(new Split(step.up(), Optional.empty()));
            case BaseOfSupport.Level level -> Optional.of(new Level());
            case BaseOfSupport.OneLeg one -> Optional.of(new Level());
            case BaseOfSupport.Seated seated -> Optional.of(new Level());
            case BaseOfSupport.Supine supine -> Optional.of(new Level());
            case BaseOfSupport.HalfKneeling(var down, var width) -> Optional.of(new Kneeling(down));
            case BaseOfSupport.TallKneeling kneeling -> Optional.empty();
            case BaseOfSupport.KneelingAtSupport kneeling -> Optional.empty();
            case BaseOfSupport.AllFours four -> Optional.empty();
            case BaseOfSupport.Plank plank -> Optional.empty();
            case BaseOfSupport.SideLying lying -> Optional.empty();
        };
    }

    private static Arrangement tape(Arrangement arrangement, SetUp setUp) {
        return arrangement instanceof Split(var front, var none) && setUp.stance() > 0
                ? new Split(front, Optional.of(Length.ofMetres(setUp.stance()))) : arrangement;
    }

    private static Foot foot(SolvedSetUp solved, Side side) {
        BaseOfSupport base = solved.problem().base();
        Touch touch = touch(solved, side);
        Zone zone = solved.problem().pressure().has(side) ? solved.problem().pressure().on(side) : Zone.WHOLE_SOLE;
        List<Pad> most = new ArrayList<>();
        List<Pad> some = new ArrayList<>();
        boolean works = solved.setUp().workingLeg().map(leg -> leg == side).orElse(true);
        switch (touch) {
            case LIFTED -> { }
            case HEEL_UP -> {
                boolean rises = solved.problem().action() instanceof Action.HeelRise;
                (rises ? most : some).add(Pad.BIG_TOE_BALL);
                if (rises) {
                    some.add(Pad.LITTLE_TOE_BALL);
                }
            }
            case FLAT -> {
                (works ? most : some).addAll(FootMap.leading(zone));
                if (works || zone == Zone.WHOLE_SOLE) {
                    some.addAll(FootMap.following(zone));
                }
            }
        }
        return new Foot(touch, onBox(base, side), onWedge(base, side), most, some, share(solved, side, touch),
                base instanceof BaseOfSupport.Split split && split.front() != side);
    }

    /** As it is at the working position. */
    private static Touch touch(SolvedSetUp solved, Side side) {
        double left = solved.pose().mechanics().leftShare();
        Touch touch = touch(solved.problem().base(), side);
        boolean empty = (side == Side.LEFT ? left : 1 - left) < NOTHING;
        boolean rises = solved.problem().action() instanceof Action.HeelRise && touch == Touch.FLAT;
        return empty ? Touch.LIFTED : rises ? Touch.HEEL_UP : touch;
    }

    private static Touch touch(BaseOfSupport base, Side side) {
        return switch (base) {
            case BaseOfSupport.Split split -> split.front() == side ? Touch.FLAT : Touch.HEEL_UP;
            case BaseOfSupport.Staggered staggered ->
                    staggered.ahead() != side && staggered.rearHeelUp() ? Touch.HEEL_UP : Touch.FLAT;
            case BaseOfSupport.OneLeg one -> one.standing() == side ? Touch.FLAT : Touch.LIFTED;
            case BaseOfSupport.Step step -> step.up() == side ? Touch.FLAT : Touch.HEEL_UP;
            case BaseOfSupport.Level level -> Touch.FLAT;
            case BaseOfSupport.Seated seated -> Touch.FLAT;
            case BaseOfSupport.Supine supine -> Touch.FLAT;
            case BaseOfSupport.HalfKneeling(var down, var width) -> down == side ? Touch.LIFTED : Touch.FLAT;
            case BaseOfSupport.TallKneeling kneeling -> Touch.LIFTED;
            case BaseOfSupport.KneelingAtSupport kneeling -> Touch.LIFTED;
            case BaseOfSupport.AllFours four -> Touch.LIFTED;
            case BaseOfSupport.Plank plank -> Touch.HEEL_UP;
            case BaseOfSupport.SideLying lying -> Touch.LIFTED;
        };
    }

    private static boolean onBox(BaseOfSupport base, Side side) {
        return switch (base) {
            case BaseOfSupport.Split split -> (split.front() == side ? split.frontRaise() : split.rearRaise()) > 0;
            case BaseOfSupport.Step step -> step.up() == side;
            case BaseOfSupport.Level level -> level.raise() > 0;
            case BaseOfSupport.Supine supine -> supine.raise() > 0;
            case BaseOfSupport.Staggered s -> false;
            case BaseOfSupport.OneLeg s -> false;
            case BaseOfSupport.Seated s -> false;
            case BaseOfSupport.HalfKneeling s -> false;
            case BaseOfSupport.TallKneeling s -> false;
            case BaseOfSupport.KneelingAtSupport s -> false;
            case BaseOfSupport.AllFours s -> false;
            case BaseOfSupport.Plank s -> false;
            case BaseOfSupport.SideLying s -> false;
        };
    }

    private static boolean onWedge(BaseOfSupport base, Side side) {
        return base instanceof BaseOfSupport.Staggered staggered && staggered.wedge() > 0 && staggered.wedgeFoot() == side;
    }

    private static OptionalDouble share(SolvedSetUp solved, Side side, Touch touch) {
        double left = solved.pose().mechanics().leftShare();
        boolean carries = Double.isFinite(left) && touch != Touch.LIFTED;
        return carries ? OptionalDouble.of(side == Side.LEFT ? left : 1 - left) : OptionalDouble.empty();
    }
}
