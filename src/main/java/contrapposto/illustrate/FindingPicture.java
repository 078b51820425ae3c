package contrapposto.illustrate;

import contrapposto.check.CheckedSpec.Assessment;
import contrapposto.check.CheckedSpec.Degree;
import contrapposto.check.CheckedSpec.Turned;
import contrapposto.figure.Canvas;
import contrapposto.figure.Circle;
import contrapposto.figure.Drawing;
import contrapposto.figure.Figure;
import contrapposto.figure.Hatch;
import contrapposto.figure.Mark.Anchor;
import contrapposto.figure.Mark.Weight;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.figure.Tone;
import contrapposto.quantity.Side;
import contrapposto.sketch.Pill;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The finding seen from above, facing up the page: where the weight lives, where the belt buckle and the breastbone
 * point now, and what is to be learned. The turn is drawn larger than life.
 */
public final class FindingPicture {
    public static final double WIDTH = 54;
    public static final double HEIGHT = 66;
    private static final Point CENTRE = new Point(27, 43.5);
    private static final Tone BELT = new Tone.Grey(200 / 255.0);
    private static final double FOOT = 30;
    private static final double TURN_OUT = 8;
    private static final double RIBS_SHARE = .07;
    private static final double LEARN_BELT = 15;
    private static final double LEARN_RIBS = 9;

    /** The few words on the picture. */
    public record Words(String straightAhead, String pelvis, String ribs) { }

    /**
     * One state of the body. Turns in degrees, + = right, as on the page.
     *
     * @param loaded feet with the weight
     */
    private record State(double belt, double ribs, List<Side> loaded) { }

    private FindingPicture() { }

    /** How it is now. */
    public static Drawing now(Assessment found, Words words) {
        int right = toRight(found.turned());
        double belt = right * drawnTurn(found.degree());
        Optional<Side> habit = found.weightHabit().or(() -> side(found.turned()));
        State state = new State(belt, RIBS_SHARE * belt, habit.map(List::of).orElse(List.of(Side.LEFT, Side.RIGHT)));
        return (width, height, label) -> fitted(width, height, canvas -> {
            soles(canvas, state);
            ahead(canvas, Optional.of(words.straightAhead()), size(width, height, label));
            body(canvas, state);
            leaders(canvas, state, words, size(width, height, label));
            pills(canvas, size(width, height, label));
        });
    }

    /** What is to be learned, or, with no turn found, kept. */
    public static Drawing toLearn(Assessment found) {
        int right = toRight(found.turned());
        State state = new State(-right * LEARN_BELT, -right * LEARN_RIBS,
                side(found.turned()).map(turned -> List.of(turned.other())).orElse(List.of(Side.LEFT, Side.RIGHT)));
        return (width, height, label) -> fitted(width, height, canvas -> {
            soles(canvas, state);
            ahead(canvas, Optional.empty(), size(width, height, label));
            body(canvas, state);
            turnArrow(canvas, right);
            shiftArrow(canvas, right);
            pills(canvas, size(width, height, label));
        });
    }

    private static int toRight(Turned turned) {
        return switch (turned) {
            case RIGHT -> 1;
            case LEFT -> -1;
            case SQUARE -> 0;
        };
    }

    private static Optional<Side> side(Turned turned) {
        return switch (turned) {
            case RIGHT -> Optional.of(Side.RIGHT);
            case LEFT -> Optional.of(Side.LEFT);
            case SQUARE -> Optional.empty();
        };
    }

    static double drawnTurn(Degree degree) {
        return switch (degree) {
            case MILD -> 9;
            case CLEAR -> 15;
            case MARKED -> 21;
        };
    }


    private static double scale(double width, double height) {
        return Math.min(width / WIDTH, height / HEIGHT);
    }

    /** A label size that is right after the picture is scaled to its box. */
    private static double size(double width, double height, double label) {
        return label / scale(width, height);
    }

    private static Figure fitted(double width, double height, Consumer<Canvas> scene) {
        Canvas canvas = new Canvas();
        scene.accept(canvas);
        double scale = scale(width, height);
        return new Figure(WIDTH, HEIGHT, canvas.marks()).scaled(scale, (width - scale * WIDTH) / 2, (height - scale * HEIGHT) / 2,
                width, height);
    }

    private static void soles(Canvas canvas, State state) {
        for (Side side : Side.values()) {
            Sole sole = new Sole(side, CENTRE.plus(-side.sign() * 10.6, 5.5), FOOT, TURN_OUT);
            canvas.fill(Tone.WHITE, sole.edge()).fill(Tone.WHITE, sole.toes());
            if (state.loaded().contains(side)) {
                List<Outline> chords = new java.util.ArrayList<>(Hatch.inside(sole.edge(), 1.3));
                sole.toes().forEach(toe -> chords.addAll(Hatch.inside(toe, 1.3)));
                canvas.stroke(Tone.BLACK, .5, chords);
            }
            canvas.line(.4, sole.edge()).stroke(Tone.BLACK, .4, sole.toes());
        }
    }

    private static void ahead(Canvas canvas, Optional<String> words, double size) {
        canvas.dashed(Lines.THIN, Lines.DASH_ON, Lines.DASH_OFF,
                Outline.polyline(CENTRE.plus(0, -6), new Point(CENTRE.x(), 5)));
        words.ifPresent(text -> canvas.words(new Point(CENTRE.x(), 3.6), text, size, Weight.REGULAR, Anchor.MIDDLE));
    }

