package contrapposto.illustrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.figure.Bounds;
import contrapposto.figure.Figure;
import contrapposto.figure.Mark;
import contrapposto.figure.Outline;
import contrapposto.figure.Point;
import contrapposto.figure.TextWidth;
import contrapposto.figure.Tone;
import contrapposto.illustrate.SetUpSketch.Shown;
import contrapposto.illustrate.SolvedCards.Half;
import contrapposto.quantity.Side;
import contrapposto.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words on figures stand on nothing but white: over no line and over no other word, on every card of the catalogue. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WordsClearOfLinesTest {
    private static final double ROW = 41;
    /** Anti-aliased edges may share a hair, mm. */
    private static final double HAIR = .15;

    @ParameterizedTest
    @CsvSource({"1.52, METRIC", "1.95, METRIC", "1.52, US", "1.95, US"})
    void no_word_lies_on_a_line_or_on_another_word(double stature, UnitSystem units) {
        List<String> found = new ArrayList<>();
        int labels = 0;
        for (Map.Entry<String, Map<Side, Half>> family : SolvedCards.halves(stature, units).entrySet()) {
            for (Map.Entry<Side, Half> half : family.getValue().entrySet()) {
                for (Figure figure : figures(half.getValue())) {
                    labels += figure.labelBounds().size();
                    check(family.getKey() + " " + half.getKey().word(), figure, found);
                }
            }
        }
        assertTrue(labels > 500, "labels looked at: " + labels);
        assertEquals(List.of(), found);
    }

    private static List<Figure> figures(Half half) {
        List<Figure> all = new ArrayList<>();
        var lengths = half.words().lengths();
        FootMap.of(half.solved(), lengths).or(() -> TurnView.of(half.solved(), new TurnView.Words("From above", "From the head")))
                .ifPresent(map -> all.add(map.drawn(25.7, ROW, 11)));
        double room = all.isEmpty() ? 85 : 59.3;
        switch (half.shown()) {
            case Shown.Together(var drawing) -> all.add(drawing.drawn(room, ROW, 11));
            case Shown.Apart(var start, var working) -> all.addAll(List.of(start.drawn(.49 * room, ROW, 11), working.drawn(.51 * room, ROW, 11)));
        }
        SetUpSketch.withShin(half.solved(), half.words()).ifPresent(shin -> all.add(shin.drawn(85, 40, 11)));
        return all;
    }

    private static void check(String name, Figure figure, List<String> found) {
        List<Integer> at = IntStream.range(0, figure.marks().size()).filter(i -> figure.marks().get(i) instanceof Mark.Label).boxed().toList();
        for (int i : at) {
            Mark.Label label = (Mark.Label) figure.marks().get(i);
            Bounds box = TextWidth.bounds(label).grown(-HAIR);
            for (int j : at) {
                if (j < i && TextWidth.bounds((Mark.Label) figure.marks().get(j)).grown(-HAIR).meets(box)) {
                    found.add(name + ": " + label.text() + " on " + ((Mark.Label) figure.marks().get(j)).text());
                }
            }
            boolean onPill = label.text().equals("L") || label.text().equals("R");
            if (!onPill && crosses(figure.marks(), box)) {
                found.add(name + ": " + label.text() + " on a line");
            }
        }
    }

    /** Whether a line that is not white runs through the box. */
    private static boolean crosses(List<Mark> marks, Bounds box) {
        for (Mark mark : marks) {
            if (mark instanceof Mark.Stroke(List<Outline> outlines, Tone tone, double width, List<Double> dash) && !tone.equals(Tone.WHITE)) {
                for (Outline outline : outlines) {
                    if (through(outline, box.grown(width / 2))) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private static boolean through(Outline outline, Bounds box) {
        List<Point> points = new ArrayList<>(outline.flattened());
        if (outline.closed()) {
            points.add(outline.start());
        }
        for (int i = 0; i + 1 < points.size(); i++) {
            int steps = 1 + (int) (points.get(i).distance(points.get(i + 1)) / .2);
            for (int k = 0; k <= steps; k++) {
                Point p = points.get(i).toward(points.get(i + 1), (double) k / steps);
                if (p.x() > box.minX() && p.x() < box.maxX() && p.y() > box.minY() && p.y() < box.maxY()) {
                    return true;
                }
            }
        }
        return false;
    }
}
