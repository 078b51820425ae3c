package contrapposto.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The formula that page checks rely on, held against values from an outside package (reference F6.9 to F6.15). */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ContrastTest {
    private static final double[] WHITE = {1, 1, 1};

    @ParameterizedTest
    @CsvSource({"000000, 21", "777777, 4.4781", "767676, 4.5422", "595959, 7.0047", "949494, 3.0335", "0000ff, 8.5925", "ff0000, 3.9985"})
    void contrast_with_white_is_what_an_outside_package_gives(String colour, double ratio) {
        assertEquals(ratio, Contrast.ratio(rgb(colour), WHITE), 5e-5);
    }

    private static double[] rgb(String hex) {
        double[] channels = new double[3];
        for (int i = 0; i < 3; i++) {
            channels[i] = Integer.parseInt(hex.substring(2 * i, 2 * i + 2), 16) / 255.0;
        }
        return channels;
    }
}
