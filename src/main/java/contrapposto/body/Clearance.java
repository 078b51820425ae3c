package contrapposto.body;

import contrapposto.body.Breaches.Kind;
import contrapposto.body.Joint.Part;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Whether a finished pose keeps limbs and weights out of the floor, of what stands around and of each other. Limbs are
 * rows of balls as thick as they are drawn; what touches may give a little.
 */
final class Clearance {
    /** How far flesh and shoe give way, share of stature: house. */
    private static final double GIVE = 0.008;
    /** Heads of a dumbbell: from the grip, and their radius, m, as they are drawn. */
    private static final double HEAD_AT = 0.091;
    private static final double HEAD = 0.045;

    private final PoseProblem problem;
    private final List<Solid> around;
    private final double give;
    private final Breaches breaches;

    private Clearance(PoseProblem problem, List<Prop> props) {
        this.problem = problem;
        this.around = Solid.of(props);
        double h = problem.person().stature();
        this.give = GIVE * h;
        this.breaches = new Breaches(h);
    }

    /** What any position runs into. */
    static Breaches of(PoseProblem problem, SolvedPose pose) {
        var clearance = new Clearance(problem, pose.props());
        clearance.judge(pose.start(), pose.props());
        clearance.judge(pose.working(), pose.props());
        if (pose.end() != pose.working()) {
            clearance.judge(pose.end(), pose.props());
        }
        return clearance.breaches;
    }

    private void judge(Pose pose, List<Prop> props) {
        Map<Side, Balls> legs = new EnumMap<>(Side.class);
        double h = problem.person().stature();
        for (Side side : Side.values()) {
            Balls leg = Balls.leg(pose, side, h);
            legs.put(side, leg);
            alone(leg, side, Kind.LEG_FLOOR, Kind.LIMB_BOX);
        }
        apart(legs.get(Side.LEFT), legs.get(Side.RIGHT), Side.LEFT, Kind.LEGS);
        for (Side side : Side.values()) {
            Balls arm = Balls.arm(pose, side, h);
            alone(arm, side, Kind.ARM_FLOOR, Kind.ARM_BOX);
            if (!(problem.arm(side) instanceof ArmTask.Rest)) {
                legs.values().forEach(leg -> apart(arm, leg, side, Kind.ARM_LEG));
            }
        }
        for (Prop prop : props) {
            if (prop instanceof Prop.Dumbbell(var hand, var axis)) {
                Balls heads = heads(pose, hand, axis);
                alone(heads, hand, Kind.WEIGHT_FLOOR, Kind.WEIGHT_BOX);
                legs.values().forEach(leg -> apart(heads, leg, hand, Kind.WEIGHT_LEG));
            }
        }
    }

    private Balls heads(Pose pose, Side hand, Vector3D axis) {
        double h = problem.person().stature();
        Vector3D wrist = pose.at(Joint.of(hand, Part.WRIST));
        Vector3D grip = Vectors.step(wrist, Segments.GRIP * h, Vectors.unit(pose.at(Joint.of(hand, Part.HAND)).subtract(wrist)));
        Vector3D along = Vectors.unit(axis);
        return Balls.of(List.of(Vectors.step(grip, -HEAD_AT, along), Vectors.step(grip, HEAD_AT, along)), HEAD);
    }

    private void alone(Balls limb, Side side, Kind floor, Kind solid) {
        for (int i = 0; i < limb.size(); i++) {
            double least = limb.radius(i) - give;
            breaches.atLeast(floor, side, limb.at(i).getZ(), least);
            for (Solid one : around) {
                breaches.atLeast(solid, side, one.distance(limb.at(i)), least);
            }
        }
    }

    private void apart(Balls one, Balls other, Side side, Kind kind) {
        if (!one.near(other)) {
            return;
        }
        for (int i = 0; i < one.size(); i++) {
            for (int j = 0; j < other.size(); j++) {
                breaches.atLeast(kind, side, one.at(i).distance(other.at(j)), one.radius(i) + other.radius(j) - 2 * give);
            }
        }
    }

    /** A solid block around the body. */
    private record Solid(Vector3D low, Vector3D high) {
        /** Thickness of a bench's pad and a chair's seat, of a wall, half of a rail's bar, m, as they are drawn. */
        private static final double PAD = 0.07;
        private static final double SEAT = 0.04;
        private static final double WALL = 0.10;
        private static final double BAR = 0.02;

        /** What stands around; what lies under the body, and what is held, is not among it. */
        static List<Solid> of(List<Prop> props) {
            var solids = new ArrayList<Solid>();
            for (Prop prop : props) {
                switch (prop) {
                    case Prop.Box(var low, var high) -> solids.add(new Solid(low, high));
                    case Prop.Bench(var low, var high) -> solids.add(top(low, high, PAD));
                    case Prop.Chair(var low, var high) -> solids.add(top(low, high, SEAT));
                    case Prop.Wall(var x, var yLow, var yHigh, var height) ->
                            solids.add(new Solid(new Vector3D(x, yLow, 0), new Vector3D(x + WALL, yHigh, height)));
                    case Prop.Rail(var from, var to) -> solids.add(new Solid(
                            new Vector3D(from.getX() - BAR, Math.min(from.getY(), to.getY()), from.getZ() - 2 * BAR),
                            new Vector3D(from.getX() + BAR, Math.max(from.getY(), to.getY()), from.getZ())));
                    case Prop.Wedge under -> { }
                    case Prop.Mat under -> { }
                    case Prop.Pillow under -> { }
                    case Prop.Column behind -> { }
                    case Prop.BandAnchor behind -> { }
                    case Prop.Dumbbell held -> { }
                    case Prop.Kettlebell held -> { }
                    case Prop.Barbell held -> { }
                    case Prop.Cushion held -> { }
                }
            }
            return solids;
        }

        private static Solid top(Vector3D low, Vector3D high, double thick) {
            return new Solid(new Vector3D(low.getX(), low.getY(), high.getZ() - thick), high);
        }

        /** How far {@code p} is outside, m; negative inside. */
        double distance(Vector3D p) {
            double dx = Math.max(low.getX() - p.getX(), p.getX() - high.getX());
            double dy = Math.max(low.getY() - p.getY(), p.getY() - high.getY());
            double dz = Math.max(low.getZ() - p.getZ(), p.getZ() - high.getZ());
            double most = Math.max(dx, Math.max(dy, dz));
            if (most <= 0) {
                return most;
            }
            double x = Math.max(dx, 0);
            double y = Math.max(dy, 0);
            double z = Math.max(dz, 0);
            return StrictMath.sqrt(x * x + y * y + z * z);
        }
    }
}
