package contrapposto.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a runner-up lost by is printed so that the two numbers differ: "80 %, not 80 %" tells nothing. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ToldApartTest {
    @ParameterizedTest
    @CsvSource({"79.6, 72.1, 0, 0", "80.4, 79.9, 0, 1", "80.04, 80.01, 0, 2", "80.004, 80.001, 0, 2", "-4.94, -4.96, 1, 1", "-4.96, -4.97, 1, 2"})
    void as_many_places_as_are_needed_and_no_more_than_two_more(double one, double other, int least, int places) {
        assertEquals(places, Argument.apart(one, other, least));
    }
}
