package contrapposto.body;

import contrapposto.body.Joint.Part;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** A hand that steadies the body on a rail, wall or chair back. */
final class Support {
    /** What a steadying hand carries, as a share of body weight: house. */
    private static final double SHARE = 0.05;
    private static final double REACH = 0.97;
    /** Height and distance where the problem asks for a hand support without saying where, shares of stature: house. */
    private static final double HEIGHT = 0.52;
    private static final double AHEAD = 0.22;
    /** A support from this height on is a wall, which neither toes nor knees touch, shares of stature. */
    static final double WALL = 0.7;
    private static final double CLEAR = 0.005;

    private Support() { }

    /** The problem with an arm on the support if it asks for one and no arm has it yet: the arm without the weight. */
    static PoseProblem given(PoseProblem problem) {
        if (!problem.handSupport() || rests(problem.left()) || rests(problem.right())) {
            return problem;
        }
        double h = problem.person().stature();
        Side hand = problem.load() instanceof Load.InHand(var loaded, var mass) ? loaded.other() : problem.working().other();
        var task = new ArmTask.OnSupport(HEIGHT * h, AHEAD * h);
        return new PoseProblem(problem.person(), problem.working(), problem.limits(), problem.base(), problem.action(),
                hand == Side.LEFT ? task : problem.left(), hand == Side.RIGHT ? task : problem.right(), problem.load(),
                problem.hipShift(), true, problem.pressure(), problem.effort());
    }

    private static boolean rests(ArmTask task) {
        return task instanceof ArmTask.OnSupport;
    }

    /** The forces of steadying hands; their places are filled in as the hands are. */
    static List<Contact> forces(PoseProblem problem) {
        var contacts = new ArrayList<Contact>(2);
        for (Side side : Side.values()) {
            if (rests(problem.arm(side))) {
                contacts.add(new Contact(side.word() + "-hand", Statics.arm(side), Vector3D.ZERO,
                        new Vector3D(0, 0, SHARE * problem.person().mass() * PointMass.GRAVITY)));
            }
        }
        return contacts;
    }

    /** Arms whose supported hands lie where all positions reach them, as near as can be to where they were asked for. */
    static Arms reached(PoseProblem problem, List<Skeleton> positions) {
        return new Arms(problem, wrist(problem, Side.LEFT, positions), wrist(problem, Side.RIGHT, positions));
    }

    private static Vector3D wrist(PoseProblem problem, Side side, List<Skeleton> positions) {
        if (!(problem.arm(side) instanceof ArmTask.OnSupport(var height, var ahead))) {
            return Vector3D.ZERO;
        }
        Segments lengths = problem.person().segments();
        double h = problem.person().stature();
        double reach = REACH * (lengths.upperArm() + lengths.forearm());
        List<Vector3D> shoulders = positions.stream().map(k -> k.at(side, Part.SHOULDER)).toList();
        double y = (shoulders.getFirst().getY() + shoulders.get(1).getY()) / 2 + side.sign() * 0.02 * h;
        double z = height + Segments.PALM_HEIGHT * h;
        double x = positions.getFirst().at(Joint.PELVIS).getX() + ahead;
        for (Vector3D shoulder : shoulders) {
            double dy = y - shoulder.getY();
            double dz = z - shoulder.getZ();
            double dx = StrictMath.sqrt(Math.max(0, reach * reach - dy * dy - dz * dz));
            x = Math.clamp(x, shoulder.getX() - dx, shoulder.getX() + dx);
        }
        if (height > WALL * h) {
            for (Skeleton k : positions) {
                for (Side leg : Side.values()) {
                    x = Math.max(x, Math.max(k.at(leg, Part.TOE).getX(), k.at(leg, Part.KNEE).getX() + Segments.KNEE_RADIUS * h) + CLEAR * h);
                }
            }
        }
        return new Vector3D(x, y, z);
    }
}
