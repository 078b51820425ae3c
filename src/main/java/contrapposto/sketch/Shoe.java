package contrapposto.sketch;

import static contrapposto.sketch.Directions.across;
import static contrapposto.sketch.Directions.cross;
import static contrapposto.sketch.Directions.unit;

import contrapposto.body.Joint;
import contrapposto.figure.Circle;
import contrapposto.figure.Outline;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A shoe in two parts that bend at the ball, so that a raised heel needs no case of its own.
 *
 * @param rear from heel to ball, fore from ball to toe
 */
record Shoe(Sitter sitter, Side side, double thick, Vector3D ankle, Half rear, Half fore) {
    private static final double SOLE = .0115;
    private static final double[][] REAR_SOLE = {{-.02, 0}, {.10, .019}, {.10, -.019}, {1, .027}, {1, -.027}};
    private static final double[][] FORE_SOLE = {{0, .027}, {0, -.027}, {.6, .023}, {.6, -.023}, {1, .006},
        {1, -.006}};

    /** One rigid half: shares of its own length along, shares of stature up and across. */
    record Half(Sitter sitter, Vector3D from, Vector3D along, Vector3D up, Vector3D across, double length) {
        Vector3D at(double share, double height, double side) {
            return from.add(share * length, along).add(sitter.size(height), up).add(sitter.size(side), across);
        }
    }

    static Shoe of(Sitter sitter, Side side, boolean far) {
        Vector3D ankle = sitter.at(side, Joint.Part.ANKLE);
        Vector3D heel = sitter.at(side, Joint.Part.HEEL);
        Vector3D ball = sitter.at(side, Joint.Part.BALL);
        Vector3D toe = sitter.at(side, Joint.Part.TOE);
        Vector3D f1 = unit(ball.subtract(heel));
        Vector3D n1 = unit(across(ankle.subtract(heel), f1));
        Vector3D q = cross(n1, f1);
        Vector3D f2 = unit(toe.subtract(ball));
        Vector3D n2 = unit(across(n1, f2));
        return new Shoe(sitter, side, far ? .96 : 1, ankle,
                new Half(sitter, heel, f1, n1, q, Vector3D.distance(heel, ball)),
                new Half(sitter, ball, f2, n2, q, Vector3D.distance(ball, toe)));
    }

    List<Part.Shape> shapes() {
        double k = thick;
        Circle inner = sitter.ball(rear.at(1, .021, .011), .0155 * k);
        Circle outer = sitter.ball(rear.at(1, .021, -.011), .0155 * k);
        Outline back = sitter.hull(sitter.ball(rear.at(.18, .030, 0), .0195 * k),
                sitter.ball(ankle.add(-sitter.size(.004), rear.up()), .0188 * k),
                inner, outer);
        Outline front = sitter.hull(inner, outer, sitter.ball(fore.at(.62, .0165, 0), .0145 * k));
        double upper = sitter.dress().shoe(side);
        double sole = sitter.dress().sole(side);
        return List.of(new Part.Shape(back, upper), new Part.Shape(front, upper),
                new Part.Shape(slab(rear, REAR_SOLE), sole), new Part.Shape(slab(fore, FORE_SOLE), sole));
    }

    /** All of it in one outline; a bent sole is taken as flat. */
    Outline silhouette() {
        return sitter.hull(sitter.ball(rear.at(.12, .016, 0), .0165), sitter.ball(fore.at(.85, .010, 0), .010),
                sitter.ball(ankle, .0185));
    }

    private Outline slab(Half half, double[][] outline) {
        List<Circle> corners = new ArrayList<>();
        for (double[] p : outline) {
            corners.add(sitter.ball(half.at(p[0], 0, p[1]), 0));
            corners.add(sitter.ball(half.at(p[0], SOLE, p[1]), 0));
        }
        return Circle.hull(corners);
    }
}
