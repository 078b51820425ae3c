package contrapposto.check;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import contrapposto.notice.NoticeText;
import contrapposto.notice.Outcome;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Damaged and hostile files end in notices, soon, and never in an exception. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RobustnessTest {
    private static final byte[] STRANGE = {0, '\t', '\n', '{', '}', '[', ']', ':', '-', '#', '&', '*', '!', '|', '>', '\'', '"', '%', '@',
        '`', '?', ',', '.', '9', (byte) 0xC3, (byte) 0xFF, 0x1B};

    private static Outcome<CheckedSpec> survives(byte[] bytes) {
        var outcome = Checks.check("damaged.yaml", bytes, DemoSpecsTest.EXERCISES);
        outcome.notices().forEach(NoticeText::of);
        return outcome;
    }

    @ParameterizedTest
    @MethodSource("contrapposto.check.DemoSpecsTest#demos")
    void a_spec_cut_off_anywhere_ends_in_notices(Path demo) throws IOException {
        var bytes = Files.readAllBytes(demo);
        assertTimeoutPreemptively(Duration.ofMinutes(1), () -> {
            for (int end = 0; end < bytes.length; end += 13) {
                survives(Arrays.copyOf(bytes, end));
            }
        });
    }

    @ParameterizedTest
    @MethodSource("contrapposto.check.DemoSpecsTest#demos")
    void a_spec_with_one_byte_changed_or_missing_ends_in_a_spec_or_notices(Path demo) throws IOException {
        var bytes = Files.readAllBytes(demo);
        assertTimeoutPreemptively(Duration.ofMinutes(1), () -> {
            for (int at = 0; at < bytes.length; at += 11) {
                var changed = bytes.clone();
                changed[at] = STRANGE[at / 11 % STRANGE.length];
                survives(changed);
                var shorter = new byte[bytes.length - 1];
                System.arraycopy(bytes, 0, shorter, 0, at);
                System.arraycopy(bytes, at + 1, shorter, at, bytes.length - at - 1);
                survives(shorter);
            }
        });
    }

    @Test
    void files_full_of_slips_are_read_in_a_moment() {
        var keys = new StringBuilder();
        for (int i = 0; i < 15_000; i++) {
            keys.append("key").append(i).append(": 1\n");
        }
        for (var text : new String[] {keys.toString(), "measures: [" + "{what: x}, ".repeat(20_000) + "]", "x".repeat(240_000),
            "a: \"" + "\\n".repeat(120_000) + "\"", "? ".repeat(120_000), "- ".repeat(120_000), "a: ".repeat(60_000), "\n".repeat(240_000),
            "#".repeat(240_000), "'".repeat(240_001), "a: |\n" + " x\n".repeat(60_000), "{".repeat(240_000), "&a ".repeat(60_000)}) {
            var outcome = assertTimeoutPreemptively(Duration.ofSeconds(60), () -> survives(text.getBytes(StandardCharsets.UTF_8)),
                    text.substring(0, 20));
            assertFalse(outcome.notices().isEmpty());
        }
    }
}
