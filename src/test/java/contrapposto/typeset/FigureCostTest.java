package contrapposto.typeset;

import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.figure.Figure;
import contrapposto.illustrate.FootMap;
import contrapposto.illustrate.SetUpSketch.Shown;
import contrapposto.illustrate.SolvedCards;
import contrapposto.illustrate.SolvedCards.Half;
import contrapposto.illustrate.TurnView;
import contrapposto.quantity.Side;
import contrapposto.quantity.UnitSystem;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.zip.Deflater;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openpdf.text.Document;
import org.openpdf.text.Rectangle;

/** The budget of the figures: at most 4,000 bytes each in the page's content stream, as the painter writes it, deflated. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FigureCostTest {
    private static final int MOST = 4000;
    private static final double ROW = 41;

    private final Fonts fonts = Fonts.roboto();

    @ParameterizedTest
    @ValueSource(doubles = {1.52, 1.95})
    void every_drawing_of_every_family_costs_at_most_4_KB(double stature) {
        List<String> dear = new ArrayList<>();
        List<Integer> all = new ArrayList<>();
        for (Map.Entry<String, Map<Side, Half>> family : SolvedCards.halves(stature, UnitSystem.METRIC).entrySet()) {
            family.getValue().forEach((side, half) -> figures(half).forEach(figure -> {
                int bytes = deflated(figure);
                all.add(bytes);
                if (bytes > MOST) {
                    dear.add(family.getKey() + " " + side.word() + " " + bytes);
                }
            }));
        }
        all.sort(Integer::compare);
        System.out.println("figures at " + stature + " m: " + all.size() + ", middle " + all.get(all.size() / 2) + " bytes, dearest "
                + all.getLast());
        assertTrue(dear.isEmpty(), dear.size() + " of " + all.size() + " over: " + dear);
    }

    /** In the plain print's own boxes, at the row's usual height. */
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
        return all;
    }

    private int deflated(Figure figure) {
        var document = new Document(new Rectangle(595, 842));
        var writer = TaggedWriter.of(document, new ByteArrayOutputStream());
        document.open();
        writer.begin();
        var content = writer.getDirectContent();
        int before = content.getInternalBuffer().size();
        new FigurePainter(fonts, new Misses(fonts)).paint(figure, new Pen(writer.ink(), 37.3, 181.7));
        writer.ink().turn();
        byte[] plain = content.getInternalBuffer().toByteArray();
        Deflater deflater = new Deflater();
        deflater.setInput(plain, before, plain.length - before);
        deflater.finish();
        int size = deflater.deflate(new byte[plain.length + 64]);
        deflater.end();
        return size;
    }
}
