package contrapposto.illustrate;

import contrapposto.body.BaseOfSupport;
import contrapposto.body.PoseProblem.Zone;
import contrapposto.figure.Canvas;
import contrapposto.figure.Circle;
import contrapposto.figure.Drawing;
import contrapposto.figure.Figure;
import contrapposto.figure.Hatch;
import contrapposto.figure.Mark.Anchor;
import contrapposto.figure.Mark.Weight;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.figure.TextWidth;
import contrapposto.figure.Tone;
import contrapposto.illustrate.Sole.Pad;
import contrapposto.quantity.Length;
import contrapposto.quantity.Side;
import contrapposto.setup.SolvedSetUp;
import contrapposto.sketch.Pill;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Both soles from above, page up = ahead: where to press, how the weight is shared, what lies under which foot and what
 * the tape measures between front heel and rear toes. Lengths along the gap are not to scale.
 */
public final class FootMap {
    /** Width the map is designed for, mm; it grows with the height, not with the width. */
    public static final double WIDTH = 25.6;
    private static final double LEFT_X = 6.4;
    private static final double RIGHT_X = 18.6;
    private static final double LONGEST = 15.2;
    private static final double SMALL_LONGEST = 10.5;
    private static final double PILL = 5;
    private static final double SHARE_SIZE = 12;

    private FootMap() { }

    /**
     * The map of a card.
     *
     * @param lengths how a length is printed, with its unit
     * @return empty where no foot stands
     */
    public static Optional<Drawing> of(SolvedSetUp setUp, Function<Length, String> lengths) {
        return FootPlan.of(setUp).map(plan -> (width, height, label) -> drawn(plan, lengths, width, height, label));
    }

    /** The map of the pocket page: soles and pads only. */
    public static Optional<Drawing> small(SolvedSetUp setUp) {
        return FootPlan.of(setUp).map(plan -> (width, height, label) -> small(plan, width, height));
    }

    private static Figure drawn(FootPlan plan, Function<Length, String> lengths, double width, double height,
                                double label) {
        double k = label / 11;
        double length = Math.min(LONGEST * k, (height - 11 * k) / 2);
        double inset = (width - WIDTH * k) / 2;
        Canvas canvas = new Canvas();
        double shareSize = Math.max(label, SHARE_SIZE * label / 11);
        switch (plan.arrangement()) {
            case FootPlan.Level level -> {
                double heel = height - (onBox(plan) ? 17.4 : 15) * k;
                for (Side side : Side.values()) {
                    foot(canvas, plan, side, new Point(x(inset, side, k), heel), length);
                    tag(canvas, plan, side, new Point(x(inset, side, k), heel + (onBox(plan) ? 5.6 : 3.2) * k), shareSize, label);
                }
            }
            case FootPlan.Overlapping(var ahead) -> {
                double heel = height - 15 * k;
                foot(canvas, plan, ahead, new Point(x(inset, ahead, k), heel - .42 * length), length);
                foot(canvas, plan, ahead.other(), new Point(x(inset, ahead.other(), k), heel), length);
                for (Side side : Side.values()) {
                    tag(canvas, plan, side, new Point(x(inset, side, k), heel + 3.2 * k), shareSize, label);
                }
            }
            case FootPlan.Kneeling(var down) -> {
                double frontHeel = length + .6;
                Point knee = new Point(x(inset, down, k), frontHeel + 11 * k);
                foot(canvas, plan, down.other(), new Point(x(inset, down.other(), k), frontHeel), length);
                knee(canvas, knee, length);
                tag(canvas, plan, down.other(), new Point(x(inset, down, k), frontHeel - .5 * length), shareSize, label);
                tag(canvas, plan, down, new Point(x(inset, down.other(), k), knee.y()), shareSize, label);
            }
            case FootPlan.Split(var front, var gap) -> {
                double frontHeel = length + (plan.foot(front).onBox() ? 1.4 : .6);
                FootPlan.Foot behind = plan.foot(front.other());
                double rearHeel = height - (behind.onBox() ? 2.3 : behind.onWedge() ? 1.6 : .5);
                foot(canvas, plan, front, new Point(x(inset, front, k), frontHeel), length);
                foot(canvas, plan, front.other(), new Point(x(inset, front.other(), k), rearHeel), length);
                double tagged = Math.max(frontHeel - .5 * length - 4.6 * k, Math.max(PILL, Pill.heightFor(label)) / 2 + .2);
                tag(canvas, plan, front, new Point(x(inset, front.other(), k), tagged), shareSize, label);
                tag(canvas, plan, front.other(), new Point(x(inset, front, k), rearHeel - .5 * length - 4.6 * k), shareSize, label);
                gap.ifPresent(tape -> gap(canvas, lengths.apply(tape), inset, frontHeel, rearHeel - length, front,
                        plan.foot(front).onBox(), label));
            }
        }
        return canvas.figure(width, height);
    }

