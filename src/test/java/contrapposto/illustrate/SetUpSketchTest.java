package contrapposto.illustrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.check.CheckedSpec.Turned;
import contrapposto.figure.Bounds;
import contrapposto.figure.Figure;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import contrapposto.setup.SolvedSetUp;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The whole catalogue, solved for a short and a tall person, drawn on cards of the smallest and the largest row. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SetUpSketchTest {
    @ParameterizedTest
    @ValueSource(doubles = {1.52, 1.95})
    void no_two_words_meet_on_any_card(double stature) {
        Map<String, Sided<SolvedSetUp>> cards = SolvedCards.of(stature, Turned.RIGHT);
        assertTrue(cards.size() > 20, "families: " + cards.size());
        cards.forEach((id, sides) -> {
            Sided<SetUpSketch.Shown> card = SetUpSketch.card(sides, SolvedCards.words());
            for (Side side : sides.sides()) {
                for (double height : new double[] {34, 41, 48}) {
                    figures(card.on(side), sides.on(side), height).forEach(figure -> check(id + " " + side, figure));
                }
            }
        });
    }

    private static List<Figure> figures(SetUpSketch.Shown shown, SolvedSetUp solved, double height) {
        List<Figure> all = new ArrayList<>();
        switch (shown) {
            case SetUpSketch.Shown.Together(var drawing) -> all.add(drawing.drawn(59, height, 11));
            case SetUpSketch.Shown.Apart(var start, var working) ->
                    all.addAll(List.of(start.drawn(29, height, 11), working.drawn(30, height, 11)));
        }
        FootMap.of(solved, SolvedCards.words().lengths()).ifPresent(map -> all.add(map.drawn(FootMap.WIDTH, height, 11)));
        return all;
    }

    private static void check(String name, Figure figure) {
        List<Bounds> words = figure.labelBounds();
        for (int i = 0; i < words.size(); i++) {
            assertTrue(new Bounds(0, 0, figure.width(), figure.height()).grown(.6).holds(words.get(i)),
                    name + " " + figure.width() + "x" + figure.height() + " " + words.get(i));
            for (int j = 0; j < i; j++) {
                assertFalse(words.get(i).meets(words.get(j)),
                        name + " " + figure.width() + "x" + figure.height() + " " + words.get(i) + " " + words.get(j));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.524, 0.526, 0.73, 1})
    void shares_are_printed_to_five_per_cent(double share) {
        assertEquals(0, FootMap.rounded(share) % 5);
        assertEquals(100 * share, FootMap.rounded(share), 2.5);
    }
}
