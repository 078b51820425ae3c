package contrapposto.illustrate;

import contrapposto.body.Action;
import contrapposto.body.Base;
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
        Base base = solved.problem().base();
        boolean resting = base instanceof Base.Supine || base instanceof Base.Seated;
        boolean walks = solved.problem().action() instanceof Action.Walk;
        if (walks || resting && solved.family().works() != Family.Works.LEG) {
            return Optional.empty();
        }
        return arranged(base).map(a -> new FootPlan(tape(a, solved.setUp()), foot(solved, Side.LEFT), foot(solved, Side.RIGHT)));
    }

    /** The soles' places for a base; empty where no sole carries. */
    static Optional<Arrangement> arranged(Base base) {
        return switch (base) {
            case Base.Split split -> Optional.of(new Split(split.front(), Optional.empty()));
            case Base.Staggered staggered -> Optional.of(staggered.stance() > .03
                    ? new Split(staggered.ahead(), Optional.empty()) : new Overlapping(staggered.ahead()));
            case Base.Step step -> Optional.of(new Split(step.up(), Optional.empty()));
            case Base.Level level -> Optional.of(new Level());
            case Base.OneLeg one -> Optional.of(new Level());
            case Base.Seated seated -> Optional.of(new Level());
            case Base.Supine supine -> Optional.of(new Level());
            case Base.HalfKneeling(var down, var width) -> Optional.of(new Kneeling(down));
            case Base.TallKneeling kneeling -> Optional.empty();
            case Base.KneelingAtSupport kneeling -> Optional.empty();
            case Base.AllFours four -> Optional.empty();
            case Base.Plank plank -> Optional.empty();
            case Base.SideLying lying -> Optional.empty();
        };
    }

    private static Arrangement tape(Arrangement arrangement, SetUp setUp) {
        return arrangement instanceof Split(var front, var none) && setUp.stance() > 0
                ? new Split(front, Optional.of(Length.ofMetres(setUp.stance()))) : arrangement;
    }

    private static Foot foot(SolvedSetUp solved, Side side) {
        Base base = solved.problem().base();
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
                base instanceof Base.Split split && split.front() != side);
    }

    /** As it is at the working position. */
    private static Touch touch(SolvedSetUp solved, Side side) {
        double left = solved.pose().mechanics().leftShare();
        Touch touch = touch(solved.problem().base(), side);
        boolean empty = (side == Side.LEFT ? left : 1 - left) < NOTHING;
        boolean rises = solved.problem().action() instanceof Action.HeelRise && touch == Touch.FLAT;
        return empty ? Touch.LIFTED : rises ? Touch.HEEL_UP : touch;
    }

    private static Touch touch(Base base, Side side) {
        return switch (base) {
            case Base.Split split -> split.front() == side ? Touch.FLAT : Touch.HEEL_UP;
            case Base.Staggered staggered ->
                    staggered.ahead() != side && staggered.rearHeelUp() ? Touch.HEEL_UP : Touch.FLAT;
            case Base.OneLeg one -> one.standing() == side ? Touch.FLAT : Touch.LIFTED;
            case Base.Step step -> step.up() == side ? Touch.FLAT : Touch.HEEL_UP;
            case Base.Level level -> Touch.FLAT;
            case Base.Seated seated -> Touch.FLAT;
            case Base.Supine supine -> Touch.FLAT;
            case Base.HalfKneeling(var down, var width) -> down == side ? Touch.LIFTED : Touch.FLAT;
            case Base.TallKneeling kneeling -> Touch.LIFTED;
            case Base.KneelingAtSupport kneeling -> Touch.LIFTED;
            case Base.AllFours four -> Touch.LIFTED;
            case Base.Plank plank -> Touch.HEEL_UP;
            case Base.SideLying lying -> Touch.LIFTED;
        };
    }

    private static boolean onBox(Base base, Side side) {
        return switch (base) {
            case Base.Split split -> (split.front() == side ? split.frontRaise() : split.rearRaise()) > 0;
            case Base.Step step -> step.up() == side;
            case Base.Level level -> level.raise() > 0;
            case Base.Supine supine -> supine.raise() > 0;
            case Base.Staggered s -> false;
            case Base.OneLeg s -> false;
            case Base.Seated s -> false;
            case Base.HalfKneeling s -> false;
            case Base.TallKneeling s -> false;
            case Base.KneelingAtSupport s -> false;
            case Base.AllFours s -> false;
            case Base.Plank s -> false;
            case Base.SideLying s -> false;
        };
    }

    private static boolean onWedge(Base base, Side side) {
        return base instanceof Base.Staggered staggered && staggered.wedge() > 0 && staggered.wedgeFoot() == side;
    }

    private static OptionalDouble share(SolvedSetUp solved, Side side, Touch touch) {
        double left = solved.pose().mechanics().leftShare();
        boolean carries = Double.isFinite(left) && touch != Touch.LIFTED;
        return carries ? OptionalDouble.of(side == Side.LEFT ? left : 1 - left) : OptionalDouble.empty();
    }
}
