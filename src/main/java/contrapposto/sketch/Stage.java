package contrapposto.sketch;

import contrapposto.body.Base;
import contrapposto.body.Pose;
import contrapposto.body.PoseProblem;
import contrapposto.body.SolvedPose;
import contrapposto.quantity.Side;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A solved set-up before its camera. The camera is chosen once, from the working position, so that every sketch of one
 * set-up looks from the same place.
 *
 * @param turned whether all of it is in the mirror, so that it faces right
 */
public record Stage(PoseProblem problem, SolvedPose solved, boolean turned, Camera camera) {
    /** Which position is drawn, and whether the start stands behind it as a flat silhouette. */
    public enum Shown { START, WORKING, WORKING_OVER_START }

    /** @param faces the side of the page the person faces; also the side of the body that is near */
    public static Stage of(PoseProblem problem, SolvedPose solved, Side faces) {
        boolean turned = faces == Side.LEFT;
        Stage blind = new Stage(turned ? problem.mirrored() : problem, turned ? solved.mirrored() : solved, turned,
                Camera.fromSide(0, 0));
        return blind.through(Viewpoint.choose(blind.problem, blind.solved.props(),
                camera -> blind.through(camera).scene(blind.solved.working(), Optional.empty())));
    }

    private Stage through(Camera other) {
        return new Stage(problem, solved, turned, other);
    }

    /** @param wishes what is to be said beside the body, in the person's own frame */
    public Sketch sketch(Shown shown, List<Wish> wishes) {
        Scene scene = switch (shown) {
            case START -> scene(solved.start(), Optional.empty());
            case WORKING -> scene(solved.working(), Optional.empty());
            case WORKING_OVER_START -> scene(solved.working(), Optional.of(solved.start()));
        };
        return new Sketch(scene, turned ? wishes.stream().map(Wish::mirrored).toList() : wishes, turned);
    }

    private Scene scene(Pose pose, Optional<Pose> behind) {
        double stature = problem.person().stature();
        Sitter sitter = Sitter.of(pose, camera, stature, Sitter.girthOf(stature, problem.person().mass()),
                new Dress(turned ? Side.LEFT : Side.RIGHT), emphasis());
        return Scene.of(sitter, Grips.of(problem, pose, solved.props()), solved.props(), behind);
    }

    /** Lying on the side, all limbs are near. */
    private Set<Sitter.Emphasis> emphasis() {
        return problem.base() instanceof Base.SideLying ? EnumSet.allOf(Sitter.Emphasis.class)
                : EnumSet.noneOf(Sitter.Emphasis.class);
    }
}
