package contrapposto.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.document.Block;
import contrapposto.document.Cell;
import contrapposto.document.Document;
import contrapposto.notice.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the composed handout of the hand-made plan says, held against that plan. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HandoutTest {
    private final Document client = ComposerTest.composed(Plans.turnedRight(), ComposerTest.CLIENT);

    @TempDir
    Path folder;

    @Test
    void the_first_page_names_the_sides_the_days_and_the_last_day_of_use() {
        String page = DocumentText.of(client, "Your plan").replace('\u00a0', ' ');
        for (String words : List.of("Your pelvis has turned to the right.",
                "For 10 weeks your left side learns to take weight and turn left, and your right side learns to push you there.",
                "Use until 14 June 2026.", "do 1, 2, 4", "do 1, 3, 4",
                "Then easy sets of number 1: 8 with no weight and 5 with half the weight (left 4 kg, right 4 kg).",
                "Which side first. The left, always.", "Missed two? Go back one more.", "boxes of 15 cm and 30 cm, dumbbells of 4 kg to 12 kg")) {
            assertTrue(page.contains(words), words);
        }
    }

    /** Reference E4, "what a handout must say", items 3 to 5, 10, 14 and 15. */
    @Test
    void what_a_handout_must_say_for_safety_is_on_the_first_page() {
        String page = DocumentText.of(client, "Your plan");
        for (String words : List.of("chest", "fainting", "loss of breath", "numb between the legs", "bladder or bowel", "calf suddenly swollen",
                "sharp pain, or any pain over 5 out of 10", "gives way", "dizzy", "gone by next day", "Breathe out", "Leave it out and call",
                "Warm up", "Test what you stand or pull on", "For you alone", "Dial your emergency number",
                "It is not a diagnosis", "local rules come first")) {
            assertTrue(page.contains(words), words);
        }
    }

    @Test
    void each_week_of_each_side_stands_in_the_row_of_that_side() {
        var tables = tables("Weeks");
        assertEquals(List.of("Monday", "Thursday", "Monday", "Thursday"), tables.stream().map(Block.Table::title).toList());
        var rows = tables.getFirst().groups().getFirst().rows();
        assertEquals(List.of("8", "8", "8", "10", "8"), lower(rows.getFirst()));
        assertEquals(List.of("10", "10", "10", "12", "10"), lower(rows.get(1)));
        assertEquals(List.of(false, false, false, true, false), doses(rows.getFirst()).map(Cell.Dose::heavier).toList());
        assertEquals(List.of(false, false, false, false, false, false, true), tables.getFirst().columns().stream().map(Block.Table.Column::toned).toList());
    }

    @Test
    void a_weight_to_be_found_is_never_printed_in_kilograms() {
        assertEquals(List.of("find", "find", "find", "find", "find"), lower(tables("Weeks").getFirst().groups().get(1).rows().getFirst()));
    }

    @Test
    void an_exercise_that_has_not_begun_leaves_its_weeks_empty_and_its_log_out() {
        var row = tables("Weeks").get(1).groups().get(1).rows().getFirst();
        assertEquals(List.of(new Cell.Empty(), new Cell.Empty()), row.cells().subList(2, 4));
        var fields = fields();
        assertFalse(fields.contains("w2/thu/supported-curl/left/kg"));
        assertTrue(fields.contains("w3/thu/supported-curl/left/kg"));
    }

    @Test
    void log_fields_are_named_once_and_only_for_sets_that_are_asked() {
        var fields = fields();
        assertTrue(fields.containsAll(List.of("w3/mon/split-squat/left/kg", "w3/mon/split-squat/left/set3", "w3/mon/split-squat/right/spare",
                "w3/mon/split-squat/right/pain", "w3/mon/high-to-low-press/right/kg", "w1/thu/goblet-squat/both/set1")));
        assertFalse(fields.contains("w5/mon/split-squat/left/set3"), "the easy week asks for two sets");
        assertFalse(fields.contains("w1/mon/goblet-squat/both/kg"), "no weight, no box for it");
        assertEquals(fields.size(), new TreeSet<>(fields).size());
    }

    @Test
    void the_log_starts_on_a_fresh_sheet_and_can_be_left_out() {
        assertEquals(List.of("Log"), client.parts().stream().filter(Document.Part::freshSheet).map(Document.Part::name).toList());
        var without = new Composer.Order(ComposerTest.CLIENT.edition(), ComposerTest.CLIENT.paper(), ComposerTest.CLIENT.print(), false);
        assertFalse(ComposerTest.names(ComposerTest.composed(Plans.turnedRight(), without)).contains("Log"));
    }

    @Test
    void the_same_plan_composes_to_the_same_words_and_identity() {
        var again = ComposerTest.composed(Plans.turnedRight(), ComposerTest.CLIENT);
        assertEquals(DocumentText.of(client), DocumentText.of(again));
        assertEquals(client.identity(), again.identity());
    }

    /** PAGE 15: "left" is only a side. */
    @Test
    void left_is_only_ever_a_side() {
        for (String line : DocumentText.of(client.parts())) {
            assertFalse(line.matches(".*(?i)\\b(\\d+|reps?|repeats?|some|nothing|is|are) left\\b.*"), line);
        }
    }

    @Test
    void a_template_without_the_safety_panel_is_refused() throws IOException {
        Files.createDirectories(folder.resolve("en"));
        Files.writeString(folder.resolve("en/safety.ftlx"), "<panel heading='Hello'/>");
        assertEquals(List.of("safety-panel-missing"), ids());
    }

    /** Each topic of the panel is cut out of our own template, one after the other. */
    @ParameterizedTest
    @ValueSource(strings = {"help-signs", "call", "set-signs", "pain", "breathing", "warm-up", "equipment", "one-person", "local-rules"})
    void a_panel_that_no_longer_speaks_of_a_topic_is_refused_and_the_topic_named(String topic) throws IOException {
        var ours = Files.readString(Path.of("templates/en/safety.ftlx"));
        var cut = ours.replaceAll("(?s)<(item|after) about=\"[^\"]*\\b" + topic + "\\b[^\"]*\">.*?</\\1>", "");
        Files.createDirectories(folder.resolve("en"));
        Files.writeString(folder.resolve("en/safety.ftlx"), cut.replace("<group heading=\"Stop the set\">", "<group heading=\"Stop the set\"><item>so</item>"));
        var notice = compose().notices().getFirst();
        assertEquals("safety-panel-missing", notice.id());
        assertTrue(notice.message().substring(notice.message().indexOf("speaks of")).contains(topic), notice.message());
    }

    @Test
    void an_empty_point_speaks_of_nothing() throws IOException {
        Files.createDirectories(folder.resolve("en"));
        Files.writeString(folder.resolve("en/safety.ftlx"), Files.readString(Path.of("templates/en/safety.ftlx"))
                .replace("Breathe out as you push. Never hold your breath.", "<b> </b>"));
        assertTrue(compose().notices().getFirst().message().endsWith("speaks of breathing"));
    }

    @Test
    void a_practice_may_say_it_all_in_its_own_words() throws IOException {
        Files.createDirectories(folder.resolve("en"));
        Files.writeString(folder.resolve("en/safety.ftlx"), """
                <panel heading="Our rules"><group heading="All"><item about="help-signs call set-signs pain">Chest pain: ring us.</item>
                <item about="breathing warm-up equipment one-person local-rules">As we showed you.</item></group></panel>""");
        assertEquals(List.of(), ids());
    }

    @Test
    void a_slip_in_a_practices_template_is_shown_with_its_line() throws IOException {
        Files.createDirectories(folder.resolve("en"));
        Files.writeString(folder.resolve("en/rules.ftlx"), "<title>Ours</title>\n<paragraph>fine</paragraph>\n\n<paragaph>not fine</paragaph>\n");
        var notice = compose().notices().getFirst();
        assertEquals("templates/en/rules.ftlx:4", notice.span().file() + ":" + notice.span().line());
        assertEquals("`<paragaph>` cannot stand in `<part>`", notice.message());
    }

    @Test
    void an_element_that_is_not_closed_is_shown_near_its_line() throws IOException {
        Files.createDirectories(folder.resolve("en"));
        Files.writeString(folder.resolve("en/rules.ftlx"), "<title>Ours</title>\n<paragraph>fine\n");
        var notice = compose().notices().getFirst();
        assertEquals("templates/en/rules.ftlx:2", notice.span().file() + ":" + notice.span().line());
    }

    private List<String> ids() throws IOException {
        return compose().notices().stream().map(n -> n.id()).toList();
    }

    private Outcome<Document> compose() throws IOException {
        return new Composer(Templates.over(folder)).compose(Plans.turnedRight(), ComposerTest.CLIENT);
    }

    private List<Block.Table> tables(String part) {
        return client.parts().stream().filter(p -> p.name().equals(part)).flatMap(p -> p.blocks().stream()).flatMap(HandoutTest::tablesIn).toList();
    }

    private static Stream<Block.Table> tablesIn(Block block) {
        return block instanceof Block.Table table ? Stream.of(table)
                : block instanceof Block.Together together ? together.blocks().stream().flatMap(HandoutTest::tablesIn) : Stream.empty();
    }

    private List<String> fields() {
        return tables("Log").stream().flatMap(t -> t.groups().stream()).flatMap(g -> g.rows().stream()).flatMap(r -> r.cells().stream())
                .flatMap(c -> c instanceof Cell.Entry(var field) ? Stream.of(field.name()) : Stream.empty()).toList();
    }

    private static Stream<Cell.Dose> doses(Block.Table.Row row) {
        return row.cells().stream().flatMap(c -> c instanceof Cell.Dose dose ? Stream.of(dose) : Stream.empty());
    }

    private static List<String> lower(Block.Table.Row row) {
        return doses(row).map(Cell.Dose::lower).toList();
    }

    /** Each line ends a sentence, as a list item or a measure does. */
}
