package contrapposto.body;

import static contrapposto.body.Vectors.between;
import static contrapposto.body.Vectors.step;

import contrapposto.body.Joint.Part;
import contrapposto.quantity.Side;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * One foot on its support.
 *
 * @param anchor  the ball of the foot on the support; for {@link Contact#HEEL} the heel; for {@link Contact#LACES} the ankle
 * @param yaw     toes outward to the left, degrees
 * @param pitch   heel up, degrees; of a foot on its ball the angle may be solved instead
 * @param zone    where the centre of pressure may lie, shares of the foot from the heel
 */
record Foot(Side side, Contact contact, Vector3D anchor, double yaw, double pitch, Pressure zone) {
    enum Contact { SOLE, BALL, HEEL, LACES }

    /** From the heel end to the toe end of a zone, shares of the foot's length (the ankle is at 0.25, the ball at 0.72). */
    record Pressure(double from, double to) {
        /** Zones under a sole: house. A foot on its ball presses a little ahead of the joint of the big toe. */
        private static final Pressure UNDER_HEEL = new Pressure(0.10, 0.34);
        private static final Pressure UNDER_SOLE = new Pressure(0.15, 0.75);
        private static final Pressure UNDER_BALL = new Pressure(0.62, 0.82);
        private static final Pressure ON_BALL = new Pressure(0.76, 0.76);

        static Pressure of(PoseProblem.Zone zone) {
            return switch (zone) {
                case HEEL -> UNDER_HEEL;
                case WHOLE_SOLE -> UNDER_SOLE;
                case BALL -> UNDER_BALL;
            };
        }

        double middle() {
            return (from + to) / 2;
        }
    }

    /** Toes pointing back and a little down, of a foot that lies on its top. */
    private static final double LACES_DOWN = 12;

    /** Flat, or on a wedge that lifts its heel by {@code wedge}. @param heel on the floor or box, before the wedge */
    static Foot flat(Side side, Segments lengths, Vector3D heel, double wedge, double yaw, PoseProblem.Zone zone) {
        double pitch = Degrees.asin(wedge / lengths.heelToBall());
        double ahead = lengths.heelToBall() * Degrees.cos(pitch);
        Vector3D ball = heel.add(new Vector3D(ahead * Degrees.cos(yaw), ahead * Degrees.sin(yaw), 0));
        return new Foot(side, Contact.SOLE, ball, yaw, pitch, Pressure.of(zone));
    }

    /** On the ball, heel up by {@code pitch}. */
    static Foot onBall(Side side, Vector3D ball, double pitch) {
        return new Foot(side, Contact.BALL, ball, 0, pitch, Pressure.ON_BALL);
    }

    /** On its top, toes back: toes at {@code toe} along x, on a support of height {@code raise}. */
    static Foot onLaces(Side side, Person person, double toeX, double y, double raise) {
        Segments lengths = person.segments();
        double ankle = toeX + (lengths.foot() - lengths.heelToAnkle()) * Degrees.cos(LACES_DOWN)
                + lengths.ankleHeight() * Degrees.sin(LACES_DOWN);
        return new Foot(side, Contact.LACES,
                new Vector3D(ankle, y, raise + Segments.LACES_HEIGHT * person.stature()), 180, 0,
                Pressure.ON_BALL);
    }

    /** Moves the heel, ankle, ball and toe of {@code skeleton} to where this foot stands with its heel up by {@code pitch}. */
    void place(Skeleton skeleton, double pitch) {
        Segments lengths = skeleton.person().segments();
        double c = Degrees.cos(pitch);
        double s = Degrees.sin(pitch);
        double cy = Degrees.cos(yaw);
        double sy = Degrees.sin(yaw);
        switch (contact) {
            case SOLE, BALL -> {
                Vector3D along = new Vector3D(cy * c, sy * c, -s);
                Vector3D normal = new Vector3D(cy * s, sy * s, c);
                Vector3D heel = step(anchor, -lengths.heelToBall(), along);
                skeleton.set(side, Part.HEEL, heel);
                skeleton.set(side, Part.ANKLE,
                        step(step(heel, lengths.heelToAnkle(), along), lengths.ankleHeight(), normal));
                skeleton.set(side, Part.BALL, anchor);
                skeleton.set(side, Part.TOE,
                        step(anchor, lengths.foot() - lengths.heelToBall(), new Vector3D(cy, sy, 0)));
            }
            case HEEL -> {
                Vector3D along = new Vector3D(cy * c, sy * c, -s);
                Vector3D normal = new Vector3D(cy * s, sy * s, c);
                skeleton.foot(side, step(step(anchor, lengths.heelToAnkle(), along), lengths.ankleHeight(), normal),
                        along, normal.negate());
            }
            case LACES -> skeleton.foot(side, anchor,
                    new Vector3D(-Degrees.cos(LACES_DOWN), 0, -Degrees.sin(LACES_DOWN)), Vector3D.PLUS_K);
        }
    }

    /** The centre of pressure on what the foot stands on, in the middle of its zone. */
    Vector3D pressure(Skeleton skeleton) {
        return pressure(skeleton, zone.middle());
    }

    /** The centre of pressure on what the foot stands on; {@code share} of the foot from the heel where that is free. */
    Vector3D pressure(Skeleton skeleton, double share) {
        Segments lengths = skeleton.person().segments();
        double along = share * lengths.foot();
        double ball = lengths.heelToBall();
        return switch (contact) {
            case SOLE, BALL -> along <= ball
                    ? between(skeleton.at(side, Part.HEEL), skeleton.at(side, Part.BALL), along / ball)
                    : between(skeleton.at(side, Part.BALL), skeleton.at(side, Part.TOE),
                            (along - ball) / (lengths.foot() - ball));
            case HEEL -> anchor;
            case LACES -> {
                Vector3D middle = between(skeleton.at(side, Part.ANKLE), skeleton.at(side, Part.BALL), 0.4);
                yield new Vector3D(middle.getX(), middle.getY(),
                        anchor.getZ() - Segments.LACES_HEIGHT * skeleton.person().stature());
            }
        };
    }

}
