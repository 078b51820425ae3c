package contrapposto.sketch;

import contrapposto.body.Base;
import contrapposto.body.Pose;
import contrapposto.body.PoseProblem;
import contrapposto.body.Prop;
import contrapposto.body.SolvedPose;
import contrapposto.figure.Bounds;
import contrapposto.figure.Canvas;
import contrapposto.figure.Drawing;
import contrapposto.figure.Figure;
import contrapposto.figure.Mark;
import contrapposto.figure.Point;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A drawn set-up that is still free in size. The camera is chosen once, from the working position, so that every
 * sketch of one set-up looks from the same place.
 */
public final class Sketch implements Drawing {
    /** Which position is drawn, and whether the start stands behind it as a flat silhouette. */
    public enum Shown { START, WORKING, WORKING_OVER_START }

    private final Scene scene;
    private final List<Wish> wishes;
    private final boolean turned;

    private Sketch(Scene scene, List<Wish> wishes, boolean turned) {
        this.scene = scene;
        this.wishes = List.copyOf(wishes);
        this.turned = turned;
    }

    /**
     * @param problem what was solved
     * @param solved  its poses and props
     * @param faces   the side of the page the person faces; also the side of the body that is near
     * @param wishes  what is to be said beside the body, in the person's own frame
     */
    public static Sketch of(PoseProblem problem, SolvedPose solved, Shown shown, Side faces, List<Wish> wishes) {
        boolean turned = faces == Side.LEFT;
        PoseProblem seen = turned ? problem.mirrored() : problem;
        Pose working = turned ? solved.working().mirrored() : solved.working();
        Pose start = turned ? solved.start().mirrored() : solved.start();
        List<Prop> props = turned ? solved.mirrored().props() : solved.props();
        Staging staging = new Staging(seen, props, new Dress(turned ? Side.LEFT : Side.RIGHT));
        Camera camera = Viewpoint.choose(seen, props, c -> staging.scene(working, Optional.empty(), c));
        Scene scene = switch (shown) {
            case START -> staging.scene(start, Optional.empty(), camera);
            case WORKING -> staging.scene(working, Optional.empty(), camera);
            case WORKING_OVER_START -> staging.scene(working, Optional.of(start), camera);
        };
        return new Sketch(scene, turned ? wishes.stream().map(Wish::mirrored).toList() : wishes, turned);
    }

    /** How poses of one set-up become scenes. */
    private record Staging(PoseProblem problem, List<Prop> props, Dress dress) {
        Scene scene(Pose pose, Optional<Pose> behind, Camera camera) {
            Sitter sitter = Sitter.of(pose, camera, problem.person().stature(),
                    Sitter.girthOf(problem.person().stature(), problem.person().mass()), dress, emphasis());
            Map<Side, Grip> grips = Grips.of(problem, pose, props);
            return Scene.of(sitter, grips, props, behind.map(p -> new Scene.Ghost(p, Grips.of(problem, p, props))));
        }

        /** The side that works is near; where it cannot be, it is drawn as if it were. */
        private Set<Sitter.Emphasis> emphasis() {
            boolean lying = problem.base() instanceof Base.SideLying;
            return lying ? EnumSet.allOf(Sitter.Emphasis.class) : EnumSet.noneOf(Sitter.Emphasis.class);
        }
    }

    /** How much of the start position's silhouette stays uncovered, 0 to 1; 0 without one. */
    public double ghostShare() {
        return scene.ghostShare();
    }

    /** The largest scale, mm per metre, at which everything fits into a box. */
    public double scale(double width, double height, double label) {
        return new Layout(scene, wishes).fit(width, height, label);
    }

    @Override
    public Figure drawn(double width, double height, double label) {
        return drawn(width, height, label, scale(width, height, label));
    }

    /** Drawn at a scale that several sketches share. */
    public Figure drawn(double width, double height, double label, double scale) {
        Sheet sheet = new Layout(scene, wishes).laid(width, height, label, scale);
        Figure figure = sheet.canvas().figure(width, height);
        List<Mark> marks = new ArrayList<>((turned ? figure.mirrored() : figure).marks());
        Canvas pills = new Canvas();
        for (Pill pill : sheet.pills()) {
            Point at = turned ? new Point(width - pill.centre().x(), pill.centre().y()) : pill.centre();
            new Pill(pill.side(), at, pill.height()).draw(pills, label, .45);
        }
        marks.addAll(pills.marks());
        return new Figure(width, height, marks);
    }

    /** What it needs in metres at scale 1, without words. */
    public Bounds extent() {
        return scene.bounds();
    }
}
