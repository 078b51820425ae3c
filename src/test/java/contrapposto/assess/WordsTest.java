package contrapposto.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.wording.Phrasebook;
import contrapposto.wording.Said;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WordsTest {
    @Test
    void each_row_of_the_tables_has_its_sentence_and_each_sentence_its_row() {
        var rows = Stream.of(ScreeningTable.ROWS.stream().map(ScreeningTable.Row::because),
                ScreeningTable.PRESSURE_ROWS.stream().map(ScreeningTable.PressureRow::because),
                ConditionTable.ROWS.stream().map(ConditionTable.Row::because)).flatMap(all -> all).map(Said::key).toList();
        assertEquals(rows.size(), new TreeSet<>(rows).size(), "two rows share a sentence");
        assertEquals(new TreeSet<>(rows), new TreeSet<>(Phrasebook.of("en").keys().stream().filter(k -> k.startsWith("because/")).toList()));
    }
}
