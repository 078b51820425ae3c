package contrapposto.check;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.notice.Notice;
import contrapposto.notice.NoticeText;
import contrapposto.notice.Outcome;
import contrapposto.notice.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Specs with something wrong, each beside the notices it must cause. A mismatch leaves a {@code .received.txt} beside the
 * pair, for a person to read and, if right, to rename: nothing here approves itself.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PairsTest {
    private static final Path REJECTED = Path.of("src/test/resources/rejected");
    private static final Path WARNED = Path.of("src/test/resources/warned");
    /** Its pair would be a quarter megabyte of filler: {@code YamlReaderTest} makes one instead. */
    private static final Set<String> WITHOUT_PAIR = Set.of("yaml-too-big");
    private static final Pattern ID_IN_CODE = Pattern.compile("(?:Notice\\.(?:error|warning)|\\berror)\\(\\s*\"([a-z0-9-]+)\"");
    private static final Pattern ID_IN_PAIR = Pattern.compile("^(?:error|warning)\\[([a-z0-9-]+)]", Pattern.MULTILINE);

    static List<Path> rejected() throws IOException {
        return files(REJECTED, ".yaml");
    }

    static List<Path> warned() throws IOException {
        return files(WARNED, ".yaml");
    }

    @ParameterizedTest
    @MethodSource("rejected")
    void is_refused_with_exactly_these_notices(Path file) throws IOException {
        var outcome = check(file);
        assertInstanceOf(Outcome.Refused.class, outcome);
        assertAsNoted(file, outcome.notices());
    }

    static List<Path> rosters() throws IOException {
        return files(REJECTED, ".csv");
    }

    @ParameterizedTest
    @MethodSource("rosters")
    void a_roster_is_refused_whole_or_by_rows_with_exactly_these_notices(Path file) throws IOException {
        assertAsNoted(file, roster(file));
    }

    static List<Notice> roster(Path file) throws IOException {
        var outcome = RosterTest.read(file);
        var notices = new ArrayList<>(outcome.notices());
        if (outcome instanceof Outcome.Done<List<Roster.Row>>(var rows, var none)) {
            rows.forEach(row -> notices.addAll(row.outcome().notices()));
        }
        return notices;
    }

    @ParameterizedTest
    @MethodSource("warned")
    void is_accepted_with_exactly_these_warnings(Path file) throws IOException {
        var outcome = check(file);
        assertInstanceOf(Outcome.Done.class, outcome);
        assertAsNoted(file, outcome.notices());
    }

    @Test
    void every_id_in_the_code_has_a_pair_and_every_pair_an_id() throws IOException {
        var inCode = new TreeSet<String>();
        for (var stage : List.of("yaml", "spec", "check")) {
            for (var source : files(Path.of("src/main/java/contrapposto", stage), ".java")) {
                ID_IN_CODE.matcher(Files.readString(source)).results().forEach(found -> inCode.add(found.group(1)));
            }
        }
        var inPairs = new TreeSet<>(WITHOUT_PAIR);
        for (var folder : List.of(REJECTED, WARNED)) {
            for (var notices : files(folder, ".notices")) {
                ID_IN_PAIR.matcher(Files.readString(notices)).results().forEach(found -> inPairs.add(found.group(1)));
            }
        }
        assertEquals(inCode, inPairs);
        assertTrue(inCode.size() > 40, "the scan finds the ids: " + inCode);
    }

    @Test
    void no_file_stands_without_its_notices_and_no_notices_without_their_file() throws IOException {
        for (var folder : List.of(REJECTED, WARNED)) {
            assertEquals(stems(folder, ".yaml", ".csv"), stems(folder, ".notices"));
        }
    }

    @ParameterizedTest
    @MethodSource("rejected")
    void every_notice_can_be_shown_and_every_error_has_a_way_out(Path file) throws IOException {
        for (var notice : check(file).notices()) {
            assertTrue(notice.severity() == Severity.WARNING || !notice.hints().isEmpty(), notice.id());
            assertTrue(notice.hints().stream().noneMatch(String::isBlank), notice.id());
            assertTrue(!notice.message().endsWith(".") && !Character.isUpperCase(notice.message().charAt(0)), notice.message());
            assertTrue(NoticeText.of(notice).lines().allMatch(line -> line.length() < 400), notice.id());
        }
    }

    static Outcome<CheckedSpec> check(Path file) throws IOException {
        var bytes = Files.readAllBytes(file);
        return assertTimeoutPreemptively(Duration.ofSeconds(20),
                () -> Pack.is(bytes) ? pack(file, bytes) : Checks.check(file.getFileName().toString(), bytes, DemoSpecsTest.EXERCISES));
    }

    /** The first combination that is refused, or the refusal of the whole pack. */
    private static Outcome<CheckedSpec> pack(Path file, byte[] bytes) {
        return Pack.open(file.getFileName().toString(), bytes, RosterTest::spec, DemoSpecsTest.EXERCISES).then(pack -> pack.sheets().stream()
                .map(Pack.Sheet::outcome).filter(o -> o instanceof Outcome.Refused<CheckedSpec>).findFirst().orElseThrow());
    }

    private static void assertAsNoted(Path file, List<Notice> notices) throws IOException {
        var received = notices.stream().map(PairsTest::line).collect(Collectors.joining());
        var stem = file.toString().replaceFirst("\\.\\w+$", "");
        var noted = Path.of(stem + ".notices");
        if (!Files.exists(noted) || !Files.readString(noted).equals(received)) {
            Files.write(Path.of(stem + ".received.txt"), received.getBytes(UTF_8));
        }
        assertEquals(Files.exists(noted) ? Files.readString(noted) : "", received);
        Files.deleteIfExists(Path.of(stem + ".received.txt"));
    }

    private static String line(Notice notice) {
        return String.format(Locale.ROOT, "%s[%s] %d:%d %s\n    hint: %s\n", notice.severity().name().toLowerCase(Locale.ROOT),
                notice.id(), notice.span().line(), notice.span().column(), notice.message(), String.join("\n    hint: ", notice.hints()));
    }

    static List<Path> files(Path folder, String ending) throws IOException {
        try (var files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ending)).sorted().toList();
        }
    }

    private static Set<String> stems(Path folder, String... endings) throws IOException {
        var stems = new TreeSet<String>();
        for (var ending : endings) {
            files(folder, ending).forEach(file -> stems.add(file.getFileName().toString().replaceFirst("\\.\\w+$", "")));
        }
        return stems;
    }
}