    private static Figure small(FootPlan plan, double width, double height) {
        double length = Math.min(SMALL_LONGEST, plan.arrangement() instanceof FootPlan.Split ? (height - 2.5) / 2
                : plan.arrangement() instanceof FootPlan.Kneeling ? (height - 1) / 2.5 : height / 1.45);
        Canvas canvas = new Canvas();
        double left = width / 2 - 3.8;
        double right = width / 2 + 3.8;
        switch (plan.arrangement()) {
            case FootPlan.Level level -> {
                double heel = height / 2 + length / 2;
                foot(canvas, plan, Side.LEFT, new Point(left, heel), length);
                foot(canvas, plan, Side.RIGHT, new Point(right, heel), length);
            }
            case FootPlan.Overlapping(var ahead) -> {
                double heel = height / 2 + .7 * length;
                foot(canvas, plan, ahead, new Point(ahead == Side.LEFT ? left : right, heel - .42 * length), length);
                foot(canvas, plan, ahead.other(), new Point(ahead == Side.LEFT ? right : left, heel), length);
            }
            case FootPlan.Kneeling(var down) -> {
                foot(canvas, plan, down.other(), new Point(down == Side.LEFT ? right : left, length + .9), length);
                knee(canvas, new Point(down == Side.LEFT ? left : right, length + .7 * length), length);
            }
            case FootPlan.Split(var front, var gap) -> {
                foot(canvas, plan, front, new Point(front == Side.LEFT ? left : right, length + .9), length);
                foot(canvas, plan, front.other(), new Point(front == Side.LEFT ? right : left, height - 1.6), length);
            }
        }
        return canvas.figure(width, height);
    }

    /** @param k how much larger than the plain print it is */
    private static double x(double inset, Side side, double k) {
        return inset + k * (side == Side.LEFT ? LEFT_X : RIGHT_X);
    }

    private static void foot(Canvas canvas, FootPlan plan, Side side, Point heel, double length) {
        FootPlan.Foot foot = plan.foot(side);
        double k = length / LONGEST;
        if (foot.onBox()) {
            Outline box = Outline.rectangle(heel.x() - 4.8 * k, heel.y() - length - .8 * k, 9.6 * k, length + 2.2 * k);
            canvas.shape(Tone.WHITE, Lines.BOX, box);
            double strip = foot.boxEdgeAhead() ? heel.y() - length - 1.9 * k : heel.y() + 1.4 * k;
            canvas.fill(Tone.BLACK, Outline.rectangle(heel.x() - 4.8 * k, strip, 9.6 * k, 1.1 * k));
        }
        if (foot.onWedge()) {
            Outline wedge = Outline.rectangle(heel.x() - 3.9 * k, heel.y() - 4.2 * k, 7.8 * k, 5.4 * k);
            canvas.shape(Tone.WHITE, Lines.BOX, wedge);
            Lines.dots(canvas, heel.x() - 3.9 * k, heel.y() - 4.2 * k, 7.8 * k, 5.4 * k);
        }
        Sole sole = new Sole(side, heel, length, 0);
        canvas.fill(Tone.WHITE, sole.edge());
        foot.most().forEach(pad -> canvas.shape(Tone.BLACK, Lines.PAD, sole.pad(pad)));
        foot.some().forEach(pad -> {
            Outline outline = sole.pad(pad);
            canvas.stroke(Tone.BLACK, Lines.PAD_HATCH, Hatch.inside(outline, Lines.PAD_SPACING));
            canvas.line(Lines.PAD, outline);
        });
        if (foot.touch() == FootPlan.Touch.FLAT) {
            canvas.line(Lines.SOLE, sole.edge());
        } else {
            canvas.dashed(Lines.SOLE, Lines.DASH_ON, Lines.DASH_OFF, sole.edge());
        }
        canvas.fill(Tone.WHITE, sole.toes());
        if (foot.touch() == FootPlan.Touch.LIFTED) {
            sole.toes().forEach(toe -> canvas.dashed(Lines.SOLE, .6, .5, toe));
        } else {
            canvas.stroke(Tone.BLACK, Lines.SOLE, sole.toes());
        }
    }

