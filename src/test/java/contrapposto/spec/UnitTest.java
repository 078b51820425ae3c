package contrapposto.spec;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Source: international yard and pound agreement of 1959, 1 lb = 0.45359237 kg and 1 yd = 0.9144 m exactly, so
 * 1 in = 0.0254 m; NIST Handbook 44, Appendix C.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class UnitTest {
    @ParameterizedTest
    @CsvSource({"1, 0.45359237", "45, 20.41165665", "2.5, 1.133980925"})
    void pounds_become_kilograms_to_the_last_binary_digit(double pounds, double kilograms) {
        assertEquals(kilograms, Unit.LB.toStandard(pounds), Math.ulp(kilograms));
    }

    @ParameterizedTest
    @CsvSource({"1, 2.2046226218", "20, 44.0924524", "1.25, 2.7557783"})
    void kilograms_become_pounds_to_the_printed_digits(double kilograms, double pounds) {
        assertEquals(pounds, Unit.LB.fromStandard(kilograms), 5e-8);
    }

    @Test
    void a_yard_is_three_feet_of_twelve_inches() {
        assertEquals(0.9144, Unit.FT.toStandard(3), 1e-15);
        assertEquals(0.9144, Unit.IN.toStandard(36), 1e-15);
    }

    @ParameterizedTest
    @CsvSource({"CM", "M", "MM", "IN", "FT", "KG", "LB", "DEG", "S"})
    void there_and_back_is_where_one_was(Unit unit) {
        assertEquals(62.5, unit.fromStandard(unit.toStandard(62.5)), 1e-12);
    }
}
