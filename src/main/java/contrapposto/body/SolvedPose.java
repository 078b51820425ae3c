package contrapposto.body;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A solved set-up: the two positions, what is computed from them and the things around the body.
 *
 * @param end   where the movement ends, which a drawing shows: the working position itself, but for a step up, whose hardest
 *              moment is its first
 * @param props boxes, benches, wedges, held weights, pulleys …, placed; what a drawing needs besides the body
 */
public record SolvedPose(Pose start, Pose working, Pose end, Mechanics mechanics, List<Prop> props) {
    public SolvedPose {
        props = List.copyOf(props);
    }

    /** A movement that ends in its working position. */
    public SolvedPose(Pose start, Pose working, Mechanics mechanics, List<Prop> props) {
        this(start, working, working, mechanics, props);
    }

    /**
     * Computed from the poses, none asserted. Angles in degrees, moments in N·m, forces in N.
     *
     * @param shinStart     working leg, + = knee ahead of ankle, from vertical; NaN where no working leg stands on its foot
     * @param shinWorking   the same at working depth
     * @param frontShare    front foot's share of the weight on the feet, working position; NaN where feet do not carry
     * @param leftShare     left foot's share; NaN where not both feet could carry; 1 or 0 on one foot
     * @param trunkLean     + = forward, working position; NaN for a body that lies or is on its hands
     * @param kneeFlexion   of the working knee at depth
     * @param hipMoment     working hip, extensor +
     * @param kneeMoment    working knee, extensor +
     * @param shoulderMoment working shoulder, size of the outside moment
     * @param elbowMoment   working elbow, size of the outside moment
     * @param turnMoment    of the outside load about pelvis→neck, + = turns the trunk left
     * @param sideMoment    of the outside load about the forward axis at the pelvis, + = bends the trunk right
     * @param rearKneeClear rear knee above the floor, m; NaN where there is none
     * @param lineOfPull    of a cable: downward slope, degrees; NaN without one
     */
    public record Mechanics(double shinStart, double shinWorking, double frontShare, double leftShare, double trunkLean,
                            double kneeFlexion, double hipMoment, double kneeMoment, double shoulderMoment,
                            double elbowMoment, double turnMoment, double sideMoment, double rearKneeClear,
                            double lineOfPull, Vector3D massCentreStart, Vector3D massCentreWorking,
                            List<Force> forces) {
        public Mechanics {
            forces = List.copyOf(forces);
        }

        /** The same in the mirror. */
        Mechanics mirrored() {
            return new Mechanics(shinStart, shinWorking, frontShare, 1 - leftShare, trunkLean, kneeFlexion, hipMoment,
                    kneeMoment, shoulderMoment, elbowMoment, -turnMoment, -sideMoment, rearKneeClear, lineOfPull,
                    Pose.mirrored(massCentreStart), Pose.mirrored(massCentreWorking),
                    forces.stream().map(Force::mirrored).toList());
        }
    }

    /** A force on the body in the working position; gravity is not listed. */
    public record Force(String what, Vector3D at, Vector3D newton) {
        Force mirrored() {
            String other = what.startsWith("left-") ? "right-" + what.substring(5)
                    : what.startsWith("right-") ? "left-" + what.substring(6) : what;
            return new Force(other, Pose.mirrored(at), Pose.mirrored(newton));
        }
    }

    /** The same set-up in the mirror: left and right change places. */
    public SolvedPose mirrored() {
        Pose there = working.mirrored();
        return new SolvedPose(start.mirrored(), there, end == working ? there : end.mirrored(), mechanics.mirrored(),
                props.stream().map(Prop::mirrored).toList());
    }
}
