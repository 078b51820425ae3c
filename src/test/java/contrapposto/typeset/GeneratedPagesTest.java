package contrapposto.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.check.CheckedSpec.Edition;
import contrapposto.check.CheckedSpec.Paper;
import contrapposto.check.CheckedSpec.Print;
import contrapposto.compose.Composer;
import contrapposto.compose.GeneratedPlans;
import contrapposto.compose.Templates;
import contrapposto.document.Document;
import contrapposto.notice.NoticeText;
import java.io.IOException;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Pages of generated plans read back: margins, floor of type, overlaps, contrast, heads, rows and cards. A sample runs
 * always; all of them with {@code -Dpages=all}, some with {@code -Dpages=7,13}.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class GeneratedPagesTest {
    private static final int SAMPLE = 8;
    private static final int ALL = 240;
    private static final AtomicInteger PAGES = new AtomicInteger();
    private static final AtomicInteger FILES = new AtomicInteger();

    private final Composer composer = new Composer(Templates.own());

    static IntStream numbers() {
        String wanted = System.getProperty("pages", "");
        return wanted.isEmpty() ? IntStream.range(0, SAMPLE) : wanted.equals("all") ? IntStream.range(0, ALL)
                : Arrays.stream(wanted.split(",")).mapToInt(Integer::parseInt);
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void no_page_of_a_generated_plan_breaks_a_rule(int number) throws IOException {
        var edition = Edition.values()[number % 3];
        var paper = number / 3 % 2 == 0 ? Paper.A4 : Paper.LETTER;
        var print = edition != Edition.POCKET && number / 6 % 3 == 2 ? Print.LARGE : Print.PLAIN;
        var composed = composer.compose(GeneratedPlans.of(number), new Composer.Order(edition, paper, print, number % 2 == 0));
        var document = composed.then(made -> TypesetterTest.TYPESETTER.set(made));
        assertEquals("", document.notices().stream().map(NoticeText::of).reduce("", String::concat), "plan " + number);
        var pages = ((contrapposto.notice.Outcome.Done<Pages>) document).value();
        PAGES.addAndGet(pages.count());
        FILES.incrementAndGet();
        assertEquals(Set.of(), PageFaults.of(pages.bytes(), paper == Paper.A4 ? Document.Paper.A4 : Document.Paper.LETTER,
                print == Print.LARGE ? 18 : 11, edition == Edition.POCKET), "plan " + number + ", " + edition + ", " + paper + ", " + print);
    }

    @AfterAll
    static void counts() {
        System.out.println(new TreeMap<>(java.util.Map.of("files", FILES.get(), "pages", PAGES.get())));
    }
}
