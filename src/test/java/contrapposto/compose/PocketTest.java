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
    void it_is_one_part_in_quarters_that_begins_with_the_stop_signs() {
        assertEquals(List.of(Document.Format.QUARTERS), pocket.parts().stream().map(Document.Part::format).toList());
        String words = DocumentText.of(pocket, "Pocket sheet").replace('\u00a0', ' ');
        for (String sign : List.of("chest pain", "fainting", "loss of breath", "weakness", "numb between the legs", "calf", "pain over 5 of 10",
                "gives way", "dizzy", "Left side first, always.", "Never hold your breath", "Use until 14 June 2026.", "Read the whole plan first")) {
            assertTrue(words.contains(sign), sign);
        }
        assertTrue(words.indexOf("chest pain") < words.indexOf("Split squat"));
    }

    @Test
    void every_exercise_has_a_table_for_each_run_of_weeks_and_each_side_its_weights() {
        for (var exercise : plan.exercises()) {
            String name = exercise.number() + " " + plan.catalogue().words("en", exercise.id()).name();
            for (Side side : PlanWords.rows(exercise.sides())) {
                var badge = Badge.valueOf(PlanWords.badge(exercise.sides(), side).toUpperCase(java.util.Locale.ROOT));
                var printed = tables(name).flatMap(t -> t.groups().stream()).filter(g -> holds(g, badge))
                        .flatMap(g -> g.rows().get(1).cells().stream().skip(2)).map(PocketTest::text).filter(w -> !w.isEmpty()).toList();
                var wanted = exercise.sides().on(side).doses().stream().map(d -> d.byEffort() ? "find"
                        : d.load().isPresent() && d.load().getAsDouble() > 0 ? Long.toString(Math.round(d.load().getAsDouble())) : "–").toList();
                assertEquals(wanted, printed, name + " " + badge);
            }
        }
    }

    @Test
    void sets_and_repeats_of_each_week_stand_once_where_the_sides_agree() {
        var rows = tables("1 Split squat").findFirst().orElseThrow().groups().getLast().rows();
        assertEquals(List.of("sets", "repeats"), rows.stream().map(r -> text(r.cells().getFirst())).toList());
        assertEquals(List.of("3", "3", "3", "3", "2"), rows.getFirst().cells().stream().skip(2).map(PocketTest::text).toList());
        assertEquals(List.of("8", "8", "8", "8", "8"), rows.get(1).cells().stream().skip(2).map(PocketTest::text).toList());
    }

    @Test
    void a_pocket_sheet_without_its_stop_signs_is_refused() throws IOException {
        Files.createDirectories(folder.resolve("en"));
        Files.writeString(folder.resolve("en/pocket-safety.ftlx"), "<paragraph>Be careful.</paragraph>");
        var refused = new Composer(Templates.over(folder)).compose(plan, POCKET);
        assertTrue(refused instanceof Outcome.Refused<Document>);
        assertEquals(List.of("safety-panel-missing"), refused.notices().stream().map(n -> n.id()).toList());
    }

    private Stream<Block.Table> tables(String title) {
        return pocket.parts().getFirst().blocks().stream().filter(Block.Table.class::isInstance).map(Block.Table.class::cast)
                .filter(t -> t.title().equals(title));
    }

    private static boolean holds(Block.Table.Group group, Badge badge) {
        return group.rows().size() == 2 && group.rows().getFirst().cells().contains(new Cell.Side(badge));
    }

    private static String text(Cell cell) {
        return cell instanceof Cell.Words(var lines) ? String.join(" ", lines.stream().map(PocketTest::text).toList()) : "";
    }

    private static String text(List<Inline> runs) {
        return String.join("", runs.stream().map(r -> r instanceof Inline.Text(var words, var bold) ? words : "").toList()).strip();
    }
}
