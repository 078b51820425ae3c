package contrapposto.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.body.Joint;
import contrapposto.figure.Bounds;
import contrapposto.figure.Figure;
import contrapposto.figure.Mark;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.quantity.Side;
import contrapposto.sketch.Stage.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SketchTest {
    private static final double[][] BOXES = {{59, 34}, {59, 45}, {85, 45}, {115, 90}};

    static Stream<Posed> study() {
        return Posed.study().stream();
    }

    /** The study's poses and solved set-ups of a short and a tall person, on both sides. */
    static Stream<Posed> all() {
        return Stream.of(Posed.study(), Posed.solved(1.52), Posed.solved(1.95)).flatMap(List::stream)
                .flatMap(posed -> Stream.of(posed, posed.mirrored()));
    }

    private static Figure drawn(Posed posed, Shown shown, double[] box) {
        return Stage.of(posed.problem(), posed.solved(), posed.problem().working()).sketch(shown, posed.wishes())
                .drawn(box[0], box[1], 11);
    }

    @ParameterizedTest
    @MethodSource("all")
    void words_and_letters_never_overlap_and_stay_inside_the_box(Posed posed) {
        for (double[] box : BOXES) {
            List<Bounds> words = drawn(posed, Shown.END_OVER_START, box).labelBounds();
            for (int i = 0; i < words.size(); i++) {
                assertTrue(new Bounds(0, 0, box[0], box[1]).grown(.05).holds(words.get(i)), posed.name() + " " + words.get(i));
                for (int j = 0; j < i; j++) {
                    assertFalse(words.get(i).meets(words.get(j)), posed.name() + " " + words.get(i) + words.get(j));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("study")
    void the_same_set_up_gives_the_same_figure(Posed posed) {
        double[] box = {59, 41};
        assertEquals(drawn(posed, Shown.END_OVER_START, box), drawn(posed, Shown.END_OVER_START, box));
    }

    @ParameterizedTest
    @MethodSource("study")
    void the_mirrored_set_up_is_the_mirrored_drawing_but_for_the_wrist_band_and_letters(Posed posed) {
        double width = 85;
        List<Point> own = points(drawn(posed, Shown.WORKING, new double[] {width, 45}), posed);
        List<Point> other = points(drawn(posed.mirrored(), Shown.WORKING, new double[] {width, 45}), posed);
        assertTrue(own.size() > 60, "points: " + own.size());
        assertEquals(own.size(), other.size());
        for (int i = 0; i < own.size(); i++) {
            assertEquals(width - own.get(i).x(), other.get(i).x(), .04);
            assertEquals(own.get(i).y(), other.get(i).y(), 1e-9);
        }
    }

    /** Points of all tones with an outline, without what only the right side wears; arrows and measures included. */
    private static List<Point> points(Figure figure, Posed posed) {
        List<Point> points = new ArrayList<>();
        for (Mark mark : figure.marks()) {
            if (mark instanceof Mark.Fill(var outlines, var tone) && outlines.size() == 1
                    && !(tone instanceof contrapposto.figure.Tone.Grey(var grey) && (grey == Tones.BAND
                    || grey == Tones.far(Tones.BAND) || grey == 0 || grey == 1))) {
                points.addAll(outlines.getFirst().flattened());
            }
        }
        return points;
    }

    @ParameterizedTest
    @MethodSource("all")
    void the_drawn_shin_is_the_solved_shin_to_half_a_degree(Posed posed) {
        Side side = posed.problem().working();
        List<Wish> wishes = List.of(new Wish.Shin(side, "shin"));
        Figure figure = Stage.of(posed.problem(), posed.solved(), side).sketch(Shown.WORKING, wishes).drawn(59, 41, 11);
        Vector3D ankle = posed.solved().working().at(Joint.of(side, Joint.Part.ANKLE));
        Vector3D knee = posed.solved().working().at(Joint.of(side, Joint.Part.KNEE));
        if (posed.problem().base() instanceof contrapposto.body.BaseOfSupport.SideLying) {
            return;
        }
        double solved = StrictMath.toDegrees(StrictMath.atan2(knee.getX() - ankle.getX(), knee.getZ() - ankle.getZ()));
        double read = StrictMath.toDegrees(StrictMath.atan2(bone(figure).x(), -bone(figure).y()));
        assertEquals(solved, side == Side.LEFT ? -read : read, .5, posed.name());
    }

    /** From ankle to knee as drawn: the straight solid line that follows the dashed plumb line. */
    private static Point bone(Figure figure) {
        for (int i = 0; i + 1 < figure.marks().size(); i++) {
            if (figure.marks().get(i) instanceof Mark.Stroke plumb && plumb.dash().equals(List.of(1.1, .7))) {
                Outline line = ((Mark.Stroke) figure.marks().get(i + 1)).outlines().getFirst();
                return line.segments().getLast().end().minus(line.start());
            }
        }
        throw new AssertionError("no shin is drawn");
    }

    @ParameterizedTest
    @MethodSource("all")
    void every_point_of_body_and_words_lies_inside_the_box(Posed posed) {
        for (double[] box : BOXES) {
            Bounds room = new Bounds(0, 0, box[0], box[1]).grown(.6);
            for (Mark mark : drawn(posed, Shown.END_OVER_START, box).marks()) {
                if (mark instanceof Mark.Fill(var outlines, var tone)) {
                    outlines.forEach(o -> assertTrue(room.holds(Bounds.of(o.flattened())), posed.name() + " " + tone + Bounds.of(o.flattened())));
                }
            }
        }
    }
}
