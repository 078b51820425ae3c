package contrapposto.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.quantity.Side;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RosterTest {
    private static final Path SPECS = Path.of("src/test/resources/roster");

    static Outcome<List<Roster.Row>> read(Path file) throws IOException {
        return Roster.open(file.getFileName().toString(), Files.readAllBytes(file), RosterTest::spec, DemoSpecsTest.EXERCISES).map(RosterTest::all);
    }

    private static List<Roster.Row> rows(String csv) {
        return all(Quietly.value(Roster.open("r.csv", csv.getBytes(StandardCharsets.UTF_8), RosterTest::spec, DemoSpecsTest.EXERCISES)));
    }

    private static List<Roster.Row> all(Roster roster) {
        var rows = new ArrayList<Roster.Row>();
        roster.forEach(rows::add);
        return rows;
    }

    static Optional<byte[]> spec(String name) {
        try {
            var file = SPECS.resolve(name);
            return Files.isRegularFile(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
        } catch (InvalidPathException none) {
            return Optional.empty();      // as the command line does
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void a_row_replaces_values_and_an_empty_cell_keeps_them() {
        var rows = rows("""
                \uFEFFspec,client.name,client.height,assessment.weight-habit,schedule.days
                plain.yaml,"Quill, Ada",5 ft 7 in,left,"[tue, thu]"

                plain.yaml,Bo Lind,,,
                """);
        var ada = Quietly.value(rows.getFirst().outcome());
        assertEquals("Quill, Ada", ada.client().name());
        assertEquals(1.7018, ada.client().height().metres(), 1e-12);
        assertEquals(Optional.of(Side.LEFT), ada.assessment().weightHabit());
        assertEquals(List.of(DayOfWeek.TUESDAY, DayOfWeek.THURSDAY), ada.schedule().days());
        var bo = Quietly.value(rows.get(1).outcome());
        assertEquals(1.71, bo.client().height().metres(), 1e-12);
        assertEquals(4, rows.get(1).line());
        assertEquals("plain", bo.fileName());
        assertNotEquals(ada.sha256(), bo.sha256());
    }

    @Test
    void one_row_that_fails_costs_no_other() {
        var rows = rows("spec,client.name,client.mass\nplain.yaml,Ada,64 kg\nplain.yaml,Bo,900 kg\nplain.yaml,Cy,70 kg\n");
        assertEquals("Ada", Quietly.value(rows.getFirst().outcome()).client().name());
        assertEquals("Cy", Quietly.value(rows.get(2).outcome()).client().name());
        var notice = assertInstanceOf(Outcome.Refused.class, rows.get(1).outcome()).notices().getFirst();
        assertEquals("r.csv:3:15", place((Notice) notice));
    }

    @Test
    void places_hold_in_quoted_cells_that_run_over_lines() {
        var rows = rows("spec,client.name,clearance.by,clearance.date,clearance.limits,client.mass\r\n"
                + "plain.yaml,Zoë,Dr A. Example,2026-03-01,\"no \"\"heavy\"\" work,\r\nfor now\",7 kg\r\n");
        assertEquals("r.csv:3:10", place(rows.getFirst().outcome().notices().getFirst()));
    }

    private static String place(Notice notice) {
        return notice.span().file() + ":" + notice.span().line() + ":" + notice.span().column();
    }
}
