package contrapposto.illustrate;

import contrapposto.figure.Circle;
import contrapposto.figure.Outline;
import contrapposto.figure.Outline.Segment;
import contrapposto.figure.Point;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A bare sole seen from above, toes up the page, in mm. Shapes are ours, in foot lengths, written for the left foot:
 * origin at the back of the heel, x toward the big-toe side.
 *
 * @param heel   the back of the heel
 * @param length of the foot, mm
 * @param turn   outward, degrees
 */
record Sole(Side side, Point heel, double length, double turn) {
    private static final double[][] EDGE = {{.072, 0, .128, .055, .128, .145}, {.128, .235, .078, .33, .078, .43},
        {.078, .53, .185, .59, .190, .715}, {.193, .80, .135, .835, .075, .842}, {-.010, .852, -.130, .800, -.180, .725},
        {-.206, .685, -.210, .66, -.205, .61}, {-.196, .54, -.160, .45, -.152, .35},
        {-.146, .26, -.128, .22, -.128, .145}, {-.128, .055, -.072, 0, 0, 0}};
    private static final double[][] TOES = {{.116, .925, .062, .066}, {.012, .925, .034, .044},
        {-.060, .888, .031, .040}, {-.120, .840, .029, .037}, {-.168, .782, .026, .034}};

    /** A place under the foot that can press. */
    enum Pad {
        HEEL(0, .135, .098, .108), INNER_HEEL(.052, .145, .052, .095), OUTER_EDGE(-.112, .43, .046, .15),
        ARCH(.03, .44, .04, .13), BIG_TOE_BALL(.10, .715, .078, .088), LITTLE_TOE_BALL(-.108, .65, .076, .088);

        private final double[] ellipse;

        Pad(double... ellipse) {
            this.ellipse = ellipse;
        }
    }

    Outline edge() {
        List<Segment> segments = new ArrayList<>();
        for (double[] c : EDGE) {
            segments.add(new Segment.Curve(new Point(c[0], c[1]), new Point(c[2], c[3]), new Point(c[4], c[5])));
        }
        return new Outline(new Point(0, 0), segments, true).mapped(place());
    }

    List<Outline> toes() {
        List<Outline> all = new ArrayList<>();
        for (double[] toe : TOES) {
            all.add(ellipse(toe));
        }
        return all;
    }

    Outline pad(Pad pad) {
        return ellipse(pad.ellipse);
    }

    private Outline ellipse(double[] e) {
        return new Circle(new Point(0, 0), 1).outline()
                .mapped(p -> place().apply(new Point(e[0] + e[2] * p.x(), e[1] + e[3] * p.y())));
    }

    private UnaryOperator<Point> place() {
        int outward = side == Side.LEFT ? -1 : 1;
        double a = StrictMath.toRadians(outward * turn);
        double cos = StrictMath.cos(a);
        double sin = StrictMath.sin(a);
        return p -> {
            double x = -outward * p.x() * length;
            double y = -p.y() * length;
            return heel.plus(x * cos - y * sin, x * sin + y * cos);
        };
    }
}
