package contrapposto.sketch;

import static contrapposto.sketch.Directions.across;
import static contrapposto.sketch.Directions.between;
import static contrapposto.sketch.Directions.unit;

import contrapposto.figure.Circle;
import contrapposto.figure.Envelope;
import contrapposto.figure.Outline;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A limb segment with flesh on it: circles along the line from {@code from} to {@code to}, set off to the front and
 * outward as its profile says.
 *
 * @param front unit, at right angles to the bone
 * @param out   unit, at right angles to the bone, away from the midline
 * @param thick factor on every radius
 */
record Bone(Sitter sitter, Vector3D from, Vector3D to, Profile profile, Vector3D front, Vector3D out, double thick) {

    static Bone of(Sitter sitter, Vector3D from, Vector3D to, Profile profile, Vector3D front, Vector3D out,
                   double thick) {
        Vector3D axis = unit(to.subtract(from));
        return new Bone(sitter, from, to, profile, unit(across(front, axis)), unit(across(out, axis)), thick);
    }

    Vector3D axis() {
        return unit(to.subtract(from));
    }

    Vector3D on(double t) {
        double[] row = profile.at(t);
        return between(from, to, t).add(sitter.size(row[1]), front).add(sitter.size(row[2]), out);
    }

    /** In metres. */
    double radius(double t) {
        return sitter.size(profile.at(t)[0]) * thick;
    }

    /** @param grow shares of stature added to the radius, as cloth does */
    Circle circle(double t, double grow) {
        return new Circle(sitter.camera().see(on(t)), radius(t) + sitter.size(grow));
    }

    List<Circle> circles(double grow, double... stations) {
        List<Circle> chain = new ArrayList<>(stations.length);
        for (double t : stations) {
            chain.add(circle(t, grow));
        }
        return chain;
    }

    Outline flesh(double... stations) {
        return Envelope.around(circles(0, stations));
    }

    /** Cloth over the stations, ending in {@code hem}. */
    Outline cloth(Outline hem, double grow, double... stations) {
        return Envelope.sleeve(circles(grow, stations), hem);
    }

    /** The visible half of the cross-section at {@code t}. */
    Outline hem(double t, double grow) {
        return new Ring(on(t), axis(), radius(t) + sitter.size(grow)).visibleHalf(sitter.camera());
    }

    /** A short stretch a trace thinner than the limb, to lay over the edge lines inside it. */
    Part.Cord patch(double fromT, double toT, double grow, double tone) {
        Circle a = circle(fromT, grow);
        Circle b = circle(toT, grow);
        return new Part.Cord(Outline.polyline(a.centre(), b.centre()), 2 * .985 * Math.min(a.radius(), b.radius()), tone);
    }
}
