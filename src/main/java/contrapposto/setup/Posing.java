package contrapposto.setup;

import contrapposto.body.Action;
import contrapposto.body.ArmTask;
import contrapposto.body.BaseOfSupport;
import contrapposto.body.Load;
import contrapposto.body.PoseProblem;
import contrapposto.body.PoseProblem.Zone;
import contrapposto.catalogue.CapacityGroup;
import contrapposto.catalogue.Family.BaseKind;
import contrapposto.catalogue.Family.FootPlace;
import contrapposto.catalogue.Family.Works;
import contrapposto.catalogue.Implement;
import contrapposto.check.CheckedSpec.Cable;
import contrapposto.quantity.Length;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says a set-up in the words of mechanics: the pose problem that {@code body} solves. */
final class Posing {
    private Posing() { }

    /** The problem of holding {@code setUp} with {@code kg} on each implement. */
    static PoseProblem problem(Question q, SetUp setUp, double kg) {
        var family = q.family();
        var side = q.side();
        var effort = family.group() == CapacityGroup.HINGE ? q.rules().hingeEffort() : q.rules().legEffort();
        return new PoseProblem(q.person(), side, q.restraints().limits(), base(q, setUp),
                action(q, setUp), arm(q, setUp, Side.LEFT), arm(q, setUp, Side.RIGHT),
                load(q, setUp, kg), setUp.hipShift(), setUp.handSupport() != SetUp.Support.NONE, pressure(q), effort);
    }

    private static Action action(Question q, SetUp setUp) {
        var action = q.family().action();
        if (action.on(q.side(), q.stature()) instanceof Action.Shift(var share, var lean, var away)) {
            return new Action.Shift(share, lean, q.target().turnTo().equals(Optional.of(q.side().other())));
        }
        return setUp.rearRaise().metres() > 0 ? action.withRearRaised(q.side(), q.stature())
                : action.on(q.side(), q.stature());
    }

    /** Between the feet, m; NaN where there is nothing to measure. */
    static double width(Question q) {
        double share = q.family().levers().widthShare();
        return share > 0 ? share * q.stature() : Double.NaN;
    }

    private static BaseOfSupport base(Question q, SetUp s) {
        var side = q.side();
        double width = Double.isNaN(s.stanceWidth()) ? 0 : s.stanceWidth();
        var front = s.frontFoot().orElse(side);
        double raise = s.raise().metres();
        return switch (q.family().base()) {
            case SPLIT -> new BaseOfSupport.Split(front, s.stance(), width, s.frontRaise().metres(), s.rearRaise().metres(),
                    s.rearRaise().metres() >= q.rules().placing().lacesFrom());
            case STAGGERED -> new BaseOfSupport.Staggered(front, s.stance(), width, s.wedgeFoot().orElse(side),
                    s.heelWedge().metres(), q.family().levers().kickstand() && front == side);
            case LEVEL -> new BaseOfSupport.Level(width, raise);
            case STEP -> new BaseOfSupport.Step(below(q) ? side.other() : side, raise, width);
            case ONE_LEG -> new BaseOfSupport.OneLeg(side);
            case HALF_KNEELING -> new BaseOfSupport.HalfKneeling(front.other(), width);
            case TALL_KNEELING -> new BaseOfSupport.TallKneeling(width);
            case KNEELING_AT_SUPPORT -> new BaseOfSupport.KneelingAtSupport(raise, width);
            case ALL_FOURS -> new BaseOfSupport.AllFours(width);
            case PLANK -> new BaseOfSupport.Plank(side == Side.LEFT ? raise : 0, side == Side.RIGHT ? raise : 0, width, false);
            case SUPINE -> new BaseOfSupport.Supine(raise, width);
            case SIDE_LYING -> new BaseOfSupport.SideLying(below(q) ? side : side.other());
            case SEATED -> new BaseOfSupport.Seated(raise, width);
        };
    }

    /** Whether the working leg is the lower one: on the floor beside the step, or underneath when lying on the side. */
    private static boolean below(Question q) {
        return q.family().levers().workingFoot().contains(FootPlace.BELOW);
    }

