package contrapposto.illustrate;

import contrapposto.body.Action;
import contrapposto.body.Joint;
import contrapposto.body.Pose;
import contrapposto.body.Prop;
import contrapposto.body.SolvedPose;
import contrapposto.quantity.Side;
import contrapposto.setup.SolvedSetUp;
import java.util.ArrayList;
import java.util.List;

/**
 * The wall of a family that needs one and leans no weight on it: it carries nothing, so no pose knows it, yet the reader
 * has to find it. It stands where the working position touches it: behind the seat that reaches back, else at the hand.
 */
final class WallNeeded {
    /** From the middle of the hips to the back of the seat, and from the wrist to a palm, in shares of stature (drawing study). */
    private static final double SEAT = .075;
    private static final double PALM = .018;
    private static final double THICK = .10;
    private static final double HALF_WIDTH = .5;
    private static final double HEIGHT = 1.8;

    private WallNeeded() { }

    /** The solved pose with its wall among the props. */
    static SolvedPose with(SolvedSetUp solved) {
        SolvedPose pose = solved.pose();
        boolean missing = solved.family().levers().needs().contains("wall")
                && pose.props().stream().noneMatch(Prop.Wall.class::isInstance);
        if (!missing) {
            return pose;
        }
        List<Prop> props = new ArrayList<>(pose.props());
        props.add(new Prop.Wall(place(solved, pose.working()), -HALF_WIDTH, HALF_WIDTH, HEIGHT));
        return new SolvedPose(pose.start(), pose.working(), pose.end(), pose.mechanics(), props);
    }

    /** Its near face, x. */
    private static double place(SolvedSetUp solved, Pose working) {
        double stature = solved.problem().person().stature();
        Side side = solved.problem().working();
        return solved.problem().action() instanceof Action.HipFold
                ? working.at(Joint.PELVIS).getX() - SEAT * stature - THICK
                : working.at(Joint.of(side, Joint.Part.WRIST)).getX() + PALM * stature;
    }
}
