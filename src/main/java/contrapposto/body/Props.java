package contrapposto.body;

import contrapposto.body.Joint.Part;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Places the things around the body. Sizes in metres are the drawing study's (house). */
final class Props {
    private static final double BOX_DEPTH = 0.39;
    private static final double BOX_BEHIND_HEEL = 0.06;
    private static final double BOX_HALF_WIDTH = 0.165;
    private static final double BOX_EDGE = 0.05;
    private static final double BENCH_DEPTH = 0.32;
    /** Most that a bench stands out before an ankle on it, m; less where the shin falls steeply, so that it clears the edge. */
    private static final double BENCH_AHEAD = 0.03;
    /** Half an ankle's thickness, and what skin gives, shares of stature: house. */
    private static final double ANKLE = 0.017;
    private static final double GIVE = 0.006;
    private static final double BENCH_HALF_WIDTH = 0.33;
    private static final double WEDGE_HALF_WIDTH = 0.075;

    private Props() { }

    /** Under the feet, in the hands, at the cable, under a steadying hand. */
    static List<Prop> upright(PoseProblem problem, Skeleton k, Loads loads, Arms arms) {
        var props = new ArrayList<Prop>();
        switch (problem.base()) {
            case BaseOfSupport.Split base -> {
                if (base.frontRaise() > 0) {
                    props.add(underFoot(k, base.front(), base.frontRaise()));
                }
                if (base.rearRaise() > 0) {
                    props.add(base.rearOnLaces() ? bench(k, base.front().other(), base.rearRaise())
                            : underFoot(k, base.front().other(), base.rearRaise()));
                }
            }
            case BaseOfSupport.Staggered base -> {
                if (base.wedge() > 0) {
                    Vector3D heel = k.at(base.wedgeFoot(), Part.HEEL);
                    props.add(new Prop.Wedge(base.wedgeFoot(), heel.getX(), k.at(base.wedgeFoot(), Part.BALL).getX(),
                            heel.getY() - WEDGE_HALF_WIDTH, heel.getY() + WEDGE_HALF_WIDTH, 0, base.wedge()));
                }
            }
            case BaseOfSupport.Level base -> {
                if (base.raise() > 0) {
                    double half = base.width() / 2 + BOX_HALF_WIDTH / 2 + 0.02;
                    props.add(new Prop.Box(new Vector3D(-BOX_BEHIND_HEEL, -half, 0),
                            new Vector3D(BOX_DEPTH - BOX_BEHIND_HEEL, half, base.raise())));
                }
            }
            case BaseOfSupport.Step base -> props.add(problem.action() instanceof Action.KneeBend
                    ? atTheEdge(k, base.up(), base.box()) : underFoot(k, base.up(), base.box()));
            case BaseOfSupport.OneLeg base -> { }
            case BaseOfSupport.HalfKneeling base -> { }
            case BaseOfSupport.TallKneeling base -> { }
            case BaseOfSupport.KneelingAtSupport base -> { }
            case BaseOfSupport.AllFours base -> { }
            case BaseOfSupport.Plank base -> { }
            case BaseOfSupport.Supine base -> { }
            case BaseOfSupport.SideLying base -> { }
            case BaseOfSupport.Seated base -> { }
        }
        if (problem.action() instanceof Action.Squeeze squeeze && squeeze.holdsCushion()) {
            props.add(cushion(k));
        }
        steadying(problem, arms, props);
        held(problem, k, loads, props);
        return props;
    }

    private static Prop underFoot(Skeleton k, Side side, double height) {
        Vector3D heel = k.at(side, Part.HEEL);
        double back = Math.min(heel.getX(), k.at(side, Part.BALL).getX() - 0.10) - BOX_BEHIND_HEEL;
        return new Prop.Box(new Vector3D(back, heel.getY() - BOX_HALF_WIDTH, 0),
                new Vector3D(back + BOX_DEPTH, heel.getY() + BOX_HALF_WIDTH, height));
    }