    /** A knee on the floor, the shin and the laces of the shoe behind it. */
    private static void knee(Canvas canvas, Point knee, double length) {
        Outline shin = Circle.hull(List.of(new Circle(knee, .17 * length), new Circle(knee.plus(0, .72 * length), .11 * length)));
        canvas.shape(Tone.WHITE, Lines.SOLE, shin);
        Outline pad = new Circle(knee, .15 * length).outline();
        canvas.stroke(Tone.BLACK, Lines.PAD_HATCH, Hatch.inside(pad, Lines.PAD_SPACING)).line(Lines.PAD, pad);
    }

    private static boolean onBox(FootPlan plan) {
        return plan.left().onBox() || plan.right().onBox();
    }

    private static void tag(Canvas canvas, FootPlan plan, Side side, Point centre, double shareSize, double label) {
        double height = Math.max(PILL, Pill.heightFor(label));
        new Pill(side, centre, height).draw(canvas, Pill.letterSize(height, label), 0);
        plan.foot(side).share().ifPresent(share -> canvas.words(
                centre.plus(0, height / 2 + 1.5 + TextWidth.capHeight(shareSize)), rounded(share) + "%", shareSize,
                Weight.BOLD, Anchor.MIDDLE));
    }

    /** To the nearest 5 %: solved to the decimal, but nobody can stand to one. */
    static long rounded(double share) {
        return 5 * Math.round(share * 20);
    }

    private static void gap(Canvas canvas, String text, double inset, double from, double to, Side front, boolean onBox,
                            double label) {
        double wide = TextWidth.of(text, label, Weight.BOLD);
        double k = label / 11;
        double centre = inset + k * (LEFT_X + RIGHT_X) / 2;
        boolean wordsLeft = front == Side.LEFT;
        double middle = wordsLeft ? Math.max(centre, wide + 1.5) : Math.min(centre, 2 * inset + WIDTH * k - wide - 1.5);
        int side = front == Side.LEFT ? 1 : -1;
        double start = from + (onBox ? 1.1 : 0);
        canvas.line(Lines.BOX, new Point(x(inset, front, k) + side * 1.5, from), new Point(middle + side, from));
        canvas.line(Lines.BOX, new Point(x(inset, front.other(), k) - side * 4, to), new Point(middle - side, to));
        Lines.measure(canvas, new Point(middle, start), new Point(middle, to));
        canvas.words(new Point(middle + (wordsLeft ? -1.2 : 1.2), (start + to) / 2 + TextWidth.capHeight(label) / 2), text,
                label, Weight.BOLD, wordsLeft ? Anchor.END : Anchor.START);
    }

    /** What a zone asks of a sole: the pad that takes most, and those that take some. */
    static List<Pad> leading(Zone zone) {
        return switch (zone) {
            case HEEL -> List.of(Pad.HEEL);
            case BALL -> List.of(Pad.BIG_TOE_BALL);
            case WHOLE_SOLE -> List.of();
        };
    }

    static List<Pad> following(Zone zone) {
        return switch (zone) {
            case HEEL -> List.of(Pad.OUTER_EDGE);
            case BALL -> List.of(Pad.ARCH);
            case WHOLE_SOLE -> List.of(Pad.HEEL, Pad.BIG_TOE_BALL, Pad.LITTLE_TOE_BALL);
        };
    }

    /** Whether a base can have a map at all. */
    static boolean stands(BaseOfSupport base) {
        return FootPlan.arranged(base).isPresent();
    }
}
