package contrapposto.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import contrapposto.check.CheckedSpec.Turned;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DemoSpecsTest {
    /** The ids that the contract names; the demos use no others. */
    static final List<String> EXERCISES = List.of("high-to-low-press", "kickstand-hinge", "raised-hand-push-up",
            "split-squat", "staggered-deadlift", "supported-curl", "triceps-extension");

    static Stream<Path> demos() throws IOException {
        try (var files = Files.list(Path.of("programs"))) {
            return files.filter(f -> f.toString().endsWith(".yaml") && !f.endsWith("house-rules.yaml")).sorted().toList().stream();
        }
    }

    private static CheckedSpec demo(String name) throws IOException {
        return Quietly.value(Checks.check(name, Files.readAllBytes(Path.of("programs", name)), EXERCISES));
    }

    @ParameterizedTest
    @MethodSource("demos")
    void a_demo_is_accepted_without_a_word(Path file) throws IOException {
        var spec = Quietly.value(Checks.check(file.toString(), Files.readAllBytes(file), EXERCISES));
        assertEquals(ScreeningQuestion.values().length, spec.screening().answers().size(), "every question answered");
    }

    @Test
    void feet_inches_and_pounds_become_metres_and_kilograms_exactly() throws IOException {
        var client = demo("veteran-left.yaml").client();
        // 6 ft 1 in = 73 in of 0.0254 m; 198 lb of 0.45359237 kg (International yard and pound agreement, 1959).
        assertEquals(1.8542, client.height().metres(), 1e-12);
        assertEquals(89.81128926, client.mass().kilograms(), 1e-12);
        assertEquals(42, client.age().orElseThrow());
    }

    @Test
    void every_load_a_barbell_can_make_is_known() throws IOException {
        var bars = demo("veteran-left.yaml").equipment().bars();
        assertEquals(45, bars.getFirst().pounds(), 1e-9);
        assertEquals(50, bars.get(1).pounds(), 1e-9);
        // 45 + 4×45 + 2×25 + 4×10 + 2×5 + 2×2.5 lb
        assertEquals(330, bars.getLast().pounds(), 1e-9);
    }

    @Test
    void what_is_not_given_has_its_stated_default() throws IOException {
        var square = demo("square-steady.yaml");
        assertEquals(Turned.SQUARE, square.assessment().turned());
        assertEquals("en", square.client().language());
        var bare = demo("seventy-bare-room.yaml");
        assertEquals(List.of(CheckedSpec.Aim.values()), bare.aims());
        assertEquals(List.of(), bare.equipment().dumbbells());
    }
}
