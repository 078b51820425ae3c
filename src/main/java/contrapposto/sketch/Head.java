package contrapposto.sketch;

import static contrapposto.sketch.Directions.between;

import contrapposto.body.Joint;
import contrapposto.figure.Circle;
import contrapposto.figure.Envelope;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Head and neck: dark hair, white face, so that the way it faces reads from 3 mm of head. No eyes and no mouth. */
record Head(Sitter sitter) {

    Part neck() {
        Vector3D base = Trunk.of(sitter).section(1.00).centre();
        Outline outline = Envelope.around(List.of(sitter.ball(base, .0315),
                sitter.ball(between(base, at(-.012, 0, -.098), .5), .0268), ball(-.010, 0, -.092, .0280)));
        return Part.ofBody(Piece.NECK, false, List.of(between(base, sitter.at(Joint.HEAD_TOP), .3)),
                List.of(new Part.Shape(outline, Tones.SKIN)), List.of());
    }

    Part head() {
        double towardReader = sitter.camera().depth(sitter.frames().headFront());
        Part.Shape cranium = new Part.Shape(cranium(), Tones.HAIR);
        Part.Shape nape = new Part.Shape(sitter.hull(ball(-.020, 0, -.060, .038), ball(-.024, 0, -.086, .0245)), Tones.HAIR);
        Part.Shape face = new Part.Shape(sitter.hull(ball(.021, 0, -.052, .0310), ball(.020, 0, -.082, .0290),
                ball(.031, 0, -.1135, .0150), ball(.006, 0, -.092, .0280)), Tones.SKIN);
        Part.Shape nose = new Part.Shape(sitter.hull(ball(.045, 0, -.060, .0055), ball(.056, 0, -.081, .0055),
                ball(.046, 0, -.085, .0060)), Tones.SKIN);
        List<Part.Shape> shapes = towardReader > -.35 ? List.of(cranium, nape, face, nose)
                : towardReader > -.8 ? List.of(nose, face, cranium, nape) : List.of(cranium, nape);
        List<Part.Shape> inner = new ArrayList<>();
        List<Part.Crease> creases = new ArrayList<>();
        double leftNear = sitter.camera().depth(sitter.frames().headLeft());
        if (Math.abs(leftNear) > .25) {
            double g = Math.signum(leftNear);
            Outline ear = sitter.hull(ball(-.004, g * .044, -.062, .0085), ball(-.002, g * .042, -.076, .0060));
            inner.add(new Part.Shape(ear, Tones.SKIN));
            creases.add(new Part.Crease(ear, Pen.EAR, Tones.BLACK));
        }
        if (towardReader > .35) {
            double g = leftNear < 0 ? 1 : -1;
            creases.add(new Part.Crease(Outline.polyline(see(.050, 0, -.066), see(.0605, 0, -.083),
                    see(.0535, g * .004, -.0875)), Pen.NOSE, Tones.BLACK));
        }
        return Part.ofBody(Piece.HEAD, false, List.of(at(0, 0, -.06)), shapes, inner, creases);
    }

    private Vector3D at(double forward, double left, double up) {
        Frames f = sitter.frames();
        return sitter.at(Joint.HEAD_TOP).add(sitter.size(forward), f.headFront()).add(sitter.size(left), f.headLeft())
                .add(sitter.size(up), f.headUp());
    }

    private Point see(double forward, double left, double up) {
        return sitter.camera().see(at(forward, left, up));
    }

    private Circle ball(double forward, double left, double up, double radius) {
        return sitter.ball(at(forward, left, up), radius);
    }

    /** The outline of an ellipsoid: the ellipse whose matrix is the sum of the squares of the seen half-axes. */
    private Outline cranium() {
        Frames f = sitter.frames();
        Point[] axes = {sitter.camera().see(f.headFront()).times(sitter.size(.058)),
            sitter.camera().see(f.headLeft()).times(sitter.size(.0455)),
            sitter.camera().see(f.headUp()).times(sitter.size(.053))};
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (Point a : axes) {
            xx += a.x() * a.x();
            xy += a.x() * a.y();
            yy += a.y() * a.y();
        }
        double mean = (xx + yy) / 2;
        double swing = Math.sqrt((xx - yy) * (xx - yy) / 4 + xy * xy);
        double turn = .5 * StrictMath.atan2(2 * xy, xx - yy);
        Point centre = see(-.006, 0, -.053);
        Point a = new Point(0, 0).polar(Math.sqrt(mean + swing), turn);
        Point b = a.unit().quarterTurn().times(Math.sqrt(mean - swing));
        return new Circle(new Point(0, 0), 1).outline().mapped(p -> centre.along(a, p.x()).along(b, p.y()));
    }
}
