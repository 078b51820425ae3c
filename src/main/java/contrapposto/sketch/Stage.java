package contrapposto.sketch;

import contrapposto.body.BaseOfSupport;
import contrapposto.body.Pose;
import contrapposto.body.PoseProblem;
import contrapposto.body.SolvedPose;
import contrapposto.quantity.Side;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A solved set-up before its camera. The camera is chosen once, from the position the movement ends in, so that every sketch of one
 * set-up looks from the same place. What faces left is kept in the mirror, so that all of it faces right.
 */
public final class Stage {
    private final PoseProblem problem;
    private final SolvedPose solved;
    private final boolean turned;
    private final Scene end;

    private Stage(PoseProblem problem, SolvedPose solved, boolean turned) {
        this.problem = problem;
        this.solved = solved;
        this.turned = turned;
        this.end = Viewpoint.choose(problem, solved.props(), camera -> scene(solved.end(), camera));
    }

    /** Which position is drawn, and whether the start stands behind it as a flat silhouette. {@code WORKING} is where the load is greatest. */
    public enum Shown { START, WORKING, END, END_OVER_START }

    /** @param faces the side of the page the person faces; also the side of the body that is near */
    public static Stage of(PoseProblem problem, SolvedPose solved, Side faces) {
        boolean turned = faces == Side.LEFT;
        return new Stage(turned ? problem.mirrored() : problem, turned ? solved.mirrored() : solved, turned);
    }

    /** @param wishes what is to be said beside the body, in the person's own frame */
    public Sketch sketch(Shown shown, List<Wish> wishes) {
        Scene scene = switch (shown) {
            case START -> scene(solved.start(), end.camera());
            case WORKING -> solved.working() == solved.end() ? end : scene(solved.working(), end.camera());
            case END -> end;
            case END_OVER_START -> end.before(solved.start());
        };
        return new Sketch(scene, turned ? wishes.stream().map(Wish::mirrored).toList() : wishes, turned);
    }

    private Scene scene(Pose pose, Camera camera) {
        double stature = problem.person().stature();
        Sitter sitter = Sitter.of(pose, camera, stature, Sitter.girthOf(stature, problem.person().mass()),
                new Dress(turned ? Side.LEFT : Side.RIGHT), emphasis());
        return Scene.of(sitter, Grips.of(problem, pose, solved.props()), solved.props());
    }

    /** Lying on the side, all limbs are near. */
    private Set<Sitter.Emphasis> emphasis() {
        return problem.base() instanceof BaseOfSupport.SideLying ? EnumSet.allOf(Sitter.Emphasis.class)
                : EnumSet.noneOf(Sitter.Emphasis.class);
    }
}
