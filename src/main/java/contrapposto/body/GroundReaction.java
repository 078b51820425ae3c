package contrapposto.body;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * The forces of two contacts that hold everything else in balance.
 *
 * @param first  at the first contact, N
 * @param second at the second
 * @param slip   what the two cannot hold: how far, m, the resultant passes beside the line through both contacts, + =
 *               to the left of the way from the second to the first
 */
record GroundReaction(Vector3D first, Vector3D second, double slip) {
    /**
     * Vertical forces stay vertical. A horizontal pull is shared like the weight along the line of the contacts; across
     * that line the two share it so that nothing spins.
     *
     * @param force  the sum of all other forces
     * @param moment of all other forces about {@code p2}
     */
    static GroundReaction of(Vector3D p1, Vector3D p2, Vector3D force, Vector3D moment) {
        Vector3D line = p1.subtract(p2);
        double dx = line.getX();
        double dy = line.getY();
        double flat = StrictMath.sqrt(dx * dx + dy * dy);
        double up = -force.getZ();
        if (force.getX() == 0 && force.getY() == 0) {
            double x = moment.getY() / up;
            double y = -moment.getX() / up;
            double share = (x * dx + y * dy) / (flat * flat);
            return new GroundReaction(new Vector3D(0, 0, share * up), new Vector3D(0, 0, (1 - share) * up),
                    (dx * y - dy * x) / flat);
        }
        Vector3D needed = moment.negate();
        Vector3D bare = Vectors.cross(needed, line).scalarMultiply(1 / line.getNormSq());
        double pull = -(force.getX() * dx + force.getY() * dy) / flat / up;
        double along = (bare.getX() * dx + bare.getY() * dy) / flat;
        double stretch = (bare.getZ() * pull - along) / (flat - line.getZ() * pull);
        Vector3D first = Vectors.step(bare, stretch, line);
        return new GroundReaction(first, force.negate().subtract(first),
                Vectors.dot(needed, line) / line.getNorm() / up);
    }

    /** The first contact's share of the vertical force. */
    double share() {
        return first.getZ() / (first.getZ() + second.getZ());
    }
}
