package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.catalogue.CatalogueReader;
import contrapposto.catalogue.Clause;
import contrapposto.catalogue.HouseRulesReader;
import contrapposto.handout.Contrast;
import contrapposto.handout.PdfTables;
import contrapposto.handout.PdfTables.Element;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The four demos, built by the command line and read back by PDFBox through the structure tree: what the plan file says is
 * on the page, in the row and on the side where it belongs.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ReadBackTest {
    private static final double KILOGRAMS_PER_POUND = 0.45359237;   // NIST Handbook 44, appendix C
    private static final double CM_PER_INCH = 2.54;                 // exact since 1959
    private static final Pattern LENGTH = Pattern.compile("(\\d+)?(½)?\\s*(cm|in)");
    private static final List<String> DAYS = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");
    private static final List<String> DAY_NAMES = List.of("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday");

    @TempDir
    static Path out;
    private static String said;

    @BeforeAll
    static void build() {
        said = Demos.build(out, "programs/newcomer-right.yaml", "programs/veteran-left.yaml",
                "programs/seventy-bare-room.yaml", "programs/square-steady.yaml");
    }

    @ParameterizedTest
    @ValueSource(strings = {"newcomer-right", "veteran-left", "seventy-bare-room", "square-steady"})
    void the_plan_and_the_safety_panel_fill_one_page_and_no_more(String spec) throws IOException {
        for (var edition : List.of("client", "coach")) {
            try (var pdf = Loader.loadPDF(Demos.file(out, spec + "-" + edition + ".pdf").toFile())) {
                var parts = pdf.getDocumentCatalog().getDocumentOutline().children().iterator();
                assertEquals(0, pdf.getPages().indexOf(parts.next().findDestinationPage(pdf)));
                assertEquals(1, pdf.getPages().indexOf(parts.next().findDestinationPage(pdf)), edition);
            }
        }
    }

    @Test
    void a_long_day_of_the_log_goes_over_pages_in_the_large_print() {
        var large = Demos.build(out.resolve("large"), "programs/square-steady.yaml", "--print", "large", "--edition", "client");
        assertTrue(large.startsWith("0\n"), large);
    }

    @Test
    void the_demos_build_without_a_warning() {
        assertTrue(said.startsWith("0\n"), said);
        assertFalse(said.contains("warning[") || said.contains("error["), said);
    }

    @ParameterizedTest
    @ValueSource(strings = {"newcomer-right", "veteran-left", "seventy-bare-room", "square-steady"})
    void every_dose_stands_in_the_row_of_its_exercise_side_and_week(String spec) throws IOException {
        var plan = Demos.plan(Demos.file(out, spec + "-plan.yaml"));
        boolean pounds = spec.startsWith("veteran");
        var tables = titledTables(tree(spec, "client"));
        int read = 0;
        for (var day : list(plan, "days")) {
            String name = DAY_NAMES.get(DAYS.indexOf(day.get("day").toString()));
            for (var exercise : list(day, "exercises")) {
                for (var side : map(exercise, "sides").entrySet()) {
                    for (var week : list(side.getValue(), "weeks")) {
                        String cell = cell(tables, name, exercise.get("name").toString(), side.getKey().toString(), week);
                        assertDose(week, cell, pounds, spec + " " + name + " " + exercise.get("id") + " " + side.getKey());
                        read++;
                    }
                }
            }
        }
        assertTrue(read > 50, "doses read back: " + read);
    }

    @ParameterizedTest
    @ValueSource(strings = {"newcomer-right", "veteran-left", "seventy-bare-room", "square-steady"})
    void every_measure_of_a_set_up_is_on_the_card_of_its_side(String spec) throws IOException {
        var plan = Demos.plan(Demos.file(out, spec + "-plan.yaml"));
        var cards = tree(spec, "client").all("Sect");
        int read = 0;
        for (var day : list(plan, "days")) {
            for (var exercise : list(day, "exercises")) {
                var card = cards.stream().filter(c -> named(c.text(), exercise.get("name").toString()))
                        .findFirst().orElseThrow(() -> new AssertionError("no card for " + exercise.get("name")));
                var measures = card.all("L").stream().filter(l -> !l.all("Lbl").isEmpty()
                        && !l.all("Lbl").getFirst().text().strip().matches("\\d+")).toList();
                int index = 0;
                for (var side : map(exercise, "sides").entrySet()) {
                    read += measured(map(side.getValue(), "setup"), index < measures.size() ? measures.get(index) : null,
                            spec + " " + exercise.get("id") + " " + side.getKey());
                    index += measures.size() > 1 ? 1 : 0;
                }
            }
        }
        assertTrue(read > 8, "measures read back: " + read);
    }

    @ParameterizedTest
    @ValueSource(strings = {"newcomer-right", "veteran-left", "seventy-bare-room", "square-steady"})
    void the_first_page_carries_the_cautions_and_the_rules_of_the_plan(String spec) throws IOException {
        String first = tree(spec, "client").all("Part").getFirst().text();
        for (String words : List.of("chest", "faint", "sudden weakness", "bladder or bowel", "calf", "sharp pain", "over 5 out of 10",
                "gives way", "numb or dizzy", "Breathe out", "doctor and local rules come first", "+00 555 0117",
                "Use until", "Warm up.", "Which side first.", "Missed a week?", "not a diagnosis")) {
            assertTrue(first.contains(words), spec + ": the first page does not say “" + words + "”");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"newcomer-right", "veteran-left", "seventy-bare-room", "square-steady"})
    void pages_are_few_and_no_character_is_lost(String spec) throws IOException {
        for (String edition : List.of("client", "coach")) {
            byte[] pdf = Files.readAllBytes(Demos.file(out, spec + "-" + edition + ".pdf"));
            try (var document = Loader.loadPDF(pdf)) {
                int pages = document.getNumberOfPages();
                assertTrue(pages >= 6 && pages <= 40, spec + " " + edition + " has " + pages + " pages");
            }
            assertFalse(PdfTables.read(pdf).text().contains("\uFFFD"), spec + ": a character could not be read back");
        }
        var name = map(Demos.plan(Demos.file(out, spec + "-plan.yaml")), "client").get("name");
        assertTrue(tree(spec, "client").all("H1").getFirst().text().contains(name.toString()), "the name is set whole");
    }

    @ParameterizedTest
    @ValueSource(strings = {"newcomer-right", "veteran-left", "seventy-bare-room", "square-steady"})
    void rests_and_cautions_of_every_exercise_are_on_its_card(String spec) throws IOException {
        var catalogue = CatalogueReader.house(HouseRulesReader.house());
        var cards = tree(spec, "client").all("Sect");
        for (var day : list(Demos.plan(Demos.file(out, spec + "-plan.yaml")), "days")) {
            for (var exercise : list(day, "exercises")) {
                String id = exercise.get("id").toString();
                String card = cards.stream().map(c -> c.text().replace('\u00A0', ' ')).filter(c -> named(c, exercise.get("name").toString()))
                        .findFirst().orElseThrow();
                for (var side : map(exercise, "sides").values()) {
                    var rest = list(side, "weeks").getFirst().get("rest-s");
                    assertTrue(card.contains("Rest " + rest + " s"), spec + " " + id + ": rest of " + rest + " s");
                }
                for (String caution : catalogue.words("en", id).cautions()) {
                    assertTrue(Clause.ways(caution).stream().map(ReadBackTest::fixed).anyMatch(card::contains), spec + " " + id + ": " + caution);
                }
            }
        }
    }

    private static String fixed(String text) {
        return text.contains("{") ? text.substring(0, text.indexOf('{')) : text;
    }

    /** WCAG 2.2 SC 1.4.6: at least 7 : 1 for whatever is not a tone of grey; text is black or white. */
    @Test
    void the_one_colour_of_the_page_stands_out_from_the_paper() throws IOException {
        int coloured = 0;
        try (var document = Loader.loadPDF(Files.readAllBytes(Demos.file(out, "newcomer-right-client.pdf")))) {
            var tokens = new PDFStreamParser(document.getPage(0)).parse();
            for (int i = 3; i < tokens.size(); i++) {
                if (tokens.get(i) instanceof Operator operator && operator.getName().matches("rg|RG")) {
                    double[] colour = new double[3];
                    for (int c = 0; c < 3; c++) {
                        colour[c] = ((COSNumber) tokens.get(i - 3 + c)).floatValue();
                    }
                    if (colour[0] != colour[1] || colour[1] != colour[2]) {
                        coloured++;
                        assertTrue(Contrast.ratio(colour, new double[] {1, 1, 1}) >= 7, "contrast of a colour with white");
                    }
                }
            }
        }
        assertTrue(coloured > 0, "the arrows of the finding picture are coloured");
    }

    // --- reading the page

    private static Element tree(String spec, String edition) throws IOException {
        return PdfTables.read(Files.readAllBytes(Demos.file(out, spec + "-" + edition + ".pdf")));
    }

    private record Titled(String title, Element table) { }

    private static List<Titled> titledTables(Element root) {
        var found = new ArrayList<Titled>();
        walk(root, new String[] {""}, found);
        return found;
    }

    private static void walk(Element element, String[] title, List<Titled> found) {
        if (element.kind().matches("H\\d|Caption")) {
            title[0] = element.text();
        }
        if (element.kind().equals("Table")) {
            found.add(new Titled(title[0], element));
        }
        element.kids().forEach(kid -> walk(kid, title, found));
    }

    private static String cell(List<Titled> tables, String day, String exercise, String side, Map<?, ?> week) {
        String badge = side.equals("both") ? "L R" : side.substring(0, 1).toUpperCase(java.util.Locale.ROOT);
        String number = week.get("week").toString();
        for (var titled : tables) {
            if (!titled.title().contains(day.substring(0, 3))) {      // days that do the same share a table
                continue;
            }
            var rows = titled.table().all("TR");
            var heads = cells(rows.getFirst()).stream().map(e -> e.text().strip()).toList();
            int column = heads.lastIndexOf(number);
            boolean inExercise = false;
            for (var row : rows) {
                var cells = cells(row);
                Optional<String> head = cells.stream().filter(c -> c.kind().equals("TH")).map(Element::text).findFirst();
                inExercise = head.isPresent() ? named(head.get(), exercise) : inExercise;
                int back = heads.size() - column;
                if (inExercise && column > 0 && cells.stream().anyMatch(c -> c.text().strip().equals(badge))) {
                    return cells.get(cells.size() - back).text();
                }
            }
        }
        throw new AssertionError("no cell for " + day + ", " + exercise + ", " + side + ", week " + number);
    }

    /** Whether a card or row begins with its number, this name and then the rest or the weeks: not a longer name. */
    private static boolean named(String text, String name) {
        return text.replace('\u00A0', ' ').matches("(?s)\\d+\\s+" + Pattern.quote(name) + "\\s*((rest|Rest|Weeks?)\\b.*)?");
    }

    private static List<Element> cells(Element row) {
        return row.kids().stream().filter(k -> k.kind().equals("TH") || k.kind().equals("TD")).toList();
    }

    private static void assertDose(Map<?, ?> week, String cell, boolean pounds, String where) {
        Object count = week.containsKey("reps") ? week.get("reps") : week.get("seconds");
        String plain = cell.replace('\u00A0', ' ');
        assertTrue(plain.contains(week.get("sets") + " × " + count), where + " week " + week.get("week") + ": " + cell);
        if (week.get("load-kg") instanceof Number load && load.doubleValue() > 0) {
            double shown = pounds ? load.doubleValue() / KILOGRAMS_PER_POUND : load.doubleValue();
            String number = BigDecimal.valueOf(shown).setScale(1, java.math.RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
            assertTrue(plain.matches("(?s).*(^|[^\\d.])" + Pattern.quote(number) + "([^\\d.].*|$)"),
                    where + " week " + week.get("week") + " should say " + number + ": " + cell);
        } else {
            assertTrue(plain.contains("find") || plain.contains("–"), where + " has no weight and must say so: " + cell);
        }
    }

    private static int measured(Map<?, ?> setup, Element list, String where) {
        int read = 0;
        for (var entry : setup.entrySet()) {
            String key = entry.getKey().toString();
            boolean length = key.endsWith("-cm") && entry.getValue() instanceof Number n && StrictMath.abs(n.doubleValue()) > 1e-9;
            if (length) {
                double wanted = StrictMath.abs(((Number) entry.getValue()).doubleValue());
                assertTrue(list != null && list.all("Lbl").stream().anyMatch(l -> near(l.text(), wanted)),
                        where + ": " + key + " " + wanted + " is not on the card: " + (list == null ? "no measures" : list.text()));
                read++;
            }
            if (key.equals("load-hand")) {
                String hand = entry.getValue().toString();
                assertTrue(list != null && list.text().toLowerCase(java.util.Locale.ROOT).contains(hand + " hand")
                        || hand.equals("both") || hand.equals("each"), where + ": the " + hand + " hand is not on the card");
                read++;
            }
        }
        return read;
    }

    /** Within what a tape can be read to: half a centimetre, or a quarter of an inch. */
    private static boolean near(String label, double centimetres) {
        var match = LENGTH.matcher(label.replace('\u00A0', ' '));
        if (!match.find()) {
            return false;
        }
        double value = (match.group(1) == null ? 0 : Double.parseDouble(match.group(1))) + (match.group(2) == null ? 0 : 0.5);
        boolean inches = match.group(3).equals("in");
        return StrictMath.abs((inches ? value * CM_PER_INCH : value) - centimetres) <= (inches ? CM_PER_INCH / 4 : 0.5) + 1e-6;
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> list(Object of, String key) {
        return (List<Map<String, Object>>) ((Map<String, Object>) of).getOrDefault(key, List.of());
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Object of, String key) {
        return (Map<String, Object>) ((Map<String, Object>) of).get(key);
    }

    @Test
    void the_unit_factors_are_the_published_ones() {
        assertEquals(45, 20.41165665 / KILOGRAMS_PER_POUND, 1e-9);   // 45 lb = 20.41165665 kg, reference G1.2
    }
}
