package contrapposto.press;

import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.check.CheckedSpec.Edition;
import contrapposto.check.CheckedSpec.Paper;
import contrapposto.check.CheckedSpec.Print;
import contrapposto.press.DemoPages.Wish;
import contrapposto.typeset.Proof;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Real handouts before veraPDF: every demo × edition × paper × print × language is PDF/UA-1, and PDF/A-3a with the plan inside or
 * PDF/A-2a without. Four files run always, one of each demo, so that every edition, paper, print and language is among them; all
 * 144 with {@code -Dmatrix=all}, the 48 of a language with {@code -Dmatrix=en}, its 12 of a demo with {@code -Dmatrix=en/veteran-left}. Their last result stands in docs/page.md.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ProofMatrixTest {
    private static final AtomicInteger PASSED = new AtomicInteger();

    static Stream<Wish> wishes() {
        String wanted = System.getProperty("matrix", "");
        return !wanted.isEmpty() ? Stream.of((wanted.equals("all") ? "en,es,de" : wanted).split(",")).flatMap(ProofMatrixTest::all) : Stream.of(
                new Wish("newcomer-right", Edition.CLIENT, Paper.A4, Print.PLAIN, "en"),
                new Wish("veteran-left", Edition.COACH, Paper.LETTER, Print.PLAIN, "de"),
                new Wish("seventy-bare-room", Edition.CLIENT, Paper.LETTER, Print.LARGE, "es"),
                new Wish("square-steady", Edition.POCKET, Paper.A4, Print.PLAIN, "en"));
    }

    /** @param part a language, or one and a demo: {@code es/square-steady} */
    private static Stream<Wish> all(String part) {
        var words = List.of(part.split("/"));
        return DemoPages.all(List.of(words.getFirst())).stream().filter(wish -> words.size() == 1 || wish.demo().equals(words.getLast()));
    }

    @ParameterizedTest
    @MethodSource("wishes")
    void a_handout_is_accessible_and_archival(Wish wish) {
        byte[] pdf = wish.pdf();
        Proof.passes("ua1", pdf);
        Proof.passes(wish.edition() == Edition.POCKET ? "2a" : "3a", pdf);
        PASSED.incrementAndGet();
    }

    @AfterAll
    static void counts() {
        System.out.println("veraPDF: " + PASSED.get() + " files passed");
        assertEquals(wishes().count(), PASSED.get());
    }
}
