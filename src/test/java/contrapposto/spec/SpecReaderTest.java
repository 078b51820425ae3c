package contrapposto.spec;

import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.notice.Outcome;
import contrapposto.yaml.YamlNode;
import contrapposto.yaml.YamlReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SpecReaderTest {
    private static final Value LENGTH = new Value.Amount(Dimension.LENGTH, new Value.Range(0.5, 2.5, "measure"));
    private static final Value.Fields TABLE = new Value.Fields(List.of(
            Key.optional("height", LENGTH, "of a person"), Key.optional("born", new Value.Day(), "day"),
            Key.optional("side", new Value.Word(List.of("left", "right")), "side"),
            Key.optional("inner", new Value.Fields(List.of(Key.required("colour", new Value.Text(5, false), "paint"))), "more")));

    private static SpecReader.Reading read(String text) {
        var outcome = YamlReader.read("x.yaml", text.getBytes(StandardCharsets.UTF_8));
        return SpecReader.read(((Outcome.Done<YamlNode>) outcome).value(), TABLE, List.of());
    }

    @ParameterizedTest
    @ValueSource(strings = {"5 ft 7 in", "5ft 7in", "5'7\"", "5' 7\"", "5′7″", "67 in", "67in", "67\"", "1.7018 m", "170.18 cm", "1701.8 mm"})
    void a_length_reads_the_same_in_every_unit(String written) {
        var reading = read("height: '" + written.replace("'", "''") + "'");
        assertEquals(List.of(), reading.notices());
        assertEquals(1.7018, reading.fields().amount("height").orElseThrow().standard(), 1e-12);
    }

    @Test
    void feet_and_inches_need_no_quotes() {
        assertEquals(List.of(), read("height: 5'7\"").notices());
    }

    @ParameterizedTest
    @ValueSource(strings = {"2024-02-29", "2000-02-29", "1999-12-31"})
    void a_date_that_exists_is_read(String date) {
        assertEquals(date, read("born: " + date).fields().day("born").orElseThrow().toString());
    }

    /** Leap years by the Gregorian rule: 1900 and 2100 are none, 2000 is one (bull Inter gravissimas, 1582). */
    @ParameterizedTest
    @CsvSource({"1900-02-29", "2100-02-29", "2025-02-29", "2026-04-31", "2026-00-10", "2026-01-00"})
    void a_date_that_does_not_exist_is_refused(String date) {
        assertEquals("no-such-date", read("born: " + date).notices().getFirst().id());
    }

    @Test
    void a_misplaced_key_is_told_where_it_belongs() {
        assertEquals(List.of("`colour` belongs at `inner.colour`"), read("colour: red\n").notices().getFirst().hints());
    }

    @Test
    void problems_come_in_file_order_and_good_values_are_kept() {
        var reading = read("inner: {}\nside: lft\nheight: 170 cm\nborn: soon\n");
        assertEquals(List.of("missing-key", "unknown-word", "not-a-date"), reading.notices().stream().map(n -> n.id()).toList());
        assertEquals(1.7, reading.fields().amount("height").orElseThrow().standard(), 1e-12);
    }

    @Test
    void limits_count_characters_and_not_bytes() {
        assertEquals(List.of(), read("inner: {colour: 𝄞𝄞𝄞𝄞𝄞}").notices());
        assertEquals("text-too-long", read("inner: {colour: 𝄞𝄞𝄞𝄞𝄞𝄞}").notices().getFirst().id());
    }
}