    private static void body(Canvas canvas, State state) {
        Frame belt = new Frame(state.belt());
        canvas.shape(BELT, .5, belt.ellipse(18.8, 10.6)).shape(Tone.WHITE, .3, belt.ellipse(16.5, 8.3));
        Outline buckle = Outline.polygon(belt.at(-2.5, -11.2), belt.at(2.5, -11.2), belt.at(2.5, -7.7), belt.at(-2.5, -7.7));
        Outline pointer = Outline.polygon(belt.at(-1.7, -11.9), belt.at(1.7, -11.9), belt.at(0, -15.8));
        canvas.stroke(Tone.WHITE, .8, List.of(buckle, pointer)).fill(Tone.BLACK, buckle, pointer);
        Frame ribs = new Frame(state.ribs());
        Outline bone = Outline.polygon(ribs.at(-1.5, -5.5), ribs.at(1.5, -5.5), ribs.at(0, -8.1));
        canvas.line(.5, bone).shape(Tone.WHITE, .5, ribs.ellipse(12.8, 5.8)).fill(Tone.WHITE, bone);
        Frame head = new Frame(.3 * state.ribs());
        Outline nose = Outline.polygon(head.at(-.9, -3.2), head.at(.9, -3.2), head.at(0, -5.05));
        canvas.line(.5, nose).shape(Tone.WHITE, .5, new Circle(CENTRE, 3.6).outline()).fill(Tone.WHITE, nose);
    }

    /** A frame about the centre, turned clockwise by {@code degrees} as the page is seen: to the person's right. */
    private record Frame(double degrees) {
        Point at(double x, double y) {
            double a = StrictMath.toRadians(degrees);
            return CENTRE.plus(x * StrictMath.cos(a) - y * StrictMath.sin(a), x * StrictMath.sin(a) + y * StrictMath.cos(a));
        }

        Outline ellipse(double rx, double ry) {
            return new Circle(new Point(0, 0), 1).outline().mapped(p -> at(rx * p.x(), ry * p.y()));
        }
    }

    private static void leaders(Canvas canvas, State state, Words words, double size) {
        double y = 61.2;
        leader(canvas, onEllipse(state.belt(), 17.6, 9.4, 125), new Point(17.5, y - 3.4));
        leader(canvas, onEllipse(state.ribs(), 12.8, 5.8, 62), new Point(36.5, y - 3.4));
        canvas.words(new Point(17.5, y), words.pelvis(), size, Weight.REGULAR, Anchor.MIDDLE);
        canvas.words(new Point(36.5, y), words.ribs(), size, Weight.REGULAR, Anchor.MIDDLE);
    }

    private static Point onEllipse(double turn, double rx, double ry, double degrees) {
        double a = StrictMath.toRadians(degrees);
        return new Frame(turn).at(rx * StrictMath.cos(a), ry * StrictMath.sin(a));
    }

    private static void leader(Canvas canvas, Point from, Point to) {
        canvas.stroke(Tone.WHITE, .9, List.of(Outline.polyline(from, to))).line(Lines.THIN, from, to)
                .fill(Tone.BLACK, new Circle(from, .55).outline());
    }

    /** {@code right}: what is now turned right is to turn left; 0: both ways. */
    private static void turnArrow(Canvas canvas, int right) {
        double radius = 33.4;
        double up = -StrictMath.PI / 2;
        double from = up + StrictMath.toRadians(right == 0 ? -32 : right * 30);
        double to = up + StrictMath.toRadians(right == 0 ? 32 : -right * 34);
        Circle ring = new Circle(CENTRE, radius);
        double back = 3.2 / radius * Math.signum(to - from);
        canvas.stroke(new Tone.Spot(), 1.4, List.of(ring.arc(right == 0 ? from + back : from, to - back)));
        arcHead(canvas, ring, to, Math.signum(to - from));
        if (right == 0) {
            arcHead(canvas, ring, from, -Math.signum(to - from));
        }
    }

    private static void arcHead(Canvas canvas, Circle ring, double angle, double sense) {
        Point tip = ring.at(angle);
        Point tangent = tip.minus(ring.centre()).unit().quarterTurn().times(sense);
        Point eased = tangent.along(ring.centre().minus(tip).unit(), -.07).unit();
        canvas.fill(new Tone.Spot(), Lines.head(tip, eased, 4.6, 3.6));
    }

    private static void shiftArrow(Canvas canvas, int right) {
        double y = CENTRE.y() + 16.4;
        if (right == 0) {
            spotArrow(canvas, new Point(CENTRE.x() - 1, y), new Point(CENTRE.x() - 10, y));
            spotArrow(canvas, new Point(CENTRE.x() + 1, y), new Point(CENTRE.x() + 10, y));
        } else {
            spotArrow(canvas, new Point(CENTRE.x() + right * 10, y), new Point(CENTRE.x() - right * 10, y));
        }
    }

    private static void spotArrow(Canvas canvas, Point from, Point to) {
        Point d = to.minus(from).unit();
        canvas.stroke(new Tone.Spot(), 1.4, List.of(Outline.polyline(from, to.along(d, -3.2))))
                .fill(new Tone.Spot(), Lines.head(to, d, 4.6, 3.6));
    }

    private static void pills(Canvas canvas, double size) {
        double height = Math.max(6.4, Pill.heightFor(size));
        for (Side side : Side.values()) {
            double x = side == Side.LEFT ? height / 2 : WIDTH - height / 2;
            new Pill(side, new Point(x, 60), height).draw(canvas, Pill.letterSize(height, size), 0);
        }
    }
}
