package contrapposto.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.quantity.UnitSystem;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class UnitsTest {
    private final Units metric = new Units(UnitSystem.METRIC, Locale.ENGLISH);
    private final Units us = new Units(UnitSystem.US, Locale.ENGLISH);

    /** Inches by the international inch of 25.4 mm (agreement of 1959). */
    @ParameterizedTest
    @CsvSource({"0.15, 15 cm, 6 in", "0.804, 80 cm, 31½ in", "0.0127, 1 cm, ½ in", "0.19, 19 cm, 7½ in", "0.305, 31 cm, 12 in"})
    void lengths_are_whole_centimetres_or_half_inches(double metres, String centimetres, String inches) {
        assertEquals(centimetres, metric.length(metres).replace('\u00a0', ' '));
        assertEquals(inches, us.length(metres).replace('\u00a0', ' '));
    }

    /** Pounds by the international pound of 0.45359237 kg (agreement of 1959). */
    @ParameterizedTest
    @CsvSource({"7.5, 7.5 kg", "8, 8 kg", "1.25, 1.25 kg", "100, 100 kg"})
    void a_weight_is_printed_as_it_is_loaded(double kilograms, String printed) {
        assertEquals(printed, metric.mass(kilograms).replace('\u00a0', ' '));
    }

    @ParameterizedTest
    @CsvSource({"20, 20 lb", "2.5, 2.5 lb", "45, 45 lb", "102.5, 102.5 lb"})
    void pounds_come_back_from_the_kilograms_they_were(double pounds, String printed) {
        assertEquals(printed, us.mass(pounds * 0.45359237).replace('\u00a0', ' '));
        assertEquals(printed, us.mass(Math.round(pounds * 453.59237) / 1000.0).replace('\u00a0', ' '));
    }

    @Test
    void a_number_never_parts_from_its_unit() {
        for (String text : new String[] {metric.length(1), metric.mass(1), metric.percent(.5, 5), metric.seconds(90), metric.minutes(5),
                metric.amount(3, 8, 0), metric.moment(12), metric.date(LocalDate.of(2026, 5, 31)), metric.shortDay(LocalDate.of(2026, 3, 9))}) {
            assertEquals(-1, text.indexOf(' '), text);
        }
    }

    @Test
    void dates_are_day_month_year() {
        assertEquals("31 May 2026", metric.date(LocalDate.of(2026, 5, 31)).replace('\u00a0', ' '));
        assertEquals("9 Mar", metric.shortDay(LocalDate.of(2026, 3, 9)).replace('\u00a0', ' '));
        assertEquals("23", metric.from(LocalDate.of(2026, 3, 23), LocalDate.of(2026, 3, 29)));
        assertEquals("30 March", metric.from(LocalDate.of(2026, 3, 30), LocalDate.of(2026, 4, 5)).replace('\u00a0', ' '));
        assertEquals("28 December 2026", metric.from(LocalDate.of(2026, 12, 28), LocalDate.of(2027, 1, 3)).replace('\u00a0', ' '));
    }

    @Test
    void runs_of_exercise_numbers_are_joined() {
        assertEquals("1–3, 5, 7, 8", metric.numbers(List.of(8, 1, 2, 3, 5, 7)));
        assertEquals("1–8", metric.numbers(List.of(1, 2, 3, 4, 5, 6, 7, 8)));
        assertEquals("1, 2, 4", metric.numbers(List.of(1, 2, 4)));
    }

    @Test
    void signs_are_shown_and_zero_has_none() {
        assertEquals("+3°", metric.signedDegrees(3.2));
        assertEquals("−6°", metric.signedDegrees(-6));
        assertEquals("0°", metric.signedDegrees(-0.3));
        assertEquals("−26\u00a0N·m", metric.moment(-26.4));
        assertEquals("65\u00a0%", metric.percent(0.668, 5));
    }
}
