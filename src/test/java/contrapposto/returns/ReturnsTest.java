package contrapposto.returns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ReturnsTest {
    private static final Pattern ID_IN_CODE = Pattern.compile("(?:Notice\\.(?:error|warning)|refused)\\(\\s*\"([a-z0-9-]+)\"");

    static List<Path> pairs() throws IOException {
        return Returned.pairs();
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void a_log_gives_exactly_these_notices(Path file) throws IOException {
        var received = Returned.read(file).notices().stream().map(ReturnsTest::line).collect(Collectors.joining());
        var noted = Path.of(file + ".notices");
        if (!Files.exists(noted) || !Files.readString(noted).equals(received)) {
            Files.writeString(Path.of(file + ".received.txt"), received);
        }
        assertEquals(Files.exists(noted) ? Files.readString(noted) : "", received);
        Files.deleteIfExists(Path.of(file + ".received.txt"));
    }

    private static String line(Notice notice) {
        return String.format(Locale.ROOT, "%s[%s] %d:%d %s%n    hint: %s%n", notice.severity().name().toLowerCase(Locale.ROOT), notice.id(),
                notice.span().line(), notice.span().column(), notice.message(), String.join("\n    hint: ", notice.hints()));
    }

    static List<Map.Entry<String, DamagedForms.Made>> damaged() throws IOException {
        return List.copyOf(DamagedForms.all().entrySet());
    }

    @ParameterizedTest
    @MethodSource("damaged")
    void a_damaged_or_foreign_form_gives_a_notice_and_never_a_crash(Map.Entry<String, DamagedForms.Made> form) {
        var notices = assertTimeoutPreemptively(Duration.ofSeconds(30),
                () -> Returned.read(form.getKey() + ".pdf", form.getValue().bytes()).notices());
        assertTrue(notices.stream().anyMatch(n -> n.id().equals(form.getValue().notice())), form.getKey() + ": " + notices);
        for (var notice : notices) {
            assertTrue(notice.message().length() < 400 && !notice.message().endsWith("."), notice.message());
            assertTrue(notice.severity() == Severity.WARNING || !notice.hints().isEmpty(), notice.id());
        }
    }

    @Test
    void a_whole_form_is_read_and_only_its_empty_weeks_are_mentioned() throws IOException {
        var outcome = Returned.read("whole.pdf", DamagedForms.form(name -> true, (pdf, form) -> { }));
        assertEquals(List.of("log-weeks-empty"), outcome.notices().stream().map(Notice::id).toList());
        var line = ((Outcome.Done<Log>) outcome).value().lines().getFirst();
        assertEquals("w1/mon/split-squat/left 8.0 {1=8} 3", line.word() + " " + line.kilograms().getAsDouble() + " " + line.sets() + " "
                + line.spare().getAsInt());
    }

    @Test
    void every_id_of_this_package_has_an_example() throws IOException {
        var inCode = new TreeSet<String>();
        try (var sources = Files.walk(Path.of("src/main/java/contrapposto/returns"))) {
            for (var source : sources.filter(f -> f.toString().endsWith(".java")).toList()) {
                ID_IN_CODE.matcher(Files.readString(source)).results().forEach(found -> inCode.add(found.group(1)));
            }
        }
        var shown = Returned.notices().stream().map(Notice::id).collect(Collectors.toCollection(TreeSet::new));
        inCode.removeAll(java.util.Set.of("pdf-slow", "pdf-boxes"));      // twenty seconds, forty thousand boxes: too dear for a test
        assertTrue(inCode.size() > 15, "the scan finds the ids: " + inCode);
        inCode.removeAll(shown);
        assertEquals(new TreeSet<String>(), inCode);
    }
}
