package contrapposto.body;

import contrapposto.body.Breaches.Kind;
import contrapposto.body.Contact.Limb;
import contrapposto.body.Joint.Part;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * A placed body at rest on any number of points. The forces are those with the least sum of squares that hold the body
 * (more than three points leave the split open); points that would have to pull are let go.
 */
final class Resting {
    private static final double TIE = 1e-9;

    private final Skeleton skeleton;
    private final Loads loads;
    private final Vector3D facing;
    /** Where the body may rest; until the forces are known, z holds the root of the ease. */
    private final List<Contact> points = new ArrayList<>();
    private final List<PointMass> masses = new ArrayList<>(18);
    private final List<PointForce> pulls = new ArrayList<>(2);
    private final Breaches breaches;
    private List<Contact> contacts = List.of();
    private double least;

    Resting(Skeleton skeleton, Loads loads, Vector3D facing) {
        this.skeleton = skeleton;
        this.loads = loads;
        this.facing = facing;
        this.breaches = new Breaches(skeleton.person().stature());
        skeleton.trunkWeights(masses);
        for (Side side : Side.values()) {
            skeleton.legWeights(side, masses);
            skeleton.armWeights(side, masses);
            loads.inHand(skeleton, side, masses);
            loads.pull(skeleton, side, pulls);
        }
        loads.onPelvis(skeleton, masses);
    }

    /** May rest on {@code at}. */
    Resting on(String what, Limb limb, Vector3D at) {
        return on(what, limb, at, 1);
    }

    /** May lean on {@code at}, which takes less readily: its force counts 1/{@code ease} in the sum of squares. */
    Resting on(String what, Limb limb, Vector3D at, double ease) {
        points.add(new Contact(what, limb, at, new Vector3D(0, 0, StrictMath.sqrt(ease))));
        return this;
    }

    /** May rest on the joint {@code part} of a limb, on a support {@code below} it. */
    Resting on(Side side, Part part, Limb limb, double below) {
        Vector3D at = skeleton.at(side, part);
        return on(side.word() + "-" + Joint.of(side, part).word().substring(side.word().length() + 1), limb,
                new Vector3D(at.getX(), at.getY(), at.getZ() - below));
    }

    /** May rest on the palm, its support {@code PALM_HEIGHT} under the wrist. */
    Resting onPalm(Side side) {
        Vector3D grip = skeleton.grip(side);
        double z = skeleton.at(side, Part.WRIST).getZ() - Segments.PALM_HEIGHT * skeleton.person().stature();
        return on(side.word() + "-hand", Statics.arm(side), new Vector3D(grip.getX(), grip.getY(), z));
    }

    /** Finds the forces; what cannot be held is a breach. */
    Resting settle() {
        var open = new ArrayList<>(points);
        while (true) {
            double[] forces = leastSquares(open);
            int worst = -1;
            double lowest = -TIE * PointMass.centre(masses).mass();
            for (int i = 0; i < open.size(); i++) {
                if (forces[3 * i + 2] < lowest) {
                    lowest = forces[3 * i + 2];
                    worst = i;
                }
            }
            if (worst < 0 || open.size() <= 1) {
                finish(open, forces);
                return this;
            }
            open.remove(worst);
        }
    }

    private void finish(List<Contact> open, double[] forces) {
        var held = new ArrayList<Contact>(open.size());
        double weight = PointMass.centre(masses).mass() * PointMass.GRAVITY;
        least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < open.size(); i++) {
            Contact point = open.get(i);
            var newton = new Vector3D(forces[3 * i], forces[3 * i + 1], forces[3 * i + 2]);
            held.add(new Contact(point.what(), point.limb(), point.at(), newton));
            least = Math.min(least, newton.getZ() / weight);
        }
        contacts = held;
        Vector3D at = PointMass.centre(masses).at();
        Vector3D moment = PointForce.momentAbout(at, pulls);
        for (Contact contact : held) {
            moment = moment.add(contact.force().momentAbout(at));
        }
        double off = StrictMath.sqrt(moment.getX() * moment.getX() + moment.getY() * moment.getY()) / weight;
        breaches.atMost(Kind.OFF_BASE, Side.LEFT, off, 1e-7);
    }

    /** Three components for each point; only the vertical ones unless something pulls sideways. */
    private double[] leastSquares(List<Contact> open) {
        int n = open.size();
        Vector3D about = PointMass.centre(masses).at();
        double weight = PointMass.centre(masses).mass() * PointMass.GRAVITY;
        Vector3D pull = PointForce.sum(pulls);
        Vector3D twist = PointForce.momentAbout(about, pulls);
        double[] result = new double[3 * n];
        if (pulls.isEmpty()) {
            RealMatrix a = new Array2DRowRealMatrix(3, n);
            for (int i = 0; i < n; i++) {
                Vector3D r = open.get(i).at().subtract(about);
                double ease = open.get(i).newton().getZ();
                a.setColumn(i, new double[] {ease, ease * r.getX(), ease * r.getY()});
            }
            RealVector found = solved(a, new ArrayRealVector(new double[] {weight, 0, 0}, false));
            for (int i = 0; i < n; i++) {
                result[3 * i + 2] = open.get(i).newton().getZ() * found.getEntry(i);
            }
            return result;
        }
        RealMatrix a = new Array2DRowRealMatrix(6, 3 * n);
        for (int i = 0; i < n; i++) {
            Vector3D r = open.get(i).at().subtract(about);
            double ease = open.get(i).newton().getZ();
            a.setColumn(3 * i, new double[] {ease, 0, 0, 0, ease * r.getZ(), -ease * r.getY()});
            a.setColumn(3 * i + 1, new double[] {0, ease, 0, -ease * r.getZ(), 0, ease * r.getX()});
            a.setColumn(3 * i + 2, new double[] {0, 0, ease, ease * r.getY(), -ease * r.getX(), 0});
        }
        double[] found = solved(a, new ArrayRealVector(new double[] {-pull.getX(), -pull.getY(), weight - pull.getZ(), -twist.getX(),
            -twist.getY(), -twist.getZ()}, false)).toArray();
        for (int i = 0; i < 3 * n; i++) {
            found[i] *= open.get(i / 3).newton().getZ();
        }
        return found;
    }

    private static RealVector solved(RealMatrix a, RealVector b) {
        return new SingularValueDecomposition(a).getSolver().solve(b);
    }

    Skeleton skeleton() {
        return skeleton;
    }

    Vector3D facing() {
        return facing;
    }

    Breaches breaches() {
        return breaches;
    }

    Statics statics() {
        return new Statics(skeleton, loads, contacts);
    }

    /** The smallest share of the weight that any point which holds carries; 0 when one had to be let go. */
    double leastShare() {
        return contacts.size() < points.size() ? 0 : least;
    }

    /** Mass centre of body and load. */
    Vector3D centre() {
        return PointMass.centre(masses).at();
    }

    /** A foot's share of the weight on both feet; NaN where not both carry. */
    double footShare(Side side) {
        double own = 0;
        double both = 0;
        int feet = 0;
        for (Contact contact : contacts) {
            if (contact.what().endsWith("-foot")) {
                feet++;
                both += contact.newton().getZ();
                own += contact.what().startsWith(side.word()) ? contact.newton().getZ() : 0;
            }
        }
        return feet == 2 && both > 0 ? own / both : Double.NaN;
    }
}
