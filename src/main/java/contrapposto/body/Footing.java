package contrapposto.body;

import contrapposto.body.Foot.Contact;
import contrapposto.quantity.Side;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * The feet of an upright base, in a frame whose origin is on the floor under the front (or lead) heel's x.
 *
 * @param lead  whose knee sets the depth
 * @param front the foot in front, where one is
 * @param left  empty in the air
 * @param right empty in the air
 */
record Footing(Side lead, Optional<Side> front, Optional<Foot> left, Optional<Foot> right) {
    /** How far the toes turn out in a wide level stance, degrees: house. */
    private static final double TOES_OUT = 10;
    /** Width from which a level stance turns its toes out, share of stature: house. */
    private static final double WIDE = 0.15;

    Optional<Foot> foot(Side side) {
        return side == Side.LEFT ? left : right;
    }

    static Footing of(PoseProblem problem, BaseOfSupport base, Position position) {
        return switch (base) {
            case BaseOfSupport.Split split -> split(problem, split);
            case BaseOfSupport.Staggered staggered -> staggered(problem, staggered, position);
            case BaseOfSupport.Level level -> level(problem, level, position);
            case BaseOfSupport.Step step -> step(problem, step, position);
            case BaseOfSupport.OneLeg one -> oneLeg(problem, one, position);
            case BaseOfSupport.HalfKneeling other -> throw notOnFeet(base);
            case BaseOfSupport.TallKneeling other -> throw notOnFeet(base);
            case BaseOfSupport.KneelingAtSupport other -> throw notOnFeet(base);
            case BaseOfSupport.AllFours other -> throw notOnFeet(base);
            case BaseOfSupport.Plank other -> throw notOnFeet(base);
            case BaseOfSupport.Supine other -> throw notOnFeet(base);
            case BaseOfSupport.SideLying other -> throw notOnFeet(base);
            case BaseOfSupport.Seated other -> throw notOnFeet(base);
        };
    }

    private static IllegalArgumentException notOnFeet(BaseOfSupport base) {
        return new IllegalArgumentException("Not a base on the feet: (" + base + ").");
    }

    private static Footing split(PoseProblem problem, BaseOfSupport.Split split) {
        Segments lengths = problem.person().segments();
        Side front = split.front();
        Side rear = front.other();
        double y = rear.sign() * split.width() / 2;
        Foot ahead = Foot.flat(front, lengths, new Vector3D(0, -y, split.frontRaise()), 0, 0, problem.pressure().on(front));
        Foot behind = split.rearOnLaces()
                ? Foot.onLaces(rear, problem.person(), -split.stance(), y, split.rearRaise())
                : Foot.onBall(rear, new Vector3D(-split.stance() - toes(lengths), y, split.rearRaise()), 0);
        return of(front, Optional.of(front), ahead, Optional.of(behind));
    }

    private static Footing staggered(PoseProblem problem, BaseOfSupport.Staggered base, Position position) {
        Segments lengths = problem.person().segments();
        Side front = base.ahead();
        Side rear = front.other();
        double y = rear.sign() * base.width() / 2;
        double frontWedge = base.wedgeFoot() == front ? base.wedge() : 0;
        double rearWedge = base.wedgeFoot() == rear ? base.wedge() : 0;
        boolean walks = problem.action() instanceof Action.Walk && position == Position.WORKING;
        Foot ahead = walks ? heelDown(front, -y)
                : Foot.flat(front, lengths, new Vector3D(0, -y, 0), frontWedge, 0, problem.pressure().on(front));
        double toe = -base.stance();
        Foot behind = base.rearHeelUp() || walks
                ? Foot.onBall(rear, new Vector3D(toe - toes(lengths), y, 0), 0)
                : Foot.flat(rear, lengths, new Vector3D(toe - shadow(lengths, rearWedge), y, 0), rearWedge, 0,
                        problem.pressure().on(rear));
        Foot lead = problem.working() == front ? ahead : behind;
        return of(problem.working(), Optional.of(front), lead, Optional.of(lead == ahead ? behind : ahead));
    }

    private static Footing level(PoseProblem problem, BaseOfSupport.Level base, Position position) {
        Segments lengths = problem.person().segments();
        Side lead = problem.working();
        if (problem.action() instanceof Action.Walk(var stride) && position == Position.WORKING) {
            double y = lead.sign() * base.width() / 2;
            Foot behind = Foot.onBall(lead.other(), new Vector3D(-stride - toes(lengths) + lengths.foot(), -y, base.raise()), 0);
            return of(lead, Optional.of(lead), heelDown(lead, y), Optional.of(behind));
        }
        double out = base.width() > WIDE * problem.person().stature() ? TOES_OUT : 0;
        Foot first = beside(problem, lead, base, out, position);
        return of(lead, Optional.empty(), first, Optional.of(beside(problem, lead.other(), base, out, position)));
    }

    private static Foot beside(PoseProblem problem, Side side, BaseOfSupport.Level base, double out, Position position) {
        Segments lengths = problem.person().segments();
        Vector3D heel = new Vector3D(0, side.sign() * base.width() / 2, base.raise());
        return problem.action() instanceof Action.HeelRise && position == Position.WORKING
                ? Foot.onBall(side, heel.add(new Vector3D(lengths.heelToBall(), 0, 0)), 0)
                : Foot.flat(side, lengths, heel, 0, side.sign() * out, problem.pressure().on(side));
    }

    private static Footing step(PoseProblem problem, BaseOfSupport.Step base, Position position) {
        Segments lengths = problem.person().segments();
        Side up = base.up();
        double y = up.sign() * base.width() / 2;
        Foot onBox = Foot.flat(up, lengths, new Vector3D(0, y, base.box()), 0, 0, problem.pressure().on(up));
        boolean bothDown = problem.action() instanceof Action.StepUp && position == Position.START;
        double gap = 0.05 * problem.person().stature();
        return of(up, Optional.of(up), onBox, bothDown
                ? Optional.of(Foot.onBall(up.other(), new Vector3D(-gap - toes(lengths), -y, 0), 0))
                : Optional.empty());
    }

    private static Footing oneLeg(PoseProblem problem, BaseOfSupport.OneLeg base, Position position) {
        Segments lengths = problem.person().segments();
        Side side = base.standing();
        double y = side.sign() * lengths.hipSpacing() / 2;
        boolean rises = problem.action() instanceof Action.HeelRise && position == Position.WORKING;
        return of(side, Optional.empty(), rises
                ? Foot.onBall(side, new Vector3D(lengths.heelToBall(), y, 0), 0)
                : Foot.flat(side, lengths, new Vector3D(0, y, 0), 0, 0, problem.pressure().on(side)), Optional.empty());
    }

    private static Foot heelDown(Side side, double y) {
        return new Foot(side, Contact.HEEL, new Vector3D(0, y, 0), 0, -10, Foot.Pressure.of(PoseProblem.Zone.HEEL));
    }

    private static double toes(Segments lengths) {
        return lengths.foot() - lengths.heelToBall();
    }

    /** How long a foot with its heel on a wedge is on the floor. */
    private static double shadow(Segments lengths, double wedge) {
        return lengths.heelToBall() * Degrees.cos(Degrees.asin(wedge / lengths.heelToBall())) + toes(lengths);
    }

    private static Footing of(Side lead, Optional<Side> front, Foot foot, Optional<Foot> other) {
        return lead == Side.LEFT ? new Footing(lead, front, Optional.of(foot), other)
                : new Footing(lead, front, other, Optional.of(foot));
    }
}
