package contrapposto.body;

/**
 * How far one side's joints may be asked to move, in degrees.
 *
 * @param ankleDorsiflexion weight-bearing, knee bent: the shin's greatest forward tilt over a flat sole
 * @param toeExtension      of the big toe, heel up
 */
public record JointLimits(double hipFlexion, double hipExtension, double kneeFlexion, double ankleDorsiflexion,
                          double anklePlantarflexion, double toeExtension, double shoulderFlexion, double elbowFlexion) {
    /** Common limits; see reference values D2 (suggest-hard), weight-bearing dorsiflexion from memory (Bennell 1998). */
    public static final JointLimits COMMON = new JointLimits(125, 20, 140, 40, 50, 70, 175, 145);
}
