package contrapposto.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.check.CheckedSpec.Edition;
import contrapposto.check.CheckedSpec.Paper;
import contrapposto.check.CheckedSpec.Print;
import contrapposto.compose.Composer;
import contrapposto.compose.GeneratedPlans;
import contrapposto.compose.Templates;
import contrapposto.handout.PdfTables;
import contrapposto.typeset.PageFaults;
import contrapposto.typeset.Typesetter;
import contrapposto.wording.Units;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The pocket sheets of the demos, read back by PDFBox: one page, 11 pt and more, all exercises with every week's weights. Letter
 * is 18 mm shorter: the longest demo, whose sides have repeats to spare of their own, takes both faces of the sheet there, since no exercise is divided.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PocketSheetTest {
    private static final double FLOOR = 11;

    static Stream<Arguments> sheets() {
        return DemoPages.DEMOS.stream().flatMap(demo -> Stream.of(Paper.values()).map(paper -> Arguments.of(demo, paper)));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void all_of_a_demo_stands_on_one_page_or_on_both_faces_of_a_Letter_sheet(String demo, Paper paper) throws IOException {
        var pdf = wish(demo, paper, Print.PLAIN).pdf();
        assertEquals(paper == Paper.LETTER && demo.equals("veteran-left") ? 2 : 1, pages(pdf));
        assertEquals(Set.of(), PageFaults.of(pdf, contrapposto.document.Document.Paper.valueOf(paper.name()), FLOOR, true));
        assertEquals(weights(demo), readWeights(pdf));
    }

    /** There is no large one: what is small by its use is not made when it cannot be. */
    @ParameterizedTest
    @EnumSource(Paper.class)
    void the_large_print_has_the_same_pocket_sheet(Paper paper) throws IOException {
        assertEquals(PdfTables.read(wish("square-steady", paper, Print.PLAIN).pdf()), PdfTables.read(wish("square-steady", paper, Print.LARGE).pdf()));
    }

    @Test
    void twelve_exercises_take_both_faces_of_a_sheet_or_more_and_none_is_divided() throws IOException {
        var plan = GeneratedPlans.of(11);
        assertEquals(12, plan.exercises().size());
        var composed = new Composer(Templates.own()).compose(plan, new Composer.Order(Edition.POCKET, Paper.A4, Print.PLAIN, true));
        var pdf = DemoPages.done(composed.then(new Typesetter()::set)).bytes();
        assertTrue(pages(pdf) > 1);
        assertEquals(Set.of(), PageFaults.of(pdf, contrapposto.document.Document.Paper.A4, FLOOR, true));
    }

    private static DemoPages.Wish wish(String demo, Paper paper, Print print) {
        return new DemoPages.Wish(demo, Edition.POCKET, paper, print, "en");
    }

    private static int pages(byte[] pdf) throws IOException {
        try (var file = Loader.loadPDF(pdf)) {
            return file.getNumberOfPages();
        }
    }

    /** What the plan says, row by row, for the sides that use a weight: in whole or half kilograms, or pounds. */
    private static List<List<String>> weights(String demo) {
        var plan = DemoPages.plan(demo);
        var units = new Units(plan.spec().client().units(), Locale.ENGLISH);
        var rows = new ArrayList<List<String>>();
        for (var exercise : plan.exercises()) {
            for (var side : exercise.sides().values()) {
                var row = side.doses().stream().map(d -> d.byEffort() ? "find" : d.load().isPresent() && d.load().getAsDouble() > 0
                        ? units.bareMass(d.load().getAsDouble()) : "–").toList();
                if (row.stream().anyMatch(w -> !w.equals("–"))) {
                    rows.add(row);
                }
            }
        }
        return rows;
    }

    private static List<List<String>> readWeights(byte[] pdf) throws IOException {
        return PdfTables.read(pdf).all("TR").stream().filter(row -> List.of("kg", "lb").contains(row.kids().getFirst().text().strip()))
                .map(row -> row.kids().stream().skip(1).map(cell -> cell.text().strip()).filter(text -> !text.isEmpty()).toList()).toList();
    }
}