    /** Under a foot that stands at its edge, so that the other can sink beside it. */
    private static Prop atTheEdge(Skeleton k, Side side, double height) {
        Vector3D heel = k.at(side, Part.HEEL);
        double edge = heel.getY() - side.sign() * BOX_EDGE;
        double far = edge + side.sign() * 2 * BOX_HALF_WIDTH;
        return new Prop.Box(new Vector3D(heel.getX() - BOX_BEHIND_HEEL, Math.min(edge, far), 0),
                new Vector3D(heel.getX() - BOX_BEHIND_HEEL + BOX_DEPTH, Math.max(edge, far), height));
    }

    /** Across, under a foot that lies on its top, its edge under the ankle. */
    private static Prop bench(Skeleton k, Side side, double height) {
        Vector3D ankle = k.at(side, Part.ANKLE);
        Vector3D knee = k.at(side, Part.KNEE);
        double fall = Math.max(0.1, (ankle.getZ() - knee.getZ()) / (knee.getX() - ankle.getX()));
        double under = Segments.LACES_HEIGHT + GIVE - ANKLE * StrictMath.sqrt(1 + fall * fall);
        double front = ankle.getX() + Math.min(BENCH_AHEAD, under / fall * k.person().stature());
        double back = Math.min(front - BENCH_DEPTH, k.at(side, Part.TOE).getX() - 0.04);
        return new Prop.Bench(new Vector3D(back, ankle.getY() - BENCH_HALF_WIDTH, 0),
                new Vector3D(front, ankle.getY() + BENCH_HALF_WIDTH, height));
    }

    static Prop cushion(Skeleton k) {
        return new Prop.Cushion(new Vector3D(0.5, k.at(Side.LEFT, Part.KNEE), 0.5, k.at(Side.RIGHT, Part.KNEE)));
    }

    /** A rail under each steadying hand; at shoulder height or more it is a wall. */
    private static void steadying(PoseProblem problem, Arms arms, List<Prop> props) {
        double h = problem.person().stature();
        for (Side side : Side.values()) {
            if (problem.arm(side) instanceof ArmTask.OnSupport(var height, var ahead)) {
                Vector3D wrist = side == Side.LEFT ? arms.leftHand() : arms.rightHand();
                if (height > Support.WALL * h) {
                    props.add(new Prop.Wall(wrist.getX() + Segments.PALM_HEIGHT * h, -0.5, 0.5, 1.8));
                } else {
                    double x = wrist.getX() + 0.05 * h;
                    props.add(new Prop.Rail(new Vector3D(x, wrist.getY() - 0.2, height), new Vector3D(x, wrist.getY() + 0.2, height)));
                }
            }
        }
    }

    /** What is in the hands, on the hips or on the cable. */
    static void held(PoseProblem problem, Skeleton k, Loads loads, List<Prop> props) {
        switch (problem.load()) {
            case Load.None none -> { }
            case Load.InHand(var hand, var mass) -> props.add(new Prop.Dumbbell(hand, axis(k, hand)));
            case Load.InEachHand(var mass) -> {
                for (Side side : Side.values()) {
                    props.add(new Prop.Dumbbell(side, axis(k, side)));
                }
            }
            case Load.InBothHands(var mass) -> props.add(new Prop.Kettlebell(Side.RIGHT, true));
            case Load.OnHips(var mass) -> {
                var masses = new ArrayList<PointMass>(1);
                loads.onPelvis(k, masses);
                props.add(new Prop.Barbell(masses.getFirst().at()));
            }
            case Load.Cable cable -> props.add(new Prop.Column(loads.pulley(), cable.hand()));
            case Load.Band band -> props.add(new Prop.BandAnchor(loads.pulley(), band.hand()));
        }
    }

    /** A handle lies across the forearm: fore and aft in a hanging hand, sideways in a raised one. */
    private static Vector3D axis(Skeleton k, Side side) {
        Vector3D forearm = k.at(side, Part.WRIST).subtract(k.at(side, Part.ELBOW)).normalize();
        Vector3D wish = forearm.getZ() < -0.85 ? Vector3D.PLUS_I : Vector3D.PLUS_J;
        return wish.subtract(forearm.scalarMultiply(wish.dotProduct(forearm))).normalize();
    }
}
