package contrapposto.illustrate;

import contrapposto.body.Action;
import contrapposto.body.BaseOfSupport;
import contrapposto.body.Joint;
import contrapposto.body.Pose;
import contrapposto.figure.Bounds;
import contrapposto.figure.Canvas;
import contrapposto.figure.Circle;
import contrapposto.figure.Drawing;
import contrapposto.figure.Figure;
import contrapposto.figure.Mark.Anchor;
import contrapposto.figure.Mark.Weight;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.figure.Tone;
import contrapposto.quantity.Side;
import contrapposto.setup.SolvedSetUp;
import contrapposto.sketch.Pill;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The working position looked at along the spine, from the head: belt, ribs and head one over the other as on the first
 * page, with the turn from the start. It stands where a foot map would, for those who do not stand: a side view hides
 * a turn about the line that it shows best.
 */
public final class TurnView {
    /** A smaller turn than this cannot be seen, degrees. */
    private static final double LEAST = 8;
    private static final Tone BELT = new Tone.Grey(200 / 255.0);
    /** Half axes in shares of stature: the belt a little wide, as on the first page, so that it shows. */
    private static final double[] PELVIS = {.125, .078};
    private static final double[] RIBS = {.086, .045};
    private static final double HEAD = .030;
    private static final double ARM = .021;
    private static final double ARROW = .20;
    private static final double LEAST_ARC = 45;

    /** The words under it. @param above for someone upright, @param head for someone who looks at the floor, the ceiling or aside */
    public record Words(String above, String head) { }

    private TurnView() { }

    /** Empty where the trunk does not turn enough, or where the feet stand and have their map. */
    public static Optional<Drawing> of(SolvedSetUp solved, Words words) {
        boolean feetStand = FootMap.stands(solved.problem().base()) && !(solved.problem().base() instanceof BaseOfSupport.Seated);
        return Math.abs(turn(solved)) >= LEAST && !feetStand
                ? Optional.of((width, height, label) -> drawn(solved, words, width, height, label)) : Optional.empty();
    }

    /** Of the ribs from start to working position, degrees, + = left. */
    private static double turn(SolvedSetUp solved) {
        return switch (solved.problem().action()) {
            case Action.ArmsMove(var start, var working, var lean) -> working - start;
            case Action.PressUp(var elbow, var top) -> top;
            case Action.KneeBend a -> 0;
            case Action.HipFold a -> 0;
            case Action.HeelRise a -> 0;
            case Action.HipLift a -> 0;
            case Action.StepUp a -> 0;
            case Action.Shift a -> 0;
            case Action.Squeeze a -> 0;
            case Action.Walk a -> 0;
        };
    }

    private static Figure drawn(SolvedSetUp solved, Words words, double width, double height, double label) {
        double k = label / 11;
        double strip = 5.4 * k;
        Pose pose = solved.pose().working();
        SpineView view = SpineView.of(pose, solved.problem().person().stature());
        Bounds need = extent(view, pose);
        double pill = Pill.heightFor(label);
        double scale = Math.min((width - .8 * pill) / need.width(), (height - strip - .8 * pill) / need.height());
        Point origin = new Point(width / 2 - scale * (need.minX() + need.maxX()) / 2,
                (height - strip) / 2 - scale * (need.minY() + need.maxY()) / 2);
        Canvas canvas = new Canvas();
        Plan plan = new Plan(canvas, view, origin, scale, turn(solved));
        plan.draw(pose);
        String text = view.upright() ? words.above() : words.head();
        canvas.words(new Point(width / 2, height - .22 * label * SetUpSketch.MM_PER_PT - .2), text, label, Weight.REGULAR, Anchor.MIDDLE);
        List<Point> taken = new ArrayList<>(plan.arrow().flattened());
        for (Side side : Side.values()) {
            Point place = List.of(Joint.Part.ELBOW, Joint.Part.HAND, Joint.Part.SHOULDER).stream()
                    .map(part -> beside(plan, view.see(pose.at(Joint.of(side, part))), pill, width, height - strip))
                    .max(Comparator.comparingDouble(p -> Math.min(1.1 * pill, nearest(taken, p)))).orElseThrow();
            new Pill(side, place, pill).draw(canvas, label, .45);
            taken.add(place);
        }
        return canvas.figure(width, height);
    }

    /** Just outside a joint, inside the box. */
    private static Point beside(Plan plan, Point joint, double pill, double width, double height) {
        Point out = plan.at(joint).along(joint.minus(plan.view().see(plan.view().pose().at(Joint.NECK))).unit(), .4 * pill);
        return new Point(Math.clamp(out.x(), .6 * pill, width - .6 * pill), Math.clamp(out.y(), .6 * pill, height - .6 * pill));
    }

