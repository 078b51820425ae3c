package contrapposto.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.check.CheckedSpec;
import contrapposto.document.Badge;
import contrapposto.document.Block;
import contrapposto.document.Cell;
import contrapposto.document.Document;
import contrapposto.document.Inline;
import contrapposto.notice.Outcome;
import contrapposto.prescribe.Plan;
import contrapposto.quantity.Side;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pocket sheet of the hand-made plan, held against that plan. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PocketTest {
    private static final Composer.Order POCKET = new Composer.Order(CheckedSpec.Edition.POCKET, CheckedSpec.Paper.A4, CheckedSpec.Print.PLAIN, true);

    private final Plan plan = Plans.turnedRight();
    private final Document pocket = ComposerTest.composed(plan, POCKET);

    @TempDir
    Path folder;

    @Test
    void it_is_one_part_on_folded_sheets_that_begins_with_the_stop_signs() {
        assertEquals(List.of(Document.Format.FOLDED), pocket.parts().stream().map(Document.Part::format).toList());
        String words = DocumentText.of(pocket, "Pocket sheet").replace('\u00a0', ' ');
        for (String sign : List.of("chest pain", "fainting", "loss of breath", "weakness", "numb between the legs", "calf", "pain over 5 of 10",
                "gives way", "dizzy", "Left side first, always.", "Never hold your breath", "Use until 14 June 2026.", "Read the whole plan first")) {
            assertTrue(words.contains(sign), sign);
        }
        assertTrue(words.indexOf("chest pain") < words.indexOf("Split squat"));
    }

    @Test
    void every_exercise_stands_in_each_run_of_weeks_with_each_side_its_weights_and_repeats() {
        for (var exercise : plan.exercises()) {
            for (Side side : PlanWords.rows(exercise.sides())) {
                var badge = Badge.valueOf(PlanWords.badge(exercise.sides(), side).toUpperCase(java.util.Locale.ROOT));
                var doses = exercise.sides().on(side).doses();
                var weights = doses.stream().map(d -> d.byEffort() ? "find" : loaded(d) ? Long.toString(Math.round(d.load().getAsDouble())) : "–").toList();
                if (weights.stream().anyMatch(w -> !w.equals("–"))) {
                    assertEquals(weights, numbers("kg", exercise, badge), exercise.id() + " " + badge);
                }
                assertEquals(doses.stream().map(d -> Integer.toString(d.reps())).toList(), numbers("×", exercise, badge), exercise.id() + " " + badge);
            }
        }
    }

    @Test
    void sets_and_spare_of_a_week_hold_for_every_exercise_that_names_none_of_its_own() {
        assertEquals(plan.weeks().stream().map(w -> Integer.toString(w.inReserve())).toList(), above("to spare"));
        for (var exercise : plan.exercises()) {
            var doses = exercise.sides().values().getFirst().doses();
            var sets = doses.stream().map(d -> Integer.toString(d.sets())).toList();
            var own = groups(exercise).flatMap(g -> g.rows().stream()).filter(r -> text(r.cells().getFirst()).equals("sets")).toList();
            var usual = doses.stream().map(d -> above("sets").get(d.week() - 1)).toList();
            assertEquals(sets, own.isEmpty() ? usual : own.stream().flatMap(r -> weeks(r).stream()).toList(), exercise.id());
        }
    }

    @Test
    void a_pocket_sheet_without_its_stop_signs_is_refused() throws IOException {
        Files.createDirectories(folder.resolve("en"));
        Files.writeString(folder.resolve("en/pocket-safety.ftlx"), "<paragraph>Be careful.</paragraph>");
        var refused = new Composer(Templates.over(folder)).compose(plan, POCKET);
        assertTrue(refused instanceof Outcome.Refused<Document>);
        assertEquals(List.of("safety-panel-missing"), refused.notices().stream().map(n -> n.id()).toList());
    }

    private Stream<Block.Table> tables() {
        return pocket.parts().getFirst().blocks().stream().filter(Block.Table.class::isInstance).map(Block.Table.class::cast);
    }

    /** The rows of an exercise, one group for each run of weeks. */
    private Stream<Block.Table.Group> groups(Plan.Exercise exercise) {
        String name = exercise.number() + " " + plan.catalogue().words("en", exercise.id()).name();
        return tables().flatMap(t -> t.groups().stream()).filter(g -> text(g.rows().getFirst().cells().getFirst()).equals(name));
    }

    private List<String> numbers(String label, Plan.Exercise exercise, Badge badge) {
        return groups(exercise).flatMap(g -> row(label, g.rows().stream().dropWhile(r -> !r.cells().getFirst().equals(new Cell.Side(badge)))).stream()).toList();
    }

    private List<String> above(String label) {
        return tables().flatMap(t -> row(label, t.groups().getFirst().rows().stream()).stream()).toList();
    }

    /** The cells of the weeks in the first row with that label. */
    private static List<String> row(String label, Stream<Block.Table.Row> rows) {
        return rows.filter(r -> text(r.cells().getFirst()).equals(label)).findFirst().map(PocketTest::weeks).orElseThrow();
    }

    private static List<String> weeks(Block.Table.Row row) {
        return row.cells().stream().skip(3).map(PocketTest::text).filter(w -> !w.isEmpty()).toList();
    }

    private static boolean loaded(Plan.Dose dose) {
        return dose.load().isPresent() && dose.load().getAsDouble() > 0;
    }

    private static String text(Cell cell) {
        return cell instanceof Cell.Words(var lines) ? String.join(" ", lines.stream().map(PocketTest::text).toList()) : "";
    }

    private static String text(List<Inline> runs) {
        return String.join("", runs.stream().map(r -> r instanceof Inline.Text(var words, var bold) ? words : "").toList()).strip();
    }
}