    /**
     * What one arm does. Work of an arm: as the family says. Work of a leg: the arm that holds a weight does what the
     * family's working arm does, a supporting arm holds on, a free arm does what the other arm does.
     */
    private static ArmTask arm(Question q, SetUp setUp, Side arm) {
        var family = q.family();
        double stature = q.stature();
        boolean supports = setUp.handSupport() != SetUp.Support.NONE
                && arm == setUp.loadHand().orElse(q.side()).other();
        if (supports) {
            var placing = q.rules().placing();
            double share = setUp.handSupport() == SetUp.Support.WALL ? placing.wallHeight() : placing.railHeight();
            return new ArmTask.OnSupport(share * stature, placing.supportAhead());
        }
        boolean busy = switch (family.works()) {
            case ARM, TRUNK -> arm == q.side() || q.symmetric();
            case LEG -> setUp.bothHands() || setUp.eachHand() || setUp.loadHand().equals(Optional.of(arm))
                    || family.base() == BaseKind.PLANK || family.base() == BaseKind.ALL_FOURS;
        };
        return (busy ? family.workingArm() : family.otherArm()).on(arm, stature);
    }

    /** The weight where the set-up has it, {@code kg} on each implement; a cable comes past the shoulder of its hand. */
    static Load load(Question q, SetUp setUp, double kg) {
        if (kg <= 0) {
            return new Load.None();
        }
        var hand = setUp.loadHand().orElse(q.side());
        var levers = q.family().levers();
        return switch (setUp.implement()) {
            case BODY_WEIGHT -> new Load.None();
            case BARBELL -> q.family().base() == BaseKind.SUPINE ? new Load.OnHips(kg) : new Load.InBothHands(kg);
            case CABLE -> new Load.Cable(hand, kg, q.equipment().cable().map(c -> c.ratio()).orElse(1.0),
                    setUp.pulley().metres(), setUp.pulleyDistance(), levers.pulleyAhead(),
                    hand.sign() * q.person().segments().shoulderSpacing() / 2);
            case BAND -> new Load.Band(hand, setUp.pulley().metres(), setUp.pulleyDistance(), levers.pulleyAhead());
            case DUMBBELL, KETTLEBELL -> q.family().base() == BaseKind.SUPINE && setUp.bothHands() ? new Load.OnHips(kg)
                    : setUp.eachHand() ? new Load.InEachHand(kg)
                    : setUp.bothHands() ? new Load.InBothHands(kg) : new Load.InHand(hand, kg);
        };
    }

    /** The zone of the wanted phase under the working foot, the family's other zone under the other. */
    private static Sided<Zone> pressure(Question q) {
        var family = q.family();
        var working = zone(q);
        var other = q.symmetric() ? working : family.otherPressure();
        return q.side() == Side.LEFT ? new Sided.Each<>(working, other) : new Sided.Each<>(other, working);
    }

    /** Where the working foot presses: as the family has it for the wanted phase. */
    static Zone zone(Question q) {
        return q.target().phases().size() == 1
                ? q.family().pressure().getOrDefault(q.target().phases().getFirst(), Zone.WHOLE_SOLE) : Zone.WHOLE_SOLE;
    }

    /** Heights a pulley (or the anchor of a band) may have for this family and this column, low to high, every 5 cm. */
    static List<Length> pulleys(Question q, Implement implement) {
        var levers = q.family().levers();
        var cable = implement == Implement.CABLE ? q.equipment().cable() : Optional.<Cable>empty();
        double low = Math.max(cable.map(c -> c.pulleyFrom().metres()).orElse(0.0), levers.pulleyFrom() * q.stature());
        double high = Math.min(cable.map(c -> c.pulleyTo().metres()).orElse(Double.POSITIVE_INFINITY),
                levers.pulleyTo() * q.stature());
        var heights = new ArrayList<Length>();
        for (long step = (long) StrictMath.ceil(low * 20 - 1e-9); step <= high * 20 + 1e-9; step++) {
            heights.add(Length.ofMetres(step / 20.0));
        }
        return List.copyOf(heights);
    }
}