    private static double nearest(List<Point> taken, Point p) {
        return taken.stream().mapToDouble(p::distance).min().orElse(Double.POSITIVE_INFINITY);
    }

    private static Bounds extent(SpineView view, Pose pose) {
        List<Point> all = new ArrayList<>();
        double around = view.size(ARROW + .03);
        all.add(new Point(-around, -around));
        all.add(new Point(around, view.size(PELVIS[1] + .03)));
        for (Side side : Side.values()) {
            for (Joint.Part part : List.of(Joint.Part.SHOULDER, Joint.Part.ELBOW, Joint.Part.HAND)) {
                Point p = view.see(pose.at(Joint.of(side, part)));
                double thick = view.size(ARM);
                all.add(p.plus(-thick, -thick));
                all.add(p.plus(thick, thick));
            }
        }
        return Bounds.of(all);
    }

    /** One drawing in hand. @param origin where the middle of the hips falls, mm */
    private record Plan(Canvas canvas, SpineView view, Point origin, double scale, double turn) {
        Point at(Point p) {
            return origin.along(p, scale);
        }

        void draw(Pose pose) {
            double belt = view.angle(view.pelvisFront());
            shape(belt, PELVIS, BELT);
            mark(belt, PELVIS[1], Tone.BLACK);
            for (Side side : Side.values()) {
                arm(pose, side);
            }
            double ribs = view.angle(view.ribsFront());
            shape(ribs, RIBS, Tone.WHITE);
            mark(ribs, RIBS[1], Tone.WHITE);
            Outline head = new Circle(at(new Point(0, 0)), scale * view.size(HEAD)).outline();
            canvas.shape(new Tone.Grey(.3), .4, head);
            drawArrow();
        }

        private void shape(double front, double[] halves, Tone tone) {
            Point ahead = new Point(0, 0).polar(scale * view.size(halves[1]), front);
            Point across = ahead.unit().quarterTurn().times(scale * view.size(halves[0]));
            Outline ring = new Circle(new Point(0, 0), 1).outline()
                    .mapped(p -> at(new Point(0, 0)).along(ahead, p.x()).along(across, p.y()));
            canvas.shape(tone, .5, ring);
        }

        /** The buckle or the breastbone: a small pointer on the front. */
        private void mark(double front, double depth, Tone tone) {
            Point d = new Point(0, 0).polar(1, front);
            Point n = d.quarterTurn();
            Point root = at(new Point(0, 0)).along(d, scale * view.size(depth));
            Outline pointer = Outline.polygon(root.along(n, 1.2), root.along(d, 2.4), root.along(n, -1.2));
            canvas.stroke(Tone.BLACK, .6, List.of(pointer)).fill(tone, pointer);
        }

        private void arm(Pose pose, Side side) {
            Outline bones = Outline.polyline(at(view.see(pose.at(Joint.of(side, Joint.Part.SHOULDER)))),
                    at(view.see(pose.at(Joint.of(side, Joint.Part.ELBOW)))), at(view.see(pose.at(Joint.of(side, Joint.Part.HAND)))));
            double thick = 2 * scale * view.size(ARM);
            canvas.stroke(Tone.BLACK, thick + .7, List.of(bones)).stroke(Tone.WHITE, thick, List.of(bones));
        }

        private Circle ring() {
            return new Circle(at(new Point(0, 0)), scale * view.size(ARROW));
        }

        /** From where the breastbone pointed at the start to where it points now; a short turn is drawn longer. */
        Outline arrow() {
            double now = view.angle(view.ribsFront());
            return ring().arc(now - swing(), now);
        }

        /** As the page sees it, from page-right toward page-down. */
        private double swing() {
            return -Math.signum(turn) * StrictMath.toRadians(Math.max(LEAST_ARC, Math.abs(turn)));
        }

        private void drawArrow() {
            Circle ring = ring();
            double sense = -Math.signum(turn);
            double now = view.angle(view.ribsFront());
            double back = 2.6 / ring.radius() * sense;
            Outline shaft = ring.arc(now - swing(), now - back);
            Point tip = ring.at(now);
            Point d = new Point(0, 0).polar(sense, now + StrictMath.PI / 2 - back / 2);
            Point n = d.quarterTurn();
            Outline head = Outline.polygon(tip, tip.along(d, -3.2).along(n, 1.35), tip.along(d, -2.6), tip.along(d, -3.2).along(n, -1.35));
            canvas.stroke(Tone.WHITE, 1.9, List.of(shaft)).stroke(Tone.WHITE, .9, List.of(head))
                    .stroke(new Tone.Spot(), 1, List.of(shaft)).fill(new Tone.Spot(), head);
        }
    }
}
