package contrapposto.body;

/** What moves between start and working position, and how far: the working depth is declared here. */
public sealed interface Action {
    /**
     * Knees and hips bend: squat, split squat, step down.
     *
     * @param kneeFlexion   working depth of the working (front) knee, degrees, before the person's limits
     * @param rearKneeClear in a split: the rear knee stops this far above the floor, m
     */
    record KneeBend(double kneeFlexion, double rearKneeClear) implements Action { }

    /** The trunk folds forward at the hips until the hands reach {@code handHeight} shares of knee height. */
    record HipFold(double handHeight) implements Action { }

    /** The heels rise by as much as the ankle allows times {@code share}. */
    record HeelRise(double share) implements Action { }

    /** The pelvis rises from the floor until trunk and thigh are in line less {@code shortOf} degrees. */
    record HipLift(double shortOf) implements Action { }

    /** Up onto the box. */
    record StepUp() implements Action { }

    /** The legs hold still; arms and ribs move. {@code startTurn}, {@code workingTurn}: ribs against pelvis, degrees, + = left. */
    record ArmsMove(double startTurn, double workingTurn, double lean) implements Action { }

    /**
     * Both feet stay down and the weight moves over one of them, from even feet until it carries {@code share}.
     *
     * @param away whether that foot is the other one: the working leg pushes the weight off itself
     */
    record Shift(double share, double lean, boolean away) implements Action { }

    /** A press-up from {@code BaseOfSupport.Plank}: elbows bend to {@code elbowFlexion} at the bottom; the top turns the ribs. */
    record PressUp(double elbowFlexion, double topTurn) implements Action { }

    /**
     * Knees press together on a cushion and nothing travels far; or, where {@code lift} is more than 0, the upper knee of a
     * body on its side lifts by that much while the feet stay together.
     *
     * @param lift m
     */
    record Squeeze(double lift) implements Action {
        /** Whether something is held between the knees. */
        boolean holdsCushion() {
            return lift == 0;
        }
    }

    /** Walking or marching with something held: drawn mid-stride. */
    record Walk(double stride) implements Action { }

    /** The same in the mirror: turns change their sign. */
    default Action mirrored() {
        return switch (this) {
            case ArmsMove(var start, var working, var lean) -> new ArmsMove(-start, -working, lean);
            case PressUp(var elbow, var turn) -> new PressUp(elbow, -turn);
            case KneeBend same -> same;
            case HipFold same -> same;
            case HeelRise same -> same;
            case HipLift same -> same;
            case StepUp same -> same;
            case Shift same -> same;
            case Squeeze same -> same;
            case Walk same -> same;
        };
    }
}
