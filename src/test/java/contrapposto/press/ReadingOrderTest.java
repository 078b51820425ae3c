package contrapposto.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.check.CheckedSpec.Edition;
import contrapposto.check.CheckedSpec.Paper;
import contrapposto.check.CheckedSpec.Print;
import contrapposto.compose.Composer;
import contrapposto.compose.GeneratedPlans;
import contrapposto.compose.Templates;
import contrapposto.document.Document;
import contrapposto.press.DemoPages.Wish;
import contrapposto.typeset.ReadingOrder;
import contrapposto.typeset.Typesetter;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The order along the structure tree of real files is that of the document's blocks, word by word. Six of the demos' files and four generated plans
 * run always; all 48 and 60 more with {@code -Dorder=all}, some of the 60 with {@code -Dorder=7,13}.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ReadingOrderTest {
    private static final String ORDER = System.getProperty("order", "");
    private static final boolean ALL = ORDER.equals("all");
    private static final Typesetter TYPESETTER = new Typesetter();

    static Stream<Wish> wishes() {
        return ALL ? DemoPages.all(List.of("en")).stream() : Stream.of(
                new Wish("newcomer-right", Edition.CLIENT, Paper.A4, Print.PLAIN, "en"),
                new Wish("veteran-left", Edition.CLIENT, Paper.LETTER, Print.LARGE, "en"),
                new Wish("square-steady", Edition.COACH, Paper.A4, Print.PLAIN, "es"),
                new Wish("veteran-left", Edition.COACH, Paper.LETTER, Print.PLAIN, "de"),
                new Wish("seventy-bare-room", Edition.CLIENT, Paper.A4, Print.PLAIN, "de"),
                new Wish("newcomer-right", Edition.POCKET, Paper.LETTER, Print.PLAIN, "en"));
    }

    static IntStream numbers() {
        return ALL || ORDER.isEmpty() ? IntStream.range(0, ALL ? 60 : 4) : Stream.of(ORDER.split(",")).mapToInt(Integer::parseInt);
    }

    @ParameterizedTest
    @MethodSource("wishes")
    void a_demo_is_read_in_the_order_of_its_blocks(Wish wish) throws IOException {
        follows(wish.document());
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void a_generated_plan_is_read_in_the_order_of_its_blocks(int number) throws IOException {
        var edition = Edition.values()[number % 3];
        var print = edition != Edition.POCKET && number / 3 % 2 == 1 ? Print.LARGE : Print.PLAIN;
        var order = new Composer.Order(edition, number % 2 == 0 ? Paper.A4 : Paper.LETTER, print, true);
        follows(DemoPages.done(new Composer(Templates.own()).compose(GeneratedPlans.of(number), order)));
    }

    /** The check itself: a document whose blocks are turned round is not what the file says. */
    @Test
    void a_file_of_other_blocks_or_of_another_order_departs() throws IOException {
        var document = new Wish("newcomer-right", Edition.CLIENT, Paper.A4, Print.PLAIN, "en").document();
        byte[] pdf = DemoPages.done(TYPESETTER.set(document)).bytes();
        assertTrue(ReadingOrder.departure(turned(document, true), pdf).isPresent());
        assertTrue(ReadingOrder.departure(turned(document, false), pdf).isPresent());
    }

    private static Document turned(Document document, boolean reversed) {
        var parts = document.parts().stream().map(p -> new Document.Part(p.name(), p.folio(), p.format(),
                reversed ? p.blocks().reversed() : p.blocks().subList(0, p.blocks().size() - 1), p.legend(), p.freshSheet())).toList();
        return new Document(document.title(), document.author(), document.subject(), document.language(), document.paper(), document.print(),
                document.footer(), document.wording(), document.made(), document.identity(), parts, document.attachment());
    }

    private static void follows(Document document) throws IOException {
        assertEquals(Optional.empty(), ReadingOrder.departure(document, DemoPages.done(TYPESETTER.set(document)).bytes()));
    }
}
